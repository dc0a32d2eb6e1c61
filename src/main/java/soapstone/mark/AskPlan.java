package soapstone.mark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.expression.Program;
import soapstone.expression.Recipe;
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

    /** The asked slots. */
    final int[] asked;
    final List<Try> coarse = new ArrayList<>();
    final Pair[] pairs;
    /** Units of the same kind, in which the right number may have been given. */
    final Unit[] otherUnits;
    /** For each of them what base units are multiplied with, and then what is added: the straight line to its amounts. */
    final double[] times;
    final double[] plus;
    /** Lines on the way that give the same kind of quantity, by their slots. */
    final int[] onTheWay;
    final Rounding[] roundings;
    /** All angles with the calculator set to radians; nothing where that reaches nothing. */
    final Try radians;

    private final Model model;
    private final Program program;
    private final Ask ask;

    /** A change, and the lines to work again for it. */
    record Try(Change change, Recipe recipe) {

        boolean reaches() {
            return recipe.reaches();
        }
    }

    /**
     * Two slips that share no line, by their places in the exercise.
     *
     * @param onFirst what to work on top of the first slip's run
     */
    record Pair(int first, int second, Recipe onFirst) {}

    /** A line that may have been rounded before it was used, to one of these steps in base units. */
    record Rounding(Program.Slot slot, double[] steps, Recipe after) {}

    AskPlan(Model model, Ask ask) {
        this.model = model;
        this.program = model.program();
        this.ask = ask;
        this.asked = ask.second() < 0 ? new int[] {ask.slot()} : new int[] {ask.slot(), ask.second()};
        coarse();
        this.radians = of(model.radians());
        boolean measured = ask.to() > 0;
        List<Line> lines = measured ? between() : List.of();
        this.pairs = measured ? pairs() : new Pair[0];
        this.otherUnits = measured && ask.isNumber() && ask.unit() != Units.ONE ? otherUnits() : new Unit[0];
        this.plus = Arrays.stream(otherUnits).mapToDouble(u -> u.fromBase(0, model.system())).toArray();
        this.times = Arrays.stream(otherUnits).mapToDouble(u -> u.fromBase(1, model.system()) - u.fromBase(0, model.system())).toArray();
        this.onTheWay = lines.stream().mapToInt(Line::slot).filter(this::isOfAskedKind).toArray();
        this.roundings = lines.stream().map(l -> program.slot(l.slot())).map(s -> new Rounding(s, steps(s), program.after(s.index(), asked)))
                .toArray(Rounding[]::new);
    }

    /** A change at this ask. */
    Try of(Change change) {
        return new Try(change, program.recipe(change, asked));
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

    private Pair[] pairs() {
        List<Pair> pairs = new ArrayList<>();
        List<Slip> slips = model.slips();
        for (int i = 0; i < slips.size(); i++) {
            for (int k = i + 1; k < slips.size(); k++) {
                Change a = slips.get(i).change();
                Change b = slips.get(k).change();
                Recipe onFirst = program.onTop(a, (a.mask() & b.mask()) == 0 ? b : Change.NONE, asked);
                if (onFirst.reaches()) {
                    pairs.add(new Pair(i, k, onFirst));
                }
            }
        }
        return pairs.toArray(new Pair[0]);
    }

    private Unit[] otherUnits() {
        return Units.all().stream().filter(u -> u.dimension().equals(ask.unit().dimension()) && !u.equals(ask.unit())).toArray(Unit[]::new);
    }

    /** The lines of the working with amounts that lead to the ask. */
    private List<Line> between() {
        return model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING && l.slot() != ask.slot() && l.slot() != ask.second()
                && program.slot(l.slot()).type().isAmount() && program.after(l.slot(), asked).reaches()).toList();
    }

    private boolean isOfAskedKind(int slot) {
        boolean same = program.slot(slot).type().dimension().equals(program.slot(ask.slot()).type().dimension());
        return ask.isNumber() && same && model.asks().stream().noneMatch(a -> a.slot() == slot);
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
