package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** An angle dimension: an arc with arrows between two directions. */
final class AngleMark {

    /** A smaller angle cannot be seen. */
    private static final double LEAST = 0.5;

    private AngleMark() {}

    /**
     * @param radius    of the arc
     * @param degrees   the two directions, counterclockwise from the right
     * @param arms      how far the thin lines along the directions reach; 0 for none
     */
    static void draw(Sheet sheet, Ink ink, Pt center, double radius, double[] degrees, double arms, Label label) {
        double from = degrees[0];
        double to = degrees[1];
        if (label.isEmpty() || Math.abs(to - from) < LEAST) {
            return;
        }
        sheet.dimension(label, () -> lines(sheet, ink, center, radius, degrees, arms));
        letter(sheet, ink, center, radius, (from + to) / 2, label);
    }

    private static void lines(Sheet sheet, Ink ink, Pt center, double radius, double[] degrees, double arms) {
        double from = degrees[0];
        double to = degrees[1];
        if (arms > 0) {
            sheet.line(ink.line(), center, center.polar(arms, to));
        }
        sheet.path(ink.line(), Path.arc(center, radius, from, to));
        double sign = to > from ? 1 : -1;
        boolean inside = Math.abs(to - from) * Math.PI / 180 * radius > 30;
        double lean = sign * Math.toDegrees(9 / (2 * radius));
        sheet.arrow(ink.arrow(), center.polar(radius, from), from + (inside ? -90 * sign + lean : 90 * sign - lean));
        sheet.arrow(ink.arrow(), center.polar(radius, to), to + (inside ? 90 * sign - lean : -90 * sign + lean));
    }

    private static void letter(Sheet sheet, Ink ink, Pt center, double radius, double direction, Label label) {
        double half = label.width(ink.lettering()) / 2;
        List<Sheet.Spot> spots = new ArrayList<>();
        for (double turn : new double[] {0, 12, -12, 25, -25, 40, -40}) {
            for (double out = 8; out <= 80; out += 8) {
                double reach = radius + out + half * Math.abs(StrictMath.cos(Math.toRadians(direction + turn)));
                Pt p = center.polar(reach, direction + turn);
                spots.add(new Sheet.Spot(p.x(), p.y() + 5, Anchor.MIDDLE));
            }
        }
        sheet.letterFree(label, ink.lettering(), spots);
    }
}
