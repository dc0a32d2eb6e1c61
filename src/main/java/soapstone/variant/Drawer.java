package soapstone.variant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.quantity.UnitSystem;

/**
 * Draws numbers that make a fair task: the part could be made, everything is defined, and every slip is either without
 * any effect in this draw or told apart from the right answer. Among the first draws that pass it takes the one in which
 * slips of different families are best apart. Not for several threads at once.
 */
public final class Drawer {

    /** How many draws that pass are compared. */
    public static final int COMPARED = 32;
    /** How many draws are tried in all. */
    public static final int MOST_TRIES = 600;
    /** Slips further apart than this many naming windows are told apart well enough. */
    private static final double APART = 4;

    private final Exercise exercise;
    private final Model model;
    private final Program program;
    private final Frame right;
    private final Frame other;
    private final long[] names;

    public Drawer(Exercise exercise, UnitSystem system) {
        this.exercise = exercise;
        this.model = exercise.model(system);
        this.program = model.program();
        this.right = program.frame();
        this.other = program.frame();
        this.names = model.givens().stream().mapToLong(g -> Draw.hash(g.name())).toArray();
    }

    /** Draws once; empty when no try passes, which a checked bank does not have. */
    public static Optional<Variant> draw(Exercise exercise, UnitSystem system, long seed) {
        return new Drawer(exercise, system).draw(seed);
    }

    public Optional<Variant> draw(long seed) {
        int best = -1;
        double bestApart = -1;
        int passed = 0;
        for (int attempt = 0; attempt < MOST_TRIES && passed < COMPARED; attempt++) {
            if (attempt(seed, attempt) == null) {
                passed++;
                double apart = apart();
                if (apart > bestApart + 1e-12) {
                    best = attempt;
                    bestApart = apart;
                }
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(variant(seed, best));
    }

    /**
     * Tries one draw.
     *
     * @return null when it passes, else the reason why it is refused
     */
    public String attempt(long seed, int attempt) {
        fill(seed, attempt);
        String problem = defined();
        if (problem != null) {
            return problem;
        }
        for (Model.Rule rule : model.where()) {
            if (!rule.condition().holds(right)) {
                return "where: " + rule.text();
            }
        }
        for (Slip slip : model.slips()) {
            if (isOnlyNear(slip)) {
                return "too near: " + slip.name();
            }
        }
        return null;
    }

    /** The values of the last try. */
    public Frame last() {
        return right;
    }

    private void fill(long seed, int attempt) {
        List<Given> givens = model.givens();
        for (int i = 0; i < names.length; i++) {
            Given given = givens.get(i);
            long size = given.choice().size();
            long index = size == 1 ? 0 : Draw.index(seed, names[i], attempt, size);
            if (given.choice() instanceof Given.Range range) {
                right.set(given.slot(), range.value(index));
            } else if (given.choice() instanceof Given.Pick pick) {
                right.set(given.slot(), pick.values()[(int) index]);
            }
        }
        program.run(right);
    }

    private String defined() {
        for (Ask ask : model.asks()) {
            if (!Answers.isDefined(ask, right)) {
                return "undefined: " + (right.problem() == null ? ask.name() : right.problem());
            }
        }
        for (Given given : model.givens()) {
            if (!Double.isFinite(right.number(given.slot()))) {
                return "undefined: " + (right.problem() == null ? given.name() : right.problem());
            }
        }
        return null;
    }

    /** A slip that shows at no ask, and at some ask is too near to be told apart. */
    private boolean isOnlyNear(Slip slip) {
        if (!slip.makesSense(right)) {
            return false;
        }
        long changed = program.rerun(right, other, slip.change(), lastAsked());
        boolean near = false;
        for (Ask ask : model.asks()) {
            if ((changed & 1L << ask.slot()) != 0 || ask.second() >= 0 && (changed & 1L << ask.second()) != 0) {
                Effect effect = effect(ask, right, other);
                if (effect == Effect.SEEN) {
                    return false;
                }
                near |= effect == Effect.NEAR;
            }
        }
        return near;
    }

    private int lastAsked() {
        return model.program().slots().size() - 1;
    }

    /** As in {@link Answers}, and also apart from what a shop constant would give. */
    private Effect effect(Ask ask, Frame rightRun, Frame theirs) {
        Effect effect = Answers.effect(ask, rightRun, theirs);
        if (effect != Effect.SEEN || model.constants().isEmpty()) {
            return effect;
        }
        Frame coarse = program.frame();
        for (Model.Constant constant : model.constants()) {
            for (double value : constant.also()) {
                program.rerun(rightRun, coarse, Change.fixed(constant.slot(), value), ask.slot());
                if (Answers.effect(ask, coarse, theirs) != Effect.SEEN) {
                    return Effect.NEAR;
                }
            }
        }
        return effect;
    }

    /** How well slips of different families are told apart in the last try: the higher, the better. */
    private double apart() {
        List<Slip> slips = model.slips();
        Ask ask = model.asks().get(0);
        double sum = 0;
        double[] values = new double[slips.size()];
        for (Ask a : model.asks()) {
            ask = a;
            if (!ask.isNumber()) {
                continue;
            }
            for (int i = 0; i < values.length; i++) {
                program.rerun(right, other, slips.get(i).change(), ask.slot());
                values[i] = slips.get(i).makesSense(right) ? other.number(ask.slot()) : Double.NaN;
            }
            sum += apart(slips, values, ask);
        }
        return sum;
    }

    private double apart(List<Slip> slips, double[] values, Ask ask) {
        double window = Math.max(Math.min(ask.within(), ask.to() / 2), ask.to() == 0 ? 0.25 : 0);
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            for (int j = 0; j < i; j++) {
                if (!slips.get(i).family().equals(slips.get(j).family())) {
                    double d = Math.abs(values[i] - values[j]) / window;
                    // A slip that makes no sense here tells nothing: it must not draw the choice its way.
                    sum += Double.isNaN(d) ? 0 : Math.min(APART, d);
                }
            }
        }
        return sum;
    }

    private Variant variant(long seed, int attempt) {
        fill(seed, attempt);
        Frame done = program.frame();
        done.copyFrom(right);
        List<Variant.Outcome> outcomes = new ArrayList<>();
        for (Slip slip : model.slips()) {
            Frame theirs = program.frame();
            program.rerun(done, theirs, slip.change(), lastAsked());
            boolean sense = slip.makesSense(done);
            for (Ask ask : model.asks()) {
                outcomes.add(new Variant.Outcome(slip, ask, sense ? effect(ask, done, theirs) : Effect.NONE, theirs));
            }
        }
        return new Variant(exercise, model, seed, attempt, done, List.copyOf(outcomes));
    }
}
