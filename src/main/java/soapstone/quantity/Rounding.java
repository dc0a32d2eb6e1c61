package soapstone.quantity;

/**
 * Rounding as the shop does it: half up, on the steps of a rule. A value that stands on a step but for the noise of
 * binary arithmetic counts as standing on it; without that slack one exact case in five would round the wrong way.
 */
public final class Rounding {

    /** How far, in steps, a value may be off through arithmetic alone. */
    public static final double SLACK = 1e-9;

    private Rounding() {}

    /** The largest whole number not above x, slack allowed. */
    public static double floor(double x) {
        return plusZero(Math.floor(x + SLACK));
    }

    /** The smallest whole number not below x, slack allowed. */
    public static double ceil(double x) {
        return plusZero(Math.ceil(x - SLACK));
    }

    /** The nearest whole number; a half goes up, so that −2.5 gives −2. */
    public static double halfUp(double x) {
        return plusZero(Math.floor(x + 0.5 + SLACK));
    }

    /**
     * The nearest multiple of a step, half up.
     *
     * @param step above 0, in the unit of x
     */
    public static double halfUp(double x, double step) {
        return times(halfUp(x / step), step);
    }

    /** The largest multiple of a step that is not above x. */
    public static double down(double x, double step) {
        return times(floor(x / step), step);
    }

    /** The smallest multiple of a step that is not below x. */
    public static double up(double x, double step) {
        return times(ceil(x / step), step);
    }

    /** Whether x is a multiple of a step, within the slack. */
    public static boolean isOn(double x, double step) {
        double n = x / step;
        return Math.abs(n - Math.rint(n)) <= SLACK;
    }

    /** n steps; for steps such as 0.001 by division, which is the double nearest to the decimal. */
    private static double times(double n, double step) {
        double perOne = Math.rint(1 / step);
        return perOne >= 1 && Math.abs(perOne * step - 1) < 1e-12 ? plusZero(n / perOne) : plusZero(n * step);
    }

    /** Turns −0 into 0. */
    static double plusZero(double x) {
        return x + 0.0;
    }
}
