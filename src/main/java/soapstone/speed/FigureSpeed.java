package soapstone.speed;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.desk.Drawings;
import soapstone.exercise.Exercise;
import soapstone.page.Figure;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * Drawing the bank's figures, each laid out wide and narrow, against writing the very same text by string code that
 * knows every coordinate already. What lies between the two is the laying out: scale, room for lettering, arrows.
 *
 * @param figures how many different ones are drawn in a pass
 * @param bytes   of one, in the middle of them
 * @param drawn   figures a second
 * @param written the same texts a second
 * @param times   seconds of drawing over seconds of writing, pass by pass
 * @param small   a thousand of them in 64 megabytes of heap
 */
public record FigureSpeed(int figures, int bytes, Spread drawn, Spread written, Spread times, Small small) {

    private static final long SEED = 7;
    private static final int WARM_PASSES = 60;
    private static final int LEAST_PASSES = 5;
    private static final double NANOS = 1e9;
    private static final String HEAP = "-Xmx64m";

    /**
     * In a process of its own, which holds all its drawings at the end.
     *
     * @param figures   how many there were
     * @param megabytes the most memory that the whole process had; empty where the system does not tell
     */
    public record Small(int figures, Optional<Integer> megabytes) {

        public boolean isGood() {
            return figures == ManyFigures.MANY;
        }
    }

    static FigureSpeed measure(Bank bank, List<String> bankOptions, double seconds) throws IOException {
        return new Measuring(bank).run(seconds, small(bankOptions));
    }

    private static Small small(List<String> bankOptions) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), HEAP, "-cp", Child.classPath(),
                ManyFigures.class.getName()));
        command.addAll(bankOptions);
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try (BufferedReader said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String line = said.readLine();
            Optional<Integer> megabytes = Child.megabytes(process);
            // It waits for this line before it ends, so that its memory could be read.
            process.getOutputStream().write('\n');
            process.getOutputStream().flush();
            return new Small(line == null ? 0 : Integer.parseInt(line), megabytes);
        } finally {
            process.destroy();
        }
    }

    private static final class Measuring {

        private final Drawings drawings = Drawings.in("en");
        private final List<Variant> variants = new ArrayList<>();
        private final List<WrittenText> texts = new ArrayList<>();
        /** Keeps results alive, so that no work can be left out. */
        private long signs;

        Measuring(Bank bank) {
            for (Exercise exercise : bank.exercises().values()) {
                for (UnitSystem units : UnitSystem.values()) {
                    Drawer.draw(exercise, units, SEED).ifPresent(v -> drawings.asked(v).ifPresent(f -> add(v, f)));
                }
            }
        }

        private void add(Variant variant, Figure figure) {
            variants.add(variant);
            texts.add(WrittenText.of(text(figure)));
        }

        private static String text(Figure figure) {
            return figure.wide().markup() + figure.narrow().markup();
        }

        FigureSpeed run(double seconds, Small small) {
            passes(0, WARM_PASSES);
            List<double[]> passes = passes(seconds, LEAST_PASSES);
            double[] drawn = passes.stream().mapToDouble(p -> variants.size() / p[0] * NANOS).toArray();
            double[] written = passes.stream().mapToDouble(p -> variants.size() / p[1] * NANOS).toArray();
            double[] times = passes.stream().mapToDouble(p -> p[0] / p[1]).toArray();
            int[] lengths = texts.stream().mapToInt(t -> t.write().length()).sorted().toArray();
            return new FigureSpeed(variants.size(), lengths[lengths.length / 2], Spread.of(drawn), Spread.of(written), Spread.of(times), small);
        }

        private List<double[]> passes(double seconds, int least) {
            List<double[]> passes = new ArrayList<>();
            long end = System.nanoTime() + (long) (seconds * NANOS);
            while (System.nanoTime() < end || passes.size() < least) {
                long start = System.nanoTime();
                variants.forEach(v -> signs += text(drawings.asked(v).orElseThrow()).length());
                long middle = System.nanoTime();
                texts.forEach(t -> signs -= t.write().length());
                passes.add(new double[] {middle - start, System.nanoTime() - middle});
            }
            if (signs != 0) {
                throw new IllegalStateException("both sides write the same text");
            }
            return passes;
        }
    }
}
