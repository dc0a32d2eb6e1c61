package soapstone.figure;

import java.util.List;
import soapstone.quantity.UnitSystem;

/** A piece of a rule with an arrow at a reading. Its numbers are those of the rule. */
final class Rule implements Drawer {

    private static final double BODY = 62;
    private static final double LEAST_APART = 6;
    private static final int MOST_LINES = 400;
    private static final double[] INCH_STEPS = {1, 0.5, 0.25, 0.125, 0.0625, 0.03125, 0.015625};
    private static final double[] INCH_HEIGHTS = {34, 26, 20, 15, 11, 8, 5};
    private static final double[] METRIC_STEPS = {10, 5, 1, 0.5};
    private static final double[] METRIC_HEIGHTS = {32, 24, 15, 9};

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("reading"), FigureArgument.length("step"), FigureArgument.length("line").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    /** The line of the rule that is cut to; the drawing that asks for it does not show it. */
    @Override
    public boolean prints(String argument) {
        return !argument.equals("line");
    }

    /** What the answer is comes as the answer prints it: a line beside it would not be where it says. */
    @Override
    public boolean printsOfYours(String argument) {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("reading") >= 0 && v.at("step") > 0 && v.at("reading") < 1e6 && (!v.has("line") || v.at("line") >= 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "rule.title.yours" : "rule.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("rule.is").value(brief.right(), "reading", "rule.reading");
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    /** What the answer has wrong: the line that it cuts to, or what it reads. */
    private static String wrong(Brief brief) {
        return brief.differs("line") ? "line" : brief.differs("reading") ? "reading" : "";
    }

    @Override
    public List<Label> notes(Brief brief) {
        String wrong = wrong(brief);
        if (wrong.isEmpty()) {
            return List.of();
        }
        double yours = brief.yours().at(wrong);
        Label own = brief.yours().label(wrong);
        return List.of(Label.text(brief.say("rule.yours", own.isEmpty() ? brief.size(yours) : own.spoken())),
                Label.text(brief.say("rule.off", Sizes.onRule(yours - brief.right().at(wrong), brief.system()))));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double unit = v.system() == UnitSystem.US ? 1 : 10;
        double step = Math.max(v.at("step"), unit / 64);
        double apart = Math.max(LEAST_APART, Math.min(9, room / MOST_LINES));
        double shown = Math.max(step, Math.min(room / apart * step, unit * (brief.isNarrow() ? 4 : 8)));
        double start = Math.max(0, Math.floor((v.at("reading") - shown / 2) / unit * 2) / 2 * unit);
        Scale scale = new Scale(start, start + shown, room / shown);
        body(sheet, scale, room);
        lines(sheet, scale, v, step);
        arrow(sheet, scale, v);
        if (!wrong(brief).isEmpty()) {
            yours(brief, sheet, scale);
        }
    }

    /** The answer's line from below, and the way from it to the right one; nothing where it is off this piece of the rule. */
    private static void yours(Brief brief, Sheet sheet, Scale s) {
        double own = s.x(brief.yours().at(wrong(brief)));
        double right = s.x(brief.right().at(wrong(brief)));
        double end = s.x(s.end);
        if (own >= 0 && own <= end) {
            sheet.path(Pen.PHANTOM, Path.line(own, BODY - 4, own, BODY + 24), "yours-line");
        }
        double from = Math.max(0, Math.min(own, right));
        double to = Math.min(end, Math.max(own, right));
        if (to - from >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(from, BODY, to, BODY + 14));
        }
    }

    /** The piece of the rule that is seen, in base units, and SVG units for one of them. */
    private record Scale(double start, double end, double factor) {
        double x(double reading) {
            return (reading - start) * factor;
        }
    }

    private static void body(Sheet sheet, Scale s, double room) {
        sheet.line(Pen.VISIBLE, 0, 0, room, 0);
        sheet.line(Pen.VISIBLE, 0, BODY, room, BODY);
        if (s.start == 0) {
            sheet.line(Pen.VISIBLE, 0, 0, 0, BODY);
        } else {
            Break.end(sheet, Pen.BREAK, 0, 0, BODY);
        }
        Break.end(sheet, Pen.BREAK, room, 0, BODY);
    }

    private static void lines(Sheet sheet, Scale s, Values v, double step) {
        boolean us = v.system() == UnitSystem.US;
        double[] steps = us ? INCH_STEPS : METRIC_STEPS;
        double[] heights = us ? INCH_HEIGHTS : METRIC_HEIGHTS;
        long first = (long) Math.ceil(s.start / step - 1e-6);
        long last = (long) Math.floor(s.end / step + 1e-6);
        for (long i = first; i <= Math.min(last, first + MOST_LINES); i++) {
            double at = i * step;
            int rank = rank(at, steps);
            double x = s.x(at);
            sheet.path(rank == 0 ? Pen.BEND : Pen.THIN, Path.line(x, 1, x, heights[rank]));
            if (rank == 0 && x > 10 && x < s.x(s.end) - 10) {
                Label number = Label.text(Long.toString(Math.round(us ? at : at / 10)));
                sheet.letter(number, Lettering.NUMBER, x, heights[0] + 16, Anchor.MIDDLE);
            }
        }
    }

    private static int rank(double at, double[] steps) {
        for (int i = 0; i < steps.length; i++) {
            double n = at / steps[i];
            if (Math.abs(n - Math.rint(n)) < 1e-6) {
                return i;
            }
        }
        return steps.length - 1;
    }

    private static void arrow(Sheet sheet, Scale s, Values v) {
        double x = s.x(v.at("reading"));
        sheet.path(Pen.BEND, Path.line(x, -34, x, -1), "reading");
        sheet.path(Pen.SECTION, Path.polygon(List.of(new Pt(x, 0), new Pt(x - 3.5, -12), new Pt(x + 3.5, -12))));
        sheet.letter(v.label("reading"), Lettering.TEXT, x, -44, Anchor.MIDDLE);
    }
}
