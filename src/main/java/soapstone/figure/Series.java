package soapstone.figure;

import java.util.stream.IntStream;

/**
 * Which members of a row are drawn. A row that is asked to be counted, or that is too dense to see, is broken in the
 * middle: its first and last members stand for all.
 *
 * @param indices    the members that are drawn, rising
 * @param breakAfter the member behind which the row is broken, or -1
 */
record Series(int[] indices, int breakAfter) {

    private static final double LEAST_APART = 5;
    private static final int MOST = 70;

    /**
     * @param apart   distance between neighbors in SVG units
     * @param toCount true when the count must not be read off the drawing
     */
    static Series of(int count, double apart, boolean toCount) {
        boolean dense = count > MOST || apart < LEAST_APART && count > 2;
        if (!dense && (!toCount || count < 3)) {
            return new Series(IntStream.range(0, count).toArray(), -1);
        }
        int first = count > 5 && !dense ? 3 : Math.min(2, count - 1);
        return new Series(IntStream.concat(IntStream.range(0, first), IntStream.of(count - 1)).toArray(), first - 1);
    }

    boolean isBroken() {
        return breakAfter >= 0;
    }

    /** The first of two drawn neighbors that a spacing is dimensioned between: near the middle, or the first pair. */
    int pair() {
        return isBroken() ? Math.max(0, breakAfter - 1) : Math.max(0, (indices.length - 1) / 2);
    }
}
