package soapstone.figure;

/**
 * The hatched span of an error along a part.
 *
 * @param right where it belongs, in SVG units
 * @param yours where the answer puts it
 */
record Miss(double right, double yours) {

    private static final double LEAST_SEEN = 1.5;

    /** Hatches the span over the height of a box and dimensions it; nothing where it is too small to see. */
    static void along(Sheet sheet, Miss miss, Box height, Across below, String text) {
        double a = Math.min(miss.right, miss.yours);
        double b = Math.max(miss.right, miss.yours);
        if (b - a >= LEAST_SEEN) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(a, height.top(), b, height.bottom()));
            below.add(a, b, Label.text(text));
        }
    }
}
