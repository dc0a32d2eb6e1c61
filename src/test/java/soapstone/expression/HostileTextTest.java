package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.Heap;
import soapstone.quantity.Dimension;
import soapstone.quantity.UnitSystem;

/** Whatever is written, it is read, planned and run in bounded time, on a flat heap, and ends in a value or a fault. */
class HostileTextTest {

    private static final Duration QUICK = Duration.ofSeconds(10);
    private static final int SOUPS = 60_000;
    private static final double FLAT = 6;

    private static final String[] WORDS = {"length", "edge", "holes", "turn", "metal", "load", "plate", "number", "pi", "in", "ft", "min", "deg",
        "lb", "gauge", "pail", "1", "2", "3", "0", "1/2", "9", "12.5", "1e300", "\"carbon\"", "\"x\"", "+", "-", "*", "/", "^", "(", ")", ",", "=",
        "==", "<", ">=", "and", "or", "not", "if(", "each(i,", "i", "solve(x,", "x", "list(", "marks(", "sum(", "item(", "sqrt(", "sin(",
        "bend_allowance(", "round_area(", "to(", "number(", "at_least(gauge,", "between(gauge,", "next_row(gauge,", "floor(", "%", ".", "?"};

    static Stream<String> monsters() {
        return Stream.of("(".repeat(10_000), ")".repeat(10_000), "-".repeat(10_000), "not ".repeat(10_000) + "holes", "9" + "^9".repeat(5_000),
                "9^9^9^9", "9".repeat(100_000), "x".repeat(100_000), "\"" + "x".repeat(100_000), "\u0000".repeat(100_000), "½".repeat(100_000),
                "1" + "+1".repeat(50_000), "1 in" + "/in".repeat(30_000), "list(" + "1,".repeat(50_000) + "1)", "abs(".repeat(10_000), "\t".repeat(100_000),
                "\ud83d".repeat(50_000), "(".repeat(200), "-".repeat(250) + "1", "abs(".repeat(39) + "1" + ")".repeat(39), "((".repeat(140) + "1",
                "1 in" + "*in".repeat(150), "2^2^2^2^2^2^2^2", "1" + "/1".repeat(250), "not ".repeat(40) + "1 > 2", "if(".repeat(60),
                "1e99999999999999999", "0." + "0".repeat(500) + "1", "Runtime", "java.lang.Runtime.getRuntime().exec(\"x\")", "${7*7}", "", " ", "=");
    }

    @ParameterizedTest
    @MethodSource("monsters")
    void endsInAValueOrAFault(String text) {
        assertTimeoutPreemptively(QUICK, () -> tried(text));
    }

    @Test
    void isToldWhatIsTooMuch() {
        assertThat(tried("(".repeat(10_000))).isEqualTo("the expression has 10000 characters");
        assertThat(tried("(".repeat(60) + "1" + ")".repeat(60))).isEqualTo("brackets and calls are nested over 40 deep");
        assertThat(tried("-".repeat(60) + "1")).isEqualTo("brackets and calls are nested over 40 deep");
        assertThat(tried("abs(".repeat(38) + "1" + ")".repeat(38))).isEqualTo("1.0");
        assertThat(tried("9^9^9^9")).isEqualTo("Infinity");
        assertThat(tried("sum(each(i, 1, 400, sum(each(j, 1, 400, i*j))))")).isEqualTo("the working takes more than 40000 steps");
        assertThat(tried("size(marks(0, 1, 1e9))")).isEqualTo("a list has at most 400 items");
    }

    @Test
    void formulasThatMultiplyEachOtherAreCut() {
        Map<String, FormulaBody> book = new HashMap<>();
        Type length = Type.amount(Dimension.LENGTH);
        for (int level = 0; level < 12; level++) {
            String below = level == 0 ? "abs" : "twice_" + (level - 1);
            Node sum = Board.parse(String.join(" + ", IntStream.range(0, 40).mapToObj(i -> below + "(x)").toList()));
            book.put("twice_" + level, new FormulaBody("twice_" + level, List.of(new FormulaBody.Parameter("x", length)), length,
                    List.of(new FormulaBody.Line("result", sum))));
        }
        List<String> faults = new ArrayList<>();
        assertTimeoutPreemptively(QUICK, () -> {
            Board board = new Board(UnitSystem.US, book).given("length", "2 in");
            board.builder.line("answer", Board.parse("twice_0(length)"), null, (at, found, fits) -> faults.add(found));
            assertThat(board.value("answer")).isEqualTo(80);
            board.builder.line("more", Board.parse("twice_11(length)"), null, (at, found, fits) -> faults.add(found));
        });
        assertThat(faults).containsExactly("with its formulas written out the expression has more than 4000 parts");
        faults.clear();
        Board board = new Board(UnitSystem.US, book).given("length", "2 in");
        board.builder.line("answer", Board.parse("twice_1(length)" + " + abs(length)".repeat(35)), null, (at, found, fits) -> faults.add(at + " " + found));
        assertThat(faults).as("a fault is told also where the last part stands outside of the formula").hasSize(1);
    }

    @Test
    void anySoupOfWordsEndsInAValueOrAFault() {
        assertTimeoutPreemptively(Duration.ofSeconds(120), () -> {
            soups(1, 5_000);
            double before = Heap.heldMegabytes();
            int values = soups(5_001, SOUPS);
            assertThat(values).as("soups that gave a value").isGreaterThan(SOUPS / 100);
            assertThat(Heap.heldMegabytes() - before).as("megabytes held more than before").isLessThan(FLAT);
        });
    }

    private static int soups(int firstSeed, int count) {
        int values = 0;
        for (int seed = firstSeed; seed < firstSeed + count; seed++) {
            String soup = soup(new SplittableRandom(seed));
            try {
                values += Character.isDigit(tried(soup).charAt(0)) ? 1 : 0;
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed + ": " + soup, e);
            }
        }
        return values;
    }

    private static String soup(SplittableRandom random) {
        StringBuilder soup = new StringBuilder();
        int words = 1 + random.nextInt(10);
        int open = 0;
        for (int i = 0; i < words; i++) {
            String word = WORDS[random.nextInt(WORDS.length)];
            open += word.endsWith("(") || word.contains("(") ? 1 : 0;
            soup.append(word).append(random.nextInt(3) == 0 ? "" : " ");
        }
        return soup + (random.nextBoolean() ? ")".repeat(open) : "");
    }

    /** The value, why it is not defined, or the first fault. */
    private static String tried(String text) {
        Board board = Board.usual(UnitSystem.US);
        List<String> faults = new ArrayList<>();
        try {
            int slot = board.builder.line("answer", Parser.expression(text), null, (at, found, fits) -> faults.add(found));
            if (!faults.isEmpty()) {
                return faults.get(0);
            }
            Frame f = board.run();
            return f.problem() != null ? f.problem() : board.program().slot(slot).type().isList()
                    ? String.valueOf(f.list(slot).length) : String.valueOf(f.number(slot));
        } catch (Parser.Fault e) {
            assertThat(e.at()).as(text).isBetween(0, text.length());
            return e.getMessage();
        }
    }
}
