package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * One bend in section, in any unit: the outside face of the first leg lies level and ends at 0, 0, where the bend begins;
 * the metal lies above it, and the second leg stands up.
 *
 * @param thickness of the sheet
 * @param radius    inside
 * @param angle     turned through, in degrees
 * @param first     straight part of the first leg, as far as it is drawn
 * @param second    straight part of the second leg, as far as it is drawn
 */
record BendShape(double thickness, double radius, double angle, double first, double second) {

    private static final double START = -90;
    private static final int PIECES = 24;

    BendShape scaled(double by) {
        return new BendShape(thickness * by, radius * by, angle, first * by, second * by);
    }

    double outer() {
        return radius + thickness;
    }

    Pt center() {
        return new Pt(0, -outer());
    }

    /** The direction from the center to where the bend ends; it starts straight below. */
    double end() {
        return START + angle;
    }

    double middle() {
        return START + angle / 2;
    }

    /** Where the outside faces would meet. */
    Pt corner() {
        return new Pt(StrictMath.tan(Math.toRadians(angle / 2)) * outer(), 0);
    }

    /** A point of the bend, by its distance from the center and its direction. */
    Pt at(double distance, double direction) {
        return center().polar(distance, direction);
    }

    /** A line along the sheet: there along the first leg, round the bend at that distance from the center, up the second leg. */
    Path along(double distance) {
        return Path.line(-first, -outer() + distance, 0, -outer() + distance).arcAround(center(), distance, START, end())
                .lineTo(at(distance, end()).polar(second, angle));
    }

    /** The outline of the metal as far as it is drawn. */
    Path metal() {
        return along(outer()).lineTo(at(radius, end()).polar(second, angle)).lineTo(at(radius, end()))
                .arcAround(center(), radius, end(), START).lineTo(new Pt(-first, -thickness)).close();
    }

    /** The part of the bend between two distances from the center. */
    List<Pt> ring(double from, double to) {
        List<Pt> corners = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            corners.add(at(from, START + angle * i / PIECES));
        }
        for (int i = PIECES; i >= 0; i--) {
            corners.add(at(to, START + angle * i / PIECES));
        }
        return corners;
    }

    /** The middle of the thickness at the free end of the first leg. */
    Pt firstEnd() {
        return new Pt(-first, -thickness / 2);
    }

    /** The middle of the thickness at the free end of the second leg. */
    Pt secondEnd() {
        return at(radius + thickness / 2, end()).polar(second, angle);
    }

    Box bounds() {
        Pt a = secondEnd();
        return metal().bounds().union(Box.around(corner(), corner().plus(0, 0))).union(Box.around(a, a));
    }
}
