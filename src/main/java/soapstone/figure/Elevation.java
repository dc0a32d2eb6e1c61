package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A round vessel standing up, seen from the side: a drum with one diameter, or a tub that is wider at the top. */
final class Elevation implements Drawer {

    private final boolean tub;

    private Elevation(boolean tub) {
        this.tub = tub;
    }

    static Elevation drum() {
        return new Elevation(false);
    }

    static Elevation tub() {
        return new Elevation(true);
    }

    @Override
    public List<FigureArgument> arguments() {
        List<FigureArgument> a = new ArrayList<>();
        if (tub) {
            a.add(FigureArgument.length("top"));
            a.add(FigureArgument.length("bottom"));
        } else {
            a.add(FigureArgument.length("diameter"));
        }
        a.add(FigureArgument.length("height"));
        a.add(FigureArgument.length("level").maybe());
        return a;
    }

    private String upper() {
        return tub ? "top" : "diameter";
    }

    private String lower() {
        return tub ? "bottom" : "diameter";
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at(upper()) > 0 && v.at(lower()) >= 0 && v.at("height") > 0 && Levels.isSound(v)
                && v.at("height") < 400 * v.at(upper()) && v.at(upper()) < 400 * v.at("height")
                && v.at(lower()) < 400 * v.at("height");
    }

    @Override
    public String title(Brief brief) {
        return brief.say(tub ? "tub.title" : "upright-drum.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        Values v = brief.right();
        t.say(tub ? "tub.is" : "upright-drum.is");
        if (tub) {
            t.value(v, "top", "tub.top").value(v, "bottom", "tub.bottom");
        } else {
            t.value(v, "diameter", "diameter");
        }
        t.value(v, "height", "height").value(v, "level", "level");
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    @Override
    public List<Label> notes(Brief brief) {
        Label over = Levels.over(brief, brief.right(), brief.right().at("height"));
        return over.isEmpty() ? List.of() : List.of(over);
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double widest = Math.max(v.at(upper()), v.at(lower()));
        double scale = Math.min(room / widest, (brief.isNarrow() ? 190 : 220) / v.at("height"));
        double top = v.at(upper()) * scale / 2;
        double bottom = v.at(lower()) * scale / 2;
        double height = v.at("height") * scale;
        Path side = Path.polygon(List.of(new Pt(-bottom, 0), new Pt(-top, -height), new Pt(top, -height), new Pt(bottom, 0)));
        double level = v.has("level") ? Levels.within(v, v.at("height")) * scale : 0;
        double half = bottom + (top - bottom) * level / height;
        if (v.has("level")) {
            sheet.path(Pen.WATER, Path.polygon(List.of(new Pt(-bottom, 0), new Pt(-half, -level), new Pt(half, -level),
                    new Pt(bottom, 0))));
            sheet.path(Pen.THIN, Path.line(-half, -level, half, -level), "level");
            if (half > 16) {
                Surface.sign(sheet, Pen.THIN, half * 0.45, -level);
            }
        }
        sheet.path(Pen.VISIBLE, side, "part");
        sheet.line(Pen.CENTER, 0, 8, 0, -height - 8);
        dimensions(v, sheet, new double[] {top, bottom, height, level, half});
    }

    private void dimensions(Values v, Sheet sheet, double[] at) {
        double top = at[0];
        double bottom = at[1];
        double height = at[2];
        new Across(sheet, -height, true, Ink.RIGHT, 0).add(-top, top, Labels.diameter(v.label(upper())));
        if (tub && bottom > 0) {
            new Across(sheet, 0, false, Ink.RIGHT, 0).add(-bottom, bottom, Labels.diameter(v.label("bottom")));
        }
        double edge = -Math.max(top, bottom);
        Upright left = new Upright(sheet, edge, true, Ink.RIGHT);
        if (v.has("level") && at[3] > 0) {
            left.add(0, -at[3], -at[4], v.label("level"));
        }
        left.add(0, -height, -Math.min(top, bottom), v.label("height"));
    }
}
