package soapstone.figure;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Blanks, patterns, and what is made from them. */
final class BlankMeasures {

    private BlankMeasures() {}

    static void put(Map<String, Consumer<Paper>> all) {
        all.put("pan", BlankMeasures::pan);
        all.put("notched-edge", BlankMeasures::notches);
        all.put("lid-over-box", BlankMeasures::lid);
        all.put("rolled-pipe", BlankMeasures::pipe);
        all.put("elbow", BlankMeasures::elbow);
        all.put("square-to-round", BlankMeasures::trueLengths);
        all.put("sector", BlankMeasures::sector);
        all.put("cone-and-flat", BlankMeasures::cone);
        all.put("nest", BlankMeasures::nest);
        all.put("triangle", BlankMeasures::triangle);
        all.put("skew-frame", BlankMeasures::frame);
    }

    private static Box outline(Paper p, String role) {
        return p.shows(role) ? p.path(role) : p.svg.rectangle(role);
    }

    private static void pan(Paper p) {
        Box blank = outline(p, "part");
        double scale = blank.width() / p.at("length");
        p.same("width", blank.height(), p.at("width") * scale);
        List<Box> bends = p.paths("bend-line");
        p.same("bottom, long way", bends.get(1).left() - bends.get(0).left(), p.at("bottom_length") * scale);
        p.same("bottom, wide way", bends.get(3).top() - bends.get(2).top(), p.at("bottom_width") * scale);
        p.same("left side and right side", bends.get(0).left() - blank.left(), blank.right() - bends.get(1).left());
        p.same("upper side and lower side", bends.get(2).top() - blank.top(), blank.bottom() - bends.get(3).top());
        if (p.isAsCut() && (p.shows("yours-part") || !p.svg.rectangles("yours-part").isEmpty())) {
            p.yours("length", outline(p, "yours-part").width(), p.theirs("length") * scale);
            p.yours("width", outline(p, "yours-part").height(), p.theirs("width") * scale);
        }
    }

    private static void notches(Paper p) {
        Box blank = p.path("part");
        double scale = blank.width() / p.at("length");
        Box bends = p.svg.rectangle("bend-lines");
        p.same("notch along", bends.left() - blank.left(), p.at("notch") * scale);
        p.same("notch across", bends.top() - blank.top(), p.at("notch") * scale);
        p.same("between the notches", bends.width(), (p.at("length") - 2 * p.at("notch")) * scale);
        if (p.has("hem")) {
            p.same("hem", p.path("hem-line").top() - blank.top(), p.at("hem") * scale);
        }
        if (p.isAsCut() && p.shows("yours-part")) {
            List<Pt[]> lines = p.svg.piecesOf("yours-part");
            p.yours("notch", lines.get(0)[1].x() - blank.left(), p.theirs("notch") * scale);
            p.yours("depth of the notch", blank.bottom() - lines.get(0)[0].y(), p.theirs("notch") * scale);
            p.yours("end of the edge", lines.get(2)[1].x() - blank.left(), Math.min(p.at("length"), p.theirs("notch") + p.theirs("between")) * scale);
        }
    }

    /** Walls and air are to one scale; of a long box the middle is broken out. */
    private static void lid(Paper p) {
        String[][] ways = {{"length", "lid_length"}, {"width", "lid_width"}};
        List<Box> yours = p.paths("yours-lid");
        int drawn = 0;
        for (int i = 0; i < ways.length; i++) {
            Box box = p.paths("box").get(i);
            Box lid = p.paths("lid").get(i);
            List<Pt[]> outline = p.svg.piecesOf("box", i);
            double wall = outline.get(1)[1].x() - outline.get(1)[0].x();
            double scale = wall / p.at("wall");
            double air = (p.at(ways[i][1]) - p.at(ways[i][0])) / 2 - p.at("wall");
            p.same("air and wall at the side", box.left() - lid.left(), (air + p.at("wall")) * scale);
            p.same("the lid is over the middle", Measuring.middle(lid), Measuring.middle(box));
            if (p.at(ways[i][0]) / 2 < 9 * p.at("wall")) {
                p.same("inside of the box", box.width() - 2 * wall, p.at(ways[i][0]) * scale);
            }
            if (p.isAsCut() && p.differs(ways[i][1]) && drawn < yours.size() && yours.get(drawn).top() < box.bottom() && yours.get(drawn).bottom() > box.top()) {
                List<Pt[]> theirs = p.svg.piecesOf("yours-lid", drawn++);
                double in = theirs.get(4)[1].x() - box.right();
                p.yours("inside of the lid", in, ((p.theirs(ways[i][1]) - p.at(ways[i][0])) / 2 - p.at("wall")) * scale);
            }
        }
    }

