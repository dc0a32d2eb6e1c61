package soapstone.figure;

import java.util.List;
import soapstone.quantity.Dimension;

/** A drill in a plate, and the same drill from its point: how fast its edge travels and how fast it turns. */
final class Drill extends NamedDrawer {

    private static final double RADIUS = 38;
    private static final double PLATE = 26;
    private static final double TALL = 120;
    private static final double BETWEEN = 44;

    Drill() {
        super("drill", FigureArgument.length("diameter"), new FigureArgument("speed", Dimension.LENGTH.over(Dimension.TIME), false, true),
                new FigureArgument("turns", Dimension.NUMBER.over(Dimension.TIME), false, true));
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        Sheet side = new Sheet();
        side(v, side);
        Sheet end = new Sheet();
        end(v, end);
        Box a = side.bounds();
        Box b = end.bounds();
        sheet.add(side, 0, 0);
        if (brief.isNarrow() || a.width() + BETWEEN + b.width() > room) {
            sheet.add(end, a.left() + (a.width() - b.width()) / 2 - b.left(), a.bottom() + 24 - b.top());
        } else {
            sheet.add(end, a.right() + BETWEEN - b.left(), (a.top() + a.bottom()) / 2 - (b.top() + b.bottom()) / 2);
        }
    }

    private static void side(Values v, Sheet sheet) {
        for (double left : new double[] {-RADIUS - 60, RADIUS}) {
            Box plate = new Box(left, 0, left + 60, PLATE);
            Hatch.fill(sheet, Pen.HATCH, plate);
            sheet.plate(Pen.VISIBLE, plate, "plate");
        }
        double point = RADIUS * 0.6;
        sheet.path(Pen.VISIBLE, Path.polygon(List.of(new Pt(-RADIUS, -TALL), new Pt(-RADIUS, PLATE - 8), new Pt(0, PLATE - 8 + point),
                new Pt(RADIUS, PLATE - 8), new Pt(RADIUS, -TALL))), "drill");
        for (double y = PLATE - 20; y > -TALL + 40; y -= 44) {
            sheet.line(Pen.THIN, -RADIUS, y, RADIUS, y - 36);
            sheet.line(Pen.THIN, -RADIUS, y - 10, RADIUS, y - 46 < -TALL ? -TALL : y - 46);
        }
        sheet.line(Pen.CENTER, 0, -TALL - 10, 0, PLATE + point + 4);
        new Across(sheet, -TALL, true, Ink.RIGHT, 0).add(-RADIUS, RADIUS, Labels.diameter(v.label("diameter")));
    }

    private static void end(Values v, Sheet sheet) {
        Pt center = new Pt(0, 0);
        sheet.circle(Pen.VISIBLE, center, RADIUS, "edge");
        sheet.line(Pen.CENTER, -RADIUS - 8, 0, RADIUS + 8, 0);
        sheet.line(Pen.CENTER, 0, -RADIUS - 8, 0, RADIUS + 8);
        if (v.has("turns")) {
            sheet.path(Pen.THIN, Path.arc(center, RADIUS + 16, 200, 340), "turn");
            sheet.arrow(Pen.ARROW, center.polar(RADIUS + 16, 340), 340 + 90 - 5);
            Leader.to(sheet, Ink.RIGHT, center, RADIUS + 16, v.label("turns"), 250, 270, 290, 230);
        }
        if (v.has("speed")) {
            Pt edge = center.polar(RADIUS, 90);
            Force.draw(sheet, Ink.RIGHT, edge.plus(-56, 0), 180, 54, "speed");
            Leader.to(sheet, Ink.RIGHT, edge.plus(-34, 0), 0, v.label("speed"), 90, 60, 120, 45);
        }
    }
}
