package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Holes equally spaced on a circle, numbered counterclockwise from the right. */
final class BoltCircle implements Drawer {

    private static final double MOST_RATIO = 2.5;
    private static final int MOST_HOLES = 120;
    private static final double MARK = 5;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("diameter"), FigureArgument.number("count"),
                FigureArgument.length("hole").maybe(), FigureArgument.angle("start").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public LegendMark mark() {
        return LegendMark.CIRCLE;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0 && v.count("count") >= 1 && (!v.has("hole") || v.at("hole") > 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "bolt-circle.title.yours" : "bolt-circle.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("bolt-circle.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("bolt-circle.yours");
            tellValues(brief.yours(), t);
            int worst = worst(brief);
            if (worst >= 0) {
                t.say("bolt-circle.lands", worst + 1, brief.size(off(brief, worst)));
                t.sentence(brief.say("miss.off", brief.size(off(brief, worst))) + ".");
            }
        }
        if (isOffSheet(brief)) {
            t.sentence(offSheet(brief) + ".");
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "diameter", "bolt-circle.diameter").value(v, "count", "hole-row.count").value(v, "hole", "bolt-circle.hole")
                .value(v, "start", "bolt-circle.start");
    }

    private static double angle(Values v, int i) {
        return (v.has("start") ? v.at("start") : 0) + 360.0 * i / v.count("count");
    }

    /** The hole that is furthest from its place, or -1. */
    private static int worst(Brief brief) {
        int worst = -1;
        double most = 1e-6 * brief.right().at("diameter");
        for (int i = 0; i < Math.min(brief.right().count("count"), brief.yours().count("count")); i++) {
            if (off(brief, i) > most + 1e-9) {
                most = off(brief, i);
                worst = i;
            }
        }
        return worst;
    }

    private static double off(Brief brief, int i) {
        Pt origin = new Pt(0, 0);
        Values r = brief.right();
        Values y = brief.yours();
        return origin.polar(r.at("diameter") / 2, angle(r, i)).distance(origin.polar(y.at("diameter") / 2, angle(y, i)));
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.isAsCut() && brief.yours().at("diameter") > MOST_RATIO * brief.right().at("diameter");
    }

    private static String offSheet(Brief brief) {
        double outside = (brief.yours().at("diameter") - brief.right().at("diameter")) / 2;
        return brief.say("bolt-circle.off.sheet", brief.size(outside));
    }

    private static boolean isDense(Values v) {
        return v.count("count") > MOST_HOLES;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double largest = v.at("diameter");
        if (brief.isAsCut() && !isOffSheet(brief)) {
            largest = Math.max(largest, brief.yours().at("diameter"));
        }
        double scale = Math.min(room, brief.isNarrow() ? 210 : 260) / largest;
        double radius = v.at("diameter") * scale / 2;
        double hole = v.has("hole") ? Math.max(2, v.at("hole") * scale / 2) : MARK;
        Pt center = new Pt(0, 0);
        double arm = radius + hole + 8;
        sheet.line(Pen.CENTER, -arm, 0, arm, 0);
        sheet.line(Pen.CENTER, 0, -arm, 0, arm);
        sheet.circle(Pen.CENTER, center, radius, "part");
        int[] shown = shown(v);
        for (int i : shown) {
            sheet.circle(Pen.VISIBLE, center.polar(radius, angle(v, i)), hole, "hole");
        }
        if (brief.isAsCut() && !isOffSheet(brief)) {
            drawYours(brief, sheet, scale, hole);
        }
        numbers(sheet, v, shown, new double[] {radius, hole}, Lettering.NUMBER, true);
        dimensions(brief, sheet, radius, hole);
    }

    /** Holes to be counted are not all drawn: the first ones show where the row starts and which way it goes. */
    private static int[] shown(Values v) {
        int n = v.count("count");
        int most = v.isHidden("count") || isDense(v) ? Math.min(n, 2) : n;
        return IntStream.range(0, most).toArray();
    }

