package soapstone.figure;

/** A number in a small circle, such as the number of a bend. */
final class Balloon {

    private static final double RADIUS = 9.5;

    private Balloon() {}

    static boolean tryAt(Sheet sheet, Pt center, int number) {
        Box room = Box.around(center, center).grown(RADIUS - 1);
        if (!sheet.isFree(room)) {
            return false;
        }
        sheet.letter(Label.text(Integer.toString(number)), Lettering.NUMBER, center.x(), center.y() + 4.5, Anchor.MIDDLE);
        sheet.circle(Pen.THIN, center, RADIUS, "balloon");
        sheet.keep(room.grown(1));
        return true;
    }
}
