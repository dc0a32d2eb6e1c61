package soapstone.figure;

import java.util.List;

/**
 * Running dimensions from one end: each mark has a line up to its own lettering, in steps so that no line runs through
 * the lettering of another.
 */
final class Ordinates {

    private static final double STEP = 19;
    private static final double AIR = 7;
    private static final int MOST_STEPS = 6;

    private final List<Double> places;
    private final List<Label> labels;
    private final int[] steps;

    /** @param places rising x of the marks */
    Ordinates(List<Double> places, List<Label> labels) {
        this.places = places;
        this.labels = labels;
        this.steps = steps();
    }

    private int[] steps() {
        int[] s = new int[places.size()];
        for (int i = s.length - 1; i >= 0; i--) {
            double end = places.get(i) + 4 + labels.get(i).width(Lettering.TEXT) + AIR;
            for (int j = i + 1; j < s.length && places.get(j) < end; j++) {
                s[i] = Math.max(s[i], s[j] + 1);
            }
        }
        return s;
    }

    /** Whether the steps stay low enough to be read; otherwise the values belong into a table. */
    boolean isReadable() {
        for (int s : steps) {
            if (s > MOST_STEPS) {
                return false;
            }
        }
        return !places.isEmpty();
    }

    /** Draws them upwards from an edge; gives the top of what was drawn. */
    double draw(Sheet sheet, double edge, double from) {
        double top = edge;
        for (int i = 0; i < steps.length; i++) {
            double x = places.get(i);
            double y = edge - 14 - STEP * steps[i];
            sheet.line(Pen.THIN, x, from - 4, x, y - 9);
            sheet.letter(labels.get(i), Lettering.TEXT, x + 5, y, Anchor.START);
            top = Math.min(top, y - 12);
        }
        return top;
    }
}
