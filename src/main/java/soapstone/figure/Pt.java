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
        // Most of a drawing is square to the sheet: no need of a sine there.
        double turn = degrees % 360;
        if (turn == 0) {
            return new Pt(x + distance, y);
        }
        if (turn == 90 || turn == -270) {
            return new Pt(x, y - distance);
        }
        if (turn == 180 || turn == -180) {
            return new Pt(x - distance, y);
        }
        if (turn == 270 || turn == -90) {
            return new Pt(x, y + distance);
        }
        double a = Math.toRadians(degrees);
        return new Pt(x + distance * StrictMath.cos(a), y - distance * StrictMath.sin(a));
    }

    double distance(Pt other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Direction to another point, in degrees counterclockwise from the right. */
    double degreesTo(Pt other) {
        if (y == other.y) {
            return other.x >= x ? 0 : 180;
        }
        if (x == other.x) {
            return other.y < y ? 90 : -90;
        }
        return Math.toDegrees(StrictMath.atan2(y - other.y, other.x - x));
    }

    boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y);
    }
}
