package soapstone.variant;

import soapstone.exercise.Ask;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;

/** Prints values of a run in shop notation. */
public final class Shown {

    private static final char POINT = '.';
    private static final char NO_BREAK = '\u00A0';

    private Shown() {}

    /** The value at a slot as its exercise shows it. */
    public static String value(Model model, Frame f, int slot) {
        return value(model.program(), f, slot, model.shows()[slot]);
    }

    /** The value at a slot of a program, printed in a given way. */
    public static String value(Program program, Frame f, int slot, Show show) {
        Program.Slot s = program.slot(slot);
        return switch (s.type().kind()) {
            case LABEL -> program.labels().text(f.number(slot));
            case TRUTH -> f.number(slot) == 1 ? "✓" : "–";
            case LIST -> list(program, f.list(slot), s, show);
            default -> amount(program, f.number(slot), s, show);
        };
    }

    private static String amount(Program program, double value, Program.Slot s, Show show) {
        return Double.isFinite(value) ? ShopPrinter.text(value, s.shown(), program.system(), show, POINT) : "?";
    }

    private static String list(Program program, double[] values, Program.Slot s, Show show) {
        if (values == null) {
            return "?";
        }
        StringBuilder text = new StringBuilder();
        for (double v : values) {
            text.append(text.length() == 0 ? "" : "; ").append(amount(program, v, s, show));
        }
        return text.toString();
    }

    /** A condition of an exercise as its file has it, with the amount in the place of a given that nobody is asked for at a bench. */
    public static String condition(Model model, Model.Rule rule) {
        String text = rule.text();
        for (Given given : model.givens()) {
            if (!Double.isNaN(given.settled())) {
                String amount = amount(model.program(), given.settled(), model.program().slot(given.slot()), Show.AUTO).replace(NO_BREAK, ' ');
                text = text.replaceAll("\\b" + given.name() + "\\b", amount);
            }
        }
        return text;
    }

    /** What a run gives at an ask, rounded as asked and in the unit beside the box. */
    public static String answer(Model model, Frame f, Ask ask) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return model.program().labels().text(f.number(ask.slot()));
        }
        if (!Answers.isDefined(ask, f)) {
            return "?";
        }
        if (!ask.isMany()) {
            String first = answer(model, f.number(ask.slot()), ask);
            return ask.second() < 0 ? first : "(" + first + ", " + answer(model, f.number(ask.second()), ask) + ")";
        }
        StringBuilder text = new StringBuilder();
        double[] xs = f.list(ask.slot());
        for (int i = 0; i < xs.length; i++) {
            String x = answer(model, xs[i], ask);
            text.append(i == 0 ? "" : "; ").append(ask.second() < 0 ? x : "(" + x + ", " + answer(model, f.list(ask.second())[i], ask) + ")");
        }
        return text.toString();
    }

    /** An amount in base units, as an answer to an ask. */
    public static String answer(Model model, double base, Ask ask) {
        return ShopPrinter.text(base, ask.unit(), model.system(), ask.show(), POINT);
    }

    /** A text of the bank with the values of a right run put in, and those of another run where it says so. */
    public static String text(Model model, Template template, Frame right, Frame theirs) {
        StringBuilder text = new StringBuilder();
        for (Template.Part part : template.parts()) {
            text.append(part.isText() ? part.text() : value(model, part.theirs() ? theirs : right, part.slot()));
        }
        return text.toString();
    }
}
