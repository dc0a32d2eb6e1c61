package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The section of one bend with its dimensions, and over it the line that an answer moves. */
final class BendView {

    private static final double THICKEST = 54;
    /** How much of a straight leg is drawn, in outside radii; what is longer is broken. */
    private static final double SHOWN = 1.7;
    private static final double LEAST_SEEN = 1.5;
    private static final double ARC = 34;
    /** How far off the metal a neutral line is drawn, in thicknesses. */
    private static final double MOST_OUT = 1;

    private final Brief brief;
    private final Values v;
    private final BendShape bend;
    private final BendMiss miss;
    private final double scale;

    BendView(Brief brief, double room) {
        this.brief = brief;
        this.v = brief.right();
        this.miss = BendMiss.of(brief);
        BendShape real = shape(v);
        Box bounds = real.bounds();
        double width = bounds.width();
        if (BendFlat.has(v)) {
            width = Math.max(width, BendFlat.length(brief));
        }
        this.scale = Math.min(Math.min(room / width, (brief.isNarrow() ? 190 : 230) / bounds.height()), THICKEST / v.at("thickness"));
        this.bend = real.scaled(scale);
    }

    private static BendShape shape(Values v) {
        BendShape bare = new BendShape(v.at("thickness"), v.at("radius"), v.at("angle"), 0, 0);
        return new BendShape(bare.thickness(), bare.radius(), bare.angle(), shown(v, "first", bare), shown(v, "second", bare));
    }

    /** The straight part of a leg that is drawn: all of it when it is short. */
    private static double shown(Values v, String leg, BendShape bare) {
        double most = SHOWN * bare.outer();
        return v.has(leg) ? Math.min(most, v.at(leg) - bare.corner().x()) : most;
    }

    /** Whether the legs that are given reach past the bend. */
    static boolean hasRoom(Values v) {
        BendShape bare = shape(v);
        return bare.first() >= 0 && bare.second() >= 0;
    }

    private boolean isBroken(String leg) {
        return v.has(leg) && v.at(leg) - bend.corner().x() / scale > SHOWN * bend.outer() / scale * (1 + 1e-9);
    }

    /** Whether the answer's start of the bend lies past the end of the leg as it is drawn, or its neutral line far off the metal. */
    static boolean isOffSheet(Brief brief) {
        if (BendMiss.of(brief).is("k")) {
            return brief.yours().at("k") < -MOST_OUT || brief.yours().at("k") > 1 + MOST_OUT;
        }
        if (!BendMiss.of(brief).is("setback")) {
            return false;
        }
        BendShape bare = shape(brief.right());
        return brief.right().at("setback") - brief.yours().at("setback") < -bare.first();
    }

    /** On a phone the neutral line has no room for a second leader: its miss is a note. */
    static boolean isMissBelow(Brief brief) {
        return brief.isNarrow() && BendMiss.of(brief).is("k") && !isOffSheet(brief);
    }

    double scale() {
        return scale;
    }

    void draw(Sheet sheet) {
        sheet.path(Pen.WATER, bend.metal());
        sheet.path(Pen.VISIBLE, bend.along(bend.outer()), "outside");
        sheet.path(Pen.VISIBLE, bend.along(bend.radius()), "inside");
        end(sheet, "first", bend.firstEnd(), 180, bend.first());
        end(sheet, "second", bend.secondEnd(), bend.angle(), bend.second());
        if (v.has("k")) {
            sheet.path(Pen.CENTER, bend.along(neutralOf(v)), "neutral");
        }
        for (double direction : new double[] {-90, bend.end()}) {
            sheet.line(Pen.ZONE, bend.center(), bend.at(bend.outer() + 6, direction));
        }
        if (miss.is("k") && !isOffSheet(brief)) {
            yoursNeutral(sheet);
        }
        if (miss.is("setback") && !isOffSheet(brief)) {
            sheet.path(Pen.PHANTOM, Path.line(yoursBegin(), -bend.thickness() - 12, yoursBegin(), 12), "yours-start");
        }
        corner(sheet);
        dimensions(sheet);
        if (miss.is("k") && !isOffSheet(brief)) {
            yoursDepth(sheet);
        }
    }

    private void end(Sheet sheet, String leg, Pt at, double direction, double shown) {
        double half = bend.thickness() / 2;
        if (!v.has(leg)) {
            Break.open(sheet, at, direction, half);
            return;
        }
        sheet.line(Pen.VISIBLE, at.polar(half, direction + 90), at.polar(half, direction - 90));
        if (isBroken(leg)) {
            Break.across(sheet, at.polar(shown * 0.4, direction + 180), direction, half);
        }
    }

    /** The outside faces carried on to where they meet. */
    private void corner(Sheet sheet) {
        Pt corner = bend.corner();
        line(sheet, new Pt(0, 0), corner.plus(44, 0));
        line(sheet, bend.at(bend.outer(), bend.end()), corner);
        AngleMark.draw(sheet, Ink.RIGHT, corner, ARC, new double[] {0, bend.angle()}, 0, v.label("angle"));
        if (!v.label("angle").isEmpty()) {
            sheet.keep(new Box(corner.x() - (bend.angle() > 90 ? ARC : 0), -ARC, corner.x() + ARC, 0));
        }
        if (v.has("setback") && Math.abs(v.at("setback") * scale - corner.x()) > LEAST_SEEN) {
            double edge = v.at("setback") * scale;
            sheet.path(Pen.ZONE, Path.line(edge, 10, edge, -bend.outer() - 10), "edge");
        }
    }

