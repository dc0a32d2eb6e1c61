package soapstone.figure;

import java.util.List;

/** A square bend between punch and vee die, in section. */
final class BrakeSection {

    private static final double LEAST_THICK = 3;
    private static final double RAM = 26;
    private static final double TOP = 10;
    private static final double ARROW = 40;
    private static final double MOST_WIDER = 2.2;

    private final Brief brief;
    private final Values v;
    private final double scale;
    private final double thickness;
    private final double radius;
    private final BrakeTools tools;

    /**
     * @param room   for the die and the sheet
     * @param height for punch, sheet and die
     */
    BrakeSection(Brief brief, double room, double height) {
        this.brief = brief;
        this.v = brief.right();
        double widest = v.at("opening") * (hasYours(brief) ? Math.max(1, brief.yours().at("opening") / v.at("opening")) : 1);
        this.scale = Math.min(room / widest / 2, height / widest / 2.1);
        this.thickness = Math.max(LEAST_THICK, v.at("thickness") * scale);
        this.radius = v.at("radius") * scale;
        this.tools = new BrakeTools(v.at("opening") * scale);
    }

    static boolean canDraw(Values v) {
        double opening = v.at("opening");
        boolean sheet = v.at("thickness") > opening / 2000 && v.at("thickness") < opening && v.at("radius") >= 0;
        double least = v.at("radius") + Math.max(v.at("thickness"), opening / 40);
        return sheet && v.at("radius") <= opening / 2
                && (!v.has("flange") || v.at("flange") > least && v.at("flange") < 4 * opening);
    }

    static boolean isOffSheet(Brief brief) {
        return brief.isAsCut() && brief.yours().at("opening") > MOST_WIDER * brief.right().at("opening");
    }

    private static boolean hasYours(Brief brief) {
        return brief.isAsCut() && brief.differs("opening") && !isOffSheet(brief);
    }

    static String miss(Brief brief) {
        double off = brief.yours().at("opening") - brief.right().at("opening");
        return brief.say(off < 0 ? "miss.narrow" : "miss.wide", brief.size(off));
    }

    void draw(Sheet sheet) {
        tools.die(sheet);
        if (hasYours(brief)) {
            yoursDie(sheet);
        }
        double nose = tools.cornerDepth() - (radius + thickness) * Math.sqrt(2) + radius;
        double top = Math.min(-0.55 * v.at("opening") * scale, drawSheet(sheet)) - RAM;
        tools.punch(sheet, nose, radius, top);
        sheet.line(Pen.CENTER, 0, top - 8, 0, tools.bottom() + 8);
        if (v.has("force")) {
            force(sheet, top);
        }
        names(sheet, top);
        Across below = new Across(sheet, tools.bottom(), false, Ink.RIGHT, 0);
        double half = v.at("opening") * scale / 2;
        below.add(-half, half, 0, v.label("opening"));
        if (hasYours(brief)) {
            yoursSizes(sheet);
        }
    }

    /** Draws the bent sheet, its faces on the shoulders of the die; gives the height of its highest point. */
    private double drawSheet(Sheet sheet) {
        Pt corner = new Pt(0, tools.cornerDepth());
        Pt center = corner.plus(0, -(radius + thickness) * Math.sqrt(2));
        double usual = 0.98 * v.at("opening") * scale;
        double length = v.has("flange") ? v.at("flange") * scale : usual;
        Pt left = corner.polar(length, 135);
        Pt right = corner.polar(Math.max(usual, radius + 2 * thickness), 45);
        // As an outline it leaves the answer's vee to be seen.
        sheet.path(brief.isAsCut() ? Pen.VISIBLE : Pen.SECTION, Path.from(left).lineTo(center.polar(radius + thickness, 225))
                .arcAround(center, radius + thickness, 225, 315).lineTo(right).lineTo(right.polar(thickness, 135))
                .lineTo(center.polar(radius, 315)).arcAround(center, radius, 315, 225).lineTo(left.polar(thickness, 45)).close(), "sheet");
        Break.open(sheet, right.polar(thickness / 2, 135), 45, thickness / 2);
        Pt at = right.polar(14, 225);
        Aligned.add(sheet, Ink.RIGHT, at, at.polar(thickness, 135), -1, 12, v.label("thickness"));
        if (v.has("flange") && !brief.isAsCut()) {
            Leader.to(sheet, Ink.RIGHT, left.polar(thickness / 2, 45), 0, flange(brief), 135, 165, 120, 180, 90);
        }
        return right.y() - thickness;
    }

    static Label flange(Brief brief) {
        Label flange = brief.right().label("flange");
        return flange.isEmpty() ? flange : Label.text(brief.say("brake.flange") + " ").then(flange);
    }

    private void force(Sheet sheet, double top) {
        Pt tip = new Pt(0, top - 3);
        sheet.path(Pen.VISIBLE, Path.line(0, top - ARROW, 0, top - 14), "force");
        sheet.path(Pen.SECTION, Path.polygon(List.of(tip, tip.plus(-5, -13), tip.plus(5, -13))));
        Label label = v.label("force");
        sheet.letter(label, Lettering.TEXT, 14, top - ARROW + 16, Anchor.START);
    }

    private void names(Sheet sheet, double top) {
        double half = Math.max(0.3 * v.at("opening") * scale, radius * 1.2);
        Leader.to(sheet, Ink.RIGHT, new Pt(-half, top + 10), 0, Label.text(brief.say("brake.punch")), 180, 165, 150);
        Leader.to(sheet, Ink.RIGHT, new Pt(-tools.side(), tools.bottom() - 8), 0, Label.text(brief.say("brake.die")), 180, 165, 195);
    }

    private BrakeTools yours() {
        return new BrakeTools(brief.yours().at("opening") * scale);
    }

    private void yoursDie(Sheet sheet) {
        BrakeTools yours = yours();
        if (Math.abs(yours.shoulder() - tools.shoulder()) >= 1) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, tools.between(yours, 1));
            Hatch.fill(sheet, Pen.YOURS_HATCH, tools.between(yours, -1));
        }
        sheet.path(Pen.PHANTOM, yours.vee(yours.shoulder() + TOP), "yours-die");
    }

    private void yoursSizes(Sheet sheet) {
        BrakeTools yours = yours();
        double half = brief.yours().at("opening") * scale / 2;
        new Across(sheet, sheet.bounds().bottom() - 2, false, Ink.YOURS, 0).add(-half, half, brief.yoursLabel("opening"));
        double right = tools.shoulder();
        Pt at = new Pt((right + yours.shoulder()) / 2, Math.min(tools.veeDepth(), yours.veeDepth()) * 0.1);
        Leader.to(sheet, Ink.YOURS, at, 0, Label.text(miss(brief)), -30, -15, -45, 0, 20, -60);
    }
}
