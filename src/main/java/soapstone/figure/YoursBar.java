package soapstone.figure;

/** The phantom line under a bar that stands for the bar of an answer. */
final class YoursBar {

    private YoursBar() {}

    /** Draws it to the length of the answer's bar, or broken off where it would leave the drawing. */
    static void draw(Sheet sheet, Reach reach, double length, double y) {
        double end = reach.clip(length);
        sheet.line(Pen.PHANTOM, 0, y, end, y);
        if (end < length - 0.01) {
            Break.end(sheet, Pen.YOURS_THIN, end, y, y);
        }
    }
}
