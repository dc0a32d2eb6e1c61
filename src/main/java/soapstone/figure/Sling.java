package soapstone.figure;

import java.util.List;
import soapstone.quantity.Dimension;

/**
 * A load on a sling with two equal legs. The arrows of the load and of the pull in one leg are to one scale of weights; an
 * answer's pull stands at the other leg, which pulls as hard.
 */
final class Sling extends NamedDrawer {

    private static final double LOAD = 66;
    private static final double BOX = 92;
    private static final double OUT = 14;
    private static final double EYE = 4;
    private static final double MOST_PULL = 2.6;

    Sling() {
        super("sling", new FigureArgument("load", Dimension.MASS, false, false), FigureArgument.length("spread"),
                FigureArgument.angle("angle"), new FigureArgument("pull", Dimension.MASS, false, true));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("load") > 0 && v.at("spread") > 0 && v.at("angle") >= 8 && v.at("angle") <= 84 && (!v.has("pull") || v.at("pull") > 0);
    }

    @Override
    String miss(Brief brief) {
        if (!brief.differs("pull")) {
            return "";
        }
        return brief.say(word(isOffSheet(brief) ? "off" : brief.yours().at("pull") < brief.right().at("pull") ? "less" : "more"));
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.yours().at("pull") > MOST_PULL * brief.right().at("load");
    }

    @Override
    public List<Label> notes(Brief brief) {
        Label scale = Label.text(brief.say(word("arrows")));
        return brief.isAsCut() && !miss(brief).isEmpty() ? List.of(Label.text(miss(brief)), scale) : List.of(scale);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double tangent = StrictMath.tan(Math.toRadians(v.at("angle")));
        double half = Math.min(Math.max(40, room - 40) / 2, (brief.isNarrow() ? 190 : 220) / tangent);
        half = Math.max(14, Math.min(half, brief.isNarrow() ? 110 : 190));
        Pt hook = new Pt(0, -half * tangent);
        Pt left = new Pt(-half, -EYE);
        Pt right = new Pt(half, -EYE);
        rig(sheet, hook.plus(0, -EYE), left, right);
        Force.draw(sheet, Ink.RIGHT, new Pt(0, 12 + LOAD), 270, LOAD, "weight");
        double up = right.degreesTo(hook.plus(0, -EYE));
        double per = LOAD / v.at("load");
        boolean yours = brief.differs("pull");
        if (v.has("pull")) {
            pull(sheet, Ink.RIGHT, right.polar(OUT, up - 90), up, v.at("pull") * per, "pull");
        }
        if (yours && !isOffSheet(brief)) {
            pull(sheet, Ink.YOURS, left.polar(OUT, 270 - up), 180 - up, brief.yours().at("pull") * per, "yours-pull");
        }
        AngleMark.draw(sheet, Ink.RIGHT, left, Math.min(40, half * 0.8), new double[] {0, v.at("angle")}, 0, v.label("angle"));
        new Across(sheet, BOX, false, Ink.RIGHT, 0).add(-half, half, BOX, v.label("spread"));
        Leader.to(sheet, Ink.RIGHT, new Pt(0, 30), 0, v.label("load"), 0, 180, 20, 160, 340, 200);
        Leader.to(sheet, Ink.RIGHT, right.polar(OUT, up - 90).polar(Math.min(20, v.has("pull") ? v.at("pull") * per / 2 : 0), up), 0,
                v.label("pull"), 10, 0, 30, -10);
        if (yours && !isOffSheet(brief)) {
            Pt middle = left.polar(OUT, 270 - up).polar(brief.yours().at("pull") * per / 2, 180 - up);
            Leader.to(sheet, Ink.YOURS, middle, 0, brief.yoursLabel("pull"), 170, 180, 150, 190);
        }
    }

    private static void rig(Sheet sheet, Pt hook, Pt left, Pt right) {
        sheet.path(Pen.VISIBLE, Path.polyline(List.of(left, hook, right)), "legs");
        sheet.circle(Pen.VISIBLE, left, EYE, "eye");
        sheet.circle(Pen.VISIBLE, right, EYE, "eye");
        sheet.plate(Pen.VISIBLE, new Box(left.x() - 14, 0, right.x() + 14, BOX), "part");
        sheet.circle(Pen.VISIBLE, hook.plus(0, -7), 7, "hook");
        sheet.line(Pen.VISIBLE, hook.x(), hook.y() - 14, hook.x(), hook.y() - 28);
        sheet.line(Pen.CENTER, hook.x(), hook.y() + 4, hook.x(), BOX + 6);
    }

    private static void pull(Sheet sheet, Ink ink, Pt tail, double up, double length, String role) {
        Force.draw(sheet, ink, tail.polar(length, up), up, length, role);
    }
}
