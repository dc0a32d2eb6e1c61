package soapstone.variant;

import java.util.Arrays;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.quantity.UnitSystem;

/**
 * One draw of an exercise's numbers, with the whole working done. The same exercise (by fingerprint), unit system,
 * conventions and seed give the same variant for ever. The frames inside are not changed after the draw.
 */
public final class Variant {

    private final Exercise exercise;
    private final Model model;
    private final Conventions set;
    private final long seed;
    private final int attempt;
    private final Frame right;
    private final List<Outcome> outcomes;
    /** The same by ask and slip. */
    private final Outcome[][] byAsk;
    private final double[][] theirs;

    /** What a slip gives at an ask in this draw: {@code theirs} is the run with the slip put in. */
    public record Outcome(Slip slip, Ask ask, Effect effect, Frame theirs) {}

    Variant(Exercise exercise, Model model, Conventions set, long seed, int attempt, Frame right, List<Outcome> outcomes) {
        this.exercise = exercise;
        this.model = model;
        this.set = set;
        this.seed = seed;
        this.attempt = attempt;
        this.right = right;
        this.outcomes = outcomes;
        this.byAsk = new Outcome[model.asks().size()][model.slips().size()];
        for (int i = 0; i < outcomes.size(); i++) {
            byAsk[i % byAsk.length][i / byAsk.length] = outcomes.get(i);
        }
        this.theirs = new double[byAsk.length][];
        for (int i = 0; i < byAsk.length; i++) {
            theirs[i] = Arrays.stream(byAsk[i]).mapToDouble(Variant::other).toArray();
        }
    }

    private static double other(Outcome o) {
        boolean other = o.ask().isNumber() && (o.effect() == Effect.SEEN || o.effect() == Effect.NEAR);
        return other ? o.theirs().number(o.ask().slot()) : Double.NaN;
    }

    public Exercise exercise() {
        return exercise;
    }

    public Model model() {
        return model;
    }

    /** What the shop has set of what this exercise follows. */
    public Conventions conventions() {
        return set;
    }

    public UnitSystem system() {
        return model.system();
    }

    public long seed() {
        return seed;
    }

    /** Which try of the seed was taken. */
    public int attempt() {
        return attempt;
    }

    /** The right run: read it, never set it. */
    public Frame right() {
        return right;
    }

    /**
     * What each slip gives at an ask for a number, by the ask's place in the exercise: in base units, and NaN where that is
     * the right number or none. Read it, never set it.
     */
    public double[] theirs(int ask) {
        return theirs[ask];
    }

    /** What a slip gives at an ask, by their places in the exercise. */
    public Outcome outcome(int slip, int ask) {
        return byAsk[ask][slip];
    }

    /** Every slip at every ask, in the order of the bank. */
    public List<Outcome> outcomes() {
        return outcomes;
    }
}
