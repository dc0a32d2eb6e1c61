package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Holes of one pitch on one line along a bar. */
final class HoleRow implements Drawer {

    private static final double LEAST_RADIUS = 2;
    private static final double NUMBER_BASELINE = -10;
    private static final double NUMBERS = 22;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("first"), FigureArgument.length("pitch"),
                FigureArgument.number("count"), FigureArgument.length("diameter").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public LegendMark mark() {
        return LegendMark.HOLES;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("length") > 0 && v.at("pitch") > 0 && v.count("count") >= 1 && (!v.has("diameter") || v.at("diameter") > 0)
                && Math.abs(v.at("first")) < v.at("length") * 100;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "hole-row.title.yours" : "hole-row.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("hole-row.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            RowTelling.span(brief, t, false);
            t.say("yours.below");
            tellValues(brief.yours(), t);
            RowTelling.span(brief, t, true);
            RowMiss.of(brief).tell(brief, t);
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "length", "length").value(v, "first", "hole-row.first").value(v, "pitch", "hole-row.pitch")
                .value(v, "count", "hole-row.count").value(v, "diameter", "diameter");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        if (brief.isAsCut()) {
            notes.add(holes(brief));
            RowMiss.of(brief).note(brief).ifPresent(notes::add);
        }
        return notes;
    }

    private static Label holes(Brief brief) {
        Label each = Labels.diameter(brief.right().label("diameter"));
        Label count = brief.right().label("count");
        return each.isEmpty() && !count.isEmpty() ? count.then(" " + brief.say("hole-row.holes")) : Labels.times(count, each);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / v.at("length");
        double radius = radius(v, scale);
        Box bar = new Box(0, 0, room, Math.max(brief.isNarrow() ? 18 : 26, Math.min(56, 2 * radius + 12)));
        RowOfHoles row = new RowOfHoles(v, scale, bar, v.isHidden("count"));
        sheet.plate(Pen.VISIBLE, bar, "part");
        sheet.line(Pen.CENTER, -8, row.middle(), room + 8, row.middle());
        drawRight(sheet, row, radius);
        dimensions(brief, sheet, row);
        if (brief.isAsCut()) {
            drawYours(brief, sheet, row, radius);
        } else if (row.series().indices().length > 1) {
            Pt hole = new Pt(row.x(row.series().indices()[1]), row.middle());
            if (!Leader.to(sheet, Ink.RIGHT, hole, radius, holes(brief), 305, 290)) {
                Leader.to(sheet, Ink.RIGHT, hole, radius, holes(brief), 235, 250);
            }
        }
    }

    private static double radius(Values v, double scale) {
        double told = v.has("diameter") ? v.at("diameter") * scale / 2 : Math.min(3.5, v.at("pitch") * scale * 0.3);
        return Math.max(LEAST_RADIUS, told);
    }

    private static void drawRight(Sheet sheet, RowOfHoles row, double radius) {
        if (row.series().isBroken()) {
            int before = row.series().breakAfter();
            Break.plumb(sheet, (row.x(before) + row.x(row.count() - 1)) / 2, row.bar().top(), row.bar().bottom());
        }
        for (int i : row.visible()) {
            Pt center = new Pt(row.x(i), row.middle());
            sheet.circle(Pen.VISIBLE, center, radius, "hole");
            sheet.line(Pen.CENTER, center.x(), -6, center.x(), row.middle() + radius + 4);
        }
        row.number(sheet, Lettering.NUMBER, NUMBER_BASELINE);
    }

    private static void dimensions(Brief brief, Sheet sheet, RowOfHoles row) {
        Values v = brief.right();
        double from = -NUMBERS;
        Across above = new Across(sheet, from, true, Ink.RIGHT, row.bar().right() / 2);
        above.add(0, row.x(0), from, v.label("first"));
        if (row.count() > 1) {
            above.add(row.x(row.series().pair()), row.x(row.series().pair() + 1), from, v.label("pitch"));
            double last = row.x(row.count() - 1);
            if (Math.abs(row.bar().right() - last - row.x(0)) < 0.01 && !v.isAsked("first")) {
                above.add(last, row.bar().right(), from, v.label("first"));
            }
            if (brief.isAsCut()) {
                above.add(row.x(0), last, from, RowTelling.spanLabel(brief, false));
            }
        }
        above.add(0, row.bar().right(), from + NUMBERS, v.label("length"));
    }

    private static void drawYours(Brief brief, Sheet sheet, RowOfHoles right, double radius) {
        Values v = brief.yours();
        RowOfHoles row = new RowOfHoles(v, right.scale(), right.bar(), false);
        double low = right.bar().bottom() + 5;
        YoursBar.draw(sheet, row.reach(), v.at("length") * right.scale(), low);
        for (int i : row.visible()) {
            Pt c = new Pt(row.x(i), row.middle());
            sheet.line(Pen.YOURS_THIN, c.x(), c.y(), c.x(), low + 6);
            Crossed.hole(sheet, c, radius);
        }
        row.number(sheet, Lettering.YOURS_NUMBER, low + 18);
        yoursDimensions(brief, sheet, right, row, low + 20);
    }

    private static void yoursDimensions(Brief brief, Sheet sheet, RowOfHoles right, RowOfHoles row, double edge) {
        Across below = new Across(sheet, edge, false, Ink.YOURS, right.bar().right() / 2);
        if (brief.differs("first") && row.isVisible(0)) {
            below.add(0, row.x(0), brief.yoursLabel("first"));
        }
        int pair = row.series().pair();
        if (row.count() > 1 && row.isVisible(pair) && row.isVisible(pair + 1) && brief.differs("pitch")) {
            below.add(row.x(pair), row.x(pair + 1), brief.yoursLabel("pitch"));
        }
        RowMiss.of(brief).draw(brief, sheet, row, below);
        int last = row.count() - 1;
        if (last > 0 && row.isVisible(0) && row.isVisible(last)) {
            below.add(row.x(0), row.x(last), RowTelling.spanLabel(brief, true));
        }
    }
}
