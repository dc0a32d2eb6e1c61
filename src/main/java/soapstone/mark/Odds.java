package soapstone.mark;

import java.util.Arrays;
import soapstone.exercise.Ask;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/** The chance that a random wrong answer would be named: how much of the range the slips' windows cover. */
public final class Odds {

    /** Random wrong answers are thought of as log-uniform from a fifth to five times the right one. */
    private static final double REACH = 5;

    private Odds() {}

    /** The chance, 0 to 1, that a random wrong answer to this ask would be named as a single slip. */
    public static double of(Variant variant, Ask ask) {
        double right = Math.abs(variant.right().number(ask.slot()));
        if (!ask.isNumber() || ask.to() == 0 || right == 0) {
            return 0;
        }
        double window = Math.min(ask.within(), ask.to() / 2);
        double[] values = variant.outcomes().stream().filter(o -> o.ask() == ask && o.effect() == Effect.SEEN)
                .mapToDouble(o -> Math.abs(o.theirs().number(ask.slot()))).toArray();
        Arrays.sort(values);
        double low = right / REACH;
        double high = right * REACH;
        double covered = 0;
        double end = low;
        for (double v : values) {
            double from = Math.max(end, v - window);
            double to = Math.min(high, v + window);
            if (to > from) {
                covered += Math.log(to / from);
                end = to;
            }
        }
        return covered / (2 * Math.log(REACH));
    }
}
