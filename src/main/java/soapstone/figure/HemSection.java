package soapstone.figure;

/** A side of a pan in section: the bottom broken off, the side standing up, its hem turned in. The sheet is drawn thicker. */
final class HemSection {

    private static final double TALL = 120;
    private static final double SHEET = 4;
    private static final double OPEN = 3;
    private static final double BOTTOM = 64;

    private HemSection() {}

    /** Takes {@code side}, and {@code hem} where there is one, both to one scale. */
    static void draw(Values v, Sheet sheet) {
        double hem = v.has("hem") ? v.at("hem") : 0;
        double scale = TALL / Math.max(v.at("side"), hem);
        double side = v.at("side") * scale;
        sheet.plate(Pen.SECTION, new Box(0, -side, SHEET, 0), "side");
        sheet.plate(Pen.SECTION, new Box(0, -SHEET, BOTTOM, 0), "");
        Break.end(sheet, Pen.BREAK, BOTTOM, -SHEET, 0);
        if (hem > 0) {
            double inner = SHEET + OPEN;
            sheet.plate(Pen.SECTION, new Box(0, -side, inner + SHEET, -side + SHEET), "");
            sheet.plate(Pen.SECTION, new Box(inner, -side, inner + SHEET, -side + hem * scale), "hem");
            new Upright(sheet, inner + SHEET, false, Ink.RIGHT).add(-side, -side + hem * scale, v.label("hem"));
        }
        new Upright(sheet, 0, true, Ink.RIGHT).add(-side, 0, v.label("side"));
    }
}
