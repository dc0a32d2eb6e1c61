package soapstone.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A sheet under the hands of the drafter: shapes in layers, and a memory of where lettering stands and where thick lines
 * run, so that the next lettering finds a free place. Coordinates may be negative until the layout moves all into place.
 */
final class Sheet {

    private static final double MASK = 2;
    private static final double CLEAR = 1.5;
    private static final double CLEAR_OF_THICK = 4;
    private static final double BETWEEN_LINES = 9;
    /** Two sizes on one line read as one unless so much is between them. */
    private static final double AIR = 9;
    private static final double BESIDE = 6;

    private final Map<Pen, List<Shape>> layers = new EnumMap<>(Pen.class);
    private final List<Box> lettered = new ArrayList<>();
    private final List<Box> kept = new ArrayList<>();
    private final List<Outline> thick = new ArrayList<>();
    private final List<Piece> keptLines = new ArrayList<>();
    private final Ties ties = new Ties();
    private Box bounds = Box.NOTHING;

    void draw(Shape shape) {
        Pen pen = shape.pen();
        layers.computeIfAbsent(pen, p -> new ArrayList<>()).add(shape);
        ties.drawn(shape);
        if (pen != Pen.MASK) {
            Box b = shape.bounds();
            bounds = bounds.union(b);
            if (pen.isThick()) {
                thick.add(new Outline(shape, b));
            }
        }
    }

    void line(Pen pen, double x1, double y1, double x2, double y2) {
        path(pen, Path.line(x1, y1, x2, y2));
    }

    void line(Pen pen, Pt a, Pt b) {
        line(pen, a.x(), a.y(), b.x(), b.y());
    }

    void path(Pen pen, Path path) {
        draw(new Shape.Stroke(pen, path, ""));
    }

    void path(Pen pen, Path path, String role) {
        draw(new Shape.Stroke(pen, path, role));
    }

    void circle(Pen pen, Pt center, double radius, String role) {
        draw(new Shape.Ring(pen, center, radius, role));
    }

    void plate(Pen pen, Box box, String role) {
        draw(new Shape.Plate(pen, box, role));
    }

    /** A filled arrowhead, 9 by 3, with its tip at a point, pointing in a direction. */
    void arrow(Pen pen, Pt tip, double degrees) {
        Pt back = tip.polar(9, degrees + 180);
        path(pen, Path.polygon(List.of(tip, back.polar(1.7, degrees + 90), back.polar(1.7, degrees - 90))));
    }

    /** Draws lines that belong to what a label prints. */
    void dimension(Label label, Runnable lines) {
        ties.during(label.sizes(), lines);
    }

    /** What belongs to which size. */
    Ties ties() {
        return ties;
    }

    /** Puts lettering on its mask, whether or not the place is free. */
    Box letter(Label label, Lettering lettering, double x, double baseline, Anchor anchor) {
        Box room = label.box(lettering, x, baseline, anchor);
        if (label.isEmpty()) {
            return room;
        }
        plate(Pen.MASK, new Box(room.left() - MASK, room.top() - 1, room.right() + MASK, room.bottom() + 1), "");
        lettered.add(room);
        ties.lettered(label, lettering, room);
        dimension(label, () -> runs(label, lettering, x, baseline, anchor, room));
        return room;
    }

    private void runs(Label label, Lettering lettering, double x, double baseline, Anchor anchor, Box room) {
        if (label.runs().size() == 1 && !label.isFramed()) {
            draw(new Shape.Text(lettering.pen(), label.runs().get(0).text(), new Pt(x, baseline), anchor, room));
            return;
        }
        double left = room.left();
        double middle = (room.top() + room.bottom()) / 2;
        for (Label.Run run : label.runs()) {
            double width = run.width(lettering);
            Box own = new Box(left, room.top(), left + width, room.bottom());
            if (run.framed()) {
                plate(Pen.FRAME, new Box(left, middle - Label.FRAME / 2, left + width, middle + Label.FRAME / 2), "");
                draw(new Shape.Text(Pen.LETTER, run.text(), new Pt(left + width / 2, middle + 5), Anchor.MIDDLE, own));
            } else {
                draw(new Shape.Text(lettering.pen(), run.text(), new Pt(left, baseline), Anchor.START, own));
            }
            left += width + Label.air();
        }
    }

    /** Puts lettering at the first of the spots that is free; false when none is. */
    boolean letterFree(Label label, Lettering lettering, List<Spot> spots) {
        return letterAt(label, lettering, spots, this::isFree);
    }

    /** The same for the lettering of a size. */
    boolean letterSize(Label label, Lettering lettering, List<Spot> spots) {
        return letterAt(label, lettering, spots, this::isFreeForSize);
    }