    /**
     * Numbers the holes, on the outer or the inner side of the circle: right out from the hole, or somewhat to a side.
     *
     * @param at radius of the circle and of a hole
     */
    private static void numbers(Sheet sheet, Values v, int[] shown, double[] at, Lettering lettering, boolean outside) {
        for (int i : shown) {
            Pt hole = new Pt(0, 0).polar(at[0], angle(v, i));
            double away = angle(v, i) + (outside ? 0 : 180);
            List<Sheet.Spot> spots = new ArrayList<>();
            for (double turn : new double[] {0, 25, -25, 50, -50, 75, -75}) {
                for (double out = 12; out <= 24; out += 2) {
                    Pt p = hole.polar(at[1] + out, away + turn);
                    spots.add(new Sheet.Spot(p.x(), p.y() + 4.5, Anchor.MIDDLE));
                }
            }
            sheet.letterFree(Label.text(Integer.toString(i + 1)), lettering, spots);
        }
    }

    private static void dimensions(Brief brief, Sheet sheet, double radius, double hole) {
        Values v = brief.right();
        Box all = sheet.bounds();
        if (!brief.isAsCut() || brief.differs("start")) {
            start(sheet, v, radius);
        }
        Across above = new Across(sheet, all.top() + 8, true, Ink.RIGHT, 0);
        Label across = v.label("diameter");
        above.add(-radius, radius, -hole - 2, Labels.diameter(across));
        if (brief.isAsCut()) {
            return;
        }
        Pt first = new Pt(0, 0).polar(radius, angle(v, 0));
        double out = angle(v, 0);
        Leader.to(sheet, Ink.RIGHT, first, hole, holes(brief), out - 35, out + 35, out - 60, out + 60, -35, -145, 35, 145);
    }

    private static Label holes(Brief brief) {
        Values v = brief.right();
        Label count = v.label("count");
        return v.isTold("hole") ? Labels.times(count, Labels.diameter(v.label("hole")))
                : count.isEmpty() ? count : count.then(" " + brief.say("hole-row.holes"));
    }

    private static void start(Sheet sheet, Values v, double radius) {
        Label label = v.label("start");
        double start = v.has("start") ? v.at("start") : 0;
        if (label.isEmpty() || Math.abs(start) < 1e-6 || Math.abs(start) > 360) {
            return;
        }
        AngleMark.draw(sheet, Ink.RIGHT, new Pt(0, 0), radius * 0.62, new double[] {0, start}, radius, label);
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        Values v = brief.right();
        if (brief.isAsCut() && !holes(brief).isEmpty()) {
            notes.add(holes(brief));
        }
        if (shown(v).length < v.count("count")) {
            notes.add(Label.text(brief.say("bolt-circle.not.all")));
        }
        if (isOffSheet(brief)) {
            notes.add(Label.text(offSheet(brief)));
        }
        return notes;
    }

    private static void drawYours(Brief brief, Sheet sheet, double scale, double hole) {
        Values v = brief.yours();
        double radius = v.at("diameter") * scale / 2;
        Pt center = new Pt(0, 0);
        if (brief.differs("diameter")) {
            sheet.circle(Pen.PHANTOM, center, radius, "yours-part");
        }
        int[] shown = isDense(v) ? new int[] {0, 1} : IntStream.range(0, v.count("count")).toArray();
        for (int i : shown) {
            Crossed.hole(sheet, center.polar(radius, angle(v, i)), hole);
        }
        int worst = worst(brief);
        if (worst >= 0) {
            Pt right = center.polar(brief.right().at("diameter") * scale / 2, angle(brief.right(), worst));
            Pt yours = center.polar(radius, angle(v, worst));
            Strip.miss(sheet, right, yours, Math.max(10, 2 * hole));
            missLabel(brief, sheet, right, yours, brief.say("miss.off", brief.size(off(brief, worst))));
        }
        numbers(sheet, v, shown, new double[] {radius, hole}, Lettering.YOURS_NUMBER, false);
        if (brief.differs("diameter")) {
            Across below = new Across(sheet, sheet.bounds().bottom() - 4, false, Ink.YOURS, 0);
            Label across = v.label("diameter");
            below.add(-radius, radius, hole + 2, across.isEmpty() ? across
                    : Label.text(brief.say("yours") + " ").then(Labels.diameter(across)));
        }
    }

    private static void missLabel(Brief brief, Sheet sheet, Pt right, Pt yours, String text) {
        Pt middle = right.towards(yours, 0.5);
        double inward = middle.degreesTo(new Pt(0, 0));
        Leader.to(sheet, Ink.YOURS, middle, 0, Label.text(text), inward, inward + 30, inward - 30, inward + 60, inward - 60,
                inward + 180, inward + 150, inward - 150);
    }
}
