package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A dimension parallel to a line of any direction. It looks for a free place on both sides of the line, nearest first;
 * its lettering stays level and stands in a break of the dimension line, or above it when the line is level.
 */
final class Aligned {

    private static final double FIRST = 24;
    private static final double STEP = 5;
    private static final int STEPS = 24;
    private static final double TAIL = 18;
    private static final double OVER = 4;

    private final Sheet sheet;
    private final Ink ink;
    private final Pt a;
    private final Pt b;
    private final double direction;
    private final Label label;

    private Aligned(Sheet sheet, Ink ink, Pt a, Pt b, Label label) {
        this.sheet = sheet;
        this.ink = ink;
        this.a = a;
        this.b = b;
        this.direction = a.degreesTo(b);
        this.label = label;
    }

    /**
     * Dimensions the distance between two points.
     *
     * @param side      the side to try first: 1 left of the way from a to b, -1 right of it
     * @param clearance how far extension lines stay off the points
     */
    static void add(Sheet sheet, Ink ink, Pt a, Pt b, int side, double clearance, Label label) {
        if (label.isEmpty() || !(a.distance(b) > 0.01)) {
            return;
        }
        new Aligned(sheet, ink, a, b, label).place(side, clearance);
    }

    private void place(int side, double clearance) {
        for (boolean strict : new boolean[] {true, false}) {
            for (int i = 0; i < STEPS; i++) {
                for (int s : new int[] {side, -side}) {
                    double off = FIRST + STEP * i - (s == side ? 0 : STEP * 2);
                    if (off >= FIRST && tryAt(s, off, clearance, strict)) {
                        return;
                    }
                }
            }
        }
    }

    private boolean tryAt(int side, double off, double clearance, boolean strict) {
        double away = direction + 90 * side;
        Pt from = a.polar(off, away);
        Pt to = b.polar(off, away);
        double length = a.distance(b);
        boolean inside = length >= 2 * TAIL - 6;
        Pt tailA = inside ? from : from.polar(TAIL, direction + 180);
        Pt tailB = inside ? to : to.polar(TAIL, direction);
        if (!sheet.isFreeLine(tailA, tailB) || strict && !(sheet.isFreeLine(a.polar(clearance + 9, away), from)
                && sheet.isFreeLine(b.polar(clearance + 9, away), to))) {
            return false;
        }
        for (Sheet.Spot spot : spots(from, to, away)) {
            Box text = label.box(ink.lettering(), spot.x(), spot.baseline(), spot.anchor());
            if (sheet.isFreeForSize(text)) {
                sheet.dimension(label, () -> lines(new Pt[] {from, to, tailA, tailB}, away, clearance, inside));
                sheet.letter(label, ink.lettering(), spot.x(), spot.baseline(), spot.anchor());
                sheet.keepLine(tailA, tailB);
                return true;
            }
        }
        return false;
    }

    private boolean isLevel() {
        return Math.abs(StrictMath.sin(Math.toRadians(direction))) < 0.2;
    }

    private List<Sheet.Spot> spots(Pt from, Pt to, double away) {
        double drop = ink.lettering().size() * 0.35;
        double width = label.width(ink.lettering());
        double length = from.distance(to);
        Pt middle = from.towards(to, 0.5);
        List<Sheet.Spot> spots = new ArrayList<>();
        if (length >= needed(width)) {
            boolean above = isLevel() && !label.isFramed();
            spots.add(new Sheet.Spot(middle.x(), middle.y() + (above ? -5 : drop), Anchor.MIDDLE));
        }
        for (double reach : new double[] {0, 6, 12}) {
            double half = Math.abs(StrictMath.cos(Math.toRadians(away))) * width / 2
                    + Math.abs(StrictMath.sin(Math.toRadians(away))) * 9;
            Pt beside = middle.polar(half + 6 + reach, away);
            spots.add(new Sheet.Spot(beside.x(), beside.y() + drop, Anchor.MIDDLE));
            for (Pt end : new Pt[] {to.polar(TAIL + reach, direction), from.polar(TAIL + reach, direction + 180)}) {
                boolean right = end.x() >= middle.x();
                Anchor anchor = isLevel() ? right ? Anchor.START : Anchor.END : Anchor.MIDDLE;
                double beyond = isLevel() ? drop : end.y() > middle.y() ? 14 : -4;
                spots.add(new Sheet.Spot(end.x(), end.y() + beyond, anchor));
            }
        }
        return spots;
    }

    /** The length that lettering in or over the line takes, arrows and a bit of line included. */
    private double needed(double width) {
        double cos = Math.abs(StrictMath.cos(Math.toRadians(direction)));
        double sin = Math.abs(StrictMath.sin(Math.toRadians(direction)));
        if (isLevel() && !label.isFramed()) {
            return width + 6;
        }
        double height = label.isFramed() ? Label.FRAME : 15;
        return Math.min(cos < 1e-6 ? 1e9 : width / cos, sin < 1e-6 ? 1e9 : height / sin) + 26;
    }

    private void lines(Pt[] line, double away, double clearance, boolean inside) {
        sheet.line(ink.line(), a.polar(clearance + OVER, away), line[0].polar(OVER, away));
        sheet.line(ink.line(), b.polar(clearance + OVER, away), line[1].polar(OVER, away));
        sheet.line(ink.line(), line[2], line[3]);
        sheet.arrow(ink.arrow(), line[0], direction + (inside ? 180 : 0));
        sheet.arrow(ink.arrow(), line[1], direction + (inside ? 0 : 180));
    }
}
