package soapstone.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;

/**
 * Marking one answer with full diagnosis, against written-out Java that tries the same candidates with the same windows.
 * The answers of an exercise are mixed: the right one, each slip's, some that nothing explains. One thread; marker and
 * Java take turns, so that whatever else the machine does falls on both.
 *
 * @param exercises   each with its ratio, in the bank's order
 * @param median      over the exercises
 * @param differences answers on which both do not agree: as long as there are some, the ratios compare different work
 */
public record MarkingSpeed(List<OfExercise> exercises, Spread median, List<Trial.Difference> differences) {

    private static final int SEEDS = 3;
    private static final int LEAST_TURNS = 11;
    /** Short, so that few turns are cut by something else that the machine does; the middle one then is clean. */
    private static final double TURN_NANOS = 250_000;
    /** The part of the time that is spent before anything is measured, so that Java's own compiler is done. */
    private static final double WARM_UP = 0.4;
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
            double each = seconds * (1 - WARM_UP) / trials.size();
            List<OfExercise> results = new ArrayList<>();
            trials.forEach(all -> results.add(exercise(all, each)));
            double[] ratios = results.stream().mapToDouble(r -> r.ratio().median()).toArray();
            if (Double.isNaN(sum)) {
                throw new IllegalStateException("marks are not numbers");
            }
            return new MarkingSpeed(List.copyOf(results), Spread.of(ratios), List.copyOf(differences));
        }

        private void warmUp() {
            long end = System.nanoTime() + (long) (seconds * WARM_UP * NANOS);
            while (System.nanoTime() < end) {
                for (List<Trial> all : trials) {
                    sum += marker(all) + plain(all);
                }
            }
        }

        private double marker(List<Trial> all) {
            double s = 0;
            for (Trial trial : all) {
                s += trial.marker();
            }
            return s;
        }

        private double plain(List<Trial> all) {
            double s = 0;
            for (Trial trial : all) {
                s += trial.plain();
            }
            return s;
        }

        private OfExercise exercise(List<Trial> all, double each) {
            int answers = all.stream().mapToInt(Trial::answers).sum();
            List<double[]> turns = new ArrayList<>();
            long end = System.nanoTime() + (long) (each * NANOS);
            int marks = repeats(all, true);
            int plains = repeats(all, false);
            while (System.nanoTime() < end || turns.size() < LEAST_TURNS) {
                turns.add(new double[] {time(all, marks, true) / answers, time(all, plains, false) / answers});
            }
            return new OfExercise(all.get(0).exercise().id(), answers, Spread.of(turns.stream().mapToDouble(t -> t[0]).toArray()),
                    Spread.of(turns.stream().mapToDouble(t -> t[1]).toArray()), Spread.of(turns.stream().mapToDouble(t -> t[0] / t[1]).toArray()));
        }

        /** How often one side marks all answers in a turn, so that both sides take about as long. */
        private int repeats(List<Trial> all, boolean marker) {
            double best = Double.MAX_VALUE;
            for (int i = 0; i < LEAST_TURNS; i++) {
                best = Math.min(best, time(all, 1, marker));
            }
            return (int) Math.max(1, TURN_NANOS / best);
        }

        /** Nanoseconds to mark all answers once. */
        private double time(List<Trial> all, int repeats, boolean marker) {
            long start = System.nanoTime();
            for (int i = 0; i < repeats; i++) {
                sum += marker ? marker(all) : plain(all);
            }
            return (System.nanoTime() - start) / (double) repeats;
        }
    }
}
