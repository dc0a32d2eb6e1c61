package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A drum on its side: the end as a circle with the level, and beside it the length. */
final class LyingDrum implements Drawer {

    private static final double BETWEEN = 34;
    private static final double LONGEST = 2.6;
    private static final double OFF_SHEET = 2;
    private static final int SIDES = 24;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("diameter"), FigureArgument.length("length"), FigureArgument.length("level").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("diameter") > 0 && v.at("length") > 0 && Levels.isSound(v);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "lying-drum.title.yours" : "lying-drum.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("lying-drum.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            if (!missText(brief).isEmpty()) {
                t.sentence(missText(brief) + ".");
            }
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "diameter", "diameter").value(v, "length", "length").value(v, "level", "level");
    }

    private static String missText(Brief brief) {
        if (brief.differs("level")) {
            return Levels.text(brief);
        }
        for (String name : new String[] {"diameter", "length"}) {
            if (brief.differs(name)) {
                double off = brief.yours().at(name) - brief.right().at(name);
                return brief.say(off < 0 ? "miss.short" : "miss.long", brief.size(off));
            }
        }
        return "";
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.yours().at("diameter") > OFF_SHEET * brief.right().at("diameter")
                || brief.yours().at("length") > OFF_SHEET * brief.right().at("length");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(Levels.over(brief, brief.right(), brief.right().at("diameter")));
        if (brief.isAsCut()) {
            Label over = Levels.over(brief, brief.yours(), brief.yours().at("diameter"));
            notes.add(over.isEmpty() ? over : Label.text(brief.say("yours") + ": ").then(over));
            if (isOffSheet(brief)) {
                notes.add(Label.text(brief.say("tank.off.sheet", missText(brief))));
            }
        }
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    /**
     * Where both views lie: the end stands on y = 0 with its center on x = 0, the side begins at {@code left}.
     *
     * @param radius of the end
     * @param length of the side as drawn, shorter than true when broken
     */
    private record Views(double scale, double radius, double left, double length, boolean broken) {
        double right() {
            return left + length;
        }
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double diameter = v.at("diameter");
        double drawn = Math.min(v.at("length"), LONGEST * diameter);
        double scale = Math.min(Math.max(20, room - BETWEEN) / (diameter + drawn), (brief.isNarrow() ? 130 : 190) / diameter);
        double radius = diameter * scale / 2;
        Views views = new Views(scale, radius, radius + BETWEEN, drawn * scale, drawn < v.at("length"));
        double level = v.has("level") ? Levels.within(v, diameter) * scale : 0;
        if (v.has("level")) {
            water(sheet, views, level);
        }
        outline(sheet, views);
        boolean withYours = brief.isAsCut() && !isOffSheet(brief);
        if (withYours) {
            drawYours(brief, sheet, views);
        }
        dimensions(v, sheet, views, level);
        if (withYours) {
            miss(brief, sheet, views);
        }
    }

    private static double half(double radius, double level) {
        return Math.sqrt(Math.max(0, radius * radius - (level - radius) * (level - radius)));
    }

    /** The corners of the part of the end between two levels. */
    private static List<Pt> between(double radius, double low, double high) {
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

    private static void water(Sheet sheet, Views v, double level) {
        double half = half(v.radius, level);
        if (level > 0) {
            Pt center = new Pt(0, -v.radius);
            double edge = center.degreesTo(new Pt(half, -level));
            sheet.path(Pen.WATER, Path.from(new Pt(half, -level)).arcAround(center, v.radius, edge, -180 - edge).close());
            sheet.plate(Pen.WATER, new Box(v.left, -level, v.right(), 0), "");
        }
        sheet.path(Pen.THIN, Path.line(-half, -level, half, -level), "level");
        sheet.line(Pen.THIN, v.left, -level, v.right(), -level);
        if (half > 12) {
            Surface.sign(sheet, Pen.THIN, half * 0.45, -level);
        }
    }

    private static void outline(Sheet sheet, Views v) {
        sheet.circle(Pen.VISIBLE, new Pt(0, -v.radius), v.radius, "part");
        sheet.line(Pen.CENTER, -v.radius - 8, -v.radius, v.radius + 8, -v.radius);
        sheet.line(Pen.CENTER, 0, 8, 0, -2 * v.radius - 8);
        sheet.plate(Pen.VISIBLE, new Box(v.left, -2 * v.radius, v.right(), 0), "side");
        sheet.line(Pen.CENTER, v.left - 8, -v.radius, v.right() + 8, -v.radius);
        if (v.broken) {
            Break.plumb(sheet, (v.left + v.right()) / 2, -2 * v.radius, 0);
        }
    }

    private static void dimensions(Values v, Sheet sheet, Views views, double level) {
        double top = Math.min(-2 * views.radius, sheet.bounds().top() + 8);
        Across above = new Across(sheet, top, true, Ink.RIGHT, (views.right() - views.radius) / 2);
        Label across = v.label("diameter");
        above.add(-views.radius, views.radius, -views.radius, across.isFramed() ? Label.text("Ø").then(across)
                : across.isEmpty() ? across : Label.text("Ø ").then(across));
        above.add(views.left, views.right(), -2 * views.radius, v.label("length"));
        if (v.has("level") && level > 0) {
            double edge = Math.min(-views.radius, sheet.bounds().left() + 8);
            new Upright(sheet, edge, true, Ink.RIGHT).add(0, -level, -half(views.radius, level), v.label("level"));
        }
    }

    private static void drawYours(Brief brief, Sheet sheet, Views right) {
        Values v = brief.yours();
        double radius = v.at("diameter") * right.scale / 2;
        if (brief.differs("diameter")) {
            sheet.circle(Pen.PHANTOM, new Pt(0, -radius), radius, "yours-part");
        }
        double length = right.broken ? right.length : v.at("length") * right.scale;
        if (brief.differs("diameter") || brief.differs("length")) {
            sheet.plate(Pen.PHANTOM, new Box(right.left, -2 * radius, right.left + length, 0), "yours-side");
        }
        if (v.has("level")) {
            double level = Levels.within(v, v.at("diameter")) * right.scale;
            double half = half(radius, level);
            sheet.path(Pen.PHANTOM, Path.line(-half, -level, half, -level), "yours-level");
            sheet.line(Pen.PHANTOM, right.left, -level, right.left + length, -level);
        }
    }

    private static void miss(Brief brief, Sheet sheet, Views right) {
        Values r = brief.right();
        Values y = brief.yours();
        Across below = new Across(sheet, sheet.bounds().bottom(), false, Ink.YOURS, right.left);
        if (brief.differs("level")) {
            double from = Levels.within(r, r.at("diameter")) * right.scale;
            double to = Levels.within(y, r.at("diameter")) * right.scale;
            if (Math.abs(to - from) >= 1.5) {
                Hatch.fill(sheet, Pen.YOURS_HATCH, between(right.radius, Math.min(from, to), Math.max(from, to)));
            }
            Upright beside = new Upright(sheet, right.right(), false, Ink.YOURS).compact(brief.isNarrow());
            beside.add(-from, -to, Label.text(missText(brief)));
            beside.add(0, -to, brief.yoursLabel("level"));
        } else if (brief.differs("diameter")) {
            double yours = y.at("diameter") * right.scale / 2;
            Strip.miss(sheet, new Pt(0, -2 * right.radius), new Pt(0, -2 * yours), 12);
            below.add(-yours, yours, -yours, Label.text(brief.say("yours") + " Ø ").then(y.label("diameter")));
            Leader.to(sheet, Ink.YOURS, new Pt(0, -right.radius - yours), 0, Label.text(missText(brief)), 150, 180, 30, 0, 210);
        } else if (brief.differs("length")) {
            double end = right.left + y.at("length") * right.scale;
            if (!right.broken) {
                Miss.along(sheet, new Miss(right.right(), end), new Box(0, -2 * right.radius, 0, 0), below, missText(brief));
                below.add(right.left, end, brief.yoursLabel("length"));
            } else {
                below.add(right.left, right.right(), brief.yoursLabel("length"));
            }
        }
    }
}
