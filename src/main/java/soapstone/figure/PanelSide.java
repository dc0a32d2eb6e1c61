package soapstone.figure;

import java.util.List;

/** A panel under water from the side: its edge at x = 0, the surface at y = 0, the pressure against it as a diagram. */
final class PanelSide {

    private static final double WATER = 24;
    private static final double TAIL = 4;
    private static final int ARROWS = 7;

    private final Brief brief;
    private final double diagram;

    /** @param diagram width of the pressure at the panel's lower edge */
    PanelSide(Brief brief, double diagram) {
        this.brief = brief;
        this.diagram = diagram;
    }

    double width() {
        return WATER + diagram + TAIL;
    }

    void draw(Sheet sheet, double scale) {
        Values v = brief.right();
        double top = v.at("top") * scale;
        double bottom = top + v.at("height") * scale;
        sheet.plate(Pen.WATER, new Box(0, 0, diagram + TAIL, bottom + 8), "");
        sheet.path(Pen.THIN, Path.line(-WATER, 0, diagram + TAIL, 0), "surface-side");
        sheet.path(Pen.VISIBLE, Path.line(0, top, 0, bottom), "edge");
        pressure(sheet, top, bottom);
        PanelMiss miss = PanelMiss.of(brief);
        boolean withYours = miss.is("center") && !miss.isOffSheet(brief);
        if (v.has("center")) {
            force(sheet, v.at("center") * scale, Pen.VISIBLE, "center-of-pressure");
        }
        if (withYours) {
            force(sheet, brief.yours().at("center") * scale, Pen.PHANTOM, "yours-center");
        }
        Upright right = new Upright(sheet, diagram + TAIL, false, Ink.RIGHT);
        right.add(0, v.has("center") ? v.at("center") * scale : 0, v.label("center"));
        if (withYours) {
            drawMiss(sheet, scale, miss);
        }
    }

    private void pressure(Sheet sheet, double top, double bottom) {
        sheet.path(Pen.THIN, Path.polygon(List.of(new Pt(0, top), new Pt(diagram * top / bottom, top), new Pt(diagram, bottom),
                new Pt(0, bottom))), "pressure");
        for (int i = 0; i < ARROWS; i++) {
            double y = top + (bottom - top) * (i + 0.5) / ARROWS;
            double reach = diagram * y / bottom;
            if (reach > 12 && bottom - top > ARROWS * 5) {
                sheet.line(Pen.THIN, 1, y, reach, y);
                sheet.arrow(Pen.ARROW, new Pt(1, y), 180);
            }
        }
    }

    /** The whole force as one arrow at the center of pressure. */
    private void force(Sheet sheet, double depth, Pen pen, String role) {
        sheet.path(pen, Path.line(12, depth, diagram + TAIL, depth), role);
        Pt tip = new Pt(1, depth);
        sheet.path(pen == Pen.VISIBLE ? Pen.SECTION : Pen.YOURS_ARROW,
                Path.polygon(List.of(tip, tip.plus(13, -4.5), tip.plus(13, 4.5))));
    }

    private void drawMiss(Sheet sheet, double scale, PanelMiss miss) {
        double right = brief.right().at("center") * scale;
        double yours = brief.yours().at("center") * scale;
        if (Math.abs(yours - right) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(0, Math.min(right, yours), diagram, Math.max(right, yours)));
        }
        Upright beside = new Upright(sheet, diagram + TAIL, false, Ink.YOURS).compact(brief.isNarrow());
        beside.add(right, yours, Label.text(miss.text(brief)));
        beside.add(0, yours, brief.yoursLabel("center"));
    }
}