    private static void pipe(Paper p) {
        Box strip = p.svg.rectangle("blank");
        double scale = strip.width() / p.at("blank");
        p.same("inside", 2 * p.svg.radius("inside"), p.at("inside") * scale);
        if (p.has("lap")) {
            p.same("lap", strip.right() - p.path("lap-line").left(), p.at("lap") * scale);
        }
        if (p.isAsCut() && p.shows("yours-end")) {
            p.yours("length of the blank", p.path("yours-end").left() - strip.left(), p.theirs("blank") * scale);
        }
        if (p.isAsCut() && !p.svg.circles("yours-pipe").isEmpty()) {
            p.yours("pipe", 2 * p.svg.radius("yours-pipe"), p.theirs("made") * scale);
        }
    }

    /** Every cut but the first is turned on by twice the slope of the end piece. */
    private static void elbow(Paper p) {
        Box pattern = p.path("pattern");
        double scale = pattern.width() / Math.PI / p.at("across");
        p.same("heel", pattern.height(), Math.max(p.at("heel"), p.at("throat")) * scale);
        List<Pt[]> cuts = p.svg.piecesOfAll("cut");
        p.same("cuts", cuts.size(), p.count("pieces") - 1, 0);
        double slope = Math.toDegrees(Math.atan((p.at("heel") - p.at("throat")) / p.at("across")));
        for (int i = 0; i < cuts.size(); i++) {
            p.same("slope of cut " + (i + 1), cuts.get(i)[0].degreesTo(cuts.get(i)[1]), slope * (2 * i + 1), 0.5);
        }
        p.same("throat", p.path("part").bottom() - cuts.get(0)[0].y(), p.at("throat") * scale);
        p.same("width of the pipe", cuts.get(0)[1].x() - cuts.get(0)[0].x(), p.at("across") * scale);
        if (p.isAsCut() && p.shows("yours-pattern") && (p.differs("heel") || p.differs("throat"))) {
            p.yours("heel", p.path("yours-pattern").height(), Math.max(p.theirs("heel"), p.theirs("throat")) * scale);
        }
    }

    private static void trueLengths(Paper p) {
        Box square = p.svg.rectangle("square");
        double scale = square.width() / p.at("side");
        p.same("collar", 2 * p.svg.radius("collar"), p.at("round") * scale);
        p.same("corner line, height", p.path("corner-line").height(), p.at("height") * scale);
        for (String which : new String[] {"middle", "corner"}) {
            p.same(which + " plan", p.path(which + "-line").width(), p.at(which + "_plan") * scale);
            p.same(which + " line", Paper.diagonal(p.path(which + "-line")), p.at(which + "_line") * scale);
            if (p.isAsCut() && p.shows("yours-" + which)) {
                p.yours(which + " line", Paper.diagonal(p.path("yours-" + which)), Math.min(2.2 * p.at(which + "_line"), p.theirs(which + "_line")) * scale);
            }
        }
    }

    private static void sector(Paper p) {
        sector(p, p.svg.piecesOf("part"), "outer", "angle");
    }

    /** By the first straight edge, from the inner to the outer radius, and by the width over all. */
    private static void sector(Paper p, List<Pt[]> outline, String outer, String angle) {
        Pt[] first = outline.get(0);
        double inner = p.has("inner") ? p.at("inner") : 0;
        double scale = first[0].distance(first[1]) / (p.at(outer) - inner);
        Pt apex = first[0].towards(first[1], -inner / (p.at(outer) - inner));
        Box all = p.path("part");
        double half = Math.min(p.at(angle), 359.5) / 2;
        p.same("first edge", Math.abs(apex.degreesTo(first[1]) - (90 - half)) % 360, 0, 0.5);
        p.same("width over all", all.width(), 2 * p.at(outer) * scale * (half >= 90 ? 1 : Math.sin(Math.toRadians(half))), 1.5);
        if (p.isAsCut() && p.shows("yours-part")) {
            List<Pt[]> theirs = p.svg.piecesOf("yours-part");
            double own = p.has("inner") ? p.theirs("inner") : 0;
            p.yours("length of the edge", theirs.get(0)[0].distance(theirs.get(0)[1]), (p.theirs(outer) - own) * scale);
            double turned = 90 - half + Math.min(p.theirs(angle), 359.5);
            Pt end = apex.polar(p.theirs(outer) * scale, turned);
            double nearest = theirs.stream().mapToDouble(l -> l[1].distance(end)).min().orElseThrow();
            p.yours("end of the arc off its place", nearest, 0);
        }
    }

