package soapstone.speed;

import java.util.Arrays;

/**
 * How measurements lie: the middle one, and the two between which the middle half lies.
 *
 * @param low  a quarter of the measurements is below
 * @param high a quarter is above
 */
public record Spread(double median, double low, double high) {

    /** @throws IllegalArgumentException when nothing was measured */
    static Spread of(double[] measured) {
        if (measured.length == 0) {
            throw new IllegalArgumentException("nothing was measured");
        }
        double[] sorted = measured.clone();
        Arrays.sort(sorted);
        return new Spread(at(sorted, 0.5), at(sorted, 0.25), at(sorted, 0.75));
    }

    /** Straight between the two measurements beside a share of the way. */
    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (sorted[above] - sorted[below]) * (place - below);
    }
}
