package soapstone.desk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import soapstone.page.SheetView;
import soapstone.page.Words;
import soapstone.paper.Packet;
import soapstone.paper.PacketChoices;
import soapstone.paper.PacketSheet;
import soapstone.paper.Press;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/** Sheets for paper out of the real bank. */
final class PaperSamples {

    static final Instant DAY = Instant.parse("2027-03-16T07:00:00Z");

    private PaperSamples() {}

    static List<String> ids() {
        return List.copyOf(RealSite.library().bank().exercises().keySet());
    }

    static Variant variant(String id, long seed) {
        for (long s = seed;; s += 1000) {
            Optional<Variant> v = Drawer.draw(RealSite.library().bank().exercise(id).orElseThrow(), UnitSystem.US, s);
            if (v.isPresent()) {
                return v.get();
            }
        }
    }

    static SheetView asked(Variant variant) {
        return new Sheets(RealSite.library(), new Links(RealSite.library()), "en").asked(variant);
    }

    static byte[] packet(PacketChoices choices, List<PacketSheet> sheets) {
        Packet packet = new Packet(Words.of("en"), choices);
        try (Press press = new Press("Week 9: holes and trays", DAY)) {
            sheets.forEach(s -> packet.add(press, s));
            return press.bytes();
        }
    }
}
