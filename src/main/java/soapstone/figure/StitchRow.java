package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A seam with stitches of weld of one length at one pitch, center to center, and its symbol. */
final class StitchRow extends NamedDrawer {

    private static final double PLATE = 18;
    private static final double BEAD = 12;

    StitchRow() {
        super("stitch-row", FigureArgument.length("length"), FigureArgument.length("stitch"), FigureArgument.length("pitch"),
                FigureArgument.number("count"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("length") > 0 && v.at("stitch") > 0 && v.at("pitch") > 0 && v.count("count") >= 1
                && v.at("stitch") < 100 * v.at("length");
    }

    private static double end(Values v) {
        return (v.count("count") - 1) * v.at("pitch") + v.at("stitch");
    }

    private static double off(Brief brief) {
        double off = end(brief.yours()) - brief.right().at("length");
        return Math.abs(off) > 1e-6 * brief.right().at("length") ? off : 0;
    }

    @Override
    String miss(Brief brief) {
        return off(brief) == 0 ? "" : lengthMiss(brief, off(brief));
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        Label count = brief.right().label("count");
        notes.add(count.isEmpty() ? count : count.then(" " + pieces(brief, brief.right())));
        if (brief.differs("count")) {
            notes.add(Label.text(brief.say("yours") + ": ").then(brief.yours().label("count")).then(" " + pieces(brief, brief.yours())));
        }
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / v.at("length");
        Box seam = new Box(0, 0, room, BEAD + PLATE * 2);
        Series series = Series.of(v.count("count"), v.at("pitch") * scale, v.isHidden("count"));
        sheet.line(Pen.VISIBLE, 0, PLATE, room, PLATE);
        sheet.plate(Pen.VISIBLE, seam, "part");
        for (int i : series.indices()) {
            double x = i * v.at("pitch") * scale;
            double end = Math.min(room, x + v.at("stitch") * scale);
            if (x < room - 0.5) {
                Bead.draw(sheet, new Box(x, PLATE, end, PLATE + BEAD));
            }
        }
        if (series.isBroken()) {
            int before = series.breakAfter();
            double from = before * v.at("pitch") + v.at("stitch");
            double to = series.indices()[series.indices().length - 1] * v.at("pitch");
            Break.plumb(sheet, Math.min(room - 12, (from + to) / 2 * scale), seam.top(), seam.bottom());
        }
        if (brief.isAsCut()) {
            yours(brief, sheet, seam, scale);
        }
        dimensions(v, sheet, series, scale, room);
        if (brief.isAsCut()) {
            yoursDimensions(brief, sheet, seam, scale);
        }
    }

    private static void dimensions(Values v, Sheet sheet, Series series, double scale, double room) {
        Across above = new Across(sheet, 0, true, Ink.RIGHT, room / 2);
        double stitch = v.at("stitch") * scale;
        above.add(0, Math.min(room, stitch), PLATE, v.label("stitch"));
        if (series.indices().length > 1) {
            int pair = series.indices()[Math.min(series.pair(), series.indices().length - 2)];
            double center = pair * v.at("pitch") * scale + stitch / 2;
            above.add(center, Math.min(room, center + v.at("pitch") * scale), PLATE, v.label("pitch"));
        }
        above.add(0, room, v.label("length"));
        Label stitches = WeldSymbol.stitches(v);
        if (!stitches.isEmpty()) {
            int last = series.indices()[series.indices().length - 1];
            double x = Math.min(room - 2, last * v.at("pitch") * scale + stitch / 2);
            WeldSymbol.draw(sheet, new Pt(x, PLATE), new Pt(Math.max(x - 24, 0), sheet.bounds().top() - 26), true, Label.NONE, stitches);
        }
    }

    private static Reach reach(Brief brief, double scale) {
        return Reach.of(brief.right().at("length") * scale, 0, end(brief.yours()) * scale);
    }

    private static void yours(Brief brief, Sheet sheet, Box seam, double scale) {
        Values y = brief.yours();
        Reach reach = reach(brief, scale);
        double top = PLATE + BEAD + 4;
        Series series = Series.of(y.count("count"), y.at("pitch") * scale, false);
        for (int i : series.indices()) {
            double x = i * y.at("pitch") * scale;
            double end = reach.clip(x + y.at("stitch") * scale);
            if (reach.holds(x) && end - x > 1) {
                sheet.plate(end - x < 10 ? Pen.YOURS_MARK : Pen.PHANTOM, new Box(x, top, end, seam.bottom() + 10), "yours-stitch");
            }
        }
        if (reach.cutOff()) {
            Break.end(sheet, Pen.YOURS_THIN, reach.clip(end(y) * scale), seam.top(), seam.bottom() + 10);
        }
    }

    private void yoursDimensions(Brief brief, Sheet sheet, Box seam, double scale) {
        Reach reach = reach(brief, scale);
        Across below = new Across(sheet, seam.bottom() + 14, false, Ink.YOURS, seam.right() / 2);
        Miss.along(sheet, new Miss(seam.right(), reach.clip(end(brief.yours()) * scale)), new Box(0, 0, 0, seam.bottom()), below, miss(brief));
        if (brief.differs("stitch") && reach.holds(brief.yours().at("stitch") * scale)) {
            below.add(0, brief.yours().at("stitch") * scale, brief.yoursLabel("stitch"));
        }
        if (brief.differs("pitch") && brief.yours().count("count") > 1 && reach.holds(brief.yours().at("pitch") * scale)) {
            below.add(0, brief.yours().at("pitch") * scale, brief.yoursLabel("pitch"));
        }
    }
}
