package soapstone.expression;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Finds where two sides agree. The range is sampled first: with no change of sign there is no answer, and with several
 * the question has no single one; in both cases the value is not defined and says so.
 */
final class Solver extends Code {

    private static final int SAMPLES = 24;
    private static final int MOST_EVALUATIONS = 120;
    private static final double RELATIVE = 1e-14;
    private static final double ABSOLUTE = 1e-12;

    private final int local;
    private final Code low;
    private final Code high;
    private final Code left;
    private final Code right;

    Solver(int local, Code low, Code high, Code left, Code right) {
        this.local = local;
        this.low = low;
        this.high = high;
        this.left = left;
        this.right = right;
    }

    @Override
    double number(Frame f) {
        double from = low.number(f);
        double to = high.number(f);
        if (!(from < to) || Double.isInfinite(from) || Double.isInfinite(to)) {
            return f.undefined("solve has no range to look in");
        }
        if (!f.spend(SAMPLES + MOST_EVALUATIONS / 2)) {
            return Double.NaN;
        }
        double step = (to - from) / SAMPLES;
        double start = Double.NaN;
        int changes = 0;
        double before = difference(f, from);
        for (int i = 1; i <= SAMPLES; i++) {
            double x = i == SAMPLES ? to : from + i * step;
            double now = difference(f, x);
            if (Double.isNaN(now) || Double.isNaN(before)) {
                return f.undefined("solve meets a value that is not defined");
            }
            if (before == 0 && now == 0) {
                return f.undefined("solve finds more than one answer in its range");
            }
            if (before == 0 && i == 1 || now == 0 || before * now < 0) {
                changes++;
                start = x - step;
            }
            before = now;
        }
        if (changes != 1) {
            return f.undefined(changes == 0 ? "solve finds no answer in its range" : "solve finds more than one answer in its range");
        }
        return root(f, Math.max(from, start), Math.min(to, start + step * (1 + 1e-9)));
    }

    private double root(Frame f, double from, double to) {
        UnivariateFunction difference = x -> difference(f, x);
        try {
            return new BrentSolver(RELATIVE, ABSOLUTE).solve(MOST_EVALUATIONS, difference, from, to);
        } catch (TooManyEvaluationsException | MathIllegalArgumentException e) {
            return f.undefined("solve finds no answer in its range");
        }
    }

    private double difference(Frame f, double x) {
        f.locals[local] = x;
        return left.number(f) - right.number(f);
    }
}
