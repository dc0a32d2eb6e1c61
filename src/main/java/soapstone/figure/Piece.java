package soapstone.figure;

/**
 * A straight piece of a line with its bounds, for quick questions about what is near.
 *
 * @param a      one end
 * @param b      the other
 * @param bounds of both
 */
record Piece(Pt a, Pt b, Box bounds) {

    /** What a line without width is taken to be wide. */
    static final double HAIR = 0.01;

    static Piece of(Pt a, Pt b) {
        return new Piece(a, b, Box.around(a, b));
    }

    boolean crosses(Box box) {
        return bounds.touches(box) && box.isCrossedBy(a, b);
    }

    /** Whether the two come nearer than that anywhere. */
    boolean isNear(Piece other, double distance) {
        return bounds.grown(distance).overlaps(other.bounds.grown(HAIR))
                && (cuts(other) || Math.min(Math.min(distance(a, other), distance(b, other)),
                        Math.min(distance(other.a, this), distance(other.b, this))) < distance);
    }

    private boolean cuts(Piece other) {
        return side(a, b, other.a) * side(a, b, other.b) < 0 && side(other.a, other.b, a) * side(other.a, other.b, b) < 0;
    }

    private static double side(Pt a, Pt b, Pt p) {
        return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
    }

    private static double distance(Pt p, Piece line) {
        double dx = line.b.x() - line.a.x();
        double dy = line.b.y() - line.a.y();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((p.x() - line.a.x()) * dx + (p.y() - line.a.y()) * dy) / square;
        return p.distance(line.a.towards(line.b, Math.max(0, Math.min(1, along))));
    }
}
