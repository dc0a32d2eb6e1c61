package soapstone.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Lines at 45°, 5 apart, cut off at the sides of a polygon. Drawn out one by one: a pattern would need an id. */
final class Hatch {

    private static final double APART = 5 * Math.sqrt(2);
    private static final int MOST = 600;

    private Hatch() {}

    static void fill(Sheet sheet, Pen pen, Box box) {
        fill(sheet, pen, List.of(new Pt(box.left(), box.top()), new Pt(box.right(), box.top()),
                new Pt(box.right(), box.bottom()), new Pt(box.left(), box.bottom())));
    }

    /** Fills a polygon; every line runs where x + y is constant, or where y - x is when a long side would hide that. */
    static void fill(Sheet sheet, Pen pen, List<Pt> corners) {
        fill(sheet, pen, corners, runsUphill(corners));
    }

    /** Fills a polygon with lines in one of both directions. */
    static void fill(Sheet sheet, Pen pen, List<Pt> corners, boolean turned) {
        List<Pt> level = turned ? corners.stream().map(p -> new Pt(-p.x(), p.y())).toList() : corners;
        int sign = turned ? -1 : 1;
        double low = level.stream().mapToDouble(p -> p.x() + p.y()).min().orElse(0);
        double high = level.stream().mapToDouble(p -> p.x() + p.y()).max().orElse(0);
        if (!(high - low < MOST * APART)) {
            return;
        }
        for (double sum = low + APART / 2; sum < high; sum += APART) {
            List<Double> cuts = cuts(level, sum);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                sheet.line(pen, sign * cuts.get(i), sum - cuts.get(i), sign * cuts.get(i + 1), sum - cuts.get(i + 1));
            }
        }
    }

    /** Whether the first side runs nearly as the hatch would. */
    private static boolean runsUphill(List<Pt> corners) {
        double degrees = Math.floorMod(Math.round(corners.get(0).degreesTo(corners.get(1))), 180L);
        return Math.abs(degrees - 45) < 30;
    }

    private static List<Double> cuts(List<Pt> corners, double sum) {
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Pt a = corners.get(i);
            Pt b = corners.get((i + 1) % corners.size());
            double sa = a.x() + a.y() - sum;
            double sb = b.x() + b.y() - sum;
            if (sa < 0 != sb < 0) {
                xs.add(a.x() + (b.x() - a.x()) * sa / (sa - sb));
            }
        }
        Collections.sort(xs);
        return xs;
    }
}
