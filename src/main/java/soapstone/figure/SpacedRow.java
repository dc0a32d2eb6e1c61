package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Posts from the first to the last of a run, or the baffles of a tank seen from above: a row whose spaces must keep under
 * a limit, which is drawn beside one of them.
 */
final class SpacedRow extends NamedDrawer {

    private static final double POST = 4;
    private static final double BAFFLE = 1.5;

    private final boolean posts;

    private SpacedRow(String kind, boolean posts, FigureArgument... arguments) {
        super(kind, arguments);
        this.posts = posts;
    }

    static SpacedRow posts() {
        return new SpacedRow("post-row", true, FigureArgument.length("length"), FigureArgument.length("spacing"),
                FigureArgument.number("count"), FigureArgument.length("limit").maybe());
    }

    static SpacedRow compartments() {
        return new SpacedRow("compartments", false, FigureArgument.length("length"), FigureArgument.number("count"),
                FigureArgument.length("limit").maybe(), FigureArgument.length("width").maybe());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return v.at("length") > 0 && v.count("count") >= 1 && (!posts || v.at("spacing") > 0) && (!v.has("limit") || v.at("limit") > 0)
                && (!v.has("width") || v.at("width") > 0);
    }

    private double spacing(Values v) {
        return posts ? v.at("spacing") : v.at("length") / (v.count("count") + 1);
    }

    private double place(Values v, int i) {
        return spacing(v) * (posts ? i : i + 1);
    }

    /** Where the row ends: at its last post, or at the end wall. */
    private double end(Values v) {
        return posts ? place(v, v.count("count") - 1) : v.at("length");
    }

    private double pastTheEnd(Brief brief) {
        double off = end(brief.yours()) - brief.right().at("length");
        return Math.abs(off) > 1e-6 * brief.right().at("length") ? off : 0;
    }

    private double overTheLimit(Brief brief) {
        Values y = brief.yours();
        return y.has("limit") ? Math.max(0, spacing(y) - y.at("limit")) : 0;
    }

    @Override
    String miss(Brief brief) {
        double past = pastTheEnd(brief);
        double over = overTheLimit(brief);
        if (past != 0) {
            return lengthMiss(brief, past);
        }
        return over > 1e-6 * spacing(brief.yours()) ? brief.say("row.over", brief.size(over)) : "";
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        Label count = brief.right().label("count");
        notes.add(count.isEmpty() ? count : count.then(" " + pieces(brief, brief.right())));
        if (brief.isAsCut() && brief.differs("count") && brief.yours().isTold("count")) {
            notes.add(Label.text(brief.say("yours") + ": ").then(brief.yours().label("count")).then(" " + pieces(brief, brief.yours())));
        }
        notes.add(posts || brief.right().has("width") ? Label.NONE : Label.text(brief.say(word("width.free"))));
        notes.removeIf(Label::isEmpty);
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = v.has("width") ? Math.min(room / v.at("length"), (brief.isNarrow() ? 190 : 230) / v.at("width")) : room / v.at("length");
        Box row = new Box(0, 0, v.at("length") * scale, v.has("width") ? v.at("width") * scale : freeHeight(brief));
        Series series = Series.of(v.count("count"), spacing(v) * scale, v.isHidden("count"));
        frame(sheet, row);
        for (int i : series.indices()) {
            if (place(v, i) <= v.at("length") * 1.000001) {
                piece(sheet, place(v, i) * scale, row);
            }
        }
        if (series.isBroken()) {
            int before = series.breakAfter();
            Break.plumb(sheet, (place(v, before) + end(v, series)) / 2 * scale, row.top(), row.bottom());
        }
        if (brief.isAsCut()) {
            yours(brief, sheet, row, scale);
        }
        dimensions(v, sheet, series, row, scale);
        if (brief.isAsCut()) {
            yoursDimensions(brief, sheet, row, scale);
        }
    }

    /** Where the width is not told, the row is as wide as it looks well. */
    private double freeHeight(Brief brief) {
        return posts ? brief.isNarrow() ? 46 : 60 : brief.isNarrow() ? 90 : 130;
    }

