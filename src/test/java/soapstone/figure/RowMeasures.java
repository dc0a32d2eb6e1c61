package soapstone.figure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Rows along a bar, a run, a seam or a circle: each piece stands at its own distance from the first end. */
final class RowMeasures {

    /** The lines of whole inches and of whole centimeters are the longest. */
    private static final double LONG_LINE = 30;

    /** Nearer holes could not be told apart: such a row is broken. */
    private static final double LEAST_APART = 5;

    private RowMeasures() {}

    static void put(Map<String, Consumer<Paper>> all) {
        all.put("hole-row", RowMeasures::holes);
        all.put("gap-row", p -> gaps(p, "opening", "width", "gap", "count"));
        all.put("mark-row", RowMeasures::marks);
        all.put("post-row", p -> posts(p, "length", "spacing", "count"));
        all.put("picket-guard", RowMeasures::guard);
        all.put("stitch-row", RowMeasures::stitches);
        all.put("cut-bar", RowMeasures::cuts);
        all.put("butted-bars", RowMeasures::bars);
        all.put("bolt-circle", RowMeasures::circle);
        all.put("rule", RowMeasures::rule);
    }

    private static void holes(Paper p) {
        Box bar = p.part();
        double scale = bar.width() / p.at("length");
        p.row("hole", Paper.from(bar.left(), p.svg.circles("hole").stream().map(Pt::x).toList()), p.count("count"), p.at("first") * scale, p.at("pitch") * scale);
        if (!p.isHidden("count") && p.at("pitch") * scale >= LEAST_APART) {
            p.same("holes", p.svg.circles("hole").size(), p.count("count"), 0);
        }
        if (p.has("diameter")) {
            p.same("diameter of a hole", 2 * p.svg.radius("hole"), Math.max(4, p.at("diameter") * scale));
        }
        if (p.isAsCut()) {
            p.rowOfTheirs("hole", Paper.from(bar.left(), p.svg.circles("yours-hole").stream().map(Pt::x).toList()), p.countOfTheirs("count"),
                    p.theirs("first") * scale, p.theirs("pitch") * scale);
        }
    }

    private static void gaps(Paper p, String whole, String width, String gap, String count) {
        List<Box> posts = p.svg.rectangles("post").subList(p.svg.rectangles("post").size() - 2, p.svg.rectangles("post").size());
        double left = posts.get(0).right();
        double scale = (posts.get(1).left() - left) / p.at(whole);
        List<Box> pickets = p.svg.rectangles("picket");
        p.row("picket", Paper.from(left, Paper.lefts(pickets)), p.count(count), p.at(gap) * scale, (p.at(gap) + p.at(width)) * scale);
        pickets.forEach(b -> p.same("width of a picket", b.width(), p.at(width) * scale));
        if (p.isAsCut()) {
            List<Box> yours = p.svg.rectangles("yours-piece");
            p.rowOfTheirs("picket", Paper.from(left, Paper.lefts(yours)), p.countOfTheirs(count), p.theirs(gap) * scale, (p.theirs(gap) + p.theirs(width)) * scale);
            yours.forEach(b -> p.yours("width of a picket", b.width(), p.theirs(width) * scale));
        }
    }

    private static void marks(Paper p) {
        Box bar = p.part();
        double scale = bar.width() / p.at("length");
        double[] right = Arrays.stream(p.all("marks")).filter(m -> m >= 0 && m <= p.at("length")).toArray();
        List<Box> marks = p.paths("mark");
        p.same("marks", marks.size(), right.length, 0);
        for (int i = 0; i < right.length; i++) {
            p.same("mark " + (i + 1), marks.get(i).left() - bar.left(), right[i] * scale);
        }
        if (p.isAsCut()) {
            double[] theirs = Arrays.stream(p.allOfTheirs("marks")).map(m -> bar.left() + m * scale).toArray();
            List<Box> yours = p.paths("yours-mark");
            for (int i = 0; i < yours.size(); i++) {
                if (yours.size() == theirs.length) {
                    p.yours("mark " + (i + 1), yours.get(i).left(), theirs[i]);
                } else {
                    p.oneOf("yours: mark", yours.get(i).left(), theirs);
                }
            }
        }
    }

    private static void posts(Paper p, String length, String spacing, String count) {
        double left = p.path("ground").left() + 14;
        double scale = (p.path("ground").width() - 28) / p.at(length);
        List<Box> posts = p.svg.rectangles("post").stream().filter(b -> Math.abs(b.width() - 8) < 0.5 && b.bottom() < p.path("ground").top() + 9).toList();
        p.row("post", Paper.from(left, Paper.middles(posts)), p.count(count), 0, p.at(spacing) * scale);
        if (p.isAsCut()) {
            p.rowOfTheirs("post", Paper.from(left, Paper.middles(p.paths("yours-piece"))), p.countOfTheirs(count), 0, p.theirs(spacing) * scale);
        }
    }

    private static void guard(Paper p) {
        posts(p, "run", "spacing", "posts");
        gaps(p, "opening", "picket", "gap", "pickets");
    }

