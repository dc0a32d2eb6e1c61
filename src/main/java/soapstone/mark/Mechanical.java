package soapstone.mark;

import java.util.ArrayList;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.expression.Trials;
import soapstone.quantity.Notation;
import soapstone.quantity.Reading;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.source.Message;

/** Mistakes that need no bank file: they can happen to any working. */
final class Mechanical {

    static final String COARSE = "coarse-constant";
    static final String ROUNDED = "rounded-early";
    private static final double[] MOVES = {0.01, 0.1, 10, 100};
    /** A rounding on the way that takes more than this share of the value is no rounding. */
    private static final double MOST_ROUNDED = 0.1;
    private static final int MOST_DIGITS = 7;
    private static final int MOST_PLACES = 4;
    /** A number of fewer figures is met by chance too easily. */
    private static final double LEAST_FIGURES = 40;

    private final Model model;
    private final Frame right;
    private final Trials trials;

    Mechanical(Model model, Frame right, Trials trials) {
        this.model = model;
        this.right = right;
        this.trials = trials;
    }

    private boolean fitsWith(Compare answer, AskPlan.Try candidate) {
        return candidate.reaches() && trials.put(candidate.recipe()) && answer.fits(trials.run(), Compare.Window.SHARP);
    }

    /** The number is that of the right value in another unit: only a bare number can be meant in one. */
    List<Fit> otherUnit(Compare answer) {
        AskPlan plan = answer.plan();
        if (plan.times.length == 0 || !(answer.typed().reading() instanceof Reading.One one) || !one.bare()) {
            return List.of();
        }
        Ask ask = answer.ask();
        double value = right.number(ask.slot());
        double place = one.place() * Math.abs(one.amount() / one.base());
        for (int i = 0; i < plan.times.length; i++) {
            double amount = value * plan.times[i] + plan.plus[i];
            if (Math.abs(amount - one.amount()) <= place / 2 && Math.abs(amount) >= LEAST_FIGURES * place) {
                return List.of(Fit.mechanical("other-unit", Change.NONE, Message.of("mark.other-unit", plan.otherUnits[i].symbol(), ask.unit().symbol())));
            }
        }
        return List.of();
    }

    /** A line on the way to the asked one. */
    List<Fit> stoppedEarly(Compare answer) {
        for (int slot : answer.plan().onTheWay) {
            if (answer.fits(right.number(slot), Compare.Window.SHARP)) {
                String name = words(model.program().slot(slot));
                return List.of(Fit.mechanical("stopped-early", Change.fixed(answer.ask().slot(), right.number(slot)), Message.of("mark.stopped-early", name)));
            }
        }
        return List.of();
    }

    private static String words(Program.Slot slot) {
        return slot.name().replace('_', ' ');
    }

    /** A line on the way rounded before it was used. */
    List<Fit> roundedEarly(Compare answer) {
        for (AskPlan.Rounding rounding : answer.plan().roundings) {
            int slot = rounding.slot().index();
            double value = right.number(slot);
            for (double step : rounding.steps()) {
                if (isRounding(value, step) && trials.put(slot, Program.rounded(value, step), rounding.after())
                        && answer.fits(trials.run(), Compare.Window.SHARP)) {
                    String to = ShopPrinter.text(step, rounding.slot().shown(), model.system(), Show.AUTO, '.');
                    return List.of(Fit.mechanical(ROUNDED, model.program().rounded(slot, step), Message.of("mark.rounded-line", words(rounding.slot()), to)));
                }
            }
        }
        return List.of();
    }

    private static boolean isRounding(double value, double step) {
        double size = Math.abs(value);
        return step <= MOST_ROUNDED * size && Math.abs(size - Math.floor(size / step + 0.5) * step) > 1e-9 * Math.max(1, size);
    }

    /** Point out of place, digits swapped, a fraction written behind the point, upside down, a calculator in radians. */
    List<Fit> ofThePen(Compare answer) {
        List<Fit> fits = new ArrayList<>(2);
        if (answer.ask().isNumber()) {
            ofOneNumber(answer, fits);
        }
        if (fitsWith(answer, answer.plan().radians)) {
            fits.add(Fit.mechanical("radians", model.radians(), Message.of("mark.radians")));
        }
        return fits;
    }