    /** The first drawn piece behind the break. */
    private double end(Values v, Series series) {
        return place(v, series.indices()[Math.min(series.breakAfter() + 1, series.indices().length - 1)]);
    }

    private void frame(Sheet sheet, Box row) {
        if (!posts) {
            sheet.plate(Pen.VISIBLE, row, "part");
            sheet.line(Pen.CENTER, -8, row.height() / 2, row.right() + 8, row.height() / 2);
            return;
        }
        sheet.path(Pen.THIN, Path.line(-14, row.bottom(), row.right() + 14, row.bottom()), "ground");
        for (double share : new double[] {0.25, 0.65}) {
            sheet.line(Pen.BEND, 0, row.height() * share, row.right(), row.height() * share);
            sheet.line(Pen.BEND, 0, row.height() * share + 5, row.right(), row.height() * share + 5);
        }
    }

    private void piece(Sheet sheet, double x, Box row) {
        if (posts) {
            Box post = new Box(x - POST, row.top() - 6, x + POST, row.bottom() + 8);
            sheet.plate(Pen.GAP, post, "");
            sheet.plate(Pen.VISIBLE, post, "post");
        } else {
            sheet.plate(Pen.SECTION, new Box(x - BAFFLE, row.top(), x + BAFFLE, row.bottom()), "baffle");
        }
    }

    private void dimensions(Values v, Sheet sheet, Series series, Box row, double scale) {
        Across above = new Across(sheet, row.top() - (posts ? 8 : 0), true, Ink.RIGHT, row.right() / 2);
        if (posts && series.indices().length > 1) {
            int pair = series.indices()[Math.min(series.pair(), series.indices().length - 2)];
            above.add(place(v, pair) * scale, Math.min(row.right(), place(v, pair + 1) * scale), v.label("spacing"));
        }
        if (v.has("limit") && v.at("limit") <= v.at("length")) {
            Label limit = v.label("limit");
            above.add(0, v.at("limit") * scale, limit.isEmpty() ? limit : Label.text("≤ ").then(limit));
        }
        above.add(0, row.right(), v.label("length"));
        if (v.has("width")) {
            new Upright(sheet, 0, true, Ink.RIGHT).add(row.top(), row.bottom(), v.label("width"));
        }
    }

    private double low(Box row) {
        return row.bottom() + (posts ? 22 : 14);
    }

    private void yours(Brief brief, Sheet sheet, Box row, double scale) {
        Values y = brief.yours();
        Reach reach = Reach.of(row.width(), 0, end(y) * scale);
        double top = row.height() * 0.45;
        Series series = Series.of(y.count("count"), spacing(y) * scale, false);
        for (int i : series.indices()) {
            double x = place(y, i) * scale;
            if (reach.holds(x)) {
                sheet.path(Pen.PHANTOM, Path.line(x, top, x, low(row)), "yours-piece");
            }
        }
        if (reach.cutOff()) {
            Break.end(sheet, Pen.YOURS_THIN, reach.clip(end(y) * scale), top, low(row));
        }
    }

    private void yoursDimensions(Brief brief, Sheet sheet, Box row, double scale) {
        Values y = brief.yours();
        Reach reach = Reach.of(row.width(), 0, end(y) * scale);
        Across below = new Across(sheet, low(row), false, Ink.YOURS, row.right() / 2);
        Box hatched = new Box(0, row.top(), 0, low(row));
        if (pastTheEnd(brief) != 0) {
            Miss.along(sheet, new Miss(row.right(), reach.clip(end(y) * scale)), hatched, below, miss(brief));
        } else if (!miss(brief).isEmpty()) {
            double limit = Math.min(y.at("limit"), y.at("length")) * scale;
            Miss.along(sheet, new Miss(limit, spacing(y) * scale), hatched, below, miss(brief));
        }
        if (posts && brief.differs("spacing") && y.count("count") > 1 && reach.holds(spacing(y) * scale)) {
            below.add(0, spacing(y) * scale, brief.yoursLabel("spacing"));
        }
    }
}
