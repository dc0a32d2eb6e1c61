package soapstone.mark;

import soapstone.exercise.Ask;
import soapstone.expression.Frame;
import soapstone.variant.Answers;

/** A typed answer that is being judged: decides whether it is what a run gives, through one of several windows. */
final class Compare {

    /** A number typed with three figures or more was rounded on purpose. */
    private static final double THREE_FIGURES = 100;
    private static final double ON_MARK = 1e-6;

    private final int index;
    private final Ask ask;
    private final AskPlan plan;
    private final Typed typed;
    private final boolean single;
    /** The naming window of a single number; below 0 while nobody asked. */
    private double sharp = -1;

    /** How much the answer may differ. */
    enum Window {
        /** What is marked right. */
        WITHIN,
        /** What is named: the smallest of within, half of what is asked for, and half of the last place typed. */
        SHARP,
        /** As sharp, but half of the last place typed for an answer that was rounded to three figures or more. */
        FIGURES,
        /** Near: four times what is marked right. */
        NEAR
    }

    /** @param index the place of the ask in the exercise */
    Compare(int index, Ask ask, AskPlan plan, Typed typed) {
        this.index = index;
        this.ask = ask;
        this.plan = plan;
        this.typed = typed;
        this.single = !ask.isMany() && ask.second() < 0 && typed.size() == 1;
    }

    int index() {
        return index;
    }

    Ask ask() {
        return ask;
    }

    AskPlan plan() {
        return plan;
    }

    Typed typed() {
        return typed;
    }

    /** Whether the answer is what the run gives at the ask. */
    boolean fits(Frame run, Window window) {
        if (single) {
            return at(0, run.number(ask.slot()), width(window));
        }
        double[] wide = widths(window);
        int size = size(run);
        if (size != typed.size() || size <= 0) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            if (!at(i, value(run, i), wide[i])) {
                return ask.kind() == Ask.Kind.LIST && isRising(run) && fitsInAnyOrder(run, wide);
            }
        }
        return true;
    }

    /** Whether the answer's single number is that amount, in base units. */
    boolean fits(double target, Window window) {
        return typed.size() == 1 && at(0, target, width(window));
    }

    private boolean at(int i, double target, double wide) {
        return Math.abs(typed.value(i) - target) <= wide + Answers.NOISE * Math.max(1, Math.abs(target));
    }

    private int size(Frame f) {
        int parts = ask.second() < 0 ? 1 : 2;
        if (!ask.isMany()) {
            return parts;
        }
        double[] list = f.list(ask.slot());
        return list == null ? -1 : list.length * parts;
    }

    private double value(Frame f, int i) {
        boolean second = ask.second() >= 0 && i % 2 == 1;
        int slot = second ? ask.second() : ask.slot();
        return ask.isMany() ? f.list(slot)[ask.second() < 0 ? i : i / 2] : f.number(slot);
    }

    /** Whether a list goes up all the way, as marks from one end do; then its order says nothing. */
    private boolean isRising(Frame run) {
        double[] list = run.list(ask.slot());
        for (int i = 1; i < list.length; i++) {
            if (list[i] <= list[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** Marks may be written down from either end: each mark of the run takes one of the answer. */
    private boolean fitsInAnyOrder(Frame run, double[] wide) {
        boolean[] used = new boolean[typed.size()];
        for (int i = 0; i < used.length; i++) {
            double target = value(run, i);
            int found = -1;
            for (int k = 0; k < used.length && found < 0; k++) {
                found = !used[k] && at(k, target, wide[k]) ? k : -1;
            }
            if (found < 0) {
                return false;
            }
            used[found] = true;
        }
        return true;
    }

    /** The half width of a window at the first number. */
    double width(Window window) {
        if (window != Window.SHARP) {
            return width(0, window);
        }
        if (sharp < 0) {
            sharp = width(0, window);
        }
        return sharp;
    }

    private double[] widths(Window window) {
        double[] wide = new double[typed.size()];
        for (int i = 0; i < wide.length; i++) {
            wide[i] = width(i, window);
        }
        return wide;
    }

    private double width(int i, Window window) {
        return switch (window) {
            case WITHIN -> ask.within();
            case NEAR -> 4 * ask.within();
            case SHARP -> sharp(asked(i));
            case FIGURES -> isCoarser(i) ? typed.lastDigit(i) / 2 : sharp(asked(i));
        };
    }

    /** The place that an answer was rounded to: what was asked for, when it stands on a mark of that. */
    private double asked(int i) {
        double count = ask.to() > 0 ? typed.value(i) / ask.to() : 0.5;
        return Math.abs(count - Math.rint(count)) < ON_MARK ? Math.max(typed.place(i), ask.to()) : typed.place(i);
    }

    private boolean isCoarser(int i) {
        double last = typed.lastDigit(i);
        return last > ask.to() * (1 + Answers.NOISE) && Math.abs(typed.value(i)) >= THREE_FIGURES * last * (1 - Answers.NOISE);
    }

    private double sharp(double place) {
        return Math.min(Math.min(ask.within(), ask.to() / 2), place > 0 ? place / 2 : ask.to() / 2);
    }

    /** Whether some number of the answer was rounded coarser than asked, to three figures or more. */
    boolean isRoundedCoarser() {
        for (int i = 0; i < typed.size(); i++) {
            if (isCoarser(i)) {
                return true;
            }
        }
        return false;
    }
}
