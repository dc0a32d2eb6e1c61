package soapstone.figure;

/** A line from a feature out to its lettering, with an arrow at the feature. */
final class Leader {

    private static final double SHELF = 8;
    private static final double[] REACHES = {18, 26, 36, 48, 64, 84};

    private Leader() {}

    /**
     * Letters a circle or a point from outside: tries the directions in turn, near first.
     *
     * @param radius   of the circle; 0 for a point
     * @param degrees  directions from the center, counterclockwise from the right
     * @return false when there is no free place; then nothing is drawn
     */
    static boolean to(Sheet sheet, Ink ink, Pt center, double radius, Label label, double... degrees) {
        if (label.isEmpty()) {
            return true;
        }
        for (double reach : REACHES) {
            for (double direction : degrees) {
                if (tryAt(sheet, ink, center, radius, label, direction, reach)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean tryAt(Sheet sheet, Ink ink, Pt center, double radius, Label label, double direction, double reach) {
        Pt tip = center.polar(radius, direction);
        Pt knee = center.polar(radius + reach, direction);
        boolean right = knee.x() >= center.x();
        Pt end = knee.plus(right ? SHELF : -SHELF, 0);
        double baseline = end.y() + ink.lettering().size() * 0.35;
        Anchor anchor = right ? Anchor.START : Anchor.END;
        double x = end.x() + (right ? 3 : -3);
        Box text = label.box(ink.lettering(), x, baseline, anchor);
        if (!sheet.isFreeForSize(text)) {
            return false;
        }
        sheet.dimension(label, () -> {
            sheet.line(ink.line(), tip, knee);
            sheet.line(ink.line(), knee, end);
            sheet.arrow(ink.arrow(), tip, direction + 180);
        });
        sheet.keep(Box.around(knee, end).grown(1));
        sheet.letter(label, ink.lettering(), x, baseline, anchor);
        return true;
    }
}
