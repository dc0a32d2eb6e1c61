package soapstone.figure;

import java.util.List;

/**
 * Pieces of one width with even gaps between two ends: pickets or slots seen from the front, or the baffles of a tank in
 * section. The two differ in the names of their arguments and in how a piece looks.
 */
final class EvenGaps implements Drawer {

    private static final double POST = 12;
    private static final double LEAST_SECTION = 3;
    private static final double LEAST_FOR_PHANTOM = 10;

    private final Names names;

    private EvenGaps(Names names) {
        this.names = names;
    }

    /** Argument names: the whole, one piece, one gap; and the kind, by which its words are found. */
    private record Names(String kind, String whole, String width, String gap) {}

    static EvenGaps pickets() {
        return new EvenGaps(new Names("gap-row", "opening", "width", "gap"));
    }

    static EvenGaps baffles() {
        return new EvenGaps(new Names("baffle-tank", "length", "thickness", "space"));
    }

    private boolean isTank() {
        return names.kind.equals("baffle-tank");
    }

    @Override
    public List<FigureArgument> arguments() {
        FigureArgument whole = FigureArgument.length(names.whole);
        FigureArgument width = FigureArgument.length(names.width);
        FigureArgument gap = FigureArgument.length(names.gap);
        FigureArgument count = FigureArgument.number("count");
        return isTank() ? List.of(whole, FigureArgument.length("height"), width, gap, count)
                : List.of(whole, width, gap, count);
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at(names.whole) > 0 && v.at(names.width) > 0 && v.at(names.gap) >= 0 && v.count("count") >= 1
                && (!isTank() || v.at("height") > 0);
    }