    private static void line(Sheet sheet, Pt a, Pt b) {
        sheet.line(Pen.THIN, a, b);
        sheet.keepLine(a, b);
    }

    private void dimensions(Sheet sheet) {
        Upright left = new Upright(sheet, -bend.first() - 6, true, Ink.RIGHT);
        left.add(-bend.thickness(), 0, v.label("thickness"));
        neutral(sheet);
        radius(sheet);
        // The second leg first: it has one good side, the level sizes have many heights.
        Aligned.add(sheet, Ink.RIGHT, bend.corner(), bend.at(bend.outer(), bend.end()).polar(bend.second(), bend.angle()), -1, 0,
                v.label("second"));
        Across below = new Across(sheet, 0, false, Ink.RIGHT, bend.corner().x() / 2);
        if (v.has("setback")) {
            below.add(0, v.at("setback") * scale, v.label("setback"));
        }
        below.add(-bend.first(), bend.corner().x(), v.label("first"));
        if (miss.is("setback") && !isOffSheet(brief)) {
            yoursStart(sheet);
        }
    }

    /** The inside radius: an arrow from the center to the inside face, lettered in the hollow of the bend. */
    private void radius(Sheet sheet) {
        Label label = Labels.radius(v.label("radius"));
        Pt center = bend.center();
        if (label.isEmpty()) {
            return;
        }
        double half = label.width(Lettering.TEXT) / 2;
        for (double turn : new double[] {0, 15, -15, 30, -30}) {
            for (double out = 12; out < 90; out += 6) {
                double away = bend.middle() + 180 + turn;
                double reach = out + half * Math.abs(StrictMath.cos(Math.toRadians(away)));
                Pt at = center.polar(reach, away);
                Box text = label.box(Lettering.TEXT, at.x(), at.y() + 5, Anchor.MIDDLE);
                if (sheet.isFreeForSize(text)) {
                    sheet.line(Pen.THIN, at, bend.at(bend.radius(), bend.middle()));
                    sheet.arrow(Pen.ARROW, bend.at(bend.radius(), bend.middle()), bend.middle());
                    sheet.letter(label, Lettering.TEXT, at.x(), at.y() + 5, Anchor.MIDDLE);
                    return;
                }
            }
        }
    }

    private void neutral(Sheet sheet) {
        if (!v.has("k")) {
            return;
        }
        Label k = v.label("k");
        Label label = Label.text(brief.say(k.isEmpty() ? "bend.neutral" : "bend.neutral.at") + (k.isEmpty() || k.isFramed() ? "" : " ")).then(k);
        double at = neutralOf(v);
        if (!Leader.to(sheet, Ink.RIGHT, new Pt(-bend.first() * 0.5, at - bend.outer()), 0, label, 125, 140, 110, 55)) {
            Leader.to(sheet, Ink.RIGHT, bend.center(), at, label, around(0.75, 0.6, 0.9, 0.45, 0.3, 0.15));
        }
    }

    private double[] around(double... shares) {
        List<Double> all = new ArrayList<>();
        for (double share : shares) {
            all.add(-90 + bend.angle() * share);
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where the answer starts the bend, measured back from the corner. */
    private double yoursBegin() {
        return (v.at("setback") - brief.yours().at("setback")) * scale;
    }

    private void yoursStart(Sheet sheet) {
        double start = yoursBegin();
        double corner = v.at("setback") * scale;
        Across below = new Across(sheet, sheet.bounds().bottom() - 4, false, Ink.YOURS, corner / 2);
        Miss.along(sheet, new Miss(0, start), new Box(0, -bend.thickness(), 0, 0), below, miss.text(brief));
        below.add(start, corner, brief.yoursLabel("setback"));
    }

    private double neutralOf(Values values) {
        return bend.radius() + values.at("k") * bend.thickness();
    }

    private void yoursNeutral(Sheet sheet) {
        double right = neutralOf(v);
        double yours = neutralOf(brief.yours());
        if (Math.abs(yours - right) >= LEAST_SEEN) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, bend.ring(right, yours));
        }
        sheet.path(Pen.PHANTOM, bend.along(yours), "yours-neutral");
    }

    private void yoursDepth(Sheet sheet) {
        double yours = neutralOf(brief.yours());
        Leader.to(sheet, Ink.YOURS, bend.center(), yours, brief.yoursLabel("k"), around(0.5, 0.35, 0.65, 0.2, 0.8));
        if (!isMissBelow(brief)) {
            Leader.to(sheet, Ink.YOURS, bend.center(), (neutralOf(v) + yours) / 2, Label.text(miss.text(brief)),
                    around(0.2, 0.1, 0.35, 0, 0.8, 0.9, 1));
        }
    }
}