    private static void stitches(Paper p) {
        Box seam = p.part();
        double scale = seam.width() / p.at("length");
        List<Box> beads = p.svg.rectangles("bead");
        p.row("stitch", Paper.from(seam.left(), Paper.lefts(beads)), p.count("count"), 0, p.at("pitch") * scale);
        beads.forEach(b -> p.same("end of a stitch", b.right(), Math.min(seam.right(), b.left() + p.at("stitch") * scale)));
        if (p.isAsCut()) {
            p.rowOfTheirs("stitch", Paper.from(seam.left(), Paper.lefts(p.svg.rectangles("yours-stitch"))), p.countOfTheirs("count"), 0, p.theirs("pitch") * scale);
        }
    }

    private static void cuts(Paper p) {
        Box bar = p.path("part");
        double scale = bar.width() / p.at("length");
        double step = (p.at("piece") + p.at("kerf")) * scale;
        double first = (p.at("piece") + p.at("kerf") / 2) * scale;
        for (Box kerf : p.svg.rectangles("kerf")) {
            double at = Measuring.middle(kerf) - bar.left();
            long place = Math.max(0, Math.min(p.count("count") - 1, Math.round((at - first) / step)));
            p.same("cut " + (place + 1), at, Math.min(bar.width(), first + place * step));
        }
        if (p.differs("length")) {
            p.yoursBar(bar.bottom() + 8, bar.left(), bar.width(), p.theirs("length") * scale);
        }
    }

    private static void bars(Paper p) {
        List<Box> bars = p.svg.rectangles("bar");
        double left = bars.get(0).left();
        double whole = bars.get(2).right() - left;
        double all = length(p, "first") + length(p, "second") + length(p, "third");
        double x = left;
        String[] names = {"first", "second", "third"};
        for (int i = 0; i < names.length; i++) {
            p.same("start of the " + names[i], bars.get(i).left(), x);
            p.same("length of the " + names[i], bars.get(i).width(), length(p, names[i]) / all * whole);
            x = bars.get(i).right();
        }
        if (p.differs("total")) {
            p.yoursBar(bars.get(0).bottom() + 8, left, p.at("total") / all * whole, p.theirs("total") / all * whole);
        }
    }

    private static double length(Paper p, String part) {
        return p.at(part) + (p.has(part + "_rest") ? p.at(part + "_rest") : 0);
    }

    private static void circle(Paper p) {
        Pt center = p.svg.circles("part").get(0);
        double radius = p.svg.radius("part");
        double start = p.has("start") ? p.at("start") : 0;
        onCircle(p, "hole", new double[] {center.x(), center.y(), radius, start, 360.0 / p.count("count")}, false);
        if (p.has("hole")) {
            p.same("diameter of a hole", 2 * p.svg.radius("hole"), Math.max(4, p.at("hole") * radius / p.at("diameter") * 2));
        }
        if (p.isAsCut()) {
            double own = radius * p.theirs("diameter") / p.at("diameter");
            onCircle(p, "yours-hole", new double[] {center.x(), center.y(), own, p.has("start") ? p.theirs("start") : 0, 360.0 / p.countOfTheirs("count")}, true);
        }
    }

    /** @param at center, radius, where the first hole lies, and the turn to the next */
    private static void onCircle(Paper p, String role, double[] at, boolean yours) {
        List<Pt> holes = p.svg.circles(role);
        for (int i = 0; i < holes.size(); i++) {
            double turn = Math.toRadians(at[3] + at[4] * i);
            double off = Math.hypot(holes.get(i).x() - at[0] - at[2] * Math.cos(turn), holes.get(i).y() - at[1] + at[2] * Math.sin(turn));
            if (yours) {
                p.yours("hole " + (i + 1) + " off its place", off, 0);
            } else {
                p.same("hole " + (i + 1) + " off its place", off, 0);
            }
        }
    }

    /** By the rule's own long lines and one of its numbers: what the arrow points at, and where the answer's line stands. */
    private static void rule(Paper p) {
        double top = p.path("reading").bottom();
        List<DrawnSvg.Lettered> numbers = p.svg.lettering().stream().filter(l -> l.group().equals("number") && l.box().top() > top).toList();
        List<Double> lines = p.svg.pieces("bend").stream().filter(l -> l[0].y() > top && l[0].distance(l[1]) > LONG_LINE).map(l -> l[0].x()).toList();
        if (numbers.isEmpty() || lines.size() < 2) {
            return;
        }
        double each = p.isMetric() ? 10 : 1;
        double unit = (lines.get(1) - lines.get(0)) / each;
        double zero = Measuring.middle(numbers.get(0).box()) - Double.parseDouble(numbers.get(0).text()) * unit * each;
        p.same("arrow", p.path("reading").left(), zero + p.at("reading") * unit);
        if (p.isAsCut() && p.shows("yours-line")) {
            boolean line = p.has("line") && p.differs("line");
            p.yours("line", p.path("yours-line").left(), zero + p.theirs(line ? "line" : "reading") * unit);
        }
    }
}
