package soapstone.figure;

/** A point of the sheet: x to the right, y down, in SVG units. */
record Pt(double x, double y) {

    Pt plus(double dx, double dy) {
        return new Pt(x + dx, y + dy);
    }

    Pt towards(Pt other, double share) {
        return new Pt(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    /** The point that lies so far from here in a direction, in degrees counterclockwise from the right. */
    Pt polar(double distance, double degrees) {
        double a = Math.toRadians(degrees);
        return new Pt(x + distance * StrictMath.cos(a), y - distance * StrictMath.sin(a));
    }

    double distance(Pt other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Direction to another point, in degrees counterclockwise from the right. */
    double degreesTo(Pt other) {
        return Math.toDegrees(StrictMath.atan2(y - other.y, other.x - x));
    }

    boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y);
    }
}
