package soapstone.figure;

import java.util.List;

/** A cone, or a cone without its point, from the side, and the flat pattern that rolls up into it. */
final class ConeAndFlat implements Drawer {

    private static final double MOST_RATIO = 60;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("across"), FigureArgument.length("top").maybe(), FigureArgument.length("height"),
                FigureArgument.length("outer"), FigureArgument.length("inner").maybe(), FigureArgument.angle("angle"),
                FigureArgument.length("made_across").maybe(), FigureArgument.length("made_height").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double across = v.at("across");
        return across > 0 && v.at("height") > 0 && across < MOST_RATIO * v.at("height") && v.at("height") < MOST_RATIO * across
                && (!v.has("top") || v.at("top") >= 0 && v.at("top") < across) && Sector.isSector(v) && v.at("outer") < MOST_RATIO * across;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "cone-and-flat.title.yours" : "cone-and-flat.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say(v.has("top") ? "cone-and-flat.is.cut.off" : "cone-and-flat.is");
        t.value(v, "across", "cone-and-flat.across").value(v, "top", "cone-and-flat.top").value(v, "height", "height");
        t.say("sector.is");
        Sector.tellValues(v, t);
        Sector.tellYours(brief, t);
    }

    @Override
    public List<Label> notes(Brief brief) {
        return SectorMiss.notes(brief);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        Box flat = Sector.bounds(v);
        double scale = brief.isNarrow() ? Math.min(room / Math.max(flat.width(), v.at("across")), 230 / Math.max(flat.height(), v.at("height")))
                : Math.min((room - Views.between()) / (flat.width() + v.at("across")), 270 / Math.max(flat.height(), v.at("height")));
        Sheet side = new Sheet();
        side(brief, side, scale);
        Sheet pattern = new Sheet();
        Sector.drawTo(brief, pattern, scale);
        (brief.isNarrow() ? Views.under(sheet) : Views.beside(sheet)).add(side, brief.say("cone-and-flat.side"))
                .add(pattern, brief.say("flat.pattern"));
    }

    private static void side(Brief brief, Sheet sheet, double scale) {
        Values v = brief.right();
        double base = v.at("across") * scale / 2;
        double top = v.has("top") ? v.at("top") * scale / 2 : 0;
        double height = v.at("height") * scale;
        sheet.path(Pen.VISIBLE, cone(base, top, height), "cone");
        sheet.line(Pen.CENTER, 0, 8, 0, -height - 8);
        made(brief, sheet, new double[] {base, top, height}, scale);
        if (top > 0) {
            new Across(sheet, sheet.bounds().top() + 8, true, Ink.RIGHT, 0).add(-top, top, -height, Labels.diameter(v.label("top")));
        }
        new Across(sheet, 0, false, Ink.RIGHT, 0).add(-base, base, Labels.diameter(v.label("across")));
        new Upright(sheet, sheet.bounds().left(), true, Ink.RIGHT).add(0, -height, -top, v.label("height"));
    }

    private static Path cone(double base, double top, double height) {
        return Path.polygon(List.of(new Pt(-base, 0), new Pt(-top, -height), new Pt(top, -height), new Pt(base, 0)));
    }

    /** The cone that the answer's pattern rolls up into, where it is told and fits the sheet. */
    private static void made(Brief brief, Sheet sheet, double[] right, double scale) {
        Values y = brief.yours();
        if (!brief.isAsCut() || !y.has("made_across") || !y.has("made_height")) {
            return;
        }
        double base = y.at("made_across") * scale / 2;
        double height = y.at("made_height") * scale;
        boolean seen = base > 0 && height >= 0 && base < 1.8 * right[0] && height < 2 * right[2] + 20;
        if (seen && Math.abs(base - right[0]) + Math.abs(height - right[2]) > 1.2) {
            sheet.path(Pen.PHANTOM, cone(base, Math.min(base, right[1]), height), "yours-cone");
        }
    }
}
