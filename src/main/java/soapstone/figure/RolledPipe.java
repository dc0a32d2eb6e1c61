package soapstone.figure;

import java.util.List;

/** A rolled pipe from its end with the lap of its seam, and the blank that it is rolled from, to one scale. */
final class RolledPipe implements Drawer {

    private static final double LEAST_SHEET = 3;
    private static final double LEAST_OFF = 1.2;
    private static final double MOST = 1.35;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("inside"), FigureArgument.length("thickness"), FigureArgument.length("lap").maybe(),
                FigureArgument.length("blank"), FigureArgument.length("made").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double inside = v.at("inside");
        return inside > 0 && v.at("thickness") > 0 && v.at("thickness") < inside / 4 && v.at("blank") > 0
                && v.at("blank") < 400 * inside && (!v.has("lap") || v.at("lap") > 0 && v.at("lap") < Math.min(inside, v.at("blank")));
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "rolled-pipe.title.yours" : "rolled-pipe.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("rolled-pipe.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("rolled-pipe.yours");
            tellValues(brief.yours(), t);
            Off.furthest(brief, "blank").tell(brief, t);
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "inside", "rolled-pipe.inside").value(v, "thickness", "fold.thickness").value(v, "lap", "rolled-pipe.lap")
                .value(v, "blank", "rolled-pipe.blank");
    }

    @Override
    public List<Label> notes(Brief brief) {
        Label thick = brief.right().label("thickness");
        return thick.isEmpty() ? List.of() : List.of(Label.text(brief.say("rolled-pipe.sheet") + " ").then(thick));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room / v.at("blank"), (brief.isNarrow() ? 180 : 200) / v.at("inside"));
        Sheet end = new Sheet();
        end(brief, end, scale);
        Sheet flat = new Sheet();
        flat(brief, flat, scale);
        Views.under(sheet).add(end, brief.say("rolled-pipe.end")).add(flat, brief.say("rolled-pipe.flat"));
    }

    private static void end(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        Pt center = new Pt(0, 0);
        double inner = v.at("inside") * scale / 2;
        double thick = Math.max(LEAST_SHEET, v.at("thickness") * scale);
        sheet.path(Pen.SECTION, ring(inner, inner + thick, 90, 450), "pipe");
        sheet.circle(Pen.THIN, center, inner, "inside");
        if (v.has("lap")) {
            double turn = Math.min(170, Math.toDegrees(v.at("lap") * scale / (inner + thick / 2)));
            sheet.path(Pen.SECTION, ring(inner + thick + 1, inner + 2 * thick + 1, 90, 90 + turn), "lap");
            lap(v, sheet, new Pt(0, 0), inner + 2 * thick + 1, 90 + turn / 2);
        }
        sheet.line(Pen.CENTER, -8, 0, 8, 0);
        sheet.line(Pen.CENTER, 0, -8, 0, 8);
        if (brief.isAsCut() && v.has("made") && brief.yours().has("made")) {
            made(brief, sheet, inner, scale);
        }
        new Across(sheet, sheet.bounds().bottom(), false, Ink.RIGHT, 0).add(-inner, inner, 0, Labels.diameter(v.label("inside")));
    }

    private static void lap(Values v, Sheet sheet, Pt center, double radius, double direction) {
        Leader.to(sheet, Ink.RIGHT, center, radius, v.label("lap"), direction, direction + 15, direction + 30, direction + 45, direction - 30);
    }

    /** The pipe that the answer's blank rolls up to. */
    private static void made(Brief brief, Sheet sheet, double inner, double scale) {
        double made = brief.yours().at("made") * scale / 2;
        if (made > 4 && made < MOST * inner && Math.abs(made - inner) >= LEAST_OFF) {
            sheet.circle(Pen.PHANTOM, new Pt(0, 0), made, "yours-pipe");
        }
    }

    private static Path ring(double inner, double outer, double from, double to) {
        Pt center = new Pt(0, 0);
        return Path.arc(center, outer, from, to).lineTo(center.polar(inner, to)).arcAround(center, inner, to, from).close();
    }

    private static void flat(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        Box strip = new Box(0, 0, v.at("blank") * scale, brief.isNarrow() ? 84 : 96);
        sheet.plate(Pen.VISIBLE, strip, "blank");
        Break.level(sheet, strip.bottom() * (brief.isAsCut() ? 0.35 : 0.5), 0, strip.right());
        Across above = new Across(sheet, 0, true, Ink.RIGHT, strip.right() / 2);
        if (v.has("lap")) {
            double from = strip.right() - v.at("lap") * scale;
            sheet.path(Pen.ZONE, Path.line(from, 0, from, strip.bottom()), "lap-line");
            above.add(from, strip.right(), v.label("lap"));
        }
        above.add(0, strip.right(), v.label("blank"));
        Off off = Off.furthest(brief, "blank");
        if (!off.isNothing()) {
            yours(brief, sheet, strip, scale);
        }
    }

    private static void yours(Brief brief, Sheet sheet, Box strip, double scale) {
        double end = brief.yours().at("blank") * scale;
        Reach reach = Reach.of(strip.width(), 0, end);
        Box low = new Box(0, strip.bottom() * 0.55, reach.clip(end), strip.bottom() + 14);
        sheet.path(Pen.PHANTOM, Path.line(0, low.top(), 0, low.bottom()).lineTo(new Pt(low.right(), low.bottom())), "yours-edge");
        Across below = new Across(sheet, low.bottom() + 4, false, Ink.YOURS, strip.right() / 2);
        Miss.along(sheet, new Miss(strip.right(), low.right()), strip, below, Off.furthest(brief, "blank").text(brief));
        if (reach.holds(end)) {
            sheet.path(Pen.PHANTOM, Path.line(end, low.bottom(), end, low.top()), "yours-end");
            below.add(0, end, Off.label(brief, "blank"));
        } else {
            Break.end(sheet, Pen.YOURS_THIN, low.right(), low.top(), low.bottom());
        }
    }
}
