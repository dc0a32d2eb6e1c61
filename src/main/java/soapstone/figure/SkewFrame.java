package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A frame that leans, with its two diagonals and its place when it is square. Over the square frame an answer's push leaves
 * it leaning still, or the other way.
 */
final class SkewFrame implements Drawer {

    private static final double LONGEST = 60;
    private static final double MOST_LEAN = 0.5;
    private static final double LEAST_SEEN = 1.5;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("height"), FigureArgument.length("lean"),
                FigureArgument.length("push"), FigureArgument.length("long").maybe(), FigureArgument.length("short").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        double height = v.at("height");
        return length > 0 && height > 0 && length < LONGEST * height && height < LONGEST * length && v.at("lean") >= 0
                && v.at("lean") < length;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "skew-frame.title.yours" : "skew-frame.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(brief.isAsCut() ? "skew-frame.is.square" : "skew-frame.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours").value(brief.yours(), "push", "skew-frame.push");
            t.sentence(brief.differs("push") ? miss(brief) + "." : "");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "length", "length").value(v, "height", "height").value(v, "long", "skew-frame.long")
                .value(v, "short", "skew-frame.short").value(v, "push", "skew-frame.push");
    }

    /** How far the frame leans after the answer's push, in base units. */
    private static double left(Brief brief) {
        return brief.right().at("lean") - brief.yours().at("push");
    }

    private static String miss(Brief brief) {
        return brief.say(left(brief) > 0 ? "miss.leans" : "miss.leans.over", brief.size(left(brief)));
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.isAsCut() && Math.abs(left(brief)) > MOST_LEAN * brief.right().at("length");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (isOffSheet(brief)) {
            notes.add(Label.text(brief.say("tank.off.sheet", miss(brief))));
        }
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean yours = brief.isAsCut() && brief.differs("push") && !isOffSheet(brief);
        double over = Math.max(v.at("lean"), yours ? Math.abs(left(brief)) : 0);
        double scale = Math.min(room / (v.at("length") + over), (brief.isNarrow() ? 210 : 250) / v.at("height"));
        double length = v.at("length") * scale;
        double height = v.at("height") * scale;
        double lean = v.at("lean") * scale;
        sheet.path(brief.isAsCut() ? Pen.HIDDEN : Pen.VISIBLE, frame(length, height, lean), "leaning");
        sheet.path(brief.isAsCut() ? Pen.VISIBLE : Pen.HIDDEN, frame(length, height, 0), "square");
        Pt corner = new Pt(length, -height);
        if (yours) {
            drawYours(sheet, corner, left(brief) * scale);
        }
        new Across(sheet, 0, false, Ink.RIGHT, length / 2).add(0, length, v.label("length"));
        new Upright(sheet, 0, true, Ink.RIGHT).add(-height, 0, v.label("height"));
        if (yours) {
            yoursSizes(brief, sheet, corner, scale);
            return;
        }
        Across above = new Across(sheet, -height, true, Ink.RIGHT, length / 2);
        above.add(length + lean - v.at("push") * scale, length + lean, v.label("push"));
        diagonal(sheet, new Pt(0, 0), new Pt(length + lean, -height), v.label("long"), "long");
        diagonal(sheet, new Pt(length, 0), new Pt(lean, -height), v.label("short"), "short");
    }

    /** The frame with its bottom on the line y = 0 and its top pushed to the right. */
    private static Path frame(double length, double height, double lean) {
        return Path.polygon(List.of(new Pt(0, 0), new Pt(length, 0), new Pt(length + lean, -height), new Pt(lean, -height)));
    }

    /** A dimension from corner to corner, lettered well away from where the two cross. */
    private static void diagonal(Sheet sheet, Pt from, Pt to, Label label, String role) {
        if (label.isEmpty()) {
            return;
        }
        double direction = from.degreesTo(to);
        sheet.path(Pen.THIN, Path.line(from.x(), from.y(), to.x(), to.y()), role);
        sheet.arrow(Pen.ARROW, from, direction + 180);
        sheet.arrow(Pen.ARROW, to, direction);
        List<Sheet.Spot> spots = new ArrayList<>();
        for (double share : new double[] {0.28, 0.24, 0.2, 0.32, 0.75, 0.8}) {
            Pt at = from.towards(to, share);
            spots.add(new Sheet.Spot(at.x(), at.y() + 5, Anchor.MIDDLE));
        }
        sheet.letterSize(label, Lettering.TEXT, spots);
    }

    /** The sides as the answer's push leaves them; the bottom stays, the top stays level. */
    private static void drawYours(Sheet sheet, Pt corner, double lean) {
        Pt pushed = corner.plus(lean, 0);
        Pt foot = new Pt(corner.x(), 0);
        if (Math.abs(lean) >= LEAST_SEEN) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, List.of(foot, corner, pushed));
        }
        sheet.path(Pen.PHANTOM, Path.line(foot.x(), 0, pushed.x(), pushed.y()).lineTo(corner).moveTo(new Pt(0, 0))
                .lineTo(new Pt(lean, corner.y())), "yours-frame");
    }

    private static void yoursSizes(Brief brief, Sheet sheet, Pt corner, double scale) {
        double pushed = corner.x() + left(brief) * scale;
        Across above = new Across(sheet, corner.y(), true, Ink.YOURS, corner.x() / 2);
        above.add(corner.x(), pushed, Label.text(miss(brief)));
        above.add(pushed, pushed + brief.yours().at("push") * scale, brief.yoursLabel("push"));
    }
}