    private static void cone(Paper p) {
        Box side = p.path("cone");
        double scale = side.width() / Math.max(p.at("across"), p.has("top") ? p.at("top") : 0);
        p.same("height", side.height(), p.at("height") * scale);
        Pt[] first = p.svg.piecesOf("part").get(0);
        p.same("slant in the pattern", first[0].distance(first[1]), (p.at("outer") - (p.has("inner") ? p.at("inner") : 0)) * scale);
        sector(p, p.svg.piecesOf("part"), "outer", "angle");
        if (p.isAsCut() && p.shows("yours-cone")) {
            p.yours("rim", p.path("yours-cone").width(), p.theirs("made_across") * scale);
            p.yours("height", p.path("yours-cone").height(), p.theirs("made_height") * scale);
        }
    }

    private static void nest(Paper p) {
        Box sheet = p.part();
        double scale = sheet.width() / p.at("sheet_length");
        double kerf = p.has("kerf") ? p.at("kerf") : 0;
        p.same("width of the sheet", sheet.height(), p.at("sheet_width") * scale);
        for (String role : new String[] {"blank", "yours-part"}) {
            for (Box part : p.svg.rectangles(role)) {
                double along = (p.at("part_length") + kerf) * scale;
                double across = (p.at("part_width") + kerf) * scale;
                double x = part.left() - sheet.left();
                double y = part.top() - sheet.top();
                if (role.equals("blank")) {
                    p.same("length of a part", part.width(), p.at("part_length") * scale);
                    p.same("width of a part", part.height(), p.at("part_width") * scale);
                    p.same("part along", x, Math.round(x / along) * along);
                    p.same("part across", y, Math.round(y / across) * across);
                } else {
                    p.yours("part along", x, Math.round(x / along) * along);
                    p.yours("part across", y, Math.round(y / across) * across);
                }
            }
        }
        if (!p.isHidden("along") && !p.isHidden("across") && p.count("along") * p.count("across") <= 600) {
            p.same("parts", p.svg.rectangles("blank").size(), p.count("along") * p.count("across"), 0);
        }
    }

    private static void triangle(Paper p) {
        Box part = p.path("part");
        double scale = part.width() / p.at("run");
        p.same("rise", part.height(), p.at("rise") * scale);
        if (p.has("slope")) {
            p.same("long side", Paper.diagonal(part), p.at("slope") * scale);
        }
        if (p.has("angle")) {
            p.same("angle", Math.toDegrees(Math.atan2(part.height(), part.width())), p.at("angle"), 0.5);
        }
        if (!p.isAsCut() || !p.shows("yours-slope")) {
            return;
        }
        Pt[] line = p.svg.piecesOf("yours-slope").get(0);
        if (p.has("slope") && p.differs("slope")) {
            p.yours("long side", line[0].distance(line[1]), Math.min(1.5 * p.at("slope"), p.theirs("slope")) * scale);
        } else if (p.has("angle") && p.differs("angle")) {
            p.yours("angle, as its end is off", line[1].distance(line[0].polar(Paper.diagonal(part), p.theirs("angle"))), 0);
        } else {
            p.yours("other angle, as its end is off", line[1].distance(line[0].polar(Paper.diagonal(part), 270 - p.theirs("other"))), 0);
        }
    }

    private static void frame(Paper p) {
        Box square = p.path("square");
        Box leaning = p.path("leaning");
        double scale = square.width() / p.at("length");
        p.same("height", square.height(), p.at("height") * scale);
        p.same("lean", leaning.right() - square.right(), p.at("lean") * scale);
        if (p.shows("long")) {
            p.same("long diagonal", Paper.diagonal(p.path("long")), p.at("long") * scale);
            p.same("its foot", p.path("long").width(), leaning.width());
        }
        if (p.shows("short")) {
            p.same("short diagonal", Paper.diagonal(p.path("short")), p.at("short") * scale);
        }
        if (p.isAsCut() && p.shows("yours-frame")) {
            double left = p.at("lean") - p.theirs("push");
            Box yours = p.path("yours-frame");
            p.yours("lean that is left", left > 0 ? yours.right() - square.right() : yours.left() - square.left(), left * scale);
        }
    }
}
