package soapstone.figure;

import java.util.List;

/** A ruled table of numbered values, for more of them than can stand on the part. */
final class Table {

    private static final double ROW = 22;
    private static final double AIR = 7;

    private Table() {}

    /** Draws value i (from 0) under number i + 1, filled row by row, from a top edge downwards. */
    static void draw(Sheet sheet, List<Label> values, double width, double top) {
        double number = Glyphs.width(Integer.toString(values.size()), Lettering.NUMBER.size()) + 2 * AIR;
        double widest = values.stream().mapToDouble(v -> v.width(Lettering.TEXT)).max().orElse(0) + 2 * AIR;
        double cell = number + widest;
        int columns = Math.max(1, Math.min(values.size(), (int) (width / cell)));
        int rows = (values.size() + columns - 1) / columns;
        double left = (width - columns * cell) / 2;
        for (int r = 0; r <= rows; r++) {
            sheet.line(Pen.THIN, left, top + r * ROW, left + columns * cell, top + r * ROW);
        }
        for (int c = 0; c <= columns; c++) {
            sheet.line(Pen.THIN, left + c * cell, top, left + c * cell, top + rows * ROW);
        }
        for (int i = 0; i < values.size(); i++) {
            double x = left + i % columns * cell;
            double baseline = top + i / columns * ROW + 16;
            sheet.letter(Label.text(Integer.toString(i + 1)), Lettering.NUMBER, x + number - AIR, baseline, Anchor.END);
            sheet.letter(values.get(i), Lettering.TEXT, x + number + AIR, baseline, Anchor.START);
        }
    }
}
