package soapstone.figure;

import java.util.List;

/** A right triangle with its run level and its rise plumb. */
final class Triangle implements Drawer {

    private static final double SQUARE = 12;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("run"), FigureArgument.length("rise"));
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("run") > 0 && v.at("rise") > 0 && v.at("run") < 100 * v.at("rise") && v.at("rise") < 100 * v.at("run");
    }

    @Override
    public String title(Brief brief) {
        return brief.say("triangle.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("triangle.is").value(brief.right(), "run", "triangle.run").value(brief.right(), "rise", "triangle.rise");
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room * 0.8 / v.at("run"), (brief.isNarrow() ? 180 : 210) / v.at("rise"));
        double run = v.at("run") * scale;
        double rise = v.at("rise") * scale;
        sheet.path(Pen.VISIBLE, Path.polygon(List.of(new Pt(0, 0), new Pt(run, 0), new Pt(run, -rise))), "part");
        double square = Math.min(SQUARE, Math.min(run, rise) / 3);
        sheet.path(Pen.THIN, Path.line(run - square, 0, run - square, -square).lineTo(new Pt(run, -square)));
        new Across(sheet, 0, false, Ink.RIGHT, run / 2).add(0, run, v.label("run"));
        new Upright(sheet, run, false, Ink.RIGHT).add(0, -rise, v.label("rise"));
    }
}