    private void ofOneNumber(Compare answer, List<Fit> fits) {
        double value = right.number(answer.ask().slot());
        if (isMoved(answer, value)) {
            fits.add(pen(answer, "decimal-point"));
        }
        if (isSwapped(answer, value)) {
            fits.add(pen(answer, "digits-swapped"));
        }
        if (isBehindPoint(answer, value)) {
            fits.add(pen(answer, "fraction-as-decimal"));
        }
        if (isUpsideDown(answer, value)) {
            fits.add(pen(answer, "upside-down"));
        }
    }

    private static Fit pen(Compare answer, String family) {
        return Fit.mechanical(family, Change.fixed(answer.ask().slot(), answer.typed().value(0)), Message.of("mark." + family));
    }

    /** The same digits with the point elsewhere; an answer that is nearly nothing has no digits. */
    private static boolean isMoved(Compare answer, double value) {
        for (double factor : MOVES) {
            if (answer.fits(value * factor, Compare.Window.SHARP) && Math.abs(value * factor) > 10 * answer.ask().to()) {
                return true;
            }
        }
        return false;
    }

    private boolean isSwapped(Compare answer, double value) {
        Ask ask = answer.ask();
        double amount = Math.abs(ask.unit().fromBase(value, model.system()));
        boolean fraction = ask.show().form() == Show.Form.FRACTION;
        double scale = fraction ? 1 : scale(ask);
        double rest = fraction ? amount - Math.floor(amount) : 0;
        long digits = fraction ? (long) Math.floor(amount) : Math.round(amount * scale);
        if (digits < LEAST_FIGURES) {
            return false;
        }
        long unit = 1;
        for (int i = 0; i < MOST_DIGITS && digits / unit >= 10; i++, unit *= 10) {
            long low = digits / unit % 10;
            long high = digits / unit / 10 % 10;
            if (low != high) {
                double swapped = (digits + (low - high) * unit * 10 + (high - low) * unit) / scale + rest;
                if (answer.fits(ask.unit().toBase(Math.copySign(swapped, value), model.system()), Compare.Window.SHARP)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What brings all asked places before the point. */
    private double scale(Ask ask) {
        double step = Math.abs(ask.unit().fromBase(ask.to(), model.system()) - ask.unit().fromBase(0, model.system()));
        double scale = 1;
        for (int places = 0; places < MOST_PLACES && step * scale < 0.999; places++) {
            scale *= 10;
        }
        return scale;
    }

    /** 7 5/16 written as 7.5 or 7.516. */
    private boolean isBehindPoint(Compare answer, double value) {
        Ask ask = answer.ask();
        boolean decimal = answer.typed().reading() instanceof Reading.One one && one.notation() == Notation.DECIMAL;
        if (!decimal || ask.show().form() != Show.Form.FRACTION) {
            return false;
        }
        double amount = Math.abs(ask.unit().fromBase(value, model.system()));
        long bottom = ask.show().denominator();
        long parts = Math.round(amount * bottom);
        long whole = parts / bottom;
        long top = parts % bottom;
        while (top != 0 && top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        if (top == 0) {
            return false;
        }
        double behind = whole + top / power(top);
        double both = whole + (top * power(bottom) + bottom) / (power(top) * power(bottom));
        return answer.fits(ask.unit().toBase(behind, model.system()), Compare.Window.SHARP)
                || answer.fits(ask.unit().toBase(both, model.system()), Compare.Window.SHARP);
    }

    private static double power(long digits) {
        double p = 1;
        for (long d = digits; d > 0; d /= 10) {
            p *= 10;
        }
        return p;
    }

    private boolean isUpsideDown(Compare answer, double value) {
        Ask ask = answer.ask();
        double amount = ask.unit().fromBase(value, model.system());
        double turned = amount == 0 ? 0 : ask.unit().toBase(1 / amount, model.system());
        return Math.abs(turned) > 10 * ask.to() && answer.fits(turned, Compare.Window.SHARP);
    }
}
