package soapstone.mark;

import java.util.ArrayList;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.quantity.Dimension;
import soapstone.quantity.Notation;
import soapstone.quantity.Reading;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Message;

/** Mistakes that need no bank file: they can happen to any working. */
final class Mechanical {

    static final String COARSE = "coarse-constant";
    static final String ROUNDED = "rounded-early";
    private static final double[] DECIMAL_STEPS = {1, 0.1, 0.01};
    /** A rounding on the way that takes more than this share of the value is no rounding. */
    private static final double MOST_ROUNDED = 0.1;
    private static final int MOST_DIGITS = 7;
    /** A number of fewer figures is met by chance too easily. */
    private static final double LEAST_FIGURES = 40;

    private final Model model;
    private final Program program;
    private final Frame right;
    private final Frame other;

    Mechanical(Model model, Frame right, Frame other) {
        this.model = model;
        this.program = model.program();
        this.right = right;
        this.other = other;
    }

    private boolean fitsWith(Ask ask, Typed typed, Change change) {
        program.rerun(right, other, change, Math.max(ask.slot(), ask.second()));
        return Compare.fits(ask, other, typed, Compare.Window.SHARP);
    }

    /** The number is that of the right value in another unit: only a bare number can be meant in one. */
    List<Fit> otherUnit(Ask ask, Typed typed) {
        if (!ask.isNumber() || !(typed.reading() instanceof Reading.One one) || !one.bare() || ask.unit() == Units.ONE) {
            return List.of();
        }
        UnitSystem system = model.system();
        double place = one.place() * Math.abs(one.amount() / one.base());
        for (Unit unit : Units.all()) {
            if (unit.dimension().equals(ask.unit().dimension()) && !unit.equals(ask.unit())) {
                double amount = unit.fromBase(right.number(ask.slot()), system);
                boolean figures = Math.abs(amount) >= LEAST_FIGURES * place;
                if (figures && Math.abs(amount - one.amount()) <= place / 2) {
                    return List.of(Fit.mechanical("other-unit", Change.NONE, Message.of("mark.other-unit", unit.symbol(), ask.unit().symbol())));
                }
            }
        }
        return List.of();
    }

    /** A line on the way to the asked one. */
    List<Fit> stoppedEarly(Ask ask, Typed typed) {
        if (!ask.isNumber()) {
            return List.of();
        }
        Dimension d = program.slot(ask.slot()).type().dimension();
        for (Line line : model.lines()) {
            boolean before = line.phase() == Line.Phase.WORKING && line.slot() < ask.slot() && leadsTo(line.slot(), ask);
            Type type = program.slot(line.slot()).type();
            if (before && type.isAmount() && type.dimension().equals(d) && !isAsked(line.slot())
                    && fitsWith(ask, typed, Change.fixed(ask.slot(), right.number(line.slot())))) {
                String name = program.slot(line.slot()).name().replace('_', ' ');
                return List.of(Fit.mechanical("stopped-early", Change.fixed(ask.slot(), right.number(line.slot())), Message.of("mark.stopped-early", name)));
            }
        }
        return List.of();
    }

    private boolean isAsked(int slot) {
        return model.asks().stream().anyMatch(a -> a.slot() == slot);
    }

    private boolean leadsTo(int slot, Ask ask) {
        long reached = 1L << slot;
        for (int i = slot + 1; i <= ask.slot(); i++) {
            reached |= (program.reads(i) & reached) != 0 ? 1L << i : 0;
        }
        return (reached & 1L << ask.slot()) != 0;
    }

    /** A line on the way rounded before it was used. */
    List<Fit> roundedEarly(Ask ask, Typed typed) {
        for (Line line : model.lines()) {
            Program.Slot slot = program.slot(line.slot());
            boolean used = line.phase() == Line.Phase.WORKING && line.slot() < Math.max(ask.slot(), ask.second()) && slot.type().isAmount();
            if (!used || !Double.isFinite(right.number(line.slot()))) {
                continue;
            }
            for (double step : steps(slot, ask)) {
                if (isRounding(slot, step)) {
                    Change rounded = program.rounded(slot.index(), step);
                    if (fitsWith(ask, typed, rounded)) {
                        String name = slot.name().replace('_', ' ');
                        String to = ShopPrinter.text(step, slot.shown(), model.system(), Show.AUTO, '.');
                        return List.of(Fit.mechanical(ROUNDED, rounded, Message.of("mark.rounded-line", name, to)));
                    }
                }
            }
        }
        return List.of();
    }

