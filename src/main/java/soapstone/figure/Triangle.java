package soapstone.figure;

import java.util.List;

/** A right triangle with its run level and its rise plumb; its long side and its angles where they are worked out. */
final class Triangle implements Drawer {

    private static final double SQUARE = 12;
    private static final double ARC = 40;
    private static final double MOST = 1.5;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("run"), FigureArgument.length("rise"), FigureArgument.length("slope").maybe(),
                FigureArgument.angle("angle").maybe(), FigureArgument.angle("other").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("run") > 0 && v.at("rise") > 0 && v.at("run") < 100 * v.at("rise") && v.at("rise") < 100 * v.at("run")
                && (!v.has("slope") || v.at("slope") > 0) && isAngle(v, "angle") && isAngle(v, "other");
    }

    private static boolean isAngle(Values v, String name) {
        return !v.has(name) || v.at(name) > 0 && v.at(name) < 180;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "triangle.title.yours" : "triangle.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("triangle.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("triangle.yours");
            tellValues(brief.yours(), t);
            off(brief).tell(brief, t);
        }
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "run", "triangle.run").value(v, "rise", "triangle.rise").value(v, "slope", "triangle.slope")
                .value(v, "angle", "triangle.angle").value(v, "other", "triangle.other");
    }

    /** What was worked out; the sides that were given only where an answer has other ones. */
    private static Off off(Brief brief) {
        for (String name : new String[] {"slope", "angle", "other", "run", "rise"}) {
            if (brief.right().has(name) && brief.isAsCut() && brief.differs(name)) {
                return Off.furthest(brief, name);
            }
        }
        return Off.NOTHING;
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
        Off off = off(brief);
        if (!off.isNothing()) {
            yours(brief, off, sheet, new Pt(run, -rise), scale);
        }
        new Across(sheet, 0, false, Ink.RIGHT, run / 2).add(0, run, v.label("run"));
        new Upright(sheet, sheet.bounds().right(), false, Ink.RIGHT).add(0, -rise, run, v.label("rise"));
        lean(v, sheet, new Pt(run, -rise));
        if (!off.isNothing()) {
            size(brief, off, sheet);
        }
    }

    /** The long side and the angles at its ends. */
    private static void lean(Values v, Sheet sheet, Pt top) {
        Pt foot = new Pt(0, 0);
        double up = foot.degreesTo(top);
        double arc = Math.min(ARC, foot.distance(top) / 3);
        if (v.has("angle")) {
            AngleMark.draw(sheet, Ink.RIGHT, foot, arc, new double[] {0, up}, 0, v.label("angle"));
        }
        if (v.has("other")) {
            AngleMark.draw(sheet, Ink.RIGHT, top, arc, new double[] {180 + up, 270}, 0, v.label("other"));
        }
        if (v.has("slope")) {
            Aligned.add(sheet, Ink.RIGHT, foot, top, 1, 0, v.label("slope"));
        }
    }

    private static void yours(Brief brief, Off off, Sheet sheet, Pt top, double scale) {
        Values y = brief.yours();
        Pt foot = new Pt(0, 0);
        double length = foot.distance(top);
        double up = foot.degreesTo(top);
        switch (off.name()) {
            case "slope" -> along(sheet, foot, top, Math.min(MOST, y.at("slope") / brief.right().at("slope")));
            case "angle" -> swung(sheet, foot, length, up, y.at("angle"));
            case "other" -> swung(sheet, top, length, 180 + up, 270 - y.at("other"));
            default -> {
                Pt theirs = new Pt(Math.min(MOST * top.x(), y.at("run") * scale), -Math.min(-MOST * top.y(), y.at("rise") * scale));
                sheet.path(Pen.PHANTOM, Path.polygon(List.of(foot, new Pt(theirs.x(), 0), theirs)), "yours-part");
            }
        }
    }

    /** The answer's long side laid along the right one from its foot. */
    private static void along(Sheet sheet, Pt foot, Pt top, double share) {
        Pt to = foot.towards(top, share);
        sheet.path(Pen.PHANTOM, Path.line(foot.x(), foot.y(), to.x(), to.y()), "yours-slope");
        if (to.distance(top) >= 1.5) {
            Strip.miss(sheet, top, to, 11);
        }
    }

    /** The long side turned about one end to where the answer's angle puts it. */
    private static void swung(Sheet sheet, Pt about, double length, double right, double yours) {
        Pt from = about.polar(length, right);
        Pt to = about.polar(length, yours);
        sheet.path(Pen.PHANTOM, Path.line(about.x(), about.y(), to.x(), to.y()), "yours-slope");
        if (from.distance(to) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, List.of(about, about.polar(length * 0.6, right), about.polar(length * 0.6, yours)));
        }
    }

    private static void size(Brief brief, Off off, Sheet sheet) {
        Label own = Off.label(brief, off.name());
        Label said = own.isEmpty() ? Label.text(off.text(brief)) : own.then(", " + off.text(brief));
        Box all = sheet.bounds();
        sheet.letter(said, Lettering.YOURS_TEXT, (all.left() + all.right()) / 2, all.bottom() + 18, Anchor.MIDDLE);
    }
}
