package soapstone.variant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
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
 * any effect in this draw or told apart from the right answer. A draw in which slips of two families give one number passes
 * too, but every second such draw is passed over. Only every second: some numbers always bring two slips together (90
 * degrees, a certain metal), and students have to meet those as well. Not for several threads at once.
 */
public final class Drawer {

    /** How many draws are tried in all. */
    public static final int MOST_TRIES = 600;
    /** A mark names at most so many slips. */
    private static final int MOST_ALIKE = 3;
    /** The stream that says which draws are passed over; no given can have this name. */
    private static final long PASSED_OVER = Draw.hash("passed over");

    private final Exercise exercise;
    private final Conventions set;
    private final Model model;
    private final Program program;
    private final Frame right;
    private final Frame other;
    private final Frame coarse;
    private final long[] names;
    /** What the shop has set, by the places of the givens; NaN where it is drawn. */
    private final double[] fixed;
    private final int last;
    /** What each slip gives at each ask in the last try, where it is seen; NaN elsewhere. */
    private final double[][] seen;

    public Drawer(Exercise exercise, UnitSystem system) {
        this(exercise, system, Conventions.NONE);
    }

    /** @param set by the shop: a given that follows one of these is not drawn */
    public Drawer(Exercise exercise, UnitSystem system, Conventions set) {
        this.exercise = exercise;
        this.set = set.only(exercise.model(system).conventions());
        this.model = Rounding.of(exercise.model(system), this.set);
        this.program = model.program();
        this.right = program.frame();
        this.other = program.frame();
        this.coarse = program.frame();
        this.last = model.asks().stream().mapToInt(a -> Math.max(a.slot(), a.second())).max().orElse(0);
        this.seen = new double[model.asks().size()][model.slips().size()];
        this.names = model.givens().stream().mapToLong(g -> Draw.hash(g.name())).toArray();
        this.fixed = model.givens().stream().mapToDouble(g -> this.set.value(g.convention()).map(q -> q.base(system)).orElse(Double.NaN)).toArray();
    }

    /** Draws once; empty when no try passes, which a checked bank does not have. */
    public static Optional<Variant> draw(Exercise exercise, UnitSystem system, long seed) {
        return draw(exercise, system, Conventions.NONE, seed);
    }

    /** Draws once, as a shop has set it; empty when no try passes. */
    public static Optional<Variant> draw(Exercise exercise, UnitSystem system, Conventions set, long seed) {
        return new Drawer(exercise, system, set).draw(seed);
    }

    public Optional<Variant> draw(long seed) {
        int spare = -1;
        for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
            if (attempt(seed, attempt) == null) {
                if (Draw.index(seed, PASSED_OVER, attempt, 2) == 0 || !areAlike()) {
                    return Optional.of(variant(seed, attempt));
                }
                spare = spare < 0 ? attempt : spare;
            }
        }
        return spare < 0 ? Optional.empty() : Optional.of(variant(seed, spare));
    }

    /**
     * The numbers of one try, whether or not it would be taken: an answer that was given to them is marked with them, also
     * when the exercise was mended since and would pass them over. Empty when something in them is not defined.
     */
    public Optional<Variant> at(long seed, int attempt) {
        fill(seed, attempt);
        return defined() == null ? Optional.of(variant(seed, attempt)) : Optional.empty();
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
        for (int i = 0; i < model.slips().size(); i++) {
            if (isOnlyNear(i)) {
                return "too near: " + model.slips().get(i).name();
            }
        }
        return alike(MOST_ALIKE) ? "more than " + MOST_ALIKE + " slips give one number" : null;
    }

    /** What is set of what the exercise follows. */
    public Conventions conventions() {
        return set;
    }

    /** The values of the last try. */
    public Frame last() {
        return right;
    }

    private void fill(long seed, int attempt) {
        List<Given> givens = model.givens();
        for (int i = 0; i < names.length; i++) {
            Given given = givens.get(i);
            if (!Double.isNaN(fixed[i])) {
                right.set(given.slot(), fixed[i]);
                continue;
            }
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
    private boolean isOnlyNear(int index) {
        Slip slip = model.slips().get(index);
        boolean sense = slip.makesSense(right);
        long changed = sense ? program.rerun(right, other, slip.change(), last) : 0;
        boolean near = false;
        boolean shows = false;
        for (int k = 0; k < seen.length; k++) {
            Ask ask = model.asks().get(k);
            boolean reached = (changed & 1L << ask.slot()) != 0 || ask.second() >= 0 && (changed & 1L << ask.second()) != 0;
            Effect effect = reached ? effect(ask, right, other) : Effect.SAME;
            near |= effect == Effect.NEAR;
            shows |= effect == Effect.SEEN;
            seen[k][index] = effect == Effect.SEEN && ask.isNumber() ? other.number(ask.slot()) : Double.NaN;
        }
        return near && !shows;
    }

    /** As in {@link Answers}, and also apart from what a shop constant would give. */
    private Effect effect(Ask ask, Frame rightRun, Frame theirs) {
        Effect effect = Answers.effect(ask, rightRun, theirs);
        if (effect != Effect.SEEN || model.constants().isEmpty()) {
            return effect;
        }
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

    /** Whether in the last try slips of two families, both seen, give one number at some ask. */
    private boolean areAlike() {
        return alike(1);
    }

    /** Whether at some ask more than so many slips give one number; of a single one, only with another family's. */
    private boolean alike(int most) {
        for (int k = 0; k < seen.length; k++) {
            Ask ask = model.asks().get(k);
            // An answer rounded as asked stands within one naming window of its slip, and so within two of another's.
            double windows = 2 * Math.min(ask.within(), ask.to() / 2) + Answers.slack(ask);
            for (int i = 0; i < seen[k].length; i++) {
                int same = 1;
                for (int j = 0; j < seen[k].length; j++) {
                    boolean counts = j != i && (most > 1 || isOfInterest(model.slips().get(i), model.slips().get(j)));
                    same += counts && Math.abs(seen[k][i] - seen[k][j]) <= windows ? 1 : 0;
                }
                if (same > most) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isOfInterest(Slip a, Slip b) {
        return !a.family().equals(b.family()) && !exercise.areTied(a.name(), b.name());
    }

    private Variant variant(long seed, int attempt) {
        fill(seed, attempt);
        Frame done = program.frame();
        done.copyFrom(right);
        List<Variant.Outcome> outcomes = new ArrayList<>();
        for (Slip slip : model.slips()) {
            Frame theirs = program.frame();
            program.rerun(done, theirs, slip.change(), program.slots().size() - 1);
            boolean sense = slip.makesSense(done);
            for (Ask ask : model.asks()) {
                outcomes.add(new Variant.Outcome(slip, ask, sense ? effect(ask, done, theirs) : Effect.NONE, theirs));
            }
        }
        return new Variant(exercise, model, set, seed, attempt, done, List.copyOf(outcomes));
    }
}
