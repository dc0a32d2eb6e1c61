package soapstone.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A flat pattern: a strip with bend lines across, of a length that does not matter and is broken off. */
final class FlatView {

    private static final int MOST_BENDS = 40;
    private static final int MOST_STACKED = 3;

    private FlatView() {}

    static boolean canDraw(Values v) {
        return v.at("width") > 0 && v.all("bends").length <= MOST_BENDS && (!v.has("zone") || v.at("zone") > 0);
    }

    static void tellValues(Values v, Telling t) {
        t.value(v, "width", "flat.width").values(v, "bends", "flat.bends").value(v, "zone", "flat.zone");
    }

    static void tellYours(Brief brief, Telling t) {
        t.say("flat.yours");
        tellValues(brief.yours(), t);
        if (!missText(brief).isEmpty()) {
            t.sentence(missText(brief) + ".");
        }
    }

    /** Which bend line is furthest off; -1 when it is the width; -2 when nothing is off. */
    private static int worst(Brief brief) {
        double[] right = brief.right().all("bends");
        double[] yours = brief.yours().all("bends");
        double most = 1e-6 * brief.right().at("width");
        int worst = -2;
        for (int i = 0; i < Math.min(right.length, yours.length); i++) {
            if (Math.abs(yours[i] - right[i]) > most) {
                most = Math.abs(yours[i] - right[i]);
                worst = i;
            }
        }
        return Math.abs(brief.yours().at("width") - brief.right().at("width")) >= most ? -1 : worst;
    }

    private static double at(Values v, int worst) {
        return worst == -1 ? v.at("width") : v.all("bends")[worst];
    }

    private static String missText(Brief brief) {
        int worst = worst(brief);
        if (worst == -2) {
            return "";
        }
        double off = at(brief.yours(), worst) - at(brief.right(), worst);
        String key = worst == -1 ? off < 0 ? "miss.narrow" : "miss.wide" : "miss.off";
        return brief.say(key, brief.size(off));
    }

    static void draw(Brief brief, Sheet sheet, double room) {
        Values v = brief.right();
        double scale = room / v.at("width");
        Box strip = new Box(0, 0, room, brief.isNarrow() ? 110 : 130);
        sheet.plate(Pen.VISIBLE, strip, "part");
        double[] bends = Arrays.stream(v.all("bends")).filter(b -> b >= 0 && b <= v.at("width")).map(b -> b * scale).toArray();
        for (double x : bends) {
            sheet.path(Pen.BEND, Path.line(x, 0, x, strip.bottom()), "bend-line");
            if (v.has("zone")) {
                double half = v.at("zone") * scale / 2;
                sheet.line(Pen.ZONE, x - half, 0, x - half, strip.bottom());
                sheet.line(Pen.ZONE, x + half, 0, x + half, strip.bottom());
            }
        }
        Break.level(sheet, strip.bottom() * (brief.isAsCut() ? 0.35 : 0.5), 0, room);
        numbers(sheet, bends, strip);
        dimensions(v, sheet, bends, room, scale);
        if (brief.isAsCut()) {
            drawYours(brief, sheet, strip, scale);
        }
    }

    private static void numbers(Sheet sheet, double[] bends, Box strip) {
        for (int i = 0; i < bends.length; i++) {
            for (double dx : new double[] {-16, 16, -20, 20}) {
                if (bends[i] + dx > 12 && bends[i] + dx < strip.right() - 12
                        && Balloon.tryAt(sheet, new Pt(bends[i] + dx, 17), i + 1)) {
                    break;
                }
            }
        }
    }

    private static void dimensions(Values v, Sheet sheet, double[] bends, double room, double scale) {
        boolean stacked = bends.length == 1 || !v.isAsked("bends") && bends.length <= MOST_STACKED;
        Across above = new Across(sheet, stacked ? 0 : many(v, sheet, bends, room), true, Ink.RIGHT, room / 2);
        if (v.has("zone") && bends.length > 0) {
            double x = bends[bends.length / 2];
            double half = v.at("zone") * scale / 2;
            above.add(x - half, x + half, 0, v.label("zone"));
        }
        for (int i = 0; i < bends.length && stacked; i++) {
            above.add(0, bends[i], v.label("bends", i));
        }
        above.add(0, room, 0, v.label("width"));
    }

    /** Dimensions for many bend lines: running ones where they can be read, else a table; gives the top of it. */
    private static double many(Values v, Sheet sheet, double[] bends, double room) {
        if (v.isAsked("bends")) {
            return Running.draw(sheet, bends, -4, -24, v.label("bends"));
        }
        List<Double> places = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < bends.length; i++) {
            places.add(bends[i]);
            labels.add(v.label("bends", i));
        }
        Ordinates ordinates = new Ordinates(places, labels);
        boolean rising = Arrays.equals(bends, Arrays.stream(bends).sorted().toArray());
        if (rising && ordinates.isReadable()) {
            return ordinates.draw(sheet, 0, 0);
        }
        if (v.isTold("bends")) {
            Table.draw(sheet, labels, room, sheet.bounds().bottom() + 16);
        }
        return 0;
    }

    private static void drawYours(Brief brief, Sheet sheet, Box strip, double scale) {
        Values v = brief.yours();
        double width = v.at("width") * scale;
        double far = Math.max(width, Arrays.stream(v.all("bends")).max().orElse(0) * scale);
        Reach reach = Reach.of(strip.width(), 0, far);
        Box low = new Box(0, strip.bottom() * 0.55, reach.clip(width), strip.bottom() + 14);
        sheet.path(Pen.PHANTOM, Path.line(0, low.top(), 0, low.bottom()).lineTo(new Pt(low.right(), low.bottom())), "yours-edge");
        if (reach.holds(width)) {
            sheet.path(Pen.PHANTOM, Path.line(low.right(), low.bottom(), low.right(), low.top()), "yours-end");
        } else {
            Break.end(sheet, Pen.YOURS_THIN, low.right(), low.top(), low.bottom());
        }
        double[] bends = v.all("bends");
        for (int i = 0; i < bends.length; i++) {
            double x = bends[i] * scale;
            if (reach.holds(x)) {
                sheet.path(Pen.PHANTOM, Path.line(x, low.top(), x, low.bottom()), "yours-bend");
                sheet.letterFree(Label.text(Integer.toString(i + 1)), Lettering.YOURS_NUMBER,
                        List.of(new Sheet.Spot(x, low.bottom() + 17, Anchor.MIDDLE)));
            }
        }
        yoursDimensions(brief, sheet, strip, scale, reach);
    }

    private static void yoursDimensions(Brief brief, Sheet sheet, Box strip, double scale, Reach reach) {
        int worst = worst(brief);
        if (worst == -2) {
            return;
        }
        Across below = new Across(sheet, strip.bottom() + 34, false, Ink.YOURS, strip.right() / 2);
        double right = at(brief.right(), worst) * scale;
        double yours = at(brief.yours(), worst) * scale;
        Miss.along(sheet, new Miss(reach.clip(right), reach.clip(yours)), strip, below, missText(brief));
        if (reach.holds(yours)) {
            below.add(0, yours, worst == -1 ? brief.yoursLabel("width") : brief.yoursLabel("bends", worst));
        }
    }
}
