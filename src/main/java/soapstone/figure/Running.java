package soapstone.figure;

import java.util.Arrays;

/** One dimension line from the left end with an arrow at every place, and the letter of the asked list behind it. */
final class Running {

    private Running() {}

    /**
     * @param places x of the places
     * @param from   y where the extension lines of the places start
     * @param y      of the line
     * @return the top of what was drawn
     */
    static double draw(Sheet sheet, double[] places, double from, double y, Label letter) {
        for (double x : places) {
            sheet.line(Pen.THIN, x, from, x, y - 4);
            sheet.arrow(Pen.ARROW, new Pt(x, y), 0);
        }
        double far = Arrays.stream(places).max().orElse(0);
        sheet.line(Pen.THIN, 0, -4, 0, y - 4);
        sheet.line(Pen.THIN, 0, y, far + 8, y);
        sheet.keep(new Box(0, y - 2, far + 8, y + 2));
        sheet.letter(letter, Lettering.TEXT, far + 10, y + 5, Anchor.START);
        return y - 8;
    }
}
