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
        return List.of(FigureArgument.length("reading"), FigureArgument.length("step"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("reading") >= 0 && v.at("step") > 0 && v.at("reading") < 1e6;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "rule.title.yours" : "rule.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("rule.is").value(brief.right(), "reading", "rule.reading");
        if (brief.isAsCut()) {
            t.say("triangle.yours").value(brief.yours(), "reading", "rule.reading");
            t.sentence(missText(brief).isEmpty() ? "" : missText(brief) + ".");
        }
    }

    private static Off missed(Brief brief) {
        return Off.furthest(brief, "reading");
    }

    private static String missText(Brief brief) {
        Off off = missed(brief);
        return off.isNothing() ? "" : brief.say(off.size() < 0 ? "miss.low" : "miss.high", brief.size(off.size()));
    }

    @Override
    public List<Label> notes(Brief brief) {
        Off off = missed(brief);
        boolean gone = !off.isNothing() && !scale(brief, 1).holds(brief.yours().at("reading"));
        return gone ? List.of(Label.text(brief.say("rule.off.sheet", missText(brief)))) : List.of();
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Scale scale = scale(brief, room);
        body(sheet, scale, room);
        lines(sheet, scale, brief.right(), Math.max(brief.right().at("step"), unit(brief.right()) / 64));
        arrow(sheet, scale, brief.right());
        Off off = missed(brief);
        if (!off.isNothing() && scale.holds(brief.yours().at("reading"))) {
            yours(brief, sheet, scale);
        }
    }

    private static double unit(Values v) {
        return v.system() == UnitSystem.US ? 1 : 10;
    }

    private static Scale scale(Brief brief, double room) {
        Values v = brief.right();
        double unit = unit(v);
        double step = Math.max(v.at("step"), unit / 64);
        double full = brief.width() - 8;
        double apart = Math.max(LEAST_APART, Math.min(9, full / MOST_LINES));
        double shown = Math.max(step, Math.min(full / apart * step, unit * (brief.isNarrow() ? 4 : 8)));
        double start = Math.max(0, Math.floor((v.at("reading") - shown / 2) / unit * 2) / 2 * unit);
        return new Scale(start, start + shown, room / shown);
    }

    /** The answer's reading under the rule, and what lies between the two. */
    private static void yours(Brief brief, Sheet sheet, Scale s) {
        double right = s.x(brief.right().at("reading"));
        double x = s.x(brief.yours().at("reading"));
        sheet.path(Pen.PHANTOM, Path.line(x, BODY + 1, x, BODY + 34), "yours-reading");
        sheet.path(Pen.YOURS_ARROW, Path.polygon(List.of(new Pt(x, BODY), new Pt(x - 3.5, BODY + 12), new Pt(x + 3.5, BODY + 12))));
        if (Math.abs(x - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(Math.min(x, right), BODY - 10, Math.max(x, right), BODY));
        }
        Label own = Off.label(brief, "reading");
        Label said = own.isEmpty() ? Label.text(missText(brief)) : own.then(", " + missText(brief));
        double half = said.width(Lettering.YOURS_TEXT) / 2;
        double end = (s.end - s.start) * s.factor;
        sheet.letter(said, Lettering.YOURS_TEXT, Math.max(half, Math.min(end - half, x)), BODY + 54, Anchor.MIDDLE);
    }

    /** The piece of the rule that is seen, in base units, and SVG units for one of them. */
    private record Scale(double start, double end, double factor) {
        double x(double reading) {
            return (reading - start) * factor;
        }

        boolean holds(double reading) {
            return reading >= start && reading <= end;
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
