package soapstone.figure;

import java.util.List;

/**
 * The welding symbol of a fillet on the side of the arrow: the triangle under the reference line, its plumb leg always to
 * the left, the leg's size before it and length and pitch of the stitches behind it.
 */
final class WeldSymbol {

    private static final double SIDE = 15;
    private static final double AIR = 6;
    private static final double PAST = 8;

    private WeldSymbol() {}

    /**
     * @param tip   where the arrow points to
     * @param elbow where the arrow's line meets the reference line
     * @param left  whether the reference line runs to the left of the elbow; the symbol reads the same both ways
     */
    static void draw(Sheet sheet, Pt tip, Pt elbow, boolean left, Label size, Label stitches) {
        double before = size.isEmpty() ? 12 : size.width(Lettering.TEXT) + 2 * AIR + 4;
        double behind = stitches.isEmpty() ? 12 : AIR + stitches.width(Lettering.TEXT);
        double length = before + SIDE + behind + PAST;
        double start = elbow.x() - (left ? length : 0);
        double x = start + before;
        double y = elbow.y();
        sheet.line(Pen.THIN, start, y, start + length, y);
        sheet.line(Pen.THIN, elbow, tip);
        sheet.arrow(Pen.ARROW, tip, elbow.degreesTo(tip));
        sheet.path(Pen.BEND, Path.polyline(List.of(new Pt(x, y), new Pt(x, y + SIDE), new Pt(x + SIDE, y))), "fillet-sign");
        double baseline = y + (size.isFramed() || stitches.isFramed() ? 17 : 15);
        sheet.letter(size, Lettering.TEXT, x - AIR, baseline, Anchor.END);
        sheet.letter(stitches, Lettering.TEXT, x + SIDE + AIR, baseline, Anchor.START);
        sheet.keep(new Box(start, y - 2, start + length, y + SIDE + 6));
    }

    /** Length and pitch as the symbol writes them, such as 2 – 6; empty where one is not told. */
    static Label stitches(Values v) {
        Label length = v.has("stitch") ? v.label("stitch") : Label.NONE;
        Label pitch = v.has("pitch") ? v.label("pitch") : Label.NONE;
        return length.isEmpty() || pitch.isEmpty() ? Label.NONE : length.then(length.isFramed() ? "–" : " – ").then(pitch);
    }
}
