package soapstone.figure;

/** An upright rectangle of the sheet, in SVG units. */
record Box(double left, double top, double right, double bottom) {

    /** Contains nothing; the union with it changes nothing. */
    static final Box NOTHING = new Box(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static Box around(Pt a, Pt b) {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    Box moved(double dx, double dy) {
        return new Box(left + dx, top + dy, right + dx, bottom + dy);
    }

    Box union(Box other) {
        return new Box(Math.min(left, other.left), Math.min(top, other.top), Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Overlaps, or shares an edge. */
    boolean touches(Box other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }

    boolean isFinite() {
        return Double.isFinite(left) && Double.isFinite(top) && Double.isFinite(right) && Double.isFinite(bottom);
    }

    /** Whether a straight line between two points passes through (Liang and Barsky's clipping). */
    boolean isCrossedBy(Pt a, Pt b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {a.x() - left, right - a.x(), a.y() - top, bottom - a.y()};
        double from = 0;
        double to = 1;
        for (int i = 0; i < p.length; i++) {
            if (p[i] == 0 && q[i] < 0) {
                return false;
            }
            if (p[i] < 0) {
                from = Math.max(from, q[i] / p[i]);
            } else if (p[i] > 0) {
                to = Math.min(to, q[i] / p[i]);
            }
        }
        return from <= to;
    }
}
