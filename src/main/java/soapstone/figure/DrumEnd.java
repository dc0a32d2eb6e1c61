package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The end of a lying drum: a circle that stands on y = 0 with its center on x = 0, and the level in it. */
final class DrumEnd {

    private static final int SIDES = 24;

    private final Brief brief;
    private final double scale;
    private final double radius;
    private final DrumMiss miss;

    DrumEnd(Brief brief, double scale) {
        this.brief = brief;
        this.scale = scale;
        this.radius = brief.right().at("diameter") * scale / 2;
        this.miss = DrumMiss.of(brief);
    }

    private boolean withYours() {
        return brief.isAsCut() && !miss.isOffSheet(brief);
    }

    private double yoursRadius() {
        return brief.yours().at("diameter") * scale / 2;
    }

    void draw(Sheet sheet) {
        Values v = brief.right();
        double level = v.has("level") ? Levels.within(v, v.at("diameter")) * scale : 0;
        if (v.has("level")) {
            water(sheet, level);
        }
        sheet.circle(Pen.VISIBLE, new Pt(0, -radius), radius, "part");
        sheet.line(Pen.CENTER, -radius - 8, -radius, radius + 8, -radius);
        sheet.line(Pen.CENTER, 0, 8, 0, -2 * radius - 8);
        if (withYours()) {
            drawYours(sheet);
        }
        Box all = sheet.bounds();
        Label across = v.label("diameter");
        new Across(sheet, all.top() + 8, true, Ink.RIGHT, 0).add(-radius, radius, -radius, Labels.diameter(across));
        if (v.has("level") && level > 0) {
            new Upright(sheet, all.left() + 8, true, Ink.RIGHT).add(0, -level, -half(radius, level), v.label("level"));
        }
        if (withYours()) {
            drawMiss(sheet, level);
        }
    }

    /** Half the width of a circle of that radius at a level. */
    private static double half(double radius, double level) {
        return Math.sqrt(Math.max(0, radius * radius - (level - radius) * (level - radius)));
    }

    private void water(Sheet sheet, double level) {
        double half = half(radius, level);
        if (level > 0) {
            Pt center = new Pt(0, -radius);
            double edge = center.degreesTo(new Pt(half, -level));
            sheet.path(Pen.WATER, Path.from(new Pt(half, -level)).arcAround(center, radius, edge, -180 - edge).close());
        }
        sheet.path(Pen.THIN, Path.line(-half, -level, half, -level), "level");
        if (half > 12) {
            Surface.sign(sheet, Pen.THIN, half * 0.45, -level);
        }
    }

    private void drawYours(Sheet sheet) {
        Values y = brief.yours();
        if (brief.differs("diameter")) {
            sheet.circle(Pen.PHANTOM, new Pt(0, -yoursRadius()), yoursRadius(), "yours-part");
        }
        if (y.has("level")) {
            double level = Levels.within(y, y.at("diameter")) * scale;
            double half = half(yoursRadius(), level);
            sheet.path(Pen.PHANTOM, Path.line(-half, -level, half, -level), "yours-level");
        }
    }

    private void drawMiss(Sheet sheet, double level) {
        if (miss.is("level")) {
            double to = Levels.within(brief.yours(), brief.right().at("diameter")) * scale;
            if (Math.abs(to - level) >= 1.5) {
                Hatch.fill(sheet, Pen.YOURS_HATCH, between(Math.min(level, to), Math.max(level, to)));
            }
            Upright beside = new Upright(sheet, sheet.bounds().right(), false, Ink.YOURS).compact(brief.isNarrow());
            beside.add(-level, -to, half(radius, level), Label.text(miss.text(brief)));
            beside.add(0, -to, half(radius, to), brief.yoursLabel("level"));
        } else if (miss.is("diameter")) {
            Strip.miss(sheet, new Pt(0, -2 * radius), new Pt(0, -2 * yoursRadius()), 12);
            Label across = brief.yours().label("diameter");
            new Across(sheet, sheet.bounds().bottom(), false, Ink.YOURS, 0).add(-yoursRadius(), yoursRadius(), -yoursRadius(),
                    across.isEmpty() ? across : Label.text(brief.say("yours") + " ").then(Labels.diameter(across)));
            Pt middle = new Pt(0, -radius - yoursRadius());
            Leader.to(sheet, Ink.YOURS, middle, 0, Label.text(miss.text(brief)), 30, 0, -30, 150, 180);
        }
    }

    /** The corners of the part of the end between two levels. */
    private List<Pt> between(double low, double high) {
        List<Pt> corners = new ArrayList<>();
        for (int i = 0; i <= SIDES; i++) {
            double h = low + (high - low) * i / SIDES;
            corners.add(new Pt(-half(radius, h), -h));
        }
        for (int i = SIDES; i >= 0; i--) {
            double h = low + (high - low) * i / SIDES;
            corners.add(new Pt(half(radius, h), -h));
        }
        return corners;
    }
}
