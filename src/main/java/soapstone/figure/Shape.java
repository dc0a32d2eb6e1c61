package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** Something on a sheet. The role is a class that says what of the part it is, such as {@code hole}; or empty. */
sealed interface Shape {

    Pen pen();

    Box bounds();

    Shape moved(double dx, double dy);

    /** @param more attributes that every kind of shape can have, each with a space before it */
    void write(StringBuilder out, String more);

    boolean isFinite();

    /** Straight pieces of its line, for what lettering must not cross. */
    List<Piece> pieces();

    /** A line of straight and curved parts. */
    record Stroke(Pen pen, Path path, String role) implements Shape {
        @Override
        public Box bounds() {
            return path.bounds();
        }

        @Override
        public Shape moved(double dx, double dy) {
            return new Stroke(pen, path.moved(dx, dy), role);
        }

        @Override
        public void write(StringBuilder out, String more) {
            path.data(out.append("<path").append(Svg.role(role)).append(more).append(" d=\""));
            out.append("\"/>\n");
        }

        @Override
        public boolean isFinite() {
            return path.isFinite();
        }

        @Override
        public List<Piece> pieces() {
            return path.pieces();
        }
    }

    /** A full circle. */
    record Ring(Pen pen, Pt center, double radius, String role) implements Shape {
        private static final int SIDES = 12;
        /** Corners of the ring of radius 1; a row has many rings, and each is asked for its pieces. */
        private static final Pt[] CORNERS = corners();

        private static Pt[] corners() {
            Pt[] corners = new Pt[SIDES];
            for (int i = 0; i < SIDES; i++) {
                corners[i] = new Pt(0, 0).polar(1, 360.0 * i / SIDES);
            }
            return corners;
        }

        @Override
        public Box bounds() {
            return Box.around(center, center).grown(radius);
        }

        @Override
        public Shape moved(double dx, double dy) {
            return new Ring(pen, center.plus(dx, dy), radius, role);
        }

        @Override
        public void write(StringBuilder out, String more) {
            Svg.number(out.append("<circle").append(Svg.role(role)).append(more).append(" cx=\""), center.x());
            Svg.number(out.append("\" cy=\""), center.y());
            Svg.number(out.append("\" r=\""), radius).append("\"/>\n");
        }

        @Override
        public boolean isFinite() {
            return center.isFinite() && Double.isFinite(radius);
        }

        @Override
        public List<Piece> pieces() {
            List<Piece> out = new ArrayList<>(SIDES);
            Pt from = center.plus(radius * CORNERS[0].x(), radius * CORNERS[0].y());
            for (int i = 1; i <= SIDES; i++) {
                Pt to = center.plus(radius * CORNERS[i % SIDES].x(), radius * CORNERS[i % SIDES].y());
                out.add(Piece.of(from, to));
                from = to;
            }
            return out;
        }
    }

    /** An upright rectangle. */
    record Plate(Pen pen, Box box, String role) implements Shape {
        @Override
        public Box bounds() {
            return box;
        }

        @Override
        public Shape moved(double dx, double dy) {
            return new Plate(pen, box.moved(dx, dy), role);
        }

        @Override
        public void write(StringBuilder out, String more) {
            Svg.number(out.append("<rect").append(Svg.role(role)).append(more).append(" x=\""), box.left());
            Svg.number(out.append("\" y=\""), box.top());
            Svg.number(out.append("\" width=\""), box.width());
            Svg.number(out.append("\" height=\""), box.height()).append("\"/>\n");
        }

        @Override
        public boolean isFinite() {
            return box.isFinite();
        }

        @Override
        public List<Piece> pieces() {
            Pt a = new Pt(box.left(), box.top());
            Pt b = new Pt(box.right(), box.top());
            Pt c = new Pt(box.right(), box.bottom());
            Pt d = new Pt(box.left(), box.bottom());
            return List.of(Piece.of(a, b), Piece.of(b, c), Piece.of(c, d), Piece.of(d, a));
        }
    }

    /** One run of lettering; {@code room} is the box that it takes. */
    record Text(Pen pen, String text, Pt at, Anchor anchor, Box room) implements Shape {
        @Override
        public Box bounds() {
            return room;
        }

        @Override
        public Shape moved(double dx, double dy) {
            return new Text(pen, text, at.plus(dx, dy), anchor, room.moved(dx, dy));
        }

        @Override
        public void write(StringBuilder out, String more) {
            Svg.number(out.append("<text").append(more).append(" x=\""), at.x());
            Svg.number(out.append("\" y=\""), at.y()).append('"');
            if (anchor != Anchor.START) {
                out.append(" text-anchor=\"").append(anchor.word()).append('"');
            }
            Svg.text(out.append('>'), text).append("</text>\n");
        }

        @Override
        public boolean isFinite() {
            return at.isFinite();
        }

        @Override
        public List<Piece> pieces() {
            return List.of();
        }
    }
}
