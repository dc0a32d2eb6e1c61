package soapstone.figure;

import java.util.List;
import soapstone.quantity.UnitSystem;

/** A flat panel with the lines of whole square feet, or of whole square meters, on it. */
final class AreaGrid extends NamedDrawer {

    private static final double FOOT = 12;
    private static final double METER = 1000;
    private static final int MOST = 60;

    AreaGrid() {
        super("area-grid", FigureArgument.length("length"), FigureArgument.length("width"));
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        double width = v.at("width");
        return length > 0 && width > 0 && length < 60 * width && width < 60 * length;
    }

    private static double unit(Values v) {
        return v.system() == UnitSystem.US ? FOOT : METER;
    }

    private static boolean isRuled(Values v) {
        return Math.max(v.at("length"), v.at("width")) / unit(v) <= MOST;
    }

    @Override
    public List<Label> notes(Brief brief) {
        Values v = brief.right();
        boolean shown = isRuled(v) && Math.max(v.at("length"), v.at("width")) > unit(v);
        return shown ? List.of(Label.text(brief.say(word(v.system() == UnitSystem.US ? "feet" : "meters")))) : List.of();
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room / v.at("length"), (brief.isNarrow() ? 180 : 220) / v.at("width"));
        Box panel = new Box(0, -v.at("width") * scale, v.at("length") * scale, 0);
        double step = unit(v) * scale;
        for (double x = step; isRuled(v) && x < panel.right() - 0.5; x += step) {
            sheet.path(Pen.THIN, Path.line(x, panel.top(), x, 0), "line-along");
        }
        for (double y = step; isRuled(v) && y < -panel.top() - 0.5; y += step) {
            sheet.path(Pen.THIN, Path.line(0, -y, panel.right(), -y), "line-across");
        }
        sheet.plate(Pen.VISIBLE, panel, "part");
        new Across(sheet, panel.top(), true, Ink.RIGHT, panel.right() / 2).add(0, panel.right(), v.label("length"));
        new Upright(sheet, 0, true, Ink.RIGHT).add(panel.top(), 0, v.label("width"));
    }
}