    private double[] steps(Program.Slot slot, Ask ask) {
        boolean length = slot.type().dimension().equals(Dimension.LENGTH);
        double one = Math.abs(slot.shown().toBase(1, model.system()) - slot.shown().toBase(0, model.system()));
        if (length && model.system() == UnitSystem.US) {
            return new double[] {1 / 16.0, 1 / 8.0, one, one * DECIMAL_STEPS[1], one * DECIMAL_STEPS[2], ask.unit().dimension().equals(Dimension.LENGTH) ? ask.to() : one};
        }
        return new double[] {one, one * DECIMAL_STEPS[1], one * DECIMAL_STEPS[2]};
    }

    private boolean isRounding(Program.Slot slot, double step) {
        double value = Math.abs(right.number(slot.index()));
        double off = Math.abs(value - Math.floor(value / step + 0.5) * step);
        return step <= MOST_ROUNDED * value && off > 1e-9 * Math.max(1, value);
    }

    /** Point out of place, digits swapped, a fraction written behind the point, upside down, a calculator in radians. */
    List<Fit> ofThePen(Ask ask, Typed typed) {
        if (!ask.isNumber() || typed.size() != 1) {
            if (!model.radians().isEmpty() && fitsWith(ask, typed, model.radians())) {
                return List.of(radians());
            }
            return List.of();
        }
        List<Fit> fits = new ArrayList<>(2);
        double value = right.number(ask.slot());
        if (isMoved(ask, typed, value)) {
            fits.add(pen(ask, typed, "decimal-point"));
        }
        if (isSwapped(ask, typed, value)) {
            fits.add(pen(ask, typed, "digits-swapped"));
        }
        if (isBehindPoint(ask, typed, value)) {
            fits.add(pen(ask, typed, "fraction-as-decimal"));
        }
        if (isUpsideDown(ask, typed, value)) {
            fits.add(pen(ask, typed, "upside-down"));
        }
        if (!model.radians().isEmpty() && fitsWith(ask, typed, model.radians())) {
            fits.add(radians());
        }
        return fits;
    }

    private Fit radians() {
        return Fit.mechanical("radians", model.radians(), Message.of("mark.radians"));
    }

    private static Fit pen(Ask ask, Typed typed, String family) {
        return Fit.mechanical(family, Change.fixed(ask.slot(), typed.value(0)), Message.of("mark." + family));
    }

    private static boolean isAt(Ask ask, Typed typed, double target) {
        double window = Compare.width(ask, typed, 0, Compare.Window.SHARP);
        return Math.abs(typed.value(0) - target) <= window + 1e-9 * Math.max(1, Math.abs(target));
    }

    /** The same digits with the point elsewhere; an answer that is nearly nothing has no digits. */
    private static boolean isMoved(Ask ask, Typed typed, double value) {
        for (double factor = 0.01; factor <= 100; factor *= 10) {
            boolean one = Math.abs(factor - 1) < 0.5;
            if (!one && Math.abs(value * factor) > 10 * ask.to() && isAt(ask, typed, value * factor)) {
                return true;
            }
        }
        return false;
    }

    private boolean isSwapped(Ask ask, Typed typed, double value) {
        double amount = Math.abs(ask.unit().fromBase(value, model.system()));
        double step = Math.abs(ask.unit().fromBase(ask.to(), model.system()) - ask.unit().fromBase(0, model.system()));
        int places = 0;
        double scale = 1;
        boolean fraction = ask.show().form() == Show.Form.FRACTION;
        while (!fraction && places < 4 && step * scale < 0.999) {
            scale *= 10;
            places++;
        }
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
                if (isAt(ask, typed, ask.unit().toBase(Math.copySign(swapped, value), model.system()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** 7 5/16 written as 7.5 or 7.516. */
    private boolean isBehindPoint(Ask ask, Typed typed, double value) {
        boolean decimal = typed.reading() instanceof Reading.One one && one.notation() == Notation.DECIMAL;
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
        return isAt(ask, typed, ask.unit().toBase(behind, model.system())) || isAt(ask, typed, ask.unit().toBase(both, model.system()));
    }

    private static double power(long digits) {
        double p = 1;
        for (long d = digits; d > 0; d /= 10) {
            p *= 10;
        }
        return p;
    }

    private boolean isUpsideDown(Ask ask, Typed typed, double value) {
        double amount = ask.unit().fromBase(value, model.system());
        double turned = amount == 0 ? 0 : ask.unit().toBase(1 / amount, model.system());
        return Math.abs(turned) > 10 * ask.to() && isAt(ask, typed, turned);
    }
}
