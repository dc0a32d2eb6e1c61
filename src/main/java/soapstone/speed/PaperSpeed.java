package soapstone.speed;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;

/**
 * A packet for a class and its key, each made by a program of its own in 256 megabytes of heap, from its start to its end: reading the
 * bank, drawing everybody's numbers, laying out, writing the file.
 *
 * @param sheets   in the packet
 * @param problems on each, every one with a drawing
 * @param packet   what it took
 * @param key      what it took
 */
public record PaperSpeed(int sheets, int problems, Made packet, Made key) {

    private static final String HEAP = "-Xmx256m";
    private static final int SHEETS = 30;
    private static final int PROBLEMS = 10;
    private static final long SEEDS = 2000;

    /** @param seconds of the whole process */
    public record Made(double seconds, int pages) {}

    static PaperSpeed measure(Bank bank, List<String> bankOptions) throws IOException, InterruptedException {
        List<Exercise> drawn = bank.exercises().values().stream().filter(e -> e.us().figure().isPresent()).toList();
        // Spread over the bank, so that they are of many kinds.
        List<Exercise> some = new ArrayList<>();
        for (int i = 0; i < Math.min(PROBLEMS, drawn.size()); i++) {
            some.add(drawn.get(i * drawn.size() / Math.min(PROBLEMS, drawn.size())));
        }
        List<Drawer> drawers = some.stream().map(e -> new Drawer(e, UnitSystem.US)).toList();
        String seeds = LongStream.rangeClosed(1, SEEDS).filter(s -> drawers.stream().allMatch(d -> d.draw(s).isPresent())).limit(SHEETS).mapToObj(String::valueOf)
                .collect(Collectors.joining(","));
        return new PaperSpeed(SHEETS, some.size(), made("packet", some, seeds, bankOptions), made("key", some, seeds, bankOptions));
    }

    private static Made made(String kind, List<Exercise> exercises, String seeds, List<String> bankOptions) throws IOException, InterruptedException {
        Path file = Files.createTempFile("soapstone-" + kind, ".pdf");
        try {
            List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), HEAP, "-cp", Child.classPath(),
                    "soapstone.Main", "print", kind, "--seeds", seeds, "--to", file.toString()));
            exercises.forEach(e -> command.addAll(List.of("--exercise", e.id())));
            command.addAll(bankOptions);
            long begun = System.nanoTime();
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0) {
                throw new IOException("a " + kind + " was not made: " + said);
            }
            double seconds = (System.nanoTime() - begun) / 1e9;
            return new Made(seconds, new ObjectMapper().readTree(said).get("pages").asInt());
        } finally {
            Files.delete(file);
        }
    }
}
