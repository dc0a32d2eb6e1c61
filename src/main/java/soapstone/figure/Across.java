package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Level dimensions above or below a part, stacked so that none stands on another: the first 30 off the part, each next
 * 28 further. Where there is no room between the arrows the lettering goes out to the side.
 */
final class Across {

    private static final double FIRST = 30;
    private static final double NEXT = 28;
    private static final double ROOM_FOR_ARROWS = 30;
    private static final double TAIL = 18;
    private static final double OVER = 4;
    private static final int MOST_LEVELS = 24;
    /** Lettering rather goes up so many levels than out past the part, where it would make the part smaller. */
    private static final int OUTWARD_COSTS = 3;

    private final Sheet sheet;
    private final double edge;
    private final int side;
    private final Ink ink;
    private final double middle;
    private final List<Box> taken = new ArrayList<>();

    /**
     * @param edge   the y that levels are counted from
     * @param above  on which side of the edge
     * @param middle the x towards which lettering goes when it has to go to a side
     */
    Across(Sheet sheet, double edge, boolean above, Ink ink, double middle) {
        this.sheet = sheet;
        this.edge = edge;
        this.side = above ? -1 : 1;
        this.ink = ink;
        this.middle = middle;
    }

    private enum Form { BETWEEN, RIGHT, LEFT }

    /**
     * One dimension from x1 to x2. Extension lines start at {@code from} (or at the edge).
     * An empty label draws nothing: what is not told is not dimensioned.
     */
    void add(double x1, double x2, double from, Label label) {
        if (label.isEmpty() || !Double.isFinite(x1) || !Double.isFinite(x2)) {
            return;
        }
        double a = Math.min(x1, x2);
        double b = Math.max(x1, x2);
        List<Form> forms = forms(a, b, label);
        for (int level = 0; level < MOST_LEVELS; level++) {
            for (int i = 0; i < forms.size(); i++) {
                int own = level - i * OUTWARD_COSTS;
                if (own >= 0 && tryAt(a, b, from, label, edge + side * (FIRST + NEXT * own), forms.get(i))) {
                    return;
                }
            }
        }
    }

    void add(double x1, double x2, Label label) {
        add(x1, x2, edge, label);
    }

    private List<Form> forms(double a, double b, Label label) {
        Form inward = (a + b) / 2 < middle ? Form.RIGHT : Form.LEFT;
        Form outward = inward == Form.RIGHT ? Form.LEFT : Form.RIGHT;
        double need = label.width(ink.lettering()) + (label.isFramed() ? 24 : 6);
        return b - a >= need ? List.of(Form.BETWEEN) : List.of(inward, outward);
    }

    private boolean tryAt(double a, double b, double from, Label label, double y, Form form) {
        double width = label.width(ink.lettering());
        boolean inside = b - a >= ROOM_FOR_ARROWS;
        double left = a - (inside ? 0 : TAIL);
        double right = b + (inside ? 0 : TAIL);
        double x = (a + b) / 2;
        if (form == Form.RIGHT) {
            x = b + (inside ? 6 : 12) + width / 2;
            right = x + width / 2 + (label.isFramed() ? 0 : 2);
        } else if (form == Form.LEFT) {
            x = a - (inside ? 6 : 12) - width / 2;
            left = x - width / 2 - (label.isFramed() ? 0 : 2);
        }
        double baseline = label.isFramed() ? y + ink.lettering().size() * 0.35 : y - 5;
        Box text = label.box(ink.lettering(), x, baseline, Anchor.MIDDLE);
        Box all = new Box(left, y - OVER, right, y + OVER).union(text);
        if (isTaken(all.grown(2)) || !sheet.isFreeForSize(text)) {
            return false;
        }
        taken.add(all);
        sheet.keep(new Box(left, y - 2, right, y + 2));
        double[] ends = {left, right};
        sheet.dimension(label, () -> lines(a, b, from, y, ends, inside));
        sheet.letter(label, ink.lettering(), x, baseline, Anchor.MIDDLE);
        return true;
    }

    private boolean isTaken(Box box) {
        for (Box t : taken) {
            if (t.overlaps(box)) {
                return true;
            }
        }
        return false;
    }

    private void lines(double a, double b, double from, double y, double[] ends, boolean inside) {
        extension(a, from, y);
        extension(b, from, y);
        sheet.line(ink.line(), ends[0], y, ends[1], y);
        sheet.arrow(ink.arrow(), new Pt(a, y), inside ? 180 : 0);
        sheet.arrow(ink.arrow(), new Pt(b, y), inside ? 0 : 180);
    }

    private void extension(double x, double from, double y) {
        sheet.line(ink.line(), x, from + side * OVER, x, y + side * OVER);
    }
}
