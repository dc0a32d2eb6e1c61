package soapstone.mark;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.quantity.Dimension;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * What there is to try at one ask, whatever the numbers of a draw are: found once for a model, so that marking an answer
 * does nothing but sums. Whatever cannot reach the ask is left out.
 */
final class AskPlan {

    private static final double[] DECIMAL_STEPS = {1, 0.1, 0.01};

    /** The asked slots, a bit each. */
    final long asked;
    final List<Try> coarse = new ArrayList<>();
    final List<Pair> pairs = new ArrayList<>();
    /** Units of the same kind, in which the right number may have been given. */
    final List<Unit> otherUnits = new ArrayList<>();
    /** Lines on the way that give the same kind of quantity. */
    final List<Integer> onTheWay = new ArrayList<>();
    final List<Rounding> roundings = new ArrayList<>();
    /** All angles with the calculator set to radians; nothing where that reaches nothing. */
    final Try radians;

    private final Model model;
    private final Program program;
    private final Ask ask;

    /** A change, and the lines to work again for it. */
    record Try(Change change, long between) {

        boolean reaches() {
            return between != 0;
        }
    }

    /** Two slips that share no line, by their places in the exercise. */
    record Pair(int first, int second, Try both) {}

    /** A line that may have been rounded before it was used, to one of these steps in base units. */
    record Rounding(Program.Slot slot, double[] steps, long between) {}

    AskPlan(Model model, Ask ask) {
        this.model = model;
        this.program = model.program();
        this.ask = ask;
        this.asked = 1L << ask.slot() | (ask.second() < 0 ? 0 : 1L << ask.second());
        coarse();
        this.radians = of(model.radians());
        if (ask.to() > 0) {
            pairs();
            otherUnits();
            lines();
        }
    }

    /** A change at this ask. */
    Try of(Change change) {
        return new Try(change, change.isEmpty() ? 0 : program.between(change, asked));
    }

    private void add(List<Try> tries, Change change) {
        Try candidate = of(change);
        if (candidate.reaches()) {
            tries.add(candidate);
        }
    }

    private void coarse() {
        List<Model.Constant> constants = model.constants();
        for (int i = 0; i < constants.size(); i++) {
            for (double value : constants.get(i).also()) {
                Change one = Change.fixed(constants.get(i).slot(), value);
                add(coarse, one);
                for (int k = 0; k < i; k++) {
                    for (double second : constants.get(k).also()) {
                        add(coarse, one.over(Change.fixed(constants.get(k).slot(), second)));
                    }
                }
            }
        }
    }

    private void pairs() {
        List<Slip> slips = model.slips();
        for (int i = 0; i < slips.size(); i++) {
            for (int k = i + 1; k < slips.size(); k++) {
                Change a = slips.get(i).change();
                Change b = slips.get(k).change();
                Try both = (a.mask() & b.mask()) == 0 ? of(a.over(b)) : of(Change.NONE);
                if (both.reaches()) {
                    pairs.add(new Pair(i, k, both));
                }
            }
        }
    }

    private void otherUnits() {
        for (Unit unit : Units.all()) {
            boolean other = unit.dimension().equals(ask.unit().dimension()) && !unit.equals(ask.unit());
            if (other && ask.isNumber() && ask.unit() != Units.ONE) {
                otherUnits.add(unit);
            }
        }
    }

    private void lines() {
        Dimension d = program.slot(ask.slot()).type().dimension();
        for (Line line : model.lines()) {
            Program.Slot slot = program.slot(line.slot());
            Type type = slot.type();
            long between = program.between(Change.fixed(slot.index(), 0), asked);
            if (line.phase() != Line.Phase.WORKING || between == 0 || (asked & 1L << slot.index()) != 0 || !type.isAmount()) {
                continue;
            }
            boolean askedElsewhere = model.asks().stream().anyMatch(a -> a.slot() == slot.index());
            if (ask.isNumber() && type.dimension().equals(d) && !askedElsewhere) {
                onTheWay.add(slot.index());
            }
            roundings.add(new Rounding(slot, steps(slot), between));
        }
    }

    private double[] steps(Program.Slot slot) {
        boolean inches = slot.type().dimension().equals(Dimension.LENGTH) && model.system() == UnitSystem.US;
        double one = Math.abs(slot.shown().toBase(1, model.system()) - slot.shown().toBase(0, model.system()));
        Set<Double> steps = new LinkedHashSet<>();
        if (inches) {
            steps.add(1 / 16.0);
            steps.add(1 / 8.0);
        }
        for (double decimal : DECIMAL_STEPS) {
            steps.add(one * decimal);
        }
        if (inches && ask.unit().dimension().equals(Dimension.LENGTH)) {
            steps.add(ask.to());
        }
        return steps.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
