package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;

/**
 * A drawing on the table with a ruler beside it: the amounts that it was made from, in base units, and what the SVG has where. It
 * counts how much was measured, so that a test can tell a drawing that holds from one where nothing was found.
 */
final class Paper {

    private static final double PIXEL = 1;
    private static final double MOST_LONGER = 1.4;
    private static final double STUB = 1.08;

    final DrawnSvg svg;
    private final Values right;
    private final Values yours;
    private int taken;
    private int takenOfYours;

    /** @param yours the answer's part, or null */
    Paper(FigureInput right, FigureInput yours, DrawnSvg svg) {
        this.right = new Values(right);
        this.yours = yours == null ? null : new Values(yours);
        this.svg = svg;
    }

    boolean has(String name) {
        return right.has(name);
    }

    double at(String name) {
        return right.at(name);
    }

    double[] all(String name) {
        return right.all(name);
    }

    int count(String name) {
        return right.count(name);
    }

    boolean isHidden(String name) {
        return right.isHidden(name);
    }

    boolean isMetric() {
        return right.system() != soapstone.quantity.UnitSystem.US;
    }

    boolean isAsCut() {
        return yours != null;
    }

    /** An amount of the answer's part; the right one's where the answer has no part. */
    double theirs(String name) {
        return yours == null ? right.at(name) : yours.at(name);
    }

    double[] allOfTheirs(String name) {
        return yours.all(name);
    }

    int countOfTheirs(String name) {
        return yours.count(name);
    }

    boolean differs(String name) {
        return yours != null && Math.abs(yours.at(name) - right.at(name)) > 1e-9 * Math.max(1, Math.abs(right.at(name)));
    }

    /** Two sizes on the paper, the measured and the one that the amounts make, within a pixel. */
    void same(String what, double measured, double wanted) {
        same(what, measured, wanted, PIXEL);
    }

    void same(String what, double measured, double wanted, double within) {
        taken++;
        assertThat(measured).as(what).isCloseTo(wanted, Offset.offset(within));
    }

    /** The same of something that belongs to the answer's part. */
    void yours(String what, double measured, double wanted) {
        takenOfYours++;
        same("yours: " + what, measured, wanted);
    }

    /** Something stands at one of some places. */
    void oneOf(String what, double measured, double... places) {
        double nearest = Double.NaN;
        for (double place : places) {
            nearest = Double.isNaN(nearest) || Math.abs(place - measured) < Math.abs(nearest - measured) ? place : nearest;
        }
        same(what, measured, nearest);
    }

    /** A row: as many pieces as the count says stand each at its place, fewer (a broken row) each at some place of it. */
    void row(String what, List<Double> measured, int count, double first, double step) {
        for (int i = 0; i < measured.size(); i++) {
            boolean all = measured.size() == count;
            long place = all ? i : Math.max(0, Math.min(count - 1, Math.round((measured.get(i) - first) / step)));
            same(what + " " + (place + 1), measured.get(i), first + place * step);
        }
    }

    void rowOfTheirs(String what, List<Double> measured, int count, double first, double step) {
        takenOfYours += measured.size();
        row("yours: " + what, measured, count, first, step);
    }

    /**
     * The phantom line under a bar that stands for the bar of an answer; one that is much longer is drawn as a stub.
     *
     * @param y     where it lies
     * @param left  where it begins
     * @param right how long the right bar is
     * @param own   how long the answer's is
     */
    void yoursBar(double y, double left, double right, double own) {
        List<Pt[]> lines = svg.pieces("phantom").stream().filter(p -> Math.abs(p[0].y() - y) < 0.6 && Math.abs(p[0].x() - left) < 0.6).toList();
        assertThat(lines).as("the bar of the answer").hasSize(1);
        yours("bar", lines.get(0)[1].x() - left, own > MOST_LONGER * right ? STUB * right : own);
    }

    Box part() {
        return svg.rectangle("part");
    }

    Box path(String role) {
        return svg.paths(role).get(0);
    }

    List<Box> paths(String role) {
        return svg.paths(role);
    }

    boolean shows(String role) {
        return !svg.paths(role).isEmpty();
    }

    static List<Double> lefts(List<Box> boxes) {
        return boxes.stream().map(Box::left).toList();
    }

    static List<Double> middles(List<Box> boxes) {
        return boxes.stream().map(Measuring::middle).toList();
    }

    static List<Double> from(double origin, List<Double> places) {
        List<Double> all = new ArrayList<>();
        places.forEach(p -> all.add(p - origin));
        return all;
    }

    static double diagonal(Box box) {
        return Math.hypot(box.width(), box.height());
    }

    int taken() {
        return taken;
    }

    int takenOfYours() {
        return takenOfYours;
    }
}
