package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Plumb dimensions to the left or right of a part. Their lettering stays level: it stands in a break of the dimension
 * line, staggered where another size stands on the same line, or beside or beyond it where the height is too small.
 */
final class Upright {

    private static final double FIRST = 24;
    private static final double STEP = 4;
    private static final double TAIL = 18;
    private static final double OVER = 4;
    private static final double SHORT = 44;
    private static final double ROW = 18;
    private static final int MOST_STEPS = 100;

    private final Sheet sheet;
    private final double edge;
    private final int side;
    private final Ink ink;
    private final List<Box> taken = new ArrayList<>();
    private boolean compact;

    Upright(Sheet sheet, double edge, boolean left, Ink ink) {
        this.sheet = sheet;
        this.edge = edge;
        this.side = left ? -1 : 1;
        this.ink = ink;
    }

    /** Sets long lettering over or under the ends of its line, so that it takes less width. */
    Upright compact(boolean yes) {
        compact = yes;
        return this;
    }

    private enum Form { WITHIN, BESIDE, ABOVE, BELOW }

    /** One dimension from y1 to y2. Extension lines start at {@code from}. An empty label draws nothing. */
    void add(double y1, double y2, double from, Label label) {
        if (label.isEmpty() || !Double.isFinite(y1) || !Double.isFinite(y2)) {
            return;
        }
        Span span = new Span(Math.min(y1, y2), Math.max(y1, y2), from, label);
        for (int i = 0; i < MOST_STEPS; i++) {
            for (Place place : places(span)) {
                if (tryAt(span, edge + side * (FIRST + STEP * i), place)) {
                    return;
                }
            }
        }
    }

    void add(double y1, double y2, Label label) {
        add(y1, y2, edge, label);
    }

    /** What is dimensioned: from y to y, where extension lines start, and what is lettered. */
    private record Span(double top, double bottom, double from, Label label) {

        boolean holdsArrows() {
            return bottom - top >= 2 * TAIL;
        }

        double tail() {
            return holdsArrows() ? 0 : TAIL;
        }
    }

    /** Where lettering may stand; {@code off} is how much further out than at the end of the line, or lower than in its middle. */
    private record Place(Form form, double off) {}

    private List<Place> places(Span span) {
        if (compact && span.label.width(ink.lettering()) > SHORT) {
            List<Place> all = new ArrayList<>();
            for (double off = 0; off <= 5 * ROW; off += ROW) {
                all.add(new Place(Form.BELOW, off));
                all.add(new Place(Form.ABOVE, off));
            }
            return all;
        }
        double length = span.bottom - span.top;
        return length >= 2 * TAIL + 4 ? within(length)
                : List.of(new Place(Form.BESIDE, 0), new Place(Form.ABOVE, 0), new Place(Form.BELOW, 0));
    }

    /** In the middle, or staggered: so far that a flag has room between, where the line is long enough. */
    private static List<Place> within(double length) {
        List<Place> all = new ArrayList<>(List.of(new Place(Form.WITHIN, 0)));
        for (double off : new double[] {2 * ROW, ROW}) {
            if (length >= 2 * (TAIL + off) + 4) {
                all.add(new Place(Form.WITHIN, off));
                all.add(new Place(Form.WITHIN, -off));
            }
        }
        return all;
    }

    private Box text(Span span, double x, Place place) {
        double width = span.label.width(ink.lettering());
        double center = switch (place.form) {
            case WITHIN, BESIDE -> (span.top + span.bottom) / 2 + place.off;
            case ABOVE -> span.top - Math.max(5, span.tail()) - 10 - place.off;
            case BELOW -> span.bottom + Math.max(5, span.tail()) + 10 + place.off;
        };
        double baseline = center + ink.lettering().size() * 0.35;
        return switch (place.form) {
            case BESIDE -> span.label.box(ink.lettering(), x + side * (width / 2 + 6), baseline, Anchor.MIDDLE);
            case WITHIN -> span.label.box(ink.lettering(), x, baseline, Anchor.MIDDLE);
            case ABOVE, BELOW -> compact
                    ? span.label.box(ink.lettering(), x + side * 6, baseline, side > 0 ? Anchor.END : Anchor.START)
                    : span.label.box(ink.lettering(), x, baseline, Anchor.MIDDLE);
        };
    }

    private boolean tryAt(Span span, double x, Place place) {
        Box text = text(span, x, place);
        double top = place.form == Form.ABOVE ? text.bottom() : span.top - span.tail();
        double bottom = place.form == Form.BELOW ? text.top() : span.bottom + span.tail();
        Box line = new Box(x - 3, Math.min(top, span.top - span.tail()), x + 3, Math.max(bottom, span.bottom + span.tail()));
        boolean level = place.form == Form.ABOVE || place.form == Form.BELOW;
        if (!level && !isBeside(text) || hits(line) || hits(text) || !sheet.isFreeForSize(text) || !sheet.isFree(line)) {
            return false;
        }
        taken.add(line);
        taken.add(text);
        sheet.keep(line);
        sheet.dimension(span.label, () -> lines(span, x, line));
        sheet.letter(span.label, ink.lettering(), (text.left() + text.right()) / 2, baseline(span.label, text), Anchor.MIDDLE);
        return true;
    }

    private double baseline(Label label, Box text) {
        return label.isFramed() ? (text.top() + text.bottom()) / 2 + ink.lettering().size() * 0.35
                : text.bottom() - ink.lettering().drop();
    }

    private boolean isBeside(Box text) {
        return side < 0 ? text.right() <= edge - 5 : text.left() >= edge + 5;
    }

    private boolean hits(Box box) {
        return taken.stream().anyMatch(t -> t.overlaps(box.grown(3)));
    }

    private void lines(Span span, double x, Box line) {
        for (double y : new double[] {span.top, span.bottom}) {
            sheet.line(ink.line(), span.from + side * OVER, y, x + side * OVER, y);
        }
        sheet.line(ink.line(), x, line.top(), x, line.bottom());
        sheet.arrow(ink.arrow(), new Pt(x, span.top), span.holdsArrows() ? 90 : 270);
        sheet.arrow(ink.arrow(), new Pt(x, span.bottom), span.holdsArrows() ? 270 : 90);
    }
}
