package soapstone.figure;

/** A panel under water from the front, the surface at y = 0. */
final class PanelFront {

    private static final double WATER = 10;

    private final Brief brief;
    private final double scale;
    private final Box panel;
    private final PanelMiss miss;

    PanelFront(Brief brief, double scale) {
        this.brief = brief;
        this.scale = scale;
        this.panel = panel(brief.right());
        this.miss = PanelMiss.of(brief);
    }

    private Box panel(Values v) {
        return new Box(0, v.at("top") * scale, v.at("width") * scale, (v.at("top") + v.at("height")) * scale);
    }

    private boolean withYours() {
        return brief.isAsCut() && !miss.is("") && !miss.is("center") && !miss.isOffSheet(brief);
    }

    void draw(Sheet sheet) {
        Values v = brief.right();
        sheet.plate(Pen.WATER, new Box(-WATER, 0, panel.right() + WATER, panel.bottom() + 8), "");
        sheet.path(Pen.THIN, Path.line(-WATER, 0, panel.right() + WATER, 0), "surface");
        Surface.sign(sheet, Pen.THIN, panel.width() * 0.5, 0);
        sheet.plate(Pen.VISIBLE, panel, "part");
        if (withYours()) {
            sheet.plate(Pen.PHANTOM, panel(brief.yours()), "yours-part");
        }
        Upright left = new Upright(sheet, -WATER, true, Ink.RIGHT).compact(brief.isNarrow() && brief.isAsCut());
        left.add(panel.top(), panel.bottom(), 0, v.label("height"));
        if (v.at("top") > 0) {
            left.add(0, panel.top(), 0, v.label("top"));
        }
        double low = withYours() ? Math.max(panel.bottom(), panel(brief.yours()).bottom()) : panel.bottom();
        new Across(sheet, low + 2, false, Ink.RIGHT, panel.width() / 2).add(0, panel.right(), panel.bottom(), v.label("width"));
        if (withYours()) {
            drawMiss(sheet, low);
        }
    }

    private void drawMiss(Sheet sheet, double low) {
        Box yours = panel(brief.yours());
        if (miss.is("width")) {
            Across below = new Across(sheet, low + 34, false, Ink.YOURS, panel.right() / 2);
            Miss.along(sheet, new Miss(panel.right(), yours.right()), panel, below, miss.text(brief));
            below.add(0, yours.right(), brief.yoursLabel("width"));
            return;
        }
        double right = miss.is("top") ? panel.top() : panel.bottom();
        double theirs = miss.is("top") ? yours.top() : yours.bottom();
        if (Math.abs(theirs - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(0, Math.min(right, theirs), panel.right(), Math.max(right, theirs)));
        }
        double edge = Math.max(panel.right(), yours.right()) + WATER;
        Upright beside = new Upright(sheet, edge, false, Ink.YOURS).compact(brief.isNarrow());
        beside.add(right, theirs, panel.right(), Label.text(miss.text(brief)));
        beside.add(miss.is("top") ? 0 : yours.top(), theirs, yours.right(), brief.yoursLabel(miss.name()));
    }
}