    private boolean letterAt(Label label, Lettering lettering, List<Spot> spots, Predicate<Box> free) {
        for (Spot s : spots) {
            if (free.test(label.box(lettering, s.x(), s.baseline(), s.anchor()))) {
                letter(label, lettering, s.x(), s.baseline(), s.anchor());
                return true;
            }
        }
        return false;
    }

    /** A place for lettering. */
    record Spot(double x, double baseline, Anchor anchor) {}

    /** No lettering, no kept place and no thick line in the box. */
    boolean isFree(Box box) {
        Box b = box.grown(CLEAR);
        return !any(lettered, box.grown(CLEAR + 1)) && !any(kept, b) && !crossed(keptLines, b)
                && !isOnThick(box.grown(CLEAR_OF_THICK));
    }

    /** The same for the lettering of a size: so far from other lettering on its line that the two do not read as one. */
    boolean isFreeForSize(Box text) {
        return isFree(text) && !any(lettered, new Box(text.left() - AIR, text.top(), text.right() + AIR, text.bottom()));
    }

    /** Whether other lettering than its own is as near to a flag as its own. */
    boolean isNearOther(Box flag, Box own) {
        Box near = flag.grown(BESIDE);
        return lettered.stream().anyMatch(b -> !b.equals(own) && b.overlaps(near));
    }

    private static boolean any(List<Box> boxes, Box box) {
        for (Box other : boxes) {
            if (other.overlaps(box)) {
                return true;
            }
        }
        return false;
    }

    private static boolean crossed(List<Piece> pieces, Box box) {
        for (Piece p : pieces) {
            if (p.crosses(box)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOnThick(Box box) {
        for (Outline o : thick) {
            if (o.crosses(box)) {
                return true;
            }
        }
        return false;
    }

    private boolean isNearThick(Piece line) {
        for (Outline o : thick) {
            if (o.isNear(line, CLEAR_OF_THICK + 1)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNear(List<Piece> pieces, Piece line, double distance) {
        for (Piece p : pieces) {
            if (p.isNear(line, distance)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a dimension line can run there: clear of lettering, kept places, thick lines and other such lines. */
    boolean isFreeLine(Pt from, Pt to) {
        Piece line = Piece.of(from, to);
        for (Box b : lettered) {
            if (line.crosses(b.grown(CLEAR + 1))) {
                return false;
            }
        }
        for (Box b : kept) {
            if (line.crosses(b.grown(CLEAR))) {
                return false;
            }
        }
        return !isNear(keptLines, line, BETWEEN_LINES) && !isNearThick(line);
    }

    /** No lettering, no kept place and no thick line in the box; thin lines may run through, and it may be near. */
    boolean isFreeOfLettering(Box box) {
        return !any(lettered, box.grown(CLEAR)) && !any(kept, box) && !isOnThick(box.grown(CLEAR));
    }

    /** Whether any line at all runs through the box. */
    boolean isDrawnOn(Box box) {
        return layers.values().stream().flatMap(List::stream).anyMatch(s -> s.pen() != Pen.MASK && s.pen() != Pen.WATER && s.bounds().touches(box) && crossed(s.pieces(), box));
    }

    /** Whether a short line runs clear of lettering and of thick lines. */
    boolean isClear(Pt from, Pt to) {
        return lettered.stream().noneMatch(Piece.of(from, to)::crosses) && !isNearThick(Piece.of(from, to));
    }

    /** Keeps later lettering and lines off a dimension line. */
    void keepLine(Pt from, Pt to) {
        keptLines.add(Piece.of(from, to));
    }

    /** Keeps later lettering out of a box. */
    void keep(Box box) {
        kept.add(box);
    }

    /** Puts a finished sheet onto this one. */
    void add(Sheet other, double dx, double dy) {
        other.layers.values().forEach(l -> l.forEach(s -> ties.during(other.ties.of(s), () -> draw(s.moved(dx, dy)))));
        ties.add(other.ties, dx, dy);
        other.lettered.forEach(b -> lettered.add(b.moved(dx, dy)));
        other.kept.forEach(b -> kept.add(b.moved(dx, dy)));
        other.keptLines.forEach(p -> keptLines.add(Piece.of(p.a().plus(dx, dy), p.b().plus(dx, dy))));
    }

    List<Shape> shapes(Pen pen) {
        return Collections.unmodifiableList(layers.getOrDefault(pen, List.of()));
    }

    /** The room that all shapes take. */
    Box bounds() {
        return bounds;
    }

    boolean isFinite() {
        for (List<Shape> layer : layers.values()) {
            for (Shape s : layer) {
                if (!s.isFinite()) {
                    return false;
                }
            }
        }
        return true;
    }
}
