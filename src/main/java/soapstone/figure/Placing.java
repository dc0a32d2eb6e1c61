package soapstone.figure;

/**
 * Puts a folded section on the sheet: turned so that a leg lies level, mirrored so that the other legs stand up, scaled.
 * The same placing serves for the answer's section, so that the first legs lie on each other.
 */
record Placing(double turn, boolean mirrored, double scale) {

    /** Lays the longest leg level, with the rest of the sheet above it. */
    static Placing of(FoldLine line) {
        double turn = -line.legs().get(line.longest()).heading();
        Placing flat = new Placing(turn, false, 1);
        double base = flat.point(line.legs().get(line.longest()).from()).y();
        double over = 0;
        for (FoldLine.Leg leg : line.legs()) {
            over += base - flat.point(leg.from()).y() + base - flat.point(leg.to()).y();
        }
        return new Placing(turn, over < 0, 1);
    }

    Placing scaled(double by) {
        return new Placing(turn, mirrored, by);
    }

    Pt point(Pt real) {
        double a = Math.toRadians(turn);
        double x = real.x() * StrictMath.cos(a) - real.y() * StrictMath.sin(a);
        double y = real.x() * StrictMath.sin(a) + real.y() * StrictMath.cos(a);
        return new Pt(x * scale, (mirrored ? y : -y) * scale);
    }

    /** A direction of the section as a direction on the sheet, both counterclockwise from the right. */
    double direction(double degrees) {
        return mirrored ? -(degrees + turn) : degrees + turn;
    }

    /** A turn to the left may be one to the right on a mirrored sheet. */
    double turned(double degrees) {
        return mirrored ? -degrees : degrees;
    }

    Box bounds(FoldLine line) {
        Box b = Box.NOTHING;
        for (FoldLine.Leg leg : line.legs()) {
            Pt from = point(leg.outer0());
            Pt to = point(leg.outer1());
            b = b.union(Box.around(from, to));
        }
        return b;
    }

    /** The outline of the sheet: there along one face and back along the other. */
    Path outline(FoldLine line) {
        Path p = null;
        for (int i = 0; i < line.legs().size(); i++) {
            p = along(p, line, i, 1);
        }
        for (int i = line.legs().size() - 1; i >= 0; i--) {
            p = back(p, line, i);
        }
        return p.close();
    }

    private Pt face(FoldLine line, Pt real, double heading, int side) {
        return point(real).polar(line.thickness() * scale / 2, direction(heading) + turned(90) * side);
    }

    private Path along(Path path, FoldLine line, int i, int side) {
        FoldLine.Leg leg = line.legs().get(i);
        Path p = path == null ? Path.from(face(line, leg.from(), leg.heading(), side)) : path;
        p.lineTo(face(line, leg.to(), leg.heading(), side));
        if (i < line.bends().size()) {
            FoldLine.Bend b = line.bends().get(i);
            double start = direction(b.startDirection());
            p.arcAround(point(b.center()), radius(line, b, side), start, start + turned(b.turn()));
        }
        return p;
    }

    private Path back(Path p, FoldLine line, int i) {
        FoldLine.Leg leg = line.legs().get(i);
        p.lineTo(face(line, leg.to(), leg.heading(), -1));
        p.lineTo(face(line, leg.from(), leg.heading(), -1));
        if (i > 0) {
            FoldLine.Bend b = line.bends().get(i - 1);
            double start = direction(b.startDirection());
            p.arcAround(point(b.center()), radius(line, b, -1), start + turned(b.turn()), start);
        }
        return p;
    }

    private double radius(FoldLine line, FoldLine.Bend bend, int side) {
        boolean inner = bend.turn() >= 0 == side > 0;
        return (line.radius() + (inner ? 0 : line.thickness())) * scale;
    }

    /** The middle of the thickness as one line. */
    Path middle(FoldLine line) {
        Path p = Path.from(point(line.legs().get(0).from()));
        for (int i = 0; i < line.legs().size(); i++) {
            p.lineTo(point(line.legs().get(i).to()));
            if (i < line.bends().size()) {
                FoldLine.Bend b = line.bends().get(i);
                double start = direction(b.startDirection());
                p.arcAround(point(b.center()), (line.radius() + line.thickness() / 2) * scale, start, start + turned(b.turn()));
            }
        }
        return p;
    }
}
