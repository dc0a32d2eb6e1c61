package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.Baseline;
import soapstone.quantity.UnitSystem;

/** What is said of expressions that cannot be: the text, a caret at the column, what was found, what would fit. */
class FaultsTest {

    private static final String FILE = "soapstone/expression/faults.baseline";

    /** Behind {@code >} stands an expression or a line of a working; what is indented is told of it. */
    private static List<String> expressions() {
        return Baseline.read(FILE).lines().filter(l -> l.startsWith("> ")).map(l -> l.substring(2)).toList();
    }

    @Test
    void everyFaultIsToldAsInTheBaseline() {
        StringBuilder text = new StringBuilder("# An expression that has a fault, and what is told of it. Names are those of values.txt.\n");
        for (String expression : expressions()) {
            text.append("\n> ").append(expression).append('\n').append(told(expression, UnitSystem.US));
        }
        assertThat(expressions()).hasSizeGreaterThan(90);
        Baseline.check(FILE, text.toString());
    }

    static Stream<String> faulty() {
        return expressions().stream();
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void bothSystemsTellTheSame(String expression) {
        assertThat(faults(expression, UnitSystem.US)).isNotEmpty().isEqualTo(faults(expression, UnitSystem.METRIC));
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void whatIsBuiltOnAFaultIsNotToldAgain(String expression) {
        if (!isLine(expression)) {
            assertThat(faults("1 + sqrt(abs(" + expression + ")) * 2", UnitSystem.US)).as(expression)
                    .hasSameSizeAs(faults(expression, UnitSystem.US));
        }
    }

    private record Fault(int at, String found, String fits) {}

    private static List<Fault> faults(String expression, UnitSystem system) {
        Board board = Board.usual(system);
        List<Fault> faults = new ArrayList<>();
        ProgramBuilder.Faults told = (at, found, fits) -> faults.add(new Fault(at, found, fits));
        try {
            Node node = isLine(expression) ? Parser.assignment(expression).value() : Parser.expression(expression);
            board.builder.line("answer", node, null, told);
        } catch (Parser.Fault e) {
            told.fault(e.at(), e.getMessage(), e.fits());
        }
        return faults;
    }

    /** {@code name = …}, as a line of a working is written. */
    private static boolean isLine(String expression) {
        return expression.matches("[\\w ]* = .*") || expression.startsWith("= ") || expression.endsWith(" =");
    }

    private static String told(String expression, UnitSystem system) {
        StringBuilder text = new StringBuilder();
        for (Fault fault : faults(expression, system)) {
            text.append("  ").append(" ".repeat(fault.at())).append("^\n    ").append(fault.found()).append('\n');
            if (!fault.fits().isEmpty()) {
                text.append("    ").append(fault.fits()).append('\n');
            }
        }
        return text.toString();
    }
}
