package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * An elbow from the side, in real units with y downwards. The end piece stands on its square end, throat to the left; every
 * further half piece is the one before, turned over on the line between them. So throat and heel make the whole elbow.
 *
 * @param lines  the square ends, middles and cuts in order, throat point first
 */
record ElbowSide(List<Pt[]> lines) {

    private static final double TOO_FAR = 1.5;
    private static final double LEAST_ARC = 24;

    static ElbowSide of(Values v, double heel) {
        double across = v.at("across");
        List<Pt[]> lines = new ArrayList<>();
        lines.add(new Pt[] {new Pt(0, 0), new Pt(across, 0)});
        lines.add(new Pt[] {new Pt(0, -v.at("throat")), new Pt(across, -heel)});
        for (int i = 2; i <= 2 * (v.count("pieces") - 1); i++) {
            Pt[] before = lines.get(i - 2);
            Pt[] fold = lines.get(i - 1);
            lines.add(new Pt[] {mirrored(before[0], fold), mirrored(before[1], fold)});
        }
        return new ElbowSide(lines);
    }

    private static Pt mirrored(Pt p, Pt[] line) {
        double dx = line[1].x() - line[0].x();
        double dy = line[1].y() - line[0].y();
        double along = ((p.x() - line[0].x()) * dx + (p.y() - line[0].y()) * dy) / (dx * dx + dy * dy);
        Pt foot = line[0].plus(along * dx, along * dy);
        return foot.plus(foot.x() - p.x(), foot.y() - p.y());
    }

    Box bounds() {
        Box b = Box.NOTHING;
        for (Pt[] line : lines) {
            b = b.union(Box.around(line[0], line[1]));
        }
        return b;
    }

    private static Pt at(Pt real, double scale) {
        return new Pt(real.x() * scale, real.y() * scale);
    }

    /** The outline: up along the throats of all pieces, back along their heels. */
    private Path outline(double scale) {
        List<Pt> corners = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (i % 2 == 1 || i == 0 || i == lines.size() - 1) {
                corners.add(at(lines.get(i)[0], scale));
            }
        }
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (i % 2 == 1 || i == 0 || i == lines.size() - 1) {
                corners.add(at(lines.get(i)[1], scale));
            }
        }
        return Path.polygon(corners);
    }

    void draw(Brief brief, Off off, Sheet sheet, double scale) {
        sheet.path(Pen.VISIBLE, outline(scale), "part");
        for (int i = 1; i < lines.size(); i += 2) {
            Pt a = at(lines.get(i)[0], scale);
            Pt b = at(lines.get(i)[1], scale);
            sheet.path(Pen.VISIBLE, Path.line(a.x(), a.y(), b.x(), b.y()), "cut");
        }
        if (!off.isNothing()) {
            yours(brief, sheet, scale);
        }
        dimensions(brief, sheet, scale);
    }

    private void yours(Brief brief, Sheet sheet, double scale) {
        ElbowSide theirs = of(brief.yours(), Elbow.heel(brief));
        Box right = bounds();
        Box all = theirs.bounds();
        boolean fits = all.width() < TOO_FAR * right.width() && all.height() < TOO_FAR * right.height();
        ElbowSide seen = fits ? theirs : new ElbowSide(theirs.lines.subList(0, 2));
        sheet.path(Pen.PHANTOM, seen.outline(scale), "yours-part");
        for (int i = 1; fits && i < theirs.lines.size(); i += 2) {
            Pt a = at(theirs.lines.get(i)[0], scale);
            Pt b = at(theirs.lines.get(i)[1], scale);
            sheet.path(Pen.PHANTOM, Path.line(a.x(), a.y(), b.x(), b.y()), "yours-cut");
        }
    }

    private void dimensions(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        double across = v.at("across") * scale;
        double lean = v.at("heel") - v.at("throat");
        Across below = new Across(sheet, sheet.bounds().bottom(), false, Ink.RIGHT, across / 2);
        below.add(0, across, 0, v.label("across"));
        if (!(lean > 1e-6 * v.at("across"))) {
            return;
        }
        Pt center = new Pt(-v.at("throat") * across / lean, 0);
        if (center.distance(new Pt(0, 0)) < 1.6 * sheet.bounds().width()) {
            angles(v, sheet, center, scale);
            if (v.has("bend")) {
                below.add(center.x(), across / 2, 0, Labels.radius(v.label("bend")));
            }
        }
    }

    /** The center of the turn with the angle of the first cut, and the whole turn. */
    private void angles(Values v, Sheet sheet, Pt center, double scale) {
        double across = v.at("across") * scale;
        Pt end = at(lines.get(lines.size() - 1)[0], scale);
        double cut = Math.toDegrees(StrictMath.atan((v.at("heel") - v.at("throat")) / v.at("across")));
        double turn = cut * (lines.size() - 1);
        sheet.line(Pen.CENTER, center, new Pt(0, 0));
        sheet.line(Pen.CENTER, center, at(lines.get(1)[0], scale));
        sheet.line(Pen.CENTER, center, end);
        if (v.has("cut")) {
            double out = (across - center.x()) / StrictMath.cos(Math.toRadians(cut)) + 14;
            sheet.line(Pen.CENTER, at(lines.get(1)[1], scale), center.polar(out + 8, cut));
            sheet.line(Pen.CENTER, new Pt(across, 0), center.polar(out + 8, 0));
            AngleMark.draw(sheet, Ink.RIGHT, center, out, new double[] {0, cut}, 0, v.label("cut"));
        }
        if (v.has("turn")) {
            AngleMark.draw(sheet, Ink.RIGHT, center, Math.max(LEAST_ARC, -center.x() * 0.45), new double[] {0, turn}, 0, v.label("turn"));
        }
    }
}
