package soapstone.school;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import soapstone.exercise.Ask;
import soapstone.mark.Odds;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/** What chance alone would do, so that nobody reteaches a room for nothing. */
public final class Chance {

    /** Random wrong counts are thought of as from a fifth to five times the right one, small ones more often. */
    private static final double REACH = 5;
    /** A choice is named only where there are so many options. */
    private static final int LEAST_OPTIONS = 3;

    private Chance() {}

    /**
     * The chance, 0 to 1, that a random wrong answer would be named as a single slip. For amounts that of {@link Odds}. For a
     * count: whole numbers from a fifth to five times the right one, each as likely as one over itself. For a choice: any
     * wrong option as likely as any other. Lists and points have so many numbers that have to fit at once that it is 0. Where
     * it cannot be said (the right amount is 0) it is 1, so that such an answer never speaks against chance.
     */
    public static double ofBeingNamed(Variant variant, Ask ask) {
        if (ask.isMany() || ask.kind() == Ask.Kind.POINT) {
            return 0;
        } else if (ask.kind() == Ask.Kind.CHOICE) {
            return ofChoice(variant, ask);
        }
        double right = variant.right().number(ask.slot());
        if (right == 0) {
            return 1;
        }
        return ask.to() == 0 ? ofCount(variant, ask, Math.rint(Math.abs(right))) : Odds.of(variant, ask);
    }

    private static double ofChoice(Variant variant, Ask ask) {
        int wrong = ask.options().size() - 1;
        if (ask.options().size() < LEAST_OPTIONS) {
            return 0;
        }
        // An option that two slips give is not named.
        long named = Arrays.stream(seen(variant, ask)).boxed().collect(Collectors.groupingBy(d -> d, Collectors.counting())).values().stream()
                .filter(n -> n == 1).count();
        return Math.min(1, (double) named / wrong);
    }

    private static double ofCount(Variant variant, Ask ask, double right) {
        Set<Double> named = Arrays.stream(seen(variant, ask)).map(d -> Math.rint(Math.abs(d))).boxed().collect(Collectors.toSet());
        double all = 0;
        double some = 0;
        for (double n = Math.max(1, Math.ceil(right / REACH)); n <= right * REACH; n++) {
            all += n == right ? 0 : 1 / n;
            some += n != right && named.contains(n) ? 1 / n : 0;
        }
        return some / all;
    }

    private static double[] seen(Variant variant, Ask ask) {
        return variant.outcomes().stream().filter(o -> o.ask() == ask && o.effect() == Effect.SEEN)
                .mapToDouble(o -> o.theirs().number(ask.slot())).toArray();
    }

    /**
     * The probability that at least so many of some independent events happen: the upper tail of the Poisson-binomial
     * distribution, exact but for rounding, by putting in one event after another.
     *
     * @param each the probability of each event, 0 to 1
     */
    public static double atLeast(int many, double[] each) {
        if (many <= 0) {
            return 1;
        } else if (many > each.length) {
            return 0;
        }
        // happened[k]: the probability that k events happened so far; the last place gathers all from `many` on.
        double[] happened = new double[many + 1];
        happened[0] = 1;
        for (double p : each) {
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException("a probability is from 0 to 1, not " + p);
            }
            happened[many] += happened[many - 1] * p;
            for (int k = many - 1; k > 0; k--) {
                happened[k] = happened[k] * (1 - p) + happened[k - 1] * p;
            }
            happened[0] *= 1 - p;
        }
        return Math.min(1, happened[many]);
    }

    /** The probability that at least one of some independent events happens. */
    public static double any(double[] each) {
        double none = 1;
        for (double p : each) {
            none *= 1 - p;
        }
        return 1 - none;
    }
}
