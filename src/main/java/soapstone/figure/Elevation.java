package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** A round vessel standing up, seen from the side: a drum with one diameter, or a tub that is wider at the top. */
final class Elevation implements Drawer {

    private static final double MOST = 2;

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

    @Override
    public boolean asCut() {
        return true;
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
        return brief.say((tub ? "tub.title" : "upright-drum.title") + (brief.isAsCut() ? ".yours" : ""));
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(tub ? "tub.is" : "upright-drum.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            t.sentence(missText(brief).isEmpty() ? "" : missText(brief) + ".");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private void tellValues(Values v, Telling t) {
        if (tub) {
            t.value(v, "top", "tub.top").value(v, "bottom", "tub.bottom");
        } else {
            t.value(v, "diameter", "diameter");
        }
        t.value(v, "height", "height").value(v, "level", "level");
    }

    /** The level first: it is what is mostly asked. */
    private Off off(Brief brief) {
        Off level = brief.right().has("level") ? Off.furthest(brief, "level") : Off.NOTHING;
        return level.isNothing() ? Off.furthest(brief, "height", upper(), lower()) : level;
    }

    private String missText(Brief brief) {
        Off off = off(brief);
        if (off.isNothing() || off.is("height")) {
            return off.text(brief);
        }
        return off.is("level") ? Levels.text(brief) : brief.say(off.size() < 0 ? "miss.narrow" : "miss.wide", brief.size(off.size()));
    }

    private boolean isOffSheet(Brief brief) {
        Values r = brief.right();
        Values y = brief.yours();
        double widest = Math.max(r.at(upper()), r.at(lower()));
        return y.at("height") > MOST * r.at("height") || Math.max(y.at(upper()), y.at(lower())) > MOST * widest;
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(Levels.over(brief, brief.right(), brief.right().at("height")));
        if (brief.isAsCut()) {
            Label over = Levels.over(brief, brief.yours(), brief.yours().at("height"));
            notes.add(over.isEmpty() ? over : Label.text(brief.say("yours") + ": ").then(over));
            if (isOffSheet(brief)) {
                notes.add(Label.text(brief.say("tank.off.sheet", missText(brief))));
            }
        }
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double widest = Math.max(v.at(upper()), v.at(lower()));
        double scale = Math.min(room / widest, (brief.isNarrow() ? 190 : 220) / v.at("height"));
        double top = v.at(upper()) * scale / 2;
        double bottom = v.at(lower()) * scale / 2;
        double height = v.at("height") * scale;
        double level = v.has("level") ? Levels.within(v, v.at("height")) * scale : 0;
        double half = half(v, level, scale);
        if (v.has("level")) {
            sheet.path(Pen.WATER, Path.polygon(List.of(new Pt(-bottom, 0), new Pt(-half, -level), new Pt(half, -level),
                    new Pt(bottom, 0))));
            sheet.path(Pen.THIN, Path.line(-half, -level, half, -level), "level");
            if (half > 16) {
                Surface.sign(sheet, Pen.THIN, half * 0.45, -level);
            }
        }
        sheet.path(Pen.VISIBLE, outline(v, scale), "part");
        sheet.line(Pen.CENTER, 0, 8, 0, -height - 8);
        boolean yours = brief.isAsCut() && !isOffSheet(brief);
        if (yours) {
            drawYours(brief, sheet, scale);
        }
        dimensions(v, sheet, new double[] {top, bottom, height, level, half});
        if (yours) {
            miss(brief, sheet, scale);
        }
    }

    private Path outline(Values v, double scale) {
        double top = v.at(upper()) * scale / 2;
        double bottom = v.at(lower()) * scale / 2;
        double height = v.at("height") * scale;
        return Path.polygon(List.of(new Pt(-bottom, 0), new Pt(-top, -height), new Pt(top, -height), new Pt(bottom, 0)));
    }

    /** Half the width at a level, both in SVG units. */
    private double half(Values v, double level, double scale) {
        return (v.at(lower()) + (v.at(upper()) - v.at(lower())) * level / (v.at("height") * scale)) * scale / 2;
    }

    private void drawYours(Brief brief, Sheet sheet, double scale) {
        Values y = brief.yours();
        if (brief.differs("height") || brief.differs(upper()) || brief.differs(lower())) {
            sheet.path(Pen.PHANTOM, outline(y, scale), "yours-part");
        }
        if (y.has("level") && brief.differs("level")) {
            double level = Levels.within(y, y.at("height")) * scale;
            double half = half(y, level, scale);
            sheet.path(Pen.PHANTOM, Path.line(-half, -level, half, -level), "yours-level");
        }
    }

    private void miss(Brief brief, Sheet sheet, double scale) {
        Off off = off(brief);
        Label size = Label.text(missText(brief));
        if (off.is("level") || off.is("height")) {
            double right = Levels.within(brief.right(), off.name(), brief.right().at("height")) * scale;
            double yours = Levels.within(brief.yours(), off.name(), brief.yours().at("height")) * scale;
            hatch(brief.right(), sheet, Math.min(right, yours), Math.max(right, yours), scale);
            Upright beside = new Upright(sheet, sheet.bounds().right(), false, Ink.YOURS).compact(brief.isNarrow());
            beside.add(-right, -yours, size);
            beside.add(0, -yours, Off.label(brief, off.name()));
        } else if (!off.isNothing()) {
            double half = brief.yours().at(off.name()) * scale / 2;
            Label own = Off.label(brief, off.name());
            new Across(sheet, sheet.bounds().bottom(), false, Ink.YOURS, 0).add(-half, half, own.isEmpty() ? size : own.then(", " + size.spoken()));
        }
    }

    private void hatch(Values v, Sheet sheet, double low, double high, double scale) {
        if (high - low >= 1.5) {
            double under = half(v, low, scale);
            double over = half(v, high, scale);
            Hatch.fill(sheet, Pen.YOURS_HATCH, List.of(new Pt(-under, -low), new Pt(-over, -high), new Pt(over, -high), new Pt(under, -low)));
        }
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
