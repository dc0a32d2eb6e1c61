package soapstone.figure;

import java.util.List;

/** A flat ring from the front. */
final class Ring implements Drawer {

    private static final double LEAST_FACE = 1.5;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("outer"), FigureArgument.length("hole"), FigureArgument.number("pieces").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("hole") > 0 && v.at("hole") < v.at("outer") && v.at("outer") < 1000 * v.at("hole")
                && (!v.has("pieces") || v.count("pieces") >= 1);
    }

    @Override
    public String title(Brief brief) {
        return brief.say("ring.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("ring.is").value(brief.right(), "outer", "ring.outer").value(brief.right(), "hole", "ring.hole")
                .value(brief.right(), "pieces", "plate.pieces");
    }

    @Override
    public List<Label> notes(Brief brief) {
        return PlateEdge.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double radius = Math.min(room, brief.isNarrow() ? 200 : 230) / 2;
        double hole = Math.min(radius - LEAST_FACE, radius * v.at("hole") / v.at("outer"));
        Pt center = new Pt(0, 0);
        double arm = radius + 8;
        sheet.line(Pen.CENTER, -arm, 0, arm, 0);
        sheet.line(Pen.CENTER, 0, -arm, 0, arm);
        sheet.circle(Pen.VISIBLE, center, radius, "part");
        sheet.circle(Pen.VISIBLE, center, hole, "hole");
        new Across(sheet, -radius, true, Ink.RIGHT, 0).add(-radius, radius, -2, Labels.diameter(v.label("outer")));
        new Across(sheet, radius, false, Ink.RIGHT, 0).add(-hole, hole, 0, Labels.diameter(v.label("hole")));
    }
}
