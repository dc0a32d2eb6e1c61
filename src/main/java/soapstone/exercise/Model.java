package soapstone.exercise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soapstone.expression.Change;
import soapstone.expression.Program;
import soapstone.expression.Value;
import soapstone.quantity.Show;
import soapstone.quantity.UnitSystem;

/**
 * An exercise in one unit system: its program and what refers to it. Names, lines and slips are the same in both
 * systems, and so are their slots.
 *
 * @param shows       how the value of each slot is printed
 * @param where       what a draw has to fulfil so that the part could be made
 * @param lines       constants, derived givens, working and the lines after it, in order
 * @param consequence what the student's answer would do to the part: the first that holds
 * @param radians     all lines with the calculator set to radians
 * @param kept        what later stages work out once for this model
 */
public record Model(UnitSystem system, Program program, Show[] shows, Template story, List<Template> notes, List<Given> givens,
        List<Rule> where, List<Line> lines, List<Ask> asks, List<Slip> slips, List<Consequence> consequence,
        List<Constant> constants, Optional<FigurePlan> figure, Change radians, Kept kept) {

    /** A condition with its text. */
    public record Rule(Value condition, String text) {}

    /** What to say when a condition holds with the student's answers put in. */
    public record Consequence(Value condition, Template say) {}

    /** Values of a shop constant that are right too. */
    public record Constant(String name, int slot, double[] also) {}

    /**
     * The drawing: its kind and what goes into it.
     *
     * @param asked the letter of the ask, for an argument that is just an asked line
     * @param slots the slot, for an argument that is just a name: it prints as that name does
     * @param texts each argument as the file says it
     */
    public record FigurePlan(String kind, Map<String, Value> with, Map<String, String> asked, Map<String, Integer> slots, Map<String, String> texts) {}

    /** The names of the conventions that givens and asks follow. */
    public Set<String> conventions() {
        return Stream.concat(givens.stream().map(Given::convention), asks.stream().map(Ask::convention)).filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The same working with other asks for the same lines. */
    public Model asking(List<Ask> others) {
        return new Model(system, program, shows, story, notes, givens, where, lines, others, slips, consequence, constants, figure, radians, new Kept());
    }

    public Ask ask(String name) {
        return asks.stream().filter(a -> a.name().equals(name)).findFirst().orElse(null);
    }
}
