package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** An open box seen askew: length and height true to scale, the width drawn back at 45° and half as long. */
final class BoxTank implements Drawer {

    private static final double BACK = Math.sqrt(0.5) / 2;
    private static final double MOST_RATIO = 400;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("width"), FigureArgument.length("height"),
                FigureArgument.length("level").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        double height = v.at("height");
        return length > 0 && v.at("width") > 0 && height > 0 && Levels.isSound(v)
                && length < MOST_RATIO * height && height < MOST_RATIO * length && v.at("width") < MOST_RATIO * length;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "box-tank.title.yours" : "box-tank.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("box-tank.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            String worst = worst(brief);
            if (!worst.isEmpty()) {
                t.sentence(missText(brief, worst) + ".");
            }
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "length", "length").value(v, "width", "width").value(v, "height", "height").value(v, "level", "level");
    }

    /** The size that is furthest off, as a share of itself; empty when none is. */
    private static String worst(Brief brief) {
        String worst = "";
        double most = 0;
        for (String name : new String[] {"level", "length", "height", "width"}) {
            if (brief.differs(name)) {
                double share = Math.abs(brief.yours().at(name) / brief.right().at(name) - 1);
                if (share > most) {
                    most = share;
                    worst = name;
                }
            }
        }
        return worst;
    }

    private static String missText(Brief brief, String name) {
        double off = brief.yours().at(name) - brief.right().at(name);
        if (name.equals("level")) {
            return Levels.text(brief);
        }
        return brief.say(off < 0 ? "miss.short" : "miss.long", brief.size(off));
    }

    private static boolean isOffSheet(Brief brief) {
        Values y = brief.yours();
        Values r = brief.right();
        return y.at("length") > 2 * r.at("length") || y.at("height") > 2 * r.at("height") || y.at("width") > 2.5 * r.at("width");
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        notes.add(Levels.over(brief, brief.right(), brief.right().at("height")));
        if (brief.isAsCut()) {
            Label over = Levels.over(brief, brief.yours(), brief.yours().at("height"));
            notes.add(over.isEmpty() ? over : Label.text(brief.say("yours") + ": ").then(over));
            if (isOffSheet(brief)) {
                notes.add(Label.text(brief.say("tank.off.sheet", missText(brief, worst(brief)))));
            }
        }
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double back = v.at("width") * BACK;
        double scale = Math.min(room / (v.at("length") + back), (brief.isNarrow() ? 200 : 240) / (v.at("height") + back));
        Oblique box = new Oblique(v.at("length") * scale, v.at("height") * scale, back * scale);
        boolean withLevel = v.has("level");
        double level = withLevel ? Levels.within(v, v.at("height")) * scale : 0;
        if (withLevel) {
            water(sheet, box, level);
        }
        box.draw(sheet);
        boolean withYours = brief.isAsCut() && !isOffSheet(brief);
        if (withYours) {
            drawYours(brief, sheet, scale);
        }
        dimensions(brief, sheet, box, level);
        if (withYours) {
            miss(brief, sheet, box, scale);
        }
    }

    private static void water(Sheet sheet, Oblique box, double level) {
        sheet.plate(Pen.WATER, new Box(0, -level, box.length(), 0), "");
        sheet.path(Pen.WATER, Path.polygon(List.of(new Pt(0, -level), new Pt(box.back(), -level - box.back()),
                new Pt(box.length() + box.back(), -level - box.back()), new Pt(box.length(), -level))));
        sheet.path(Pen.WATER, Path.polygon(List.of(new Pt(box.length(), 0), new Pt(box.length(), -level),
                new Pt(box.length() + box.back(), -level - box.back()), new Pt(box.length() + box.back(), -box.back()))));
        sheet.path(Pen.THIN, Path.line(0, -level, box.length(), -level), "level");
        sheet.path(Pen.THIN, Path.line(box.length(), -level, box.length() + box.back(), -level - box.back()));
        sheet.path(Pen.HIDDEN, Path.line(0, -level, box.back(), -level - box.back())
                .lineTo(new Pt(box.length() + box.back(), -level - box.back())));
        Surface.sign(sheet, Pen.THIN, box.length() * 0.3, -level);
    }

    private static void dimensions(Brief brief, Sheet sheet, Oblique box, double level) {
        Values v = brief.right();
        double top = sheet.bounds().top();
        new Across(sheet, top, true, Ink.RIGHT, box.length() / 2)
                .add(box.back(), box.back() + box.length(), -box.height() - box.back(), v.label("length"));
        Upright left = new Upright(sheet, 0, true, Ink.RIGHT).compact(brief.isNarrow() && brief.isAsCut());
        if (v.has("level") && level > 0) {
            left.add(0, -level, v.label("level"));
        }
        left.add(0, -box.height(), v.label("height"));
        Aligned.add(sheet, Ink.RIGHT, new Pt(box.length(), 0), new Pt(box.length() + box.back(), -box.back()), -1, 2,
                v.label("width"));
    }

    private static void drawYours(Brief brief, Sheet sheet, double scale) {
        Values v = brief.yours();
        Oblique box = new Oblique(v.at("length") * scale, v.at("height") * scale, v.at("width") * BACK * scale);
        if (brief.differs("length") || brief.differs("height") || brief.differs("width")) {
            box.outline(sheet);
        }
        if (v.has("level")) {
            double level = Levels.within(v, v.at("height")) * scale;
            sheet.path(Pen.PHANTOM, Path.line(0, -level, box.length(), -level), "yours-level");
            sheet.path(Pen.PHANTOM, Path.line(box.length(), -level, box.length() + box.back(), -level - box.back()));
        }
    }

    private static void miss(Brief brief, Sheet sheet, Oblique right, double scale) {
        String worst = worst(brief);
        switch (worst) {
            case "" -> { }
            case "length" -> {
                double y = brief.yours().at("length") * scale;
                Across below = new Across(sheet, 2, false, Ink.YOURS, right.length() / 2);
                Box front = new Box(0, -right.height(), 0, 0);
                Miss.along(sheet, new Miss(right.length(), y), front, below, missText(brief, worst));
                below.add(0, y, brief.yoursLabel("length"));
            }
            case "width" -> widthMiss(brief, sheet, right, scale);
            default -> heightMiss(brief, sheet, right, scale, worst);
        }
    }

    private static void widthMiss(Brief brief, Sheet sheet, Oblique right, double scale) {
        double end = right.length();
        double back = brief.yours().at("width") * scale * BACK;
        Pt from = new Pt(end + right.back(), -right.height() - right.back());
        Pt to = new Pt(end + back, -right.height() - back);
        Strip.miss(sheet, from, to, 10);
        double[] out = brief.isNarrow() ? new double[] {150, 120, 165, 100, 180} : new double[] {0, 30, -30, 60, -60, 90};
        Leader.to(sheet, Ink.YOURS, from.towards(to, 0.5), 0, Label.text(missText(brief, "width")), out);
        Aligned.add(sheet, Ink.YOURS, new Pt(end, 0), new Pt(end + back, -back), -1, 2, brief.yoursLabel("width"));
    }

    /** Height or level: both are seen on the front. */
    private static void heightMiss(Brief brief, Sheet sheet, Oblique right, double scale, String name) {
        boolean level = name.equals("level");
        double r = level ? Levels.within(brief.right(), brief.right().at("height")) * scale : right.height();
        double y = level ? Levels.within(brief.yours(), brief.yours().at("height")) * scale : brief.yours().at("height") * scale;
        if (Math.abs(y - r) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, new Box(0, -Math.max(r, y), right.length(), -Math.min(r, y)));
        }
        Upright beside = new Upright(sheet, right.length() + right.back(), false, Ink.YOURS).compact(brief.isNarrow());
        beside.add(-r, -y, Label.text(missText(brief, name)));
        beside.add(0, -y, brief.yoursLabel(name));
    }

    /**
     * The box on the sheet, its lower front left corner at 0, 0.
     *
     * @param back how far the rear lies to the right and up
     */
    private record Oblique(double length, double height, double back) {

        void draw(Sheet sheet) {
            sheet.plate(Pen.VISIBLE, new Box(0, -height, length, 0), "part");
            sheet.path(Pen.VISIBLE, Path.line(0, -height, back, -height - back).lineTo(new Pt(length + back, -height - back))
                    .lineTo(new Pt(length + back, -back)).lineTo(new Pt(length, 0)));
            sheet.line(Pen.VISIBLE, length, -height, length + back, -height - back);
            sheet.path(Pen.HIDDEN, Path.line(0, 0, back, -back).lineTo(new Pt(length + back, -back))
                    .moveTo(new Pt(back, -back)).lineTo(new Pt(back, -height - back)));
        }

        void outline(Sheet sheet) {
            sheet.plate(Pen.PHANTOM, new Box(0, -height, length, 0), "yours-part");
            sheet.path(Pen.PHANTOM, Path.line(0, -height, back, -height - back).lineTo(new Pt(length + back, -height - back))
                    .lineTo(new Pt(length + back, -back)).lineTo(new Pt(length, 0)));
        }
    }
}
