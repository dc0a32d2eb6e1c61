package soapstone.figure;

import java.util.List;

/** Break lines: a long part shortened, or cut off where it would leave the sheet. */
final class Break {

    private static final double GAP = 7;
    private static final double OVER = 6;
    private static final double ZAG = 5;

    private Break() {}

    /** A plumb break through a part between two heights: two zigzag lines with nothing between. */
    static void plumb(Sheet sheet, double x, double top, double bottom) {
        double a = top - OVER;
        double b = bottom + OVER;
        List<Pt> left = zigzag(x - GAP / 2, a, b);
        List<Pt> right = zigzag(x + GAP / 2, a, b);
        Path gap = Path.polyline(left);
        for (int i = right.size() - 1; i >= 0; i--) {
            gap.lineTo(right.get(i));
        }
        sheet.path(Pen.GAP, gap.close());
        sheet.path(Pen.BREAK, Path.polyline(left));
        sheet.path(Pen.BREAK, Path.polyline(right));
        sheet.keep(new Box(x - GAP, a, x + GAP, b));
    }

    /** A level break through a part between two sides. */
    static void level(Sheet sheet, double y, double left, double right) {
        double a = left - OVER;
        double b = right + OVER;
        List<Pt> upper = turned(zigzag(y - GAP / 2, a, b));
        List<Pt> lower = turned(zigzag(y + GAP / 2, a, b));
        Path gap = Path.polyline(upper);
        for (int i = lower.size() - 1; i >= 0; i--) {
            gap.lineTo(lower.get(i));
        }
        sheet.path(Pen.GAP, gap.close());
        sheet.path(Pen.BREAK, Path.polyline(upper));
        sheet.path(Pen.BREAK, Path.polyline(lower));
        sheet.keep(new Box(a, y - GAP, b, y + GAP));
    }

    /** A single zigzag where a part of an answer is cut off. */
    static void end(Sheet sheet, Pen pen, double x, double top, double bottom) {
        sheet.path(pen, Path.polyline(zigzag(x, top - OVER, bottom + OVER)));
        sheet.keep(new Box(x - ZAG, top - OVER, x + ZAG, bottom + OVER));
    }

    /** A break through a part that runs in any direction, square to it; {@code half} is half of the part's thickness. */
    static void across(Sheet sheet, Pt at, double direction, double half) {
        List<Pt> near = placed(zigzag(-GAP / 2, -half - OVER, half + OVER), at, direction);
        List<Pt> far = placed(zigzag(GAP / 2, -half - OVER, half + OVER), at, direction);
        Path gap = Path.polyline(near);
        for (int i = far.size() - 1; i >= 0; i--) {
            gap.lineTo(far.get(i));
        }
        sheet.path(Pen.GAP, gap.close());
        sheet.path(Pen.BREAK, Path.polyline(near));
        sheet.path(Pen.BREAK, Path.polyline(far));
        sheet.keep(Box.around(near.get(0), far.get(far.size() - 1)).grown(2));
    }

    /** The broken end of a part that runs on in some direction. */
    static void open(Sheet sheet, Pt at, double direction, double half) {
        List<Pt> line = placed(zigzag(0, -half - OVER, half + OVER), at, direction);
        sheet.path(Pen.BREAK, Path.polyline(line));
        sheet.keep(Box.around(line.get(0), line.get(line.size() - 1)).grown(2));
    }

    private static List<Pt> placed(List<Pt> line, Pt at, double direction) {
        return line.stream().map(p -> at.polar(p.x(), direction).polar(p.y(), direction - 90)).toList();
    }

    private static List<Pt> zigzag(double x, double a, double b) {
        double m = (a + b) / 2;
        return List.of(new Pt(x, a), new Pt(x, m - ZAG), new Pt(x - ZAG, m - ZAG / 3), new Pt(x + ZAG, m + ZAG / 3),
                new Pt(x, m + ZAG), new Pt(x, b));
    }

    private static List<Pt> turned(List<Pt> line) {
        return line.stream().map(p -> new Pt(p.y(), p.x())).toList();
    }
}
