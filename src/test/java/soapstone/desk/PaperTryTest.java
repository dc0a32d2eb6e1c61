package soapstone.desk;

import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;
import soapstone.paper.*;
import soapstone.page.*;
import soapstone.mark.MarkRules;

class PaperTryTest {
    @Test
    void tries() throws Exception {
        Files.createDirectories(Path.of("target/paper"));
        List<String> some = List.of("spacing/bolt-holes", "bends/hose-tray", "brake/die-opening", "tanks/lying-drum");
        EnginePaperDesk d = new EnginePaperDesk(RealSite::library, "en");
        List<KeySheet> keys = new ArrayList<>();
        List<Strip> strips = new ArrayList<>();
        for (int s = 0; s < 24; s++) {
            List<KeySheet.Problem> ps = new ArrayList<>();
            List<Strip.Problem> sp = new ArrayList<>();
            for (String id : some) {
                var v = PaperSamples.variant(id, 7 + s);
                ps.add(d.key(v, ps.size() + 1));
                var out = v.outcomes().stream().filter(o -> o.effect() == soapstone.variant.Effect.SEEN).skip(s % 3).findFirst().orElseThrow();
                sp.add(new Strip.Problem(sp.size() + 1, new Sheets(RealSite.library(), new Links(RealSite.library()), "en").marked(v, RealSite.answers(v, s % 4 == 3 ? v.right() : out.theirs()), MarkRules.USUAL), List.of()));
            }
            keys.add(new KeySheet("K7M-42PX", String.valueOf(s + 1), "Student " + s, ps));
            if (s < 8) strips.add(new Strip("K7M-42PX", s + " Student", "Week 9", "3/8", sp.subList(0, 1 + s % 3)));
        }
        for (PaperSize size : PaperSize.values()) {
            try (Press p = new Press("k", PaperSamples.DAY)) { p.add(new Key(Words.of("en"), size).markup(new Key.Of("Week 9", "Sheet metal 1", "Mar 16", keys, Optional.empty()))); Files.write(Path.of("target/paper/key" + size + ".pdf"), p.bytes()); }
            try (Press p = new Press("k", PaperSamples.DAY)) { new Key(Words.of("en"), size).folded("Week 9", keys.subList(0, 5)).forEach(p::add); Files.write(Path.of("target/paper/fold" + size + ".pdf"), p.bytes()); }
            for (int n : new int[] {2, 4}) try (Press p = new Press("k", PaperSamples.DAY)) { new Strips(Words.of("es"), size, n).markup("Week 9", strips).forEach(p::add); Files.write(Path.of("target/paper/strips" + n + size + ".pdf"), p.bytes()); }
        }
    }
}
