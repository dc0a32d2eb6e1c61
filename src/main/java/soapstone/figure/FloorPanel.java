package soapstone.figure;

import java.util.List;

/**
 * A level panel that rests on bearers all round, under water: from above with its clear spans, and in section across the
 * short side with the even load.
 */
final class FloorPanel implements Drawer {

    private static final double BETWEEN = 44;
    private static final double BEARER = 16;
    private static final double LEAST_THICK = 3;
    private static final double DEEPEST = 90;
    private static final double SAG = 11;
    private static final int ARROWS = 9;
    private static final double ARROW = 26;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("long"), FigureArgument.length("short"), FigureArgument.length("thickness"),
                FigureArgument.length("depth"));
    }

    @Override
    public boolean canDraw(Values v) {
        double wide = v.at("short");
        return wide > 0 && v.at("long") >= wide && v.at("long") < 12 * wide && v.at("thickness") > 0 && v.at("thickness") < wide / 2
                && v.at("depth") > 0;
    }

    @Override
    public String title(Brief brief) {
        return brief.say("floor-panel.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say("floor-panel.is").value(v, "long", "floor-panel.long").value(v, "short", "floor-panel.short")
                .value(v, "thickness", "fold.thickness").value(v, "depth", "floor-panel.depth").say("floor-panel.scale");
    }

    @Override
    public List<Label> notes(Brief brief) {
        return List.of(Label.text(brief.say("floor-panel.scale")));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        boolean stacked = brief.isNarrow();
        double half = stacked ? room : Math.max(10, room - BETWEEN) / 2;
        Sheet plan = new Sheet();
        plan(brief, plan, half);
        Sheet section = new Sheet();
        section(brief, section, Math.max(40, stacked ? half * 0.8 : half));
        Box a = plan.bounds();
        Box b = section.bounds();
        double dx = stacked ? a.left() + (a.width() - b.width()) / 2 - b.left() : a.right() + BETWEEN - b.left();
        double dy = stacked ? a.bottom() + BETWEEN - b.top() : a.bottom() - b.bottom();
        sheet.add(plan, 0, 0);
        sheet.add(section, dx, dy);
        caption(sheet, brief, "floor-panel.above", a, 0, 0);
        caption(sheet, brief, "floor-panel.section", b, dx, dy);
    }

    private static void caption(Sheet sheet, Brief brief, String key, Box view, double dx, double dy) {
        sheet.letter(Label.text(brief.say(key)), Lettering.NOTE, dx + view.left() + view.width() / 2, dy + view.bottom() + 20, Anchor.MIDDLE);
    }

    private static void plan(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(Math.max(10, room - 2 * BEARER) / v.at("long"), (brief.isNarrow() ? 120 : 150) / v.at("short"));
        Box clear = new Box(0, 0, v.at("long") * scale, v.at("short") * scale);
        Box all = clear.grown(BEARER);
        sheet.plate(Pen.WATER, all, "");
        sheet.plate(Pen.GAP, clear, "");
        sheet.plate(Pen.VISIBLE, all, "plate");
        sheet.plate(Pen.HIDDEN, clear, "clear");
        new Across(sheet, all.top(), true, Ink.RIGHT, clear.width() / 2).add(0, clear.right(), clear.top(), v.label("long"));
        new Upright(sheet, all.left(), true, Ink.RIGHT).add(0, clear.bottom(), clear.left(), v.label("short"));
    }

    /** The section, to a scale of its own: the upper face of the bearers at y = 0. */
    private static void section(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double span = Math.max(30, room - 2 * BEARER);
        double scale = span / v.at("short");
        double thick = Math.max(LEAST_THICK, v.at("thickness") * scale);
        boolean broken = v.at("depth") * scale > DEEPEST;
        double surface = -thick - (broken ? DEEPEST : v.at("depth") * scale);
        Box water = new Box(-BEARER, surface, span + BEARER, -thick);
        sheet.plate(Pen.WATER, water, "");
        sheet.path(Pen.THIN, Path.line(water.left(), surface, water.right(), surface), "surface");
        Surface.sign(sheet, Pen.THIN, span * 0.75, surface);
        load(sheet, span, thick, Math.min(ARROW, -thick - surface - 4));
        bearer(sheet, -BEARER);
        bearer(sheet, span);
        sheet.plate(Pen.SECTION, new Box(-BEARER, -thick, span + BEARER, 0), "section-plate");
        sag(sheet, span);
        if (broken) {
            Break.level(sheet, surface + 32, water.left(), water.right());
        }
        new Upright(sheet, water.right(), false, Ink.RIGHT).add(surface, -thick, v.label("depth"));
        new Upright(sheet, water.left(), true, Ink.RIGHT).add(-thick, 0, v.label("thickness"));
        new Across(sheet, 2 * BEARER, false, Ink.RIGHT, span / 2).add(0, span, v.label("short"));
    }

    private static void load(Sheet sheet, double span, double thick, double reach) {
        for (int i = 0; i < ARROWS && reach > 12; i++) {
            double x = span * (i + 0.5) / ARROWS;
            Pt tip = new Pt(x, -thick - 1);
            sheet.line(Pen.THIN, x, tip.y() - reach, x, tip.y());
            sheet.arrow(Pen.ARROW, tip, -90);
        }
    }

    private static void bearer(Sheet sheet, double left) {
        Box box = new Box(left, 0, left + BEARER, 2 * BEARER);
        Hatch.fill(sheet, Pen.HATCH, box);
        sheet.plate(Pen.VISIBLE, box, "bearer");
    }

    /** How the panel bends under the load, much larger than it does. */
    private static void sag(Sheet sheet, double span) {
        double radius = span * span / 8 / SAG + SAG / 2;
        double half = Math.toDegrees(StrictMath.asin(span / 2 / radius));
        sheet.path(Pen.HIDDEN, Path.arc(new Pt(span / 2, SAG - radius), radius, -90 - half, -90 + half), "sag");
    }
}
