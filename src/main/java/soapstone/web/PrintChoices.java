package soapstone.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import soapstone.page.Words;
import soapstone.paper.PacketChoices;
import soapstone.paper.PaperSize;
import soapstone.source.Message;

/**
 * What is to be printed, and how.
 *
 * @param spares  spare sheets, for a packet and its keys
 * @param toAPage strips on a page, two or four
 * @param reader  language of whoever asked, for keys
 */
record PrintChoices(Kind kind, PacketChoices packet, int spares, int toAPage, String reader) {

    static final int MOST_SPARES = 40;

    /** What can be printed for an assignment. */
    enum Kind {
        /** A sheet for everybody. */
        PACKET,
        /** For whoever marks. */
        KEY,
        /** For those who check themselves. */
        FOLDED,
        /** What became of the answers. */
        STRIPS;

        String word() {
            return Words.key(this);
        }
    }

    /** As the page offers it at first. */
    static Map<String, String> usual() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("kind", "packet");
        typed.put("size", PaperSize.LETTER.word());
        typed.put("form", "whole");
        typed.put("names", "yes");
        typed.put("spares", "0");
        typed.put("strips", "4");
        return typed;
    }

    static PrintChoices of(FilledForm form, Map<String, String> typed, String reader) {
        PaperSize size = PaperSize.parse(typed.getOrDefault("size", "")).orElseGet(() -> {
            form.fault("size", Message.of("filled.choice"));
            return PaperSize.LETTER;
        });
        PacketChoices.Form shape = PacketChoices.Form.of(typed.getOrDefault("form", "")).orElse(PacketChoices.Form.WHOLE);
        PacketChoices packet = new PacketChoices(size, shape, form.ticked("names"), form.ticked("formulas"), form.ticked("sides"));
        return new PrintChoices(kind(form, typed.getOrDefault("kind", "")), packet, form.whole("spares", 0, MOST_SPARES), typed.getOrDefault("strips", "").equals("2") ? 2 : 4, reader);
    }

    private static Kind kind(FilledForm form, String word) {
        for (Kind kind : Kind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        form.fault("kind", Message.of("filled.choice"));
        return Kind.PACKET;
    }

    /** As it is kept: it can be made again from that. */
    String text() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("size", packet.size().word());
        all.put("form", packet.form().word());
        all.put("names", packet.names() ? "yes" : "no");
        all.put("formulas", packet.formulas() ? "yes" : "no");
        all.put("sides", packet.bothSides() ? "yes" : "no");
        all.put("spares", String.valueOf(spares));
        all.put("strips", String.valueOf(toAPage));
        all.put("reader", reader);
        return all.entrySet().stream().map(e -> e.getKey() + "=" + e.getValue()).collect(Collectors.joining(" "));
    }

    /** The fields of the form that asks for the same again. */
    static Map<String, String> fields(String kind, String text) {
        Map<String, String> all = new LinkedHashMap<>(Map.of("kind", kind));
        for (String each : text.split(" ")) {
            String[] pair = each.split("=", 2);
            if (!pair[1].equals("no")) {
                all.put(pair[0], pair[1]);
            }
        }
        return all;
    }
}
