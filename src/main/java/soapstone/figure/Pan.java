package soapstone.figure;

import java.util.List;

/** The flat blank of a pan with four sides: its bottom between bend lines, its corners to be notched out. */
final class Pan implements Drawer {

    private static final double MOST_RATIO = 60;
    private static final double MOST_YOURS = 1.6;

    @Override
    public List<FigureArgument> arguments() {
        return List.of(FigureArgument.length("length"), FigureArgument.length("width"), FigureArgument.length("bottom_length"),
                FigureArgument.length("bottom_width"), FigureArgument.length("side").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        double length = v.at("length");
        double width = v.at("width");
        return length > 0 && width > 0 && v.at("bottom_length") > 0 && v.at("bottom_width") > 0
                && v.at("bottom_length") < MOST_RATIO * length && v.at("bottom_width") < MOST_RATIO * width
                && length < MOST_RATIO * width && width < MOST_RATIO * length && (!v.has("side") || v.at("side") > 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(brief.isAsCut() ? "pan.title.yours" : "pan.title");
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say("pan.is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("pan.yours");
            tellValues(brief.yours(), t);
            t.sentence(missText(brief).isEmpty() ? "" : missText(brief) + ".");
        }
        notes(brief).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private static void tellValues(Values v, Telling t) {
        t.value(v, "bottom_length", "pan.bottom.length").value(v, "bottom_width", "pan.bottom.width").value(v, "side", "pan.side")
                .value(v, "length", "pan.length").value(v, "width", "pan.width");
    }

    private static Off off(Brief brief) {
        return Off.furthest(brief, "length", "width");
    }

    /** The bottom lies in the middle, so that half of what is off falls to each end. */
    private static String missText(Brief brief) {
        Off off = off(brief);
        return off.isNothing() ? "" : brief.say(off.size() < 0 ? "pan.miss.short" : "pan.miss.long", brief.size(off.size() / 2));
    }

    private static boolean isOffSheet(Brief brief) {
        return brief.yours().at("length") > MOST_YOURS * brief.right().at("length")
                || brief.yours().at("width") > MOST_YOURS * brief.right().at("width");
    }

    @Override
    public List<Label> notes(Brief brief) {
        return brief.isAsCut() && isOffSheet(brief) ? List.of(Label.text(brief.say("tank.off.sheet", missText(brief)))) : List.of();
    }

    /** Half sizes of a blank and its bottom in SVG units, both with their middle at 0, 0. */
    private record Blank(double length, double width, double bottomLength, double bottomWidth) {

        static Blank of(Values v, double scale) {
            return new Blank(v.at("length") * scale / 2, v.at("width") * scale / 2, v.at("bottom_length") * scale / 2,
                    v.at("bottom_width") * scale / 2);
        }

        boolean hasCorners() {
            return length > bottomLength && width > bottomWidth;
        }

        Box box() {
            return new Box(-length, -width, length, width);
        }

        Box bottom() {
            return new Box(-bottomLength, -bottomWidth, bottomLength, bottomWidth);
        }

        Path outline() {
            Path p = Path.from(new Pt(-bottomLength, -width));
            for (double[] at : new double[][] {{1, -1}, {1, 1}, {-1, 1}, {-1, -1}}) {
                Pt[] corner = {new Pt(at[0] * bottomLength, at[1] * width), new Pt(at[0] * bottomLength, at[1] * bottomWidth),
                    new Pt(at[0] * length, at[1] * bottomWidth)};
                boolean first = at[0] * at[1] < 0;
                for (int i = 0; i < corner.length; i++) {
                    p.lineTo(corner[first ? i : corner.length - 1 - i]);
                }
            }
            return p.close();
        }
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = Math.min(room / v.at("length"), (brief.isNarrow() ? 260 : 270) / v.at("width"));
        Blank blank = Blank.of(v, scale);
        blank(sheet, blank);
        Blank yours = brief.isAsCut() && !isOffSheet(brief) ? Blank.of(brief.yours(), scale) : null;
        if (yours != null && !off(brief).isNothing()) {
            if (yours.hasCorners()) {
                sheet.path(Pen.PHANTOM, yours.outline(), "yours-part");
            } else {
                sheet.plate(Pen.PHANTOM, yours.box(), "yours-part");
            }
        }
        dimensions(v, sheet, blank);
        words(brief, sheet, blank.bottom());
        if (yours != null && !off(brief).isNothing()) {
            miss(brief, sheet, blank, yours);
        }
    }

    private static void blank(Sheet sheet, Blank blank) {
        Box all = blank.box();
        Box bottom = blank.bottom();
        if (blank.hasCorners()) {
            sheet.plate(Pen.HIDDEN, all, "");
            sheet.path(Pen.VISIBLE, blank.outline(), "part");
        } else {
            sheet.plate(Pen.VISIBLE, all, "part");
        }
        for (double x : new double[] {bottom.left(), bottom.right()}) {
            sheet.path(Pen.BEND, Path.line(x, bottom.top(), x, bottom.bottom()), "bend-line");
        }
        for (double y : new double[] {bottom.top(), bottom.bottom()}) {
            sheet.path(Pen.BEND, Path.line(bottom.left(), y, bottom.right(), y), "bend-line");
        }
    }

    private static void words(Brief brief, Sheet sheet, Box bottom) {
        Label up = Label.text(brief.say("pan.bend.up"));
        sheet.letterFree(up, Lettering.NOTE, List.of(new Sheet.Spot(0, bottom.top() + 19, Anchor.MIDDLE),
                new Sheet.Spot(0, bottom.top() + 34, Anchor.MIDDLE), new Sheet.Spot(0, bottom.bottom() - 12, Anchor.MIDDLE)));
        sheet.letterFree(Label.text(brief.say("pan.bottom")), Lettering.NOTE, List.of(new Sheet.Spot(0, 5, Anchor.MIDDLE)));
    }

    private static void dimensions(Values v, Sheet sheet, Blank blank) {
        Box reach = sheet.bounds();
        Across above = new Across(sheet, reach.top(), true, Ink.RIGHT, 0);
        above.add(-blank.bottomLength, blank.bottomLength, -blank.width, v.label("bottom_length"));
        if (v.has("side")) {
            above.add(-blank.length, -blank.bottomLength, -blank.bottomWidth, v.label("side"));
        }
        above.add(-blank.length, blank.length, -blank.bottomWidth, v.label("length"));
        Upright left = new Upright(sheet, reach.left(), true, Ink.RIGHT);
        left.add(-blank.bottomWidth, blank.bottomWidth, -blank.length, v.label("bottom_width"));
        left.add(-blank.width, blank.width, -blank.bottomLength, v.label("width"));
    }

    private static void miss(Brief brief, Sheet sheet, Blank right, Blank yours) {
        Box reach = right.box().union(yours.box());
        Label size = Label.text(missText(brief));
        Across below = new Across(sheet, reach.bottom(), false, Ink.YOURS, 0);
        Upright beside = new Upright(sheet, reach.right(), false, Ink.YOURS).compact(brief.isNarrow());
        if (off(brief).is("length")) {
            hatch(sheet, new Box(Math.min(right.length, yours.length), -right.bottomWidth, Math.max(right.length, yours.length),
                    right.bottomWidth));
            below.add(right.length, yours.length, right.bottomWidth, size);
        } else {
            hatch(sheet, new Box(-right.bottomLength, Math.min(right.width, yours.width), right.bottomLength,
                    Math.max(right.width, yours.width)));
            beside.add(right.width, yours.width, right.bottomLength, size);
        }
        below.add(-yours.length, yours.length, yours.bottomWidth, Off.label(brief, "length"));
        beside.add(-yours.width, yours.width, yours.bottomLength, Off.label(brief, "width"));
    }

    private static void hatch(Sheet sheet, Box box) {
        if (Math.min(box.width(), box.height()) >= 1.5) {
            Hatch.fill(sheet, Pen.YOURS_HATCH, box);
        }
    }
}