    @Override
    public String title(Brief brief) {
        return brief.say(names.kind + (brief.isAsCut() ? ".title.yours" : ".title"));
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(names.kind + ".is");
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("yours.below");
            tellValues(brief.yours(), t);
            t.sentence(missText(brief) + ".");
        }
    }

    private void tellValues(Values v, Telling t) {
        t.value(v, names.whole, names.kind + ".whole").value(v, "height", "height").value(v, "count", names.kind + ".count")
                .value(v, names.width, names.kind + ".width").value(v, names.gap, names.kind + ".gap");
    }

    /** What the gaps and widths of an answer take in all, in base units. */
    private double run(Values v) {
        int n = v.count("count");
        return n * v.at(names.width) + (n + 1) * v.at(names.gap);
    }

    private String missText(Brief brief) {
        double over = run(brief.yours()) - brief.right().at(names.whole);
        if (Math.abs(over) > 1e-6 * brief.right().at(names.whole)) {
            return brief.say(over > 0 ? "miss.long" : "miss.over", brief.size(over));
        }
        return brief.say("miss.off", brief.size(brief.yours().at(names.gap) - brief.right().at(names.gap)));
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double most = brief.isNarrow() ? 190 : 230;
        double scale = isTank() ? Math.min(room / v.at(names.whole), most / v.at("height")) : room / v.at(names.whole);
        double height = isTank() ? v.at("height") * scale : brief.isNarrow() ? 60 : 80;
        Box whole = new Box(0, 0, v.at(names.whole) * scale, height);
        Series series = Series.of(v.count("count"), (v.at(names.width) + v.at(names.gap)) * scale, v.isHidden("count"));
        ends(sheet, whole);
        for (int i : series.indices()) {
            if (left(v, i) * scale < whole.right() - 0.01) {
                piece(sheet, bar(v, i, scale, whole));
            }
        }
        if (series.isBroken()) {
            int before = series.breakAfter();
            double middle = (left(v, before) + v.at(names.width) + left(v, v.count("count") - 1)) / 2 * scale;
            Break.plumb(sheet, Math.min(middle, whole.right() - 20), whole.top(), whole.bottom());
        }
        dimensions(brief, sheet, series, whole, scale);
        if (brief.isAsCut()) {
            drawYours(brief, sheet, whole, scale);
        }
    }

    private void ends(Sheet sheet, Box whole) {
        if (isTank()) {
            sheet.plate(Pen.VISIBLE, whole, "part");
            return;
        }
        post(sheet, -POST, whole);
        post(sheet, whole.right(), whole);
        sheet.line(Pen.VISIBLE, 0, whole.top(), whole.right(), whole.top());
        sheet.line(Pen.VISIBLE, 0, whole.bottom(), whole.right(), whole.bottom());
    }

    private static void post(Sheet sheet, double x, Box opening) {
        Box box = new Box(x, opening.top() - 8, x + POST, opening.bottom() + 8);
        Hatch.fill(sheet, Pen.HATCH, box);
        sheet.plate(Pen.VISIBLE, box, "post");
    }

    private void piece(Sheet sheet, Box bar) {
        if (!isTank()) {
            sheet.plate(Pen.VISIBLE, bar, "picket");
            return;
        }
        double thin = Math.max(0, LEAST_SECTION - bar.width()) / 2;
        sheet.plate(Pen.SECTION, new Box(bar.left() - thin, bar.top(), bar.right() + thin, bar.bottom()), "baffle");
    }

    private double left(Values v, int i) {
        return (i + 1) * v.at(names.gap) + i * v.at(names.width);
    }

    private Box bar(Values v, int i, double scale, Box whole) {
        double x = left(v, i) * scale;
        return new Box(x, whole.top(), x + v.at(names.width) * scale, whole.bottom());
    }

    private void dimensions(Brief brief, Sheet sheet, Series series, Box whole, double scale) {
        Values v = brief.right();
        Across above = new Across(sheet, whole.top() - (isTank() ? 0 : 4), true, Ink.RIGHT, whole.right() / 2);
        int pair = series.pair();
        double gapRight = left(v, series.indices()[Math.max(0, pair - 1)]) * scale;
        above.add(gapRight - v.at(names.gap) * scale, gapRight, v.label(names.gap));
        Box bar = bar(v, series.indices()[Math.min(pair + 1, Math.max(0, series.indices().length - 1))], scale, whole);
        above.add(bar.left(), bar.right(), Labels.times(v.label("count"), v.label(names.width)));
        above.add(0, whole.right(), v.label(names.whole));
        if (isTank()) {
            new Upright(sheet, 0, true, Ink.RIGHT).add(whole.top(), whole.bottom(), v.label("height"));
        }
    }

    @Override
    public List<Label> notes(Brief brief) {
        Label count = brief.right().label("count");
        boolean withWidth = brief.right().isTold(names.width);
        return withWidth || count.isEmpty() ? List.of() : List.of(count.then(" " + brief.say(names.kind + ".across")));
    }

    private void drawYours(Brief brief, Sheet sheet, Box whole, double scale) {
        Values v = brief.yours();
        double run = run(v) * scale;
        Reach reach = Reach.of(whole.width(), 0, run);
        Box low = new Box(0, whole.top() + whole.height() * 0.45, whole.right(), whole.bottom() + 14);
        Series series = Series.of(v.count("count"), (v.at(names.width) + v.at(names.gap)) * scale, false);
        boolean slim = v.at(names.width) * scale < LEAST_FOR_PHANTOM;
        for (int i : series.indices()) {
            Box bar = bar(v, i, scale, low);
            if (reach.holds(bar.right())) {
                sheet.plate(slim ? Pen.YOURS_MARK : Pen.PHANTOM, bar, "yours-piece");
            }
        }
        double end = reach.clip(run);
        if (reach.cutOff()) {
            Break.end(sheet, Pen.YOURS_THIN, end, low.top(), low.bottom());
        } else {
            sheet.line(Pen.PHANTOM, end, low.top(), end, low.bottom());
        }
        yoursDimensions(brief, sheet, series, low, new double[] {scale, end});
    }

    private void yoursDimensions(Brief brief, Sheet sheet, Series series, Box low, double[] scaleAndEnd) {
        Values v = brief.yours();
        double scale = scaleAndEnd[0];
        double end = scaleAndEnd[1];
        Box hatched = new Box(0, 0, 0, low.bottom());
        Across below = new Across(sheet, low.bottom() + 2, false, Ink.YOURS, low.right() / 2);
        if (Math.abs(end - low.right()) >= 1.5) {
            Miss.along(sheet, new Miss(low.right(), end), hatched, below, missText(brief));
        } else {
            double gap = brief.right().at(names.gap) * scale;
            Miss.along(sheet, new Miss(gap, v.at(names.gap) * scale), hatched, below, missText(brief));
        }
        Box bar = bar(v, series.indices()[Math.min(series.pair(), 1)], scale, low);
        if (bar.right() > low.right()) {
            return;
        }
        if (brief.differs(names.gap)) {
            below.add(bar.left() - v.at(names.gap) * scale, bar.left(), brief.yoursLabel(names.gap));
        }
        Label each = Labels.times(v.label("count"), v.label(names.width));
        if (!each.isEmpty() && (brief.differs(names.width) || brief.differs("count"))) {
            below.add(bar.left(), bar.right(), Label.text(brief.say("yours") + " ").then(each));
        }
    }
}
