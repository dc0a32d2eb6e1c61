package soapstone.figure;

/** The phantom line under a bar that stands for the bar of an answer. */
final class YoursBar {

    private YoursBar() {}

    /** Draws it as long as the answer's bar, or broken off where it would leave the drawing. */
    static void draw(Sheet sheet, Box bar, double length, double y) {
        double limit = bar.width() * (1 + RowOfHoles.REACH);
        double end = Math.min(length, limit);
        sheet.line(Pen.PHANTOM, 0, y, end, y);
        if (length > limit) {
            Break.end(sheet, Pen.YOURS_THIN, end, y, y);
        }
    }
}
