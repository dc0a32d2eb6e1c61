package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * The section of a folded sheet in real units, y up: where each leg runs, where each bend turns. Legs are outside sizes,
 * from free end or outside corner to outside corner; a straight part is its leg less the setbacks of its bends.
 */
final class FoldLine {

    /** From here on an outside corner is so far off that the leg is taken to the outside of the bend itself. */
    private static final double HEM = 170;

    /**
     * One leg. Points lie on the middle of the thickness.
     *
     * @param from    start of the straight part
     * @param to      end of it
     * @param heading in degrees counterclockwise from the right
     * @param outer0  where the leg's size starts: the free end, or level with the outside corner
     * @param outer1  where it ends
     */
    record Leg(Pt from, Pt to, double heading, Pt outer0, Pt outer1) {}

    /** One bend: the center of its curve and the direction from there in which it starts. */
    record Bend(Pt center, double startDirection, double turn) {}

    private final double thickness;
    private final double radius;
    private final List<Leg> legs = new ArrayList<>();
    private final List<Bend> bends = new ArrayList<>();

    /** @param thickness of the sheet as drawn, which may be more than the real one */
    FoldLine(double thickness, double radius, double[] sizes, double[] turns) {
        this.thickness = thickness;
        this.radius = radius;
        Pt at = new Pt(0, 0);
        double heading = 0;
        for (int i = 0; i < sizes.length; i++) {
            double before = i == 0 ? 0 : setback(turns[i - 1]);
            double after = i < turns.length && i < sizes.length - 1 ? setback(turns[i]) : 0;
            double straight = Math.max(0, sizes[i] - before - after);
            Pt end = up(at, straight, heading);
            legs.add(new Leg(at, end, heading, up(at, -before, heading), up(end, after, heading)));
            if (i < sizes.length - 1) {
                double turn = turns[i];
                double side = turn >= 0 ? 90 : -90;
                double middle = radius + thickness / 2;
                Pt center = up(end, middle, heading + side);
                bends.add(new Bend(center, heading - side, turn));
                at = up(center, middle, heading - side + turn);
                heading += turn;
            } else {
                at = end;
            }
        }
    }

    private double setback(double turn) {
        double size = Math.abs(turn);
        double factor = size > HEM ? 1 : StrictMath.tan(Math.toRadians(size / 2));
        return factor * (radius + thickness);
    }

    /** Here y runs up, unlike on the sheet. */
    private static Pt up(Pt p, double distance, double degrees) {
        double a = Math.toRadians(degrees);
        return new Pt(p.x() + distance * StrictMath.cos(a), p.y() + distance * StrictMath.sin(a));
    }

    List<Leg> legs() {
        return legs;
    }

    List<Bend> bends() {
        return bends;
    }

    double thickness() {
        return thickness;
    }

    double radius() {
        return radius;
    }

    int longest() {
        int longest = 0;
        for (int i = 1; i < legs.size(); i++) {
            if (size(i) > size(longest) * 1.0001) {
                longest = i;
            }
        }
        return longest;
    }

    double size(int leg) {
        return legs.get(leg).outer0().distance(legs.get(leg).outer1());
    }
}
