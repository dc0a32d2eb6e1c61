package soapstone.speed;

import java.lang.management.CompilationMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;

/**
 * Marking one answer with full diagnosis, against written-out Java that tries the same candidates with the same windows.
 * The answers of an exercise are mixed: the right one, each slip's, some that nothing explains. They are marked as a
 * class's answers come, one exercise after the other through the whole bank, again and again: were one exercise marked
 * alone in a loop, the processor would learn its few answers by heart. One thread; marker and Java take turns at every
 * exercise, so that whatever else the machine does falls on both.
 *
 * @param exercises   each with its ratio, in the bank's order
 * @param median      over the exercises
 * @param whole       over all answers of the bank together, pass by pass
 * @param differences answers on which both do not agree: as long as there are some, the ratios compare different work
 */
public record MarkingSpeed(List<OfExercise> exercises, Spread median, Spread whole, List<Trial.Difference> differences) {

    private static final int SEEDS = 3;
    private static final int LEAST_PASSES = 11;
    /** So often everything is marked before Java's own compiler has seen all of it often enough. */
    private static final int WARM_PASSES = 2000;
    private static final int CALM_PASSES = 300;
    /** The compiler is done when it takes less than this share of the time. */
    private static final double CALM = 0.05;
    /** However busy the machine is, warming up ends after so many times the seconds that were asked for. */
    private static final int MOST_WARM_UP = 5;
    private static final double NANOS = 1e9;

    /**
     * One exercise.
     *
     * @param answers how many were marked in a turn
     * @param marker  nanoseconds for one answer
     * @param plain   the same of the written-out Java
     * @param ratio   marker over plain, turn by turn
     */
    public record OfExercise(String exercise, int answers, Spread marker, Spread plain, Spread ratio) {}

    /** Measures for about so many seconds; empty where this Java has no compiler. */
    public static Optional<MarkingSpeed> measure(Bank bank, double seconds) {
        return InMemory.compiler().map(compiler -> new Measuring(bank, compiler, seconds).run());
    }

    private static final class Measuring {
        private final List<List<Trial>> trials = new ArrayList<>();
        private final List<Trial.Difference> differences = new ArrayList<>();
        private final double seconds;
        /** Keeps results alive, so that no work can be left out. */
        private double sum;

        Measuring(Bank bank, InMemory compiler, double seconds) {
            this.seconds = seconds;
            for (Exercise exercise : bank.exercises().values()) {
                List<Trial> all = new ArrayList<>();
                for (Ask ask : exercise.model(UnitSystem.US).asks()) {
                    all.add(new Trial(exercise, ask, bank, compiler, SEEDS));
                }
                trials.add(all);
            }
        }

        MarkingSpeed run() {
            trials.forEach(all -> all.forEach(t -> differences.addAll(t.differences())));
            warmUp();
            List<double[][]> passes = passes(seconds, LEAST_PASSES);
            if (Double.isNaN(sum)) {
                throw new IllegalStateException("marks are not numbers");
            }
            List<OfExercise> results = new ArrayList<>();
            for (int i = 0; i < trials.size(); i++) {
                results.add(exercise(trials.get(i), i, passes));
            }
            double[] ratios = results.stream().mapToDouble(r -> r.ratio().median()).toArray();
            double[] whole = passes.stream().mapToDouble(p -> Arrays.stream(p[0]).sum() / Arrays.stream(p[1]).sum()).toArray();
            return new MarkingSpeed(List.copyOf(results), Spread.of(ratios), Spread.of(whole), List.copyOf(differences));
        }

        /** Until Java's own compiler has nothing left to do for both sides: before that, ratios are those of its progress. */
        private void warmUp() {
            CompilationMXBean compiler = ManagementFactory.getCompilationMXBean();
            long end = System.nanoTime() + (long) (seconds * MOST_WARM_UP * NANOS);
            passes(0, WARM_PASSES);
            double busy = 1;
            while (busy > CALM && System.nanoTime() < end) {
                long start = System.nanoTime();
                long compiled = compiler.getTotalCompilationTime();
                passes(0, CALM_PASSES);
                busy = (compiler.getTotalCompilationTime() - compiled) * 1e6 / (System.nanoTime() - start);
            }
        }

        /** Marks the whole bank again and again: for each pass and each exercise the nanoseconds of the marker and of the Java. */
        private List<double[][]> passes(double forSeconds, int least) {
            List<double[][]> passes = new ArrayList<>();
            long end = System.nanoTime() + (long) (forSeconds * NANOS);
            while (System.nanoTime() < end || passes.size() < least) {
                double[][] pass = new double[2][trials.size()];
                for (int i = 0; i < trials.size(); i++) {
                    long start = System.nanoTime();
                    marker(trials.get(i));
                    long middle = System.nanoTime();
                    plain(trials.get(i));
                    pass[0][i] = middle - start;
                    pass[1][i] = System.nanoTime() - middle;
                }
                passes.add(pass);
            }
            return passes;
        }

        private void marker(List<Trial> all) {
            for (Trial trial : all) {
                sum += trial.marker();
            }
        }

        private void plain(List<Trial> all) {
            for (Trial trial : all) {
                sum += trial.plain();
            }
        }

        private static OfExercise exercise(List<Trial> all, int index, List<double[][]> passes) {
            int answers = all.stream().mapToInt(Trial::answers).sum();
            return new OfExercise(all.get(0).exercise().id(), answers, Spread.of(passes.stream().mapToDouble(p -> p[0][index] / answers).toArray()),
                    Spread.of(passes.stream().mapToDouble(p -> p[1][index] / answers).toArray()),
                    Spread.of(passes.stream().mapToDouble(p -> p[0][index] / p[1][index]).toArray()));
        }
    }
}
