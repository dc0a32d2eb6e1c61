package soapstone.figure;

import java.util.List;

/**
 * A thick line on a sheet, for what must keep clear of it. It is taken apart into pieces only when something comes near:
 * most lettering is far from most of a row of holes.
 */
final class Outline {

    private final Shape shape;
    private final Box bounds;
    private List<Piece> pieces;

    Outline(Shape shape, Box bounds) {
        this.shape = shape;
        this.bounds = bounds;
    }

    boolean crosses(Box box) {
        if (!bounds.touches(box)) {
            return false;
        }
        for (Piece p : pieces()) {
            if (p.crosses(box)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a line comes nearer than that anywhere. */
    boolean isNear(Piece line, double distance) {
        if (!bounds.grown(distance).touches(line.bounds().grown(Piece.HAIR))) {
            return false;
        }
        for (Piece p : pieces()) {
            if (p.isNear(line, distance)) {
                return true;
            }
        }
        return false;
    }

    private List<Piece> pieces() {
        if (pieces == null) {
            pieces = shape.pieces();
        }
        return pieces;
    }
}
