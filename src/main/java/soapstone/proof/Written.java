package soapstone.proof;

import java.util.ArrayList;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.mark.AnswerReader;
import soapstone.mark.Typed;
import soapstone.quantity.Rounding;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.variant.Answers;

/** Writes down answers as people would, for trials: rounded as asked, or to three figures. */
public final class Written {

    private static final char POINT = '.';

    private Written() {}

    /** What a run gives at an ask, rounded as asked; bare numbers. */
    public static String asAsked(Model model, Ask ask, Frame f) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return model.program().labels().text(f.number(ask.slot()));
        }
        if (!ask.isMany()) {
            String x = bare(model, ask, f.number(ask.slot()));
            return ask.second() < 0 ? x : "(" + x + ", " + bare(model, ask, f.number(ask.second())) + ")";
        }
        List<String> items = new ArrayList<>();
        double[] xs = f.list(ask.slot());
        for (int i = 0; i < xs.length; i++) {
            String x = bare(model, ask, xs[i]);
            items.add(ask.second() < 0 ? x : "(" + x + ", " + bare(model, ask, f.list(ask.second())[i]) + ")");
        }
        return String.join("; ", items);
    }

    static String bare(Model model, Ask ask, double base) {
        return ShopPrinter.number(ask.unit().fromBase(base, model.system()), ask.show(), POINT);
    }

    /** A number to three figures, or as asked where that is coarser. */
    static String threeFigures(Model model, Ask ask, double base) {
        double amount = ask.unit().fromBase(base, model.system());
        double step = Math.pow(10, Math.floor(Math.log10(Math.abs(amount))) - 2);
        double asked = Math.abs(ask.unit().fromBase(ask.to(), model.system()) - ask.unit().fromBase(0, model.system()));
        if (amount == 0 || step <= asked / 2) {
            return bare(model, ask, base);
        }
        return ShopPrinter.number(Rounding.halfUp(amount, step), Show.decimal(step), POINT);
    }

    /** Whether an amount could have been rounded to a text of three figures, or is right within the tolerance. */
    static boolean isWithinFigures(Model model, Ask ask, String text, double base) {
        if (!(read(model, ask, text).reading() instanceof soapstone.quantity.Reading.One one)) {
            return false;
        }
        double half = Math.pow(10, Math.floor(Math.log10(Math.abs(one.amount())) + 1e-9) - 2) / 2;
        double reach = Math.abs(ask.unit().toBase(half, model.system()) - ask.unit().toBase(0, model.system()));
        return Math.abs(one.base() - base) <= Math.max(reach, ask.within()) * (1 + 1e-6);
    }

    public static Typed read(Model model, Ask ask, String text) {
        return AnswerReader.read(model, ask, text, POINT);
    }

    /** The right answers up to an ask, and then another: the rest is left blank. */
    static List<Typed> rightUpTo(Model model, Frame right, Ask ask, Typed answer) {
        List<Typed> typed = new ArrayList<>();
        boolean before = true;
        for (Ask a : model.asks()) {
            before &= a != ask;
            typed.add(a == ask ? answer : read(model, a, before ? asAsked(model, a, right) : ""));
        }
        return typed;
    }

    static boolean isDefined(Ask ask, Frame f) {
        return Answers.isDefined(ask, f);
    }
}
