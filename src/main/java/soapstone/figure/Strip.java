package soapstone.figure;

import java.util.List;

/** A straight band between two points, such as the hatched way from where a hole belongs to where it lands. */
final class Strip {

    private Strip() {}

    static List<Pt> between(Pt a, Pt b, double width) {
        double across = a.degreesTo(b) + 90;
        return List.of(a.polar(width / 2, across), b.polar(width / 2, across), b.polar(-width / 2, across),
                a.polar(-width / 2, across));
    }

    /** Draws the strip of a miss: hatched, in a thin outline. */
    static void miss(Sheet sheet, Pt a, Pt b, double width) {
        List<Pt> corners = between(a, b, width);
        Hatch.fill(sheet, Pen.YOURS_HATCH, corners);
        sheet.path(Pen.YOURS_THIN, Path.polygon(corners));
    }
}
