package soapstone.figure;

import java.util.List;

/** Punch and vee die of a press brake in section, in SVG units: the bend line at x = 0, the top of the die at y = 0. */
final class BrakeTools {

    /** Half of the angle in the vee, a bit less than square for a square bend. */
    private static final double HALF_VEE = 44;
    private static final double HALF_PUNCH = 42.5;
    /** Radius of the die's shoulder, as a share of the opening. */
    static final double SHOULDER = 0.1;
    private static final double LAND = 0.42;
    private static final double LEAST_LAND = 16;
    private static final double FOOT = 0.42;
    private static final double SHANK = 0.3;
    private static final double HALF_TURN = (90 - HALF_VEE) / 2;

    private final double opening;

    BrakeTools(double opening) {
        this.opening = opening;
    }

    /** Where the rounded shoulder leaves the top of the die. */
    double shoulder() {
        return opening / 2 + SHOULDER * opening * StrictMath.tan(Math.toRadians(HALF_TURN));
    }

    double veeDepth() {
        return opening / 2 / StrictMath.tan(Math.toRadians(HALF_VEE));
    }

    double side() {
        return shoulder() + Math.max(LEAST_LAND, LAND * opening);
    }

    double bottom() {
        return veeDepth() + Math.max(LEAST_LAND, FOOT * opening);
    }

    /** Where the outside faces of a square bend would meet, when the sheet rests on both shoulders. */
    double cornerDepth() {
        double shoulder = SHOULDER * opening;
        return shoulder() + shoulder - shoulder * Math.sqrt(2);
    }

    /** The line over the die: its top, the rounded shoulders, the vee. */
    Path vee(double side) {
        double radius = SHOULDER * opening;
        double turn = 90 - HALF_VEE;
        Pt left = new Pt(-shoulder(), radius);
        Pt right = new Pt(shoulder(), radius);
        return Path.line(-side, 0, -shoulder(), 0).arcAround(left, radius, 90, 90 - turn).lineTo(new Pt(0, veeDepth()))
                .lineTo(right.polar(radius, 90 + turn)).arcAround(right, radius, 90 + turn, 90).lineTo(new Pt(side, 0));
    }

    void die(Sheet sheet) {
        sheet.path(Pen.VISIBLE, vee(side()).lineTo(new Pt(side(), bottom())).lineTo(new Pt(-side(), bottom())).close(), "die");
    }

    /** The punch with the lowest point of its nose at a height; it reaches up to another. */
    void punch(Sheet sheet, double nose, double radius, double top) {
        double half = Math.max(SHANK * opening, radius * 1.2);
        double direction = 90 - HALF_PUNCH;
        Pt center = new Pt(0, nose - radius);
        Pt right = center.polar(radius, direction - 90);
        Pt left = center.polar(radius, -90 - direction);
        double rise = Math.max(0, half - right.x()) * StrictMath.tan(Math.toRadians(direction));
        double knee = Math.max(top, right.y() - rise);
        sheet.path(Pen.VISIBLE, Path.line(-half, top, -half, knee).lineTo(left).arcAround(center, radius, -90 - direction, direction - 90)
                .lineTo(new Pt(half, knee)).lineTo(new Pt(half, top)).close(), "punch");
    }

    /** What lies between this vee and another one on one side: 1 for the right, -1 for the left. */
    List<Pt> between(BrakeTools other, int side) {
        return List.of(new Pt(side * shoulder(), 0), new Pt(side * other.shoulder(), 0), new Pt(0, other.veeDepth()), new Pt(0, veeDepth()));
    }
}
