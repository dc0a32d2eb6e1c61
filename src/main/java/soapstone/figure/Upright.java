package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Plumb dimensions to the left or right of a part. Their lettering stays level: it stands in a break of the dimension
 * line, or beside or beyond it where the height is too small.
 */
final class Upright {

    private static final double FIRST = 24;
    private static final double STEP = 4;
    private static final double TAIL = 18;
    private static final double OVER = 4;
    private static final int MOST_STEPS = 100;

    private final Sheet sheet;
    private final double edge;
    private final int side;
    private final Ink ink;
    private final List<Box> taken = new ArrayList<>();

    Upright(Sheet sheet, double edge, boolean left, Ink ink) {
        this.sheet = sheet;
        this.edge = edge;
        this.side = left ? -1 : 1;
        this.ink = ink;
    }

    private enum Form { WITHIN, BESIDE, ABOVE, BELOW }

    /** One dimension from y1 to y2. Extension lines start at {@code from}. An empty label draws nothing. */
    void add(double y1, double y2, double from, Label label) {
        if (label.isEmpty() || !Double.isFinite(y1) || !Double.isFinite(y2)) {
            return;
        }
        double a = Math.min(y1, y2);
        double b = Math.max(y1, y2);
        for (int i = 0; i < MOST_STEPS; i++) {
            for (Form form : forms(b - a)) {
                if (tryAt(a, b, from, label, edge + side * (FIRST + STEP * i), form)) {
                    return;
                }
            }
        }
    }

    void add(double y1, double y2, Label label) {
        add(y1, y2, edge, label);
    }

    private List<Form> forms(double height) {
        return height >= 2 * TAIL + 4 ? List.of(Form.WITHIN) : List.of(Form.BESIDE, Form.ABOVE, Form.BELOW);
    }

    private boolean tryAt(double a, double b, double from, Label label, double x, Form form) {
        boolean inside = b - a >= 2 * TAIL;
        double width = label.width(ink.lettering());
        double center = switch (form) {
            case WITHIN, BESIDE -> (a + b) / 2;
            case ABOVE -> a - TAIL - 10;
            case BELOW -> b + TAIL + 10;
        };
        double baseline = center + ink.lettering().size() * 0.35;
        double textX = form == Form.BESIDE ? x + side * (width / 2 + 6) : x;
        Box text = label.box(ink.lettering(), textX, baseline, Anchor.MIDDLE);
        double top = a - (inside ? 0 : TAIL);
        double bottom = b + (inside ? 0 : TAIL);
        Box line = new Box(x - 3, top, x + 3, bottom);
        boolean clearOfPart = side < 0 ? text.right() <= edge - 5 : text.left() >= edge + 5;
        if (!clearOfPart || hits(line) || hits(text) || !sheet.isFree(text) || !sheet.isFree(line)) {
            return false;
        }
        taken.add(line);
        taken.add(text);
        sheet.keep(line);
        lines(a, b, from, x, top, bottom, inside);
        sheet.letter(label, ink.lettering(), textX, baseline, Anchor.MIDDLE);
        return true;
    }

    private boolean hits(Box box) {
        return taken.stream().anyMatch(t -> t.overlaps(box.grown(3)));
    }

    private void lines(double a, double b, double from, double x, double top, double bottom, boolean inside) {
        for (double y : new double[] {a, b}) {
            sheet.line(ink.line(), from + side * OVER, y, x + side * OVER, y);
        }
        sheet.line(ink.line(), x, top, x, bottom);
        sheet.arrow(ink.arrow(), new Pt(x, a), inside ? 90 : 270);
        sheet.arrow(ink.arrow(), new Pt(x, b), inside ? 270 : 90);
    }
}
