package soapstone.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import soapstone.Baseline;
import soapstone.bank.SmallBank;
import soapstone.quantity.Dimension;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** The whole working language on one page. Whoever changes the language changes that page, and sees it in review. */
class LanguageBaselineTest {

    private static final String FILE = "soapstone/expression/language.baseline";

    @Test
    void theLanguageIsThatOfTheBaseline() {
        Baseline.check(FILE, functions() + operators() + dimensions() + units() + limits());
    }

    private static String functions() {
        StringBuilder text = new StringBuilder("FUNCTIONS\n");
        for (Builtin b : Builtin.values()) {
            String count = b.least == b.most ? String.valueOf(b.least) : b.least + "-" + b.most;
            text.append(String.format(Locale.ROOT, "%-10s %-5s %s\n", b.word, count, b.told));
        }
        return text.toString();
    }

    private static String operators() {
        StringBuilder text = new StringBuilder("\nOPERATORS, the strongest first; on one strength from the left, ^ from the right\n");
        text.append("9 ^\n8 - before a value\n");
        Parser.STRENGTH.values().stream().distinct().sorted(Comparator.reverseOrder()).filter(s -> s < 8).forEach(strength -> {
            text.append(strength == 3 ? "4 not\n" : "").append(strength);
            Parser.STRENGTH.entrySet().stream().filter(e -> e.getValue().equals(strength)).map(Map.Entry::getKey).sorted()
                    .forEach(sign -> text.append(' ').append(sign));
            text.append(strength == 1 ? "   in solve and behind a line's name" : "").append('\n');
        });
        return text.toString();
    }

    private static String dimensions() {
        StringBuilder text = new StringBuilder("\nDIMENSIONS\n");
        for (String word : Dimension.knownWords()) {
            text.append(word).append('\n');
        }
        return text.toString();
    }

    private static String units() {
        StringBuilder text = new StringBuilder("\nUNITS: name, symbol, dimension, one of it in base units of a US and of a metric draw\n");
        for (Unit unit : Units.all()) {
            text.append(String.format(Locale.ROOT, "%-7s %-7s %-20s %-22s %s\n", unit.name(), unit.symbol(), unit.dimension(),
                    unit.toBase(1, UnitSystem.US), unit.toBase(1, UnitSystem.METRIC)));
        }
        return text.toString();
    }

    private static String limits() {
        return "\nLIMITS\n" + Parser.LONGEST + " characters of an expression\n" + Parser.DEEPEST + " brackets and calls deep\n" + Planner.MOST_PARTS + " parts of an expression with its formulas written out\n"
                + Program.MOST_NAMES + " names of an exercise\n" + Program.MOST_ITEMS + " items of a list\n"
                + Program.MOST_STEPS + " steps of a run\n";
    }

    @Test
    void noFunctionHasTheNameOfAUnitButMin() {
        assertThat(Builtin.words()).filteredOn(w -> Units.named(w).isPresent()).containsExactly("min");
    }

    @Test
    void noFormulaOfTheSmallBankHidesAFunction() {
        assertThat(Builtin.words()).doesNotContainAnyElementsOf(SmallBank.bank().formulas().keySet());
    }
}
