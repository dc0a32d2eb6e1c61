package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A round tube: its section with the wall hatched, and beside it its length, broken where it is long. */
final class RoundTube extends NamedDrawer {

    private static final double BETWEEN = 60;
    private static final double LONGEST = 2.4;
    private static final int CORNERS = 48;

    RoundTube() {
        super("round-tube", FigureArgument.length("outside"), FigureArgument.length("wall"), FigureArgument.length("length"),
                FigureArgument.number("count").maybe());
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("outside") > 0 && v.at("wall") > 0 && 2 * v.at("wall") < v.at("outside") && v.at("length") > 0;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        boolean narrow = brief.isNarrow();
        double radius = narrow ? 44 : 60;
        double inner = radius * (1 - 2 * v.at("wall") / v.at("outside"));
        ring(sheet, radius, inner);
        new Across(sheet, -radius, true, Ink.RIGHT, 0).add(-radius, radius, 0, Labels.diameter(v.label("outside")));
        Label wall = v.label("wall");
        Leader.to(sheet, Ink.RIGHT, new Pt(0, 0), (radius + inner) / 2,
                wall.isEmpty() ? wall : Label.text(brief.say("round-tube.at") + " ").then(wall), 300, 240, 315, 225);
        double length = Math.max(0.5, Math.min(LONGEST, v.at("length") / v.at("outside"))) * 2 * radius;
        length = Math.min(length, Math.max(80, narrow ? room : room - 2 * radius - BETWEEN));
        Sheet side = new Sheet();
        side(v, side, length, radius, inner);
        Box a = sheet.bounds();
        if (narrow) {
            sheet.add(side, -length / 2, a.bottom() + 24 - side.bounds().top());
        } else {
            sheet.add(side, a.right() + BETWEEN - side.bounds().left(), 0);
        }
    }

    private static void ring(Sheet sheet, double radius, double inner) {
        Pt center = new Pt(0, 0);
        List<Pt> ring = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            ring.add(center.polar(radius, 360.0 * i / CORNERS));
        }
        for (int i = CORNERS; i >= 0; i--) {
            ring.add(center.polar(inner, 360.0 * i / CORNERS));
        }
        Hatch.fill(sheet, Pen.HATCH, ring, false);
        sheet.circle(Pen.VISIBLE, center, radius, "outside");
        sheet.circle(Pen.VISIBLE, center, inner, "inside");
        sheet.line(Pen.CENTER, -radius - 8, 0, radius + 8, 0);
        sheet.line(Pen.CENTER, 0, -radius - 8, 0, radius + 8);
    }

    private static void side(Values v, Sheet sheet, double length, double radius, double inner) {
        sheet.plate(Pen.VISIBLE, new Box(0, -radius, length, radius), "side");
        sheet.line(Pen.HIDDEN, 0, -inner, length, -inner);
        sheet.line(Pen.HIDDEN, 0, inner, length, inner);
        sheet.line(Pen.CENTER, -8, 0, length + 8, 0);
        if (length < v.at("length") / v.at("outside") * 2 * radius - 0.5) {
            Break.plumb(sheet, length / 2, -radius, radius);
        }
        Label count = v.has("count") ? v.label("count") : Label.NONE;
        new Across(sheet, -radius, true, Ink.RIGHT, length / 2).add(0, length, Labels.times(count, v.label("length")));
    }
}
