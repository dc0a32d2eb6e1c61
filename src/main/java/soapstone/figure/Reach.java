package soapstone.figure;

/**
 * How far past a part an answer's part is drawn, as a share of the part: all of it when it is not much longer, only the
 * first bit and a break when it runs off the sheet.
 */
record Reach(double low, double high, boolean cutOff) {

    private static final double MOST = 0.4;
    private static final double STUB = 0.08;

    /** For something that goes from {@code from} to {@code to} along a part of that length, all in the same unit. */
    static Reach of(double length, double from, double to) {
        boolean left = from < -MOST * length;
        boolean right = to > (1 + MOST) * length;
        return new Reach(left ? -STUB * length : Math.min(0, from), right ? (1 + STUB) * length : Math.max(length, to),
                left || right);
    }

    boolean holds(double x) {
        double slack = 1e-9 * (high - low);
        return x >= low - slack && x <= high + slack;
    }

    double clip(double x) {
        return Math.max(low, Math.min(high, x));
    }
}
