package soapstone.figure;

import java.util.Optional;

/**
 * The largest miss of a row of holes: which hole, where it belongs and where it lands, in base units from the left end.
 * With another count, the last holes of both rows are compared unless they fall together.
 */
record RowMiss(int hole, int yoursHole, double right, double yours, boolean ends) {

    static RowMiss of(Brief brief) {
        Values r = brief.right();
        Values y = brief.yours();
        int n = r.count("count");
        int m = y.count("count");
        double step = y.at("pitch") - r.at("pitch");
        double start = y.at("first") - r.at("first");
        RowMiss ends = at(r, y, n - 1, m - 1, true);
        if (n != m && Math.abs(ends.size()) > 1e-6 * r.at("length")) {
            return ends;
        }
        int common = Math.min(n, m) - 1;
        boolean lastIsWorse = Math.abs(start + step * common) >= Math.abs(start);
        int k = lastIsWorse ? common : 0;
        return at(r, y, k, k, k == n - 1);
    }

    private static RowMiss at(Values r, Values y, int i, int j, boolean ends) {
        return new RowMiss(i + 1, j + 1, r.at("first") + i * r.at("pitch"), y.at("first") + j * y.at("pitch"), ends);
    }

    /** How far yours lands past its place; negative when short. */
    double size() {
        return yours - right;
    }

    private boolean isNothing(Brief brief) {
        return Math.abs(size()) < 1e-6 * brief.right().at("length");
    }

    String text(Brief brief) {
        return brief.say(ends ? size() < 0 ? "miss.short" : "miss.long" : "miss.off", brief.size(size()));
    }

    void tell(Brief brief, Telling t) {
        if (!isNothing(brief)) {
            t.say(size() < 0 ? "hole-row.lands.short" : "hole-row.lands.past", yoursHole, brief.size(size()));
            t.sentence(text(brief) + ".");
        }
    }

    /** Said in words where the miss itself lies outside of the drawing. */
    Optional<Label> note(Brief brief) {
        double length = brief.right().at("length");
        Values y = brief.yours();
        double end = Math.max(y.at("length"), y.at("first") + (y.count("count") - 1) * y.at("pitch"));
        boolean outside = !Reach.of(length, Math.min(0, y.at("first")), end).holds(yours);
        return outside ? Optional.of(Label.text(brief.say("hole-row.lands.past", yoursHole, brief.size(size()))))
                : Optional.empty();
    }

    void draw(Brief brief, Sheet sheet, RowOfHoles row, Across below) {
        Miss seen = new Miss(row.reach().clip(right * row.scale()), row.reach().clip(yours * row.scale()));
        Miss.along(sheet, seen, row.bar(), below, text(brief));
    }
}
