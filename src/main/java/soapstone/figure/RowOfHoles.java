package soapstone.figure;

import java.util.Arrays;
import java.util.List;

/** Where the holes of a row lie on the sheet, and which of them can be shown. */
final class RowOfHoles {

    private static final double NUMBER_AIR = 6;

    private final double first;
    private final double pitch;
    private final int count;
    private final double scale;
    private final Box bar;
    private final Series series;
    private final Reach reach;

    RowOfHoles(Values v, double scale, Box bar, boolean toCount) {
        this.first = v.at("first");
        this.pitch = v.at("pitch");
        this.count = v.count("count");
        this.scale = scale;
        this.bar = bar;
        this.series = Series.of(count, pitch * scale, toCount);
        this.reach = Reach.of(bar.width(), Math.min(0, x(0)), Math.max(v.at("length") * scale, x(count - 1)));
    }

    double x(int index) {
        return (first + pitch * index) * scale;
    }

    int count() {
        return count;
    }

    double scale() {
        return scale;
    }

    Box bar() {
        return bar;
    }

    double middle() {
        return (bar.top() + bar.bottom()) / 2;
    }

    Series series() {
        return series;
    }

    boolean isVisible(int index) {
        return reach.holds(x(index)) && Arrays.binarySearch(series.indices(), index) >= 0;
    }

    Reach reach() {
        return reach;
    }

    int[] visible() {
        return Arrays.stream(series.indices()).filter(this::isVisible).toArray();
    }

    /** Numbers the holes; where they stand too close, only some. A row to be counted keeps its last number to itself. */
    void number(Sheet sheet, Lettering lettering, double baseline) {
        double widest = Glyphs.width(Integer.toString(count), lettering.size()) + NUMBER_AIR;
        int step = step(widest / (pitch * scale));
        int[] visible = visible();
        int end = visible.length == 0 ? -1 : visible[visible.length - 1];
        for (int i : visible) {
            boolean behindBreak = series.isBroken() && i > series.breakAfter();
            boolean roomToLast = i == end || (end - i) * pitch * scale >= widest;
            if (!behindBreak && roomToLast && (i == 0 || i == end || (i + 1) % step == 0)) {
                Label number = Label.text(Integer.toString(i + 1));
                sheet.letterFree(number, lettering, List.of(new Sheet.Spot(x(i), baseline, Anchor.MIDDLE)));
            }
        }
    }

    private static int step(double needed) {
        for (int s : new int[] {1, 2, 5, 10, 20, 50}) {
            if (s >= needed) {
                return s;
            }
        }
        return 100;
    }
}
