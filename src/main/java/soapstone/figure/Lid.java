package soapstone.figure;

import java.util.List;

/** A round lid from the front and on edge, with the pressure that lies on it. */
final class Lid implements Drawer {

    private static final double BETWEEN = 56;
    private static final double EDGE = 7;
    private static final int ARROWS = 7;
    private static final double REACH = 40;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("diameter"), FigureArgument.pressure("pressure").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("lid.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(brief.right().has("pressure") ? "lid.is.pressed" : "lid.is");
        t.value(brief.right(), "diameter", "diameter").value(brief.right(), "pressure", "pressure");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double radius = Math.max(20, Math.min(room - BETWEEN - REACH, brief.isNarrow() ? 150 : 190) / 2);
        Pt center = new Pt(0, 0);
        sheet.circle(Pen.VISIBLE, center, radius, "part");
        sheet.line(Pen.CENTER, -radius - 8, 0, radius + 8, 0);
        sheet.line(Pen.CENTER, 0, -radius - 8, 0, radius + 8);
        new Across(sheet, -radius, true, Ink.RIGHT, 0).add(-radius, radius, -2, Labels.diameter(v.label("diameter")));
        double left = radius + BETWEEN;
        sheet.plate(Pen.SECTION, new Box(left, -radius, left + EDGE, radius), "edge");
        if (v.has("pressure")) {
            pressure(v, sheet, left + EDGE, radius);
        }
    }

    private static void pressure(Values v, Sheet sheet, double x, double radius) {
        for (int i = 0; i < ARROWS; i++) {
            double y = -radius + 2 * radius * (i + 0.5) / ARROWS;
            sheet.line(Pen.THIN, x + 2, y, x + REACH, y);
            sheet.arrow(Pen.ARROW, new Pt(x + 2, y), 180);
        }
        sheet.line(Pen.THIN, x + REACH, -radius, x + REACH, radius);
        sheet.letter(v.label("pressure"), Lettering.TEXT, x + REACH + 8, 5, Anchor.START);
    }
}
