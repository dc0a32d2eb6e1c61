package soapstone.desk;

import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;
import soapstone.paper.*;

class PaperTryTest {
    @Test
    void tries() throws Exception {
        Files.createDirectories(Path.of("target/paper"));
        List<String> ids = PaperSamples.ids();
        System.out.println(ids);
        List<String> some = new ArrayList<>();
        for (int i = 0; i < ids.size(); i += 9) some.add(ids.get(i));
        some = List.of("spacing/bolt-holes", "bends/hose-tray", "brake/die-opening", "tanks/lying-drum");
        for (PaperSize size : PaperSize.values()) for (int i = 0; i < 3; i++) {
            PacketChoices c = new PacketChoices(size, i == 1, i == 2, true, false);
            Files.write(Path.of("target/paper/p-" + size + i + ".pdf"), PaperSamples.packet(c, List.of(PaperSamples.sheet("K7M-42PX", "1  Ada Łukasz", some, 7), PaperSamples.sheet("B7M-42PX", "", some.subList(2, 4), 8))));
        }
        List<PacketSheet> all = new ArrayList<>();
        for (int s = 0; s < 30; s++) all.add(PaperSamples.sheet("K7M-42P" + s, "Student " + s, ids.subList(10, 20), 7 + s));
        for (int k = 0; k < 1; k++) {
        long t = System.nanoTime();
        byte[] b = PaperSamples.packet(PacketChoices.USUAL, all);
        System.out.println("30x10: " + (System.nanoTime() - t) / 1e9 + " s, bytes " + b.length);
        Files.write(Path.of("target/paper/big" + k + ".pdf"), b);
        }
    }
}
