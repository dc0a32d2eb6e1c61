package soapstone.variant;

import soapstone.exercise.Ask;
import soapstone.expression.Frame;

/** Compares what two runs give at an ask. */
public final class Answers {

    /** Differences below this share are rounding noise of the machine. */
    public static final double NOISE = 1e-9;

    private Answers() {}

    public static boolean isDefined(Ask ask, Frame f) {
        if (ask.isMany()) {
            return isDefined(f.list(ask.slot())) && (ask.second() < 0 || isDefined(f.list(ask.second())));
        }
        return Double.isFinite(f.number(ask.slot())) && (ask.second() < 0 || Double.isFinite(f.number(ask.second())));
    }

    private static boolean isDefined(double[] list) {
        if (list == null) {
            return false;
        }
        for (double d : list) {
            if (!Double.isFinite(d)) {
                return false;
            }
        }
        return true;
    }

    /** The largest difference at an ask between two runs; infinite when lists are of different length. */
    public static double difference(Ask ask, Frame a, Frame b) {
        double d = difference(ask.isMany(), ask.slot(), a, b);
        return ask.second() < 0 ? d : Math.max(d, difference(ask.isMany(), ask.second(), a, b));
    }

    private static double difference(boolean many, int slot, Frame a, Frame b) {
        if (!many) {
            return Math.abs(a.number(slot) - b.number(slot));
        }
        double[] x = a.list(slot);
        double[] y = b.list(slot);
        if (x == null || y == null || x.length != y.length) {
            return Double.POSITIVE_INFINITY;
        }
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            most = Math.max(most, Math.abs(x[i] - y[i]));
        }
        return most;
    }

    /** How a changed run differs from the right one at an ask. */
    public static Effect effect(Ask ask, Frame right, Frame theirs) {
        if (!isDefined(ask, theirs)) {
            return Effect.NONE;
        }
        double d = difference(ask, right, theirs);
        if (d <= NOISE * Math.max(1, size(ask, right))) {
            return Effect.SAME;
        }
        return d > ask.within() + ask.to() / 2 + slack(ask) ? Effect.SEEN : Effect.NEAR;
    }

    static double size(Ask ask, Frame right) {
        if (!ask.isMany()) {
            return Math.abs(right.number(ask.slot()));
        }
        double most = 0;
        for (double d : right.list(ask.slot())) {
            most = Math.max(most, Math.abs(d));
        }
        return most;
    }

    /** Slack at an edge, so that an inclusive bound includes what is exactly on it. */
    public static double slack(Ask ask) {
        return NOISE * Math.max(1, ask.to());
    }
}
