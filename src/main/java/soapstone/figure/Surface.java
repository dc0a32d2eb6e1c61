package soapstone.figure;

import java.util.List;

/** The surface of a liquid seen from the side: a line, the usual triangle on it, two short strokes under it. */
final class Surface {

    private Surface() {}

    /** Draws the sign with its tip on the surface. */
    static void sign(Sheet sheet, Pen pen, double x, double y) {
        sheet.path(pen, Path.polygon(List.of(new Pt(x, y), new Pt(x - 5, y - 8), new Pt(x + 5, y - 8))));
        sheet.line(pen, x - 6, y + 3.5, x + 6, y + 3.5);
        sheet.line(pen, x - 3, y + 7, x + 3, y + 7);
        sheet.keep(new Box(x - 7, y - 9, x + 7, y + 8));
    }
}
