package soapstone.variant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import soapstone.Baseline;
import soapstone.bank.SmallBank;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.FormulaBody;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** How a working is written on the board: expressions in words and with numbers, and whole exercises line by line. */
class WritingTest {

    private static final String FILE = "soapstone/variant/writing.baseline";
    private static final Map<String, String> VALUES = Map.of("length", "48 in", "edge", "1 1/2 in", "holes", "5", "turn", "30°", "below", "−4 in",
            "long_side", "3 ft 2 in", "volume", "22,176 in³", "load", "200 lb");
    private static final Map<String, Unit> UNITS = Map.of("length", Units.INCH, "edge", Units.INCH, "long_side", Units.INCH, "below", Units.INCH,
            "volume", Units.named("in3").orElseThrow(), "load", Units.POUND);

    private static List<String> expressions() {
        return Baseline.read(FILE).lines().filter(l -> l.startsWith("> ")).map(l -> l.substring(2)).toList();
    }

    @Test
    void expressionsAreWrittenAsInTheBaseline() {
        StringBuilder text = new StringBuilder("# An expression; how it is written in words; with numbers in a US draw.\n");
        for (String expression : expressions()) {
            Node node = parsed(expression);
            text.append("\n> ").append(expression).append("\n  ").append(plain(Writing.symbolic(node, UnitSystem.US)))
                    .append("\n  ").append(plain(writing().write(node))).append('\n');
        }
        assertThat(expressions()).hasSizeGreaterThan(60);
        Baseline.check(FILE, text.toString());
    }

    private static Node parsed(String expression) {
        try {
            return Parser.expression(expression);
        } catch (Parser.Fault e) {
            throw new AssertionError(expression + ": " + e.getMessage(), e);
        }
    }

    private static Writing writing() {
        Map<String, FormulaBody> book = new HashMap<>();
        SmallBank.bank().formulas().forEach((name, formula) -> book.put(name, formula.body()));
        return new Writing(name -> VALUES.getOrDefault(name, name.replace('_', ' ')), UNITS::get, book, UnitSystem.US);
    }

    /** No-break spaces would look like spaces in the file, and be lost there. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @Test
    void wholeWorkingsAreWrittenAsInTheBaseline() {
        StringBuilder text = new StringBuilder("# Seed 11 of every exercise of the small bank: the story, the working, and how each slip writes its line.\n");
        for (Exercise exercise : SmallBank.bank().exercises().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                exercise(text, exercise, system);
            }
        }
        Baseline.check("soapstone/variant/worked.baseline", plain(text.toString()));
    }

    private static void exercise(StringBuilder text, Exercise exercise, UnitSystem system) {
        Variant v = SmallBank.draw(exercise.id(), system, 11);
        Model model = v.model();
        Map<String, FormulaBody> book = new HashMap<>();
        SmallBank.bank().formulas().forEach((name, formula) -> book.put(name, formula.body()));
        Worked worked = new Worked(model, book);
        text.append("\n").append(exercise.id()).append(' ').append(system.word()).append("\n  ").append(Shown.text(model, model.story(), v.right(), v.right())).append('\n');
        model.notes().forEach(n -> text.append("  ").append(Shown.text(model, n, v.right(), v.right())).append('\n'));
        for (WorkedLine line : worked.lines(v.right())) {
            text.append("    ").append(line.text()).append("   (").append(line.say()).append(")\n");
        }
        model.asks().forEach(a -> text.append("  ").append(a.letter()).append(' ').append(Shown.answer(model, v.right(), a)).append('\n'));
        for (Slip slip : model.slips()) {
            Variant.Outcome outcome = v.outcomes().stream().filter(o -> o.slip() == slip).findFirst().orElseThrow();
            text.append("  ").append(slip.name()).append(": ").append(Shown.text(model, slip.say(), v.right(), outcome.theirs())).append('\n');
            for (int slot = 0; slot < model.program().slots().size(); slot++) {
                if ((slip.change().mask() & 1L << slot) != 0) {
                    text.append("    ").append(worked.line(slot, slip, outcome.theirs()).text()).append('\n');
                }
            }
        }
    }

    @Test
    void aSumIsNotSaidTwiceWhereItIsTheResult() {
        assertThat(new WorkedLine(1, "spaces", "", "4", "4").text()).isEqualTo("spaces = 4");
        assertThat(new WorkedLine(1, "spaces", "", "5 − 1", "4").text()).isEqualTo("spaces = 5 − 1 = 4");
        assertThat(new WorkedLine(1, "spaces", "", "", "4").text()).isEqualTo("spaces = 4");
    }
}
