package soapstone.figure;

import java.util.List;

/** The thick arrow of a force or a weight, with its tip at a point. */
final class Force {

    private static final double HEAD = 13;
    private static final double HALF = 4.5;

    private Force() {}

    /**
     * @param degrees where the arrow points to, counterclockwise from the right
     * @param length  of the whole arrow; one shorter than its head is drawn as the head
     */
    static void draw(Sheet sheet, Ink ink, Pt tip, double degrees, double length, String role) {
        Pt tail = tip.polar(Math.max(length, HEAD), degrees + 180);
        Pt neck = tip.polar(HEAD - 1, degrees + 180);
        boolean yours = ink == Ink.YOURS;
        sheet.path(yours ? Pen.PHANTOM : Pen.VISIBLE, Path.line(tail.x(), tail.y(), neck.x(), neck.y()), role);
        Pt back = tip.polar(HEAD, degrees + 180);
        sheet.path(yours ? Pen.YOURS_ARROW : Pen.SECTION,
                Path.polygon(List.of(tip, back.polar(HALF, degrees + 90), back.polar(HALF, degrees - 90))));
    }
}
