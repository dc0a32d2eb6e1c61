package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Straight lines and circular arcs one after the other. Built by its own methods, not changed after it is on a sheet. */
final class Path {

    private static final int ARC_POINTS = 16;
    /** A smaller curve is a corner; written with two decimals it might have no radius at all. */
    private static final double LEAST_RADIUS = 0.05;

    private enum Step { MOVE, LINE, ARC, CLOSE }

    /** radius, large and sweep only for an arc; sweep is clockwise on the screen. */
    private record Part(Step step, Pt to, double radius, double height, boolean large, boolean sweep) {}

    private static final int USUAL_PARTS = 4;

    private final List<Part> parts;

    private Path(int parts) {
        this.parts = new ArrayList<>(parts);
    }

    static Path from(Pt start) {
        return new Path(USUAL_PARTS).moveTo(start);
    }

    static Path line(double x1, double y1, double x2, double y2) {
        return from(new Pt(x1, y1)).lineTo(new Pt(x2, y2));
    }

    static Path polygon(List<Pt> corners) {
        return polyline(corners).close();
    }

    static Path polyline(List<Pt> corners) {
        Path p = from(corners.get(0));
        for (int i = 1; i < corners.size(); i++) {
            p.lineTo(corners.get(i));
        }
        return p;
    }

    /** Part of a circle, from one direction counterclockwise to the other, in degrees. */
    static Path arc(Pt center, double radius, double from, double to) {
        return Path.from(center.polar(radius, from)).arcAround(center, radius, from, to);
    }

    Path moveTo(Pt to) {
        return add(Step.MOVE, to);
    }

    Path lineTo(Pt to) {
        return add(Step.LINE, to);
    }

    /** Goes on along a circle from one direction to another; counterclockwise when {@code to} is the greater. */
    Path arcAround(Pt center, double radius, double from, double to) {
        double turn = to - from;
        if (radius < LEAST_RADIUS || Math.abs(Math.toRadians(turn)) * radius < LEAST_RADIUS) {
            return lineTo(center.polar(radius, to));
        }
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(turn) / 170));
        for (int i = 1; i <= pieces; i++) {
            Pt end = center.polar(radius, from + turn * i / pieces);
            parts.add(new Part(Step.ARC, end, radius, radius, false, turn < 0));
        }
        return this;
    }

    /** Half an upright ellipse to a point on the same level. */
    Path halfEllipse(Pt to, double halfWidth, double halfHeight, boolean sweep) {
        parts.add(new Part(Step.ARC, to, halfWidth, halfHeight, false, sweep));
        return this;
    }

    Path close() {
        return add(Step.CLOSE, parts.get(0).to());
    }

    private Path add(Step step, Pt to) {
        parts.add(new Part(step, to, 0, 0, false, false));
        return this;
    }

    Path moved(double dx, double dy) {
        Path p = new Path(parts.size());
        for (Part s : parts) {
            p.parts.add(new Part(s.step, s.to.plus(dx, dy), s.radius, s.height, s.large, s.sweep));
        }
        return p;
    }

    /** Writes the path as SVG does. */
    void data(StringBuilder d) {
        for (Part p : parts) {
            switch (p.step) {
                case MOVE -> d.append('M');
                case LINE -> d.append('L');
                case ARC -> {
                    Svg.number(d.append('A'), p.radius);
                    Svg.number(d.append(' '), p.height).append(" 0 ").append(p.large ? 1 : 0).append(' ').append(p.sweep ? 1 : 0).append(' ');
                }
                case CLOSE -> d.append('Z');
            }
            if (p.step != Step.CLOSE) {
                Svg.number(d, p.to.x());
                Svg.number(d.append(' '), p.to.y());
            }
        }
    }

    /** The path as straight pieces, arcs divided finely: for bounds and for what lettering must not cross. */
    List<Piece> pieces() {
        List<Piece> out = new ArrayList<>();
        Pt at = parts.get(0).to;
        Pt start = at;
        for (Part p : parts) {
            switch (p.step) {
                case MOVE -> start = p.to;
                case ARC -> arcPieces(out, at, p);
                default -> out.add(Piece.of(at, p.step == Step.CLOSE ? start : p.to));
            }
            at = p.step == Step.CLOSE ? start : p.to;
        }
        return out;
    }

    private static void arcPieces(List<Piece> out, Pt from, Part arc) {
        double flat = arc.height / arc.radius;
        double dx = arc.to.x() - from.x();
        double dy = (arc.to.y() - from.y()) / flat;
        double half = Math.hypot(dx, dy) / 2;
        double r = Math.max(arc.radius, half);
        double rise = Math.sqrt(Math.max(0, r * r - half * half)) * (arc.sweep ? 1 : -1) * (arc.large ? -1 : 1);
        double cx = from.x() + dx / 2 - (half == 0 ? 0 : dy / 2 / half * rise);
        double cy = from.y() / flat + dy / 2 + (half == 0 ? 0 : dx / 2 / half * rise);
        double a = StrictMath.atan2(from.y() / flat - cy, from.x() - cx);
        double turn = StrictMath.atan2(arc.to.y() / flat - cy, arc.to.x() - cx) - a;
        if (arc.sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!arc.sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        Pt last = from;
        for (int i = 1; i <= ARC_POINTS; i++) {
            double t = a + turn * i / ARC_POINTS;
            Pt next = new Pt(cx + r * StrictMath.cos(t), (cy + r * StrictMath.sin(t)) * flat);
            out.add(Piece.of(last, next));
            last = next;
        }
    }

    Box bounds() {
        if (isCurved()) {
            return curvedBounds();
        }
        Pt first = parts.get(0).to;
        double left = first.x();
        double right = left;
        double top = first.y();
        double bottom = top;
        for (Part p : parts) {
            left = Math.min(left, p.to.x());
            right = Math.max(right, p.to.x());
            top = Math.min(top, p.to.y());
            bottom = Math.max(bottom, p.to.y());
        }
        return new Box(left, top, right, bottom);
    }

    private boolean isCurved() {
        for (Part p : parts) {
            if (p.step == Step.ARC) {
                return true;
            }
        }
        return false;
    }

    private Box curvedBounds() {
        Box b = Box.NOTHING;
        for (Part p : parts) {
            b = b.union(Box.around(p.to, p.to));
        }
        for (Piece piece : pieces()) {
            b = b.union(piece.bounds());
        }
        return b;
    }

    boolean isFinite() {
        for (Part p : parts) {
            if (!p.to.isFinite() || !Double.isFinite(p.radius) || !Double.isFinite(p.height)) {
                return false;
            }
        }
        return true;
    }
}
