package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import soapstone.quantity.UnitSystem;

/**
 * The one act of the program, "put something else in and run on", by its definition: a rerun with a change gives what a
 * whole run of the working with that change written into it gives, to the last bit.
 */
class RerunTest {

    private static final int WORKINGS = 3_000;
    private static final int LINES = 14;

    @Test
    void aRerunIsAFullRunWithTheChangeWrittenIn() {
        int effects = 0;
        for (long seed = 1; seed <= WORKINGS; seed++) {
            effects += new Trial(seed).run();
        }
        assertThat(effects).as("reruns in which something changed").isGreaterThan(WORKINGS);
    }

    /** A working of random lines, some of them swapped for others, others set to a value. */
    private static final class Trial {
        private final long seed;
        private final SplittableRandom random;
        private final UnitSystem system;
        private final List<String> right = new ArrayList<>();

        Trial(long seed) {
            this.seed = seed;
            this.random = new SplittableRandom(seed);
            this.system = random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC;
            for (int i = 0; i < LINES; i++) {
                right.add(line(i));
            }
        }

        int run() {
            int effects = 0;
            for (int change = 0; change < 4; change++) {
                effects += change();
            }
            return effects;
        }

        private int change() {
            Board board = board(right);
            Change change = Change.NONE;
            List<String> theirs = new ArrayList<>(right);
            for (int n = 1 + random.nextInt(3); n > 0; n--) {
                int at = random.nextInt(LINES);
                Change one = random.nextInt(3) == 0 ? fixed(at, theirs) : swapped(board, at, theirs);
                change = one.over(change);
            }
            return compare(board, change, theirs);
        }

        private Change swapped(Board board, int at, List<String> theirs) {
            theirs.set(at, line(at));
            return board.swap(theirs.get(at), false);
        }

        private Change fixed(int at, List<String> theirs) {
            int wanted = slot(at);
            if (isList(at)) {
                theirs.set(at, "line_" + at + " = list(1 in, 2.5 in, 7 in)");
                double inch = system == UnitSystem.US ? 1 : 25.4;
                return Change.fixed(wanted, new double[] {inch, 2.5 * inch, 7 * inch});
            }
            int number = random.nextInt(50);
            theirs.set(at, "line_" + at + " = " + number + (isLength(at) ? " in" : ""));
            return Change.fixed(wanted, number * (isLength(at) && system == UnitSystem.METRIC ? 25.4 : 1));
        }

        private int compare(Board board, Change change, List<String> theirs) {
            Frame done = board.run();
            Frame into = board.program().frame();
            int last = slot(LINES - 1);
            long changed = board.program().rerun(done, into, change, last);
            Board written = board(theirs);
            Frame whole = written.run();
            long differs = 0;
            for (int i = 0; i < LINES; i++) {
                int slot = slot(i);
                Object expected = value(whole, slot(i), isList(i));
                assertThat(value(into, slot, isList(i))).as("seed %d: line %d of %s with %s", seed, i, right, theirs).isEqualTo(expected);
                differs |= expected.equals(value(done, slot, isList(i))) ? 0 : 1L << slot;
            }
            assertThat(changed).as("seed %d: what is told to have changed in %s with %s", seed, right, theirs).isEqualTo(differs);
            assertThat(value(done, slot(0), isList(0))).as("seed %d: the finished run is left alone", seed)
                    .isEqualTo(value(board.run(), slot(0), isList(0)));
            return differs == 0 ? 0 : 1;
        }

        private Board board(List<String> lines) {
            Board board = new Board(system).given("length", "48 in").given("edge", "1.5 in").given("holes", "5").given("turn", "30 deg");
            lines.forEach(board::line);
            assertThat(board.faults).as("seed %d: %s", seed, lines).isEmpty();
            return board;
        }

        private static int slot(int line) {
            // pi and four givens stand before the lines.
            return 5 + line;
        }

        /** Every fifth line is a list, the lines before it are lengths, the others numbers. */
        private static boolean isList(int line) {
            return line % 5 == 4;
        }

        private static boolean isLength(int line) {
            return line % 5 < 2;
        }

        private String line(int at) {
            return "line_" + at + " = " + (isList(at) ? list(at) : isLength(at) ? length(at, 0) : number(at, 0));
        }

        private Optional<String> before(int at, boolean list, boolean length) {
            List<String> names = new ArrayList<>();
            for (int i = 0; i < at; i++) {
                if (isList(i) == list && (list || isLength(i) == length)) {
                    names.add("line_" + i);
                }
            }
            return names.isEmpty() ? Optional.empty() : Optional.of(names.get(random.nextInt(names.size())));
        }

        private String length(int at, int depth) {
            String name = before(at, false, true).orElse(random.nextBoolean() ? "length" : "edge");
            int kind = depth > 2 ? random.nextInt(3) : random.nextInt(12);
            return switch (kind) {
                case 0, 1 -> name;
                case 2 -> (1 + random.nextInt(40)) + "/8 in";
                case 3 -> "(" + length(at, depth + 1) + " + " + length(at, depth + 1) + ")";
                case 4 -> "(" + length(at, depth + 1) + " - " + length(at, depth + 1) + ")";
                case 5 -> length(at, depth + 1) + "*" + number(at, depth + 1);
                case 6 -> length(at, depth + 1) + "/(" + number(at, depth + 1) + ")";
                case 7 -> "round(" + length(at, depth + 1) + ", 1/16 in)";
                case 8 -> "max(" + length(at, depth + 1) + ", " + length(at, depth + 1) + ")";
                case 9 -> "bend_allowance(turn, abs(" + length(at, depth + 1) + "), edge, 0.4)";
                case 10 -> "if(" + number(at, depth + 1) + " > 3, " + length(at, depth + 1) + ", " + length(at, depth + 1) + ")";
                default -> before(at, true, true).map(l -> random.nextBoolean() ? "sum(" + l + ")" : "item(" + l + ", " + (1 + random.nextInt(4)) + ")").orElse("edge");
            };
        }

        private String number(int at, int depth) {
            String name = before(at, false, false).orElse("holes");
            int kind = depth > 2 ? random.nextInt(3) : random.nextInt(9);
            return switch (kind) {
                case 0, 1 -> name;
                case 2 -> String.valueOf(1 + random.nextInt(9));
                case 3 -> "(" + number(at, depth + 1) + " + " + number(at, depth + 1) + ")";
                case 4 -> "(" + number(at, depth + 1) + " - " + number(at, depth + 1) + ")";
                case 5 -> "floor(" + length(at, depth + 1) + "/(" + length(at, depth + 1) + "))";
                case 6 -> "sin(turn)*" + number(at, depth + 1);
                case 7 -> "gauge(\"carbon\", " + (8 + 2 * random.nextInt(5)) + ")/(1 in)";
                default -> "sqrt(" + number(at, depth + 1) + ")";
            };
        }

        private String list(int at) {
            String count = "min(9, abs(floor(" + number(at, 1) + ")))";
            return random.nextBoolean() ? "marks(" + length(at, 1) + ", " + length(at, 1) + ", " + count + ")"
                    : "each(i, 1, " + count + ", " + length(at, 1) + "*i)";
        }
    }

    /** As something that can be compared: every undefined value is the same. */
    private static Object value(Frame f, int slot, boolean list) {
        if (list) {
            return f.list(slot) == null ? "undefined" : Arrays.toString(f.list(slot));
        }
        double value = f.number(slot) + 0.0;
        return Double.isNaN(value) ? "undefined" : value;
    }
}
