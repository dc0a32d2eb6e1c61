package soapstone.figure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Bends, folded sections and their flat patterns, and the tools of a press brake. */
final class BendMeasures {

    private static final double LEAST_THICK = 3;
    private static final double HEM = 170;
    private static final double NOTHING = 0.3;

    private BendMeasures() {}

    static void put(Map<String, Consumer<Paper>> all) {
        all.put("folded", BendMeasures::section);
        all.put("flat-strip", BendMeasures::strip);
        all.put("folded-and-flat", p -> {
            section(p);
            strip(p);
        });
        all.put("bend", BendMeasures::bend);
        all.put("brake-die", BendMeasures::die);
        all.put("brake-force", BendMeasures::die);
        all.put("back-gauge", p -> {
            section(p);
            gauge(p);
        });
    }

    /**
     * Each straight part of the section is its leg less the setbacks of its bends, and turns by its bend from the one before. A
     * thin sheet is drawn three pixels thick, and its setbacks grow with that; where nothing straight is left of a leg that way, its
     * length is nowhere to be seen.
     */
    private static void section(Paper p) {
        List<Pt[]> straight = p.svg.straights("section-outline");
        double[] legs = p.all("legs");
        double[] turns = p.all("turns");
        double drawn = straight.get(legs.length)[0].distance(straight.get(legs.length)[1]);
        double[] corners = new double[legs.length];
        for (int i = 0; i < turns.length; i++) {
            corners[i] += corner(turns[i]);
            corners[i + 1] += corner(turns[i]);
        }
        double measured = 0;
        double real = 0;
        for (int i = 0; i < legs.length; i++) {
            if (straight.get(i)[0].distance(straight.get(i)[1]) < NOTHING) {
                return;
            }
            measured += straight.get(i)[0].distance(straight.get(i)[1]) + corners[i] * drawn;
            real += legs[i] - corners[i] * p.at("radius");
        }
        double scale = measured / real;
        p.same("thickness", drawn, Math.max(LEAST_THICK, p.at("thickness") * scale));
        for (int i = 0; i < legs.length; i++) {
            double wanted = (legs[i] - corners[i] * p.at("radius")) * scale - corners[i] * drawn;
            p.same("straight part of leg " + (i + 1), straight.get(i)[0].distance(straight.get(i)[1]), Math.max(0, wanted));
        }
        if (p.isAsCut() && p.shows("yours-section")) {
            middleOfTheirs(p, scale, drawn);
        }
        for (int i = 0; i < turns.length; i++) {
            double shortest = Math.min(straight.get(i)[0].distance(straight.get(i)[1]), straight.get(i + 1)[0].distance(straight.get(i + 1)[1]));
            if (shortest > 5) {
                double turned = Math.abs(direction(straight.get(i + 1)) - direction(straight.get(i)));
                p.same("bend " + (i + 1), Math.min(turned, 360 - turned), Math.min(Math.abs(turns[i]), 360 - Math.abs(turns[i])), 0.5);
            }
        }
    }

    /** The answer's section is the line in the middle of its sheet, as thick as the right one is drawn. */
    private static void middleOfTheirs(Paper p, double scale, double drawn) {
        List<Pt[]> straight = p.svg.straights("yours-section");
        double[] legs = p.allOfTheirs("legs");
        double[] turns = p.allOfTheirs("turns");
        for (int i = 0; i < legs.length; i++) {
            double corners = (i > 0 ? corner(turns[i - 1]) : 0) + (i < turns.length ? corner(turns[i]) : 0);
            double wanted = legs[i] * scale - corners * (p.theirs("radius") * scale + drawn);
            p.yours("straight part of leg " + (i + 1), straight.get(i)[0].distance(straight.get(i)[1]), Math.max(0, wanted));
        }
    }

    private static double direction(Pt[] line) {
        return line[0].degreesTo(line[1]);
    }

    private static double corner(double turn) {
        return Math.abs(turn) > HEM ? 1 : Math.tan(Math.toRadians(Math.abs(turn) / 2));
    }

    private static void strip(Paper p) {
        Box strip = p.part();
        double scale = strip.width() / p.at("width");
        double[] bends = Arrays.stream(p.all("bends")).filter(b -> b >= 0 && b <= p.at("width")).toArray();
        List<Box> lines = p.paths("bend-line");
        p.same("bend lines", lines.size(), bends.length, 0);
        for (int i = 0; i < bends.length; i++) {
            p.same("bend line " + (i + 1), lines.get(i).left() - strip.left(), bends[i] * scale);
        }
        if (!p.isAsCut()) {
            return;
        }
        double[] theirs = Arrays.stream(p.allOfTheirs("bends")).map(b -> strip.left() + b * scale).toArray();
        List<Box> yours = p.paths("yours-bend");
        for (int i = 0; i < yours.size(); i++) {
            if (yours.size() == theirs.length) {
                p.yours("bend line " + (i + 1), yours.get(i).left(), theirs[i]);
            } else {
                p.oneOf("yours: bend line", yours.get(i).left(), theirs);
            }
        }
        if (p.shows("yours-end")) {
            p.yours("width", p.path("yours-end").left() - strip.left(), p.theirs("width") * scale);
        }
    }

