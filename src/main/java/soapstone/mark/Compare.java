package soapstone.mark;

import soapstone.exercise.Ask;
import soapstone.expression.Frame;
import soapstone.variant.Answers;

/** Decides whether a typed answer is what a run gives, through one of several windows. */
final class Compare {

    /** A number typed with three figures or more was rounded on purpose. */
    private static final double THREE_FIGURES = 100;
    private static final double ON_MARK = 1e-6;

    private Compare() {}

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

    static int size(Ask ask, Frame f) {
        int parts = ask.second() < 0 ? 1 : 2;
        if (!ask.isMany()) {
            return parts;
        }
        double[] list = f.list(ask.slot());
        return list == null ? -1 : list.length * parts;
    }

    static double value(Ask ask, Frame f, int i) {
        boolean second = ask.second() >= 0 && i % 2 == 1;
        int slot = second ? ask.second() : ask.slot();
        return ask.isMany() ? f.list(slot)[ask.second() < 0 ? i : i / 2] : f.number(slot);
    }

    /** Whether the answer is what the run gives at the ask. */
    static boolean fits(Ask ask, Frame run, Typed typed, Window window) {
        int size = size(ask, run);
        if (size != typed.size() || size <= 0) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            double target = value(ask, run, i);
            double wide = width(ask, typed, i, window) + Answers.NOISE * Math.max(1, Math.abs(target));
            if (!(Math.abs(typed.value(i) - target) <= wide)) {
                return ask.kind() == Ask.Kind.LIST && isRising(ask, run) && fitsInAnyOrder(ask, run, typed, window);
            }
        }
        return true;
    }

    /** Whether a list goes up all the way, as marks from one end do; then its order says nothing. */
    private static boolean isRising(Ask ask, Frame run) {
        double[] list = run.list(ask.slot());
        for (int i = 1; i < list.length; i++) {
            if (list[i] <= list[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** Marks may be written down from either end: each mark of the run takes one of the answer. */
    private static boolean fitsInAnyOrder(Ask ask, Frame run, Typed typed, Window window) {
        boolean[] used = new boolean[typed.size()];
        for (int i = 0; i < used.length; i++) {
            double target = value(ask, run, i);
            int found = -1;
            for (int k = 0; k < used.length && found < 0; k++) {
                double wide = width(ask, typed, k, window) + Answers.NOISE * Math.max(1, Math.abs(target));
                found = !used[k] && Math.abs(typed.value(k) - target) <= wide ? k : -1;
            }
            if (found < 0) {
                return false;
            }
            used[found] = true;
        }
        return true;
    }

    static double width(Ask ask, Typed typed, int i, Window window) {
        double place = typed.place(i);
        return switch (window) {
            case WITHIN -> ask.within();
            case NEAR -> 4 * ask.within();
            case SHARP -> sharp(ask, asked(ask, typed, i));
            case FIGURES -> isCoarser(ask, typed, i) ? typed.lastDigit(i) / 2 : sharp(ask, asked(ask, typed, i));
        };
    }

    /** The place that an answer was rounded to: what was asked for, when it stands on a mark of that. */
    private static double asked(Ask ask, Typed typed, int i) {
        double count = ask.to() > 0 ? typed.value(i) / ask.to() : 0.5;
        return Math.abs(count - Math.rint(count)) < ON_MARK ? Math.max(typed.place(i), ask.to()) : typed.place(i);
    }

    private static boolean isCoarser(Ask ask, Typed typed, int i) {
        double last = typed.lastDigit(i);
        return last > ask.to() * (1 + Answers.NOISE) && Math.abs(typed.value(i)) >= THREE_FIGURES * last * (1 - Answers.NOISE);
    }

    private static double sharp(Ask ask, double place) {
        return Math.min(Math.min(ask.within(), ask.to() / 2), place > 0 ? place / 2 : ask.to() / 2);
    }

    /** Whether some number of the answer was rounded coarser than asked, to three figures or more. */
    static boolean isRoundedCoarser(Ask ask, Typed typed) {
        for (int i = 0; i < typed.size(); i++) {
            if (isCoarser(ask, typed, i)) {
                return true;
            }
        }
        return false;
    }
}
