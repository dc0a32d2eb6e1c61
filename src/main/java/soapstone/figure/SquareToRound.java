package soapstone.figure;

import java.util.List;

/** A square to round from above, and its two lines laid out in their true lengths against the height. */
final class SquareToRound implements Drawer {

    private static final double MOST_RATIO = 30;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("side"), FigureArgument.length("round"), FigureArgument.length("height"),
                FigureArgument.length("middle_plan"), FigureArgument.length("corner_plan"), FigureArgument.length("middle_line"),
                FigureArgument.length("corner_line"));
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double side = v.at("side");
        double height = v.at("height");
        return side > 0 && v.at("round") > 0 && v.at("round") < MOST_RATIO * side && side < MOST_RATIO * v.at("round")
                && height > 0 && height < MOST_RATIO * side && side < MOST_RATIO * height && isLine(v, "middle")
                && isLine(v, "corner");
    }

    private static boolean isLine(Values v, String which) {
        return v.at(which + "_plan") >= 0 && v.at(which + "_plan") < MOST_RATIO * v.at("side") && v.at(which + "_line") > 0;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "square-to-round.title.yours" : "square-to-round.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("square-to-round.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("square-to-round.yours");
            tellValues(brief.yours(), t);
            off(brief).tell(brief, t);
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "side", "square-to-round.side").value(v, "round", "square-to-round.round").value(v, "height", "height")
                .value(v, "middle_plan", "square-to-round.middle.plan").value(v, "corner_plan", "square-to-round.corner.plan")
                .value(v, "middle_line", "square-to-round.middle.line").value(v, "corner_line", "square-to-round.corner.line");
    }

    private static Off off(Brief brief) {
        return Off.furthest(brief, "middle_line", "corner_line");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double wide = Math.max(v.at("side"), v.at("round"));
        double run = v.at("middle_plan") + v.at("corner_plan");
        double tall = Math.max(wide, v.at("height"));
        double scale = brief.isNarrow() ? Math.min(room / Math.max(wide, run), 210 / tall)
                : Math.min((room - Views.between()) / (wide + run), 230 / tall);
        Sheet above = new Sheet();
        plan(brief, above, scale);
        Sheet lines = new Sheet();
        new TrueLengths(brief, off(brief), scale).draw(lines);
        (brief.isNarrow() ? Views.under(sheet) : Views.beside(sheet)).add(above, brief.say("square-to-round.from.above"))
                .add(lines, brief.say("square-to-round.true.lengths"));
    }

    private static void plan(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        double half = v.at("side") * scale / 2;
        double rim = v.at("round") * scale / 2;
        Pt middle = new Pt(0, 0);
        sheet.plate(Pen.VISIBLE, new Box(-half, -half, half, half), "square");
        sheet.circle(Pen.VISIBLE, middle, rim, "collar");
        sheet.line(Pen.CENTER, -half - 8, 0, half + 8, 0);
        sheet.line(Pen.CENTER, 0, -half - 8, 0, half + 8);
        Pt corner = middle.polar(rim, 45);
        sheet.path(Pen.BEND, Path.line(half, 0, rim, 0), "middle-plan");
        sheet.path(Pen.BEND, Path.line(half, -half, corner.x(), corner.y()), "corner-plan");
        new Across(sheet, -half, true, Ink.RIGHT, 0).add(-half, half, v.label("side"));
        new Across(sheet, half, false, Ink.RIGHT, 0).add(-rim, rim, 0, Labels.diameter(v.label("round")));
        name(brief, sheet, "middle", new Pt((half + rim) / 2, 0));
        name(brief, sheet, "corner", corner.towards(new Pt(half, -half), 0.5));
    }

    /** From above a line is not seen in its true length, so it gets its letter or its name there, no number. */
    private static void name(Brief brief, Sheet sheet, String which, Pt at) {
        boolean asked = brief.right().isAsked(which + "_line");
        Label name = asked ? brief.right().label(which + "_line") : Label.text(brief.say("square-to-round." + which));
        Leader.to(sheet, Ink.RIGHT, at, 0, name, -30, -45, 30, -20, 20, -60);
    }
}