    /** The neutral line lies K thicknesses inside the metal; a flat piece is as long as its share of the bend. */
    private static void bend(Paper p) {
        List<Pt[]> outside = p.svg.straights("outside");
        List<Pt[]> inside = p.svg.straights("inside");
        double face = outside.get(0)[0].y();
        double scale = (face - inside.get(0)[0].y()) / p.at("thickness");
        double begins = outside.get(0)[1].x();
        double turned = direction(outside.get(1)) - direction(outside.get(0));
        p.same("angle", (turned + 360) % 360, p.at("angle"), 0.5);
        p.same("inside radius", Paper.diagonal(Box.around(inside.get(0)[1], inside.get(1)[0])), 2 * p.at("radius") * scale * Math.sin(Math.toRadians(p.at("angle") / 2)));
        if (p.has("k")) {
            p.same("neutral line", p.svg.straights("neutral").get(0)[0].y() - inside.get(0)[0].y(), p.at("k") * p.at("thickness") * scale);
        }
        // The scale is measured over a thickness of 54 pixels at most, so that a pixel there is more on a longer size.
        if (p.has("allowance") && !p.has("deduction")) {
            p.same("metal of the bend", p.svg.rectangle("flat").width(), p.at("allowance") * scale, 1 + 0.02 * p.at("allowance") * scale);
        }
        if (p.has("deduction")) {
            p.same("metal of the bend", p.svg.rectangle("flat").width(), (2 * p.at("setback") - p.at("deduction")) * scale, 1 + 0.02 * p.at("setback") * scale);
            p.same("deduction", p.path("deduction").width(), Math.abs(p.at("deduction")) * scale);
        }
        if (p.isAsCut() && p.shows("yours-start")) {
            p.yours("start of the bend", p.path("yours-start").left() - begins, (p.at("setback") - p.theirs("setback")) * scale);
        }
        if (p.isAsCut() && p.shows("yours-neutral")) {
            p.yours("neutral line", p.svg.straights("yours-neutral").get(0)[0].y() - inside.get(0)[0].y(), p.theirs("k") * p.at("thickness") * scale);
        }
        if (p.isAsCut() && !movesALine(p) && (p.has("deduction") ? p.differs("deduction") : p.has("allowance") && p.differs("allowance"))) {
            flatOfTheirs(p);
        }
    }

    /** Whether the answer has another start of the bend or another neutral line, which is drawn and not its flat bar. */
    private static boolean movesALine(Paper p) {
        return p.has("setback") && p.differs("setback") || p.has("k") && p.differs("k");
    }

    /** The answer's metal under the right one; what is far longer is a stub. */
    private static void flatOfTheirs(Paper p) {
        Box flat = p.svg.rectangle("flat");
        List<Pt[]> bars = p.svg.pieces("phantom").stream().filter(l -> Math.abs(l[0].x() - flat.left()) < 0.6 && Math.abs(l[0].y() - flat.bottom() - 7) < 0.6).toList();
        boolean deduction = p.has("deduction");
        double right = deduction ? 2 * p.at("setback") - p.at("deduction") : p.at("allowance");
        double whole = deduction ? Math.max(right, 2 * p.at("setback")) : right;
        double own = Math.max(0, deduction ? 2 * p.theirs("setback") - p.theirs("deduction") : p.theirs("allowance"));
        p.yours("metal of the bend", bars.get(0)[1].x() - flat.left(), (own > 2.4 * whole ? 1.15 * whole : own) / right * flat.width());
    }

    /** The sheet lies on the shoulders of the die: measured from its outside corner, both faces touch the same circles. */
    private static void die(Paper p) {
        Box die = p.path("die");
        Box sheet = p.path("sheet");
        double depth = p.at("opening") / 2 + BrakeTools.SHOULDER * p.at("opening") * 0.01;
        double outer = p.at("radius") + p.at("thickness");
        double scale = (sheet.bottom() - die.top()) / (depth - outer * (Math.sqrt(2) - 1));
        BrakeTools tools = new BrakeTools(p.at("opening") * scale);
        p.same("half of the die", die.width() / 2, tools.side(), 2);
        p.same("height of the die", die.height(), tools.bottom(), 2);
        p.same("punch over the middle", Measuring.middle(p.path("punch")), Measuring.middle(die));
        if (p.isAsCut() && p.shows("yours-die")) {
            p.yours("depth of the vee", p.path("yours-die").height() / new BrakeTools(p.at("opening")).veeDepth() / scale,
                    p.theirs("opening") / p.at("opening"));
        }
    }

    private static void gauge(Paper p) {
        Box blank = p.svg.rectangle("blank");
        double scale = blank.width() / p.at("blank");
        double line = Measuring.middle(p.path("die"));
        p.same("stop", blank.right() - line, p.at("stop") * scale);
        p.same("the stop at the end of the blank", p.svg.rectangle("stop").left(), blank.right());
        for (Box yours : p.paths("yours-blank")) {
            p.yours("stop", yours.right() - line, p.theirs("stop") * scale);
            p.yours("blank", yours.width(), p.theirs("blank") * scale);
        }
    }
}
