package soapstone.figure;

/** A lying drum from the side, its lower left corner at 0, 0; broken when it is long. */
final class DrumSide {

    private final Brief brief;
    private final double scale;
    private final double diameter;
    private final double length;
    private final boolean broken;

    /** @param drawn length that is drawn, in base units */
    DrumSide(Brief brief, double scale, double drawn) {
        this.brief = brief;
        this.scale = scale;
        this.diameter = brief.right().at("diameter") * scale;
        this.length = drawn * scale;
        this.broken = drawn < brief.right().at("length");
    }

    void draw(Sheet sheet) {
        Values v = brief.right();
        if (v.has("level")) {
            double level = Levels.within(v, v.at("diameter")) * scale;
            sheet.plate(Pen.WATER, new Box(0, -level, length, 0), "");
            sheet.line(Pen.THIN, 0, -level, length, -level);
        }
        sheet.plate(Pen.VISIBLE, new Box(0, -diameter, length, 0), "side");
        sheet.line(Pen.CENTER, -8, -diameter / 2, length + 8, -diameter / 2);
        if (broken) {
            Break.plumb(sheet, length / 2, -diameter, 0);
        }
        DrumMiss miss = DrumMiss.of(brief);
        boolean withYours = brief.isAsCut() && !miss.isOffSheet(brief);
        if (withYours) {
            drawYours(sheet);
        }
        new Across(sheet, sheet.bounds().top(), true, Ink.RIGHT, length / 2).add(0, length, -diameter, v.label("length"));
        if (withYours && miss.is("length")) {
            Across below = new Across(sheet, 2, false, Ink.YOURS, length / 2);
            if (!broken) {
                Miss.along(sheet, new Miss(length, yoursLength()), new Box(0, -diameter, 0, 0), below, miss.text(brief));
            }
            below.add(0, yoursLength(), brief.yoursLabel("length"));
        }
    }

    private double yoursLength() {
        return broken ? length : brief.yours().at("length") * scale;
    }

    private void drawYours(Sheet sheet) {
        Values y = brief.yours();
        if (brief.differs("diameter") || brief.differs("length")) {
            sheet.plate(Pen.PHANTOM, new Box(0, -y.at("diameter") * scale, yoursLength(), 0), "yours-side");
        }
        if (y.has("level")) {
            double level = Levels.within(y, y.at("diameter")) * scale;
            sheet.line(Pen.PHANTOM, 0, -level, yoursLength(), -level);
        }
    }
}
