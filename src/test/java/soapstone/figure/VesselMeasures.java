package soapstone.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Tanks, drums and panels with what stands in them or presses on them, and plates. */
final class VesselMeasures {

    private VesselMeasures() {}

    static void put(Map<String, Consumer<Paper>> all) {
        all.put("box-tank", p -> box(p, p.part()));
        all.put("upright-drum", p -> standing(p, "diameter", "diameter"));
        all.put("tub", p -> standing(p, "top", "bottom"));
        all.put("lying-drum", VesselMeasures::lying);
        all.put("baffle-tank", p -> baffles(p, p.part(), "length", "height", "thickness"));
        all.put("compartments", VesselMeasures::compartments);
        all.put("baffle-plate", VesselMeasures::baffle);
        all.put("panel", VesselMeasures::panel);
        all.put("floor-panel", VesselMeasures::floor);
        all.put("lid", p -> p.same("edge and front", p.svg.rectangle("edge").height(), 2 * p.svg.radius("part")));
        all.put("water-column", VesselMeasures::column);
        all.put("receiver", VesselMeasures::receiver);
        all.put("filling-tank", VesselMeasures::filling);
        all.put("tank-and-trailer", VesselMeasures::tankAndTrailer);
        all.put("plate", VesselMeasures::plate);
        all.put("area-grid", VesselMeasures::grid);
        all.put("ring", p -> p.same("hole", p.svg.radius("hole"), p.svg.radius("part") * p.at("hole") / p.at("outer")));
        all.put("round-tube", VesselMeasures::tube);
        all.put("sheet-edge", VesselMeasures::edge);
        all.put("metal-edges", VesselMeasures::metals);
    }

    /** Front to scale, the way back half as long. */
    static void box(Paper p, Box front) {
        double scale = front.width() / p.at("length");
        p.same("height", front.height(), p.at("height") * scale);
        List<Pt[]> back = p.svg.pieces("visible").stream().filter(l -> Math.hypot(l[0].x() - front.right(), l[0].y() - front.top()) < 0.1)
                .filter(l -> l[1].x() > l[0].x() + 0.5 && l[1].y() < l[0].y() - 0.5).toList();
        p.same("edges that go back", back.size(), 1, 0);
        p.same("width", back.get(0)[0].distance(back.get(0)[1]), p.at("width") * scale / 2);
        if (p.has("level")) {
            p.same("level", front.bottom() - p.path("level").top(), within(p.at("level"), p.at("height")) * scale);
        }
        if (p.isAsCut() && p.shows("yours-level")) {
            p.yours("level", front.bottom() - p.path("yours-level").top(), within(p.theirs("level"), p.theirs("height")) * scale);
        }
        for (Box yours : p.isAsCut() ? p.svg.rectangles("yours-part") : List.<Box>of()) {
            p.yours("length", yours.width(), p.theirs("length") * scale);
            p.yours("height", yours.height(), p.theirs("height") * scale);
        }
    }

    private static double within(double level, double height) {
        return Math.max(0, Math.min(height, level));
    }

    private static void standing(Paper p, String top, String bottom) {
        Box vessel = p.path("part");
        double scale = vessel.height() / p.at("height");
        p.same("widest", vessel.width(), Math.max(p.at(top), p.at(bottom)) * scale);
        if (p.has("level")) {
            double level = within(p.at("level"), p.at("height"));
            p.same("level", vessel.bottom() - p.path("level").top(), level * scale);
            p.same("width of the level", p.path("level").width(), (p.at(bottom) + (p.at(top) - p.at(bottom)) * level / p.at("height")) * scale);
        }
        if (p.isAsCut() && p.shows("yours-level")) {
            double level = within(p.theirs("level"), p.theirs("height"));
            p.yours("level", vessel.bottom() - p.path("yours-level").top(), level * scale);
            p.yours("width of the level", p.path("yours-level").width(),
                    (p.theirs(bottom) + (p.theirs(top) - p.theirs(bottom)) * level / p.theirs("height")) * scale);
        }
        if (p.isAsCut() && p.shows("yours-part")) {
            p.yours("height", p.path("yours-part").height(), p.theirs("height") * scale);
            p.yours("widest", p.path("yours-part").width(), Math.max(p.theirs(top), p.theirs(bottom)) * scale);
        }
    }

    /** A long drum is broken: its side is drawn up to a few diameters. */
    private static void lying(Paper p) {
        double radius = p.svg.radius("part");
        double bottom = p.svg.circles("part").get(0).y() + radius;
        double scale = 2 * radius / p.at("diameter");
        Box side = p.svg.rectangle("side");
        p.same("diameter from the side", side.height(), 2 * radius);
        p.same("length", side.width(), Math.min(p.at("length"), 2.6 * p.at("diameter")) * scale);
        if (p.has("level")) {
            double level = within(p.at("level"), p.at("diameter"));
            p.same("level", bottom - p.path("level").top(), level * scale);
            p.same("width of the level", p.path("level").width(), 2 * Math.sqrt(level * (p.at("diameter") - level)) * scale);
        }
        if (p.isAsCut() && p.shows("yours-level")) {
            p.yours("level", bottom - p.path("yours-level").top(), within(p.theirs("level"), p.theirs("diameter")) * scale);
        }
        if (p.isAsCut() && !p.svg.circles("yours-part").isEmpty()) {
            p.yours("diameter", 2 * p.svg.radius("yours-part"), p.theirs("diameter") * scale);
        }
    }

    /** Thin baffles are drawn thicker than to scale, round their middles. */
    private static void baffles(Paper p, Box tank, String length, String height, String thickness) {
        double scale = tank.width() / p.at(length);
        double step = (p.at("space") + p.at(thickness)) * scale;
        p.same("height", tank.height(), p.at(height) * scale);
        p.row("baffle", Paper.from(tank.left(), Paper.middles(p.svg.rectangles("baffle"))), p.count("count"), step - p.at(thickness) * scale / 2, step);
        if (p.isAsCut()) {
            double own = (p.theirs("space") + p.theirs(thickness)) * scale;
            p.rowOfTheirs("baffle", Paper.from(tank.left(), Paper.middles(p.svg.rectangles("yours-piece"))), p.countOfTheirs("count"),
                    own - p.theirs(thickness) * scale / 2, own);
        }
    }

    private static void compartments(Paper p) {
        Box tank = p.part();
        double each = tank.width() / (p.count("count") + 1);
        p.row("baffle", Paper.from(tank.left(), Paper.middles(p.svg.rectangles("baffle"))), p.count("count"), each, each);
        if (p.has("width")) {
            p.same("width", tank.height(), p.at("width") * tank.width() / p.at("length"));
        }
        if (p.isAsCut()) {
            double own = tank.width() * p.theirs("length") / p.at("length") / (p.countOfTheirs("count") + 1);
            p.rowOfTheirs("baffle", Paper.from(tank.left(), Paper.middles(p.paths("yours-piece"))), p.countOfTheirs("count"), own, own);
        }
    }

    private static void baffle(Paper p) {
        Box plate = p.part();
        double scale = plate.width() / p.at("width");
        p.same("height", plate.height(), p.at("height") * scale);
        p.same("opening", 2 * p.svg.radius("opening"), p.at("opening") * scale);
        List<Box> cut = p.svg.rectangles("section");
        p.same("opening in section", cut.get(1).top() - cut.get(0).bottom(), Math.min(p.at("opening"), p.at("height")) * scale);
        if (p.isAsCut() && !p.svg.circles("yours-opening").isEmpty()) {
            p.yours("opening", 2 * p.svg.radius("yours-opening"), p.theirs("opening") * scale);
        }
    }

    private static void panel(Paper p) {
        Box panel = p.part();
        double scale = panel.height() / p.at("height");
        double surface = p.path("surface-side").top();
        p.same("width", panel.width(), p.at("width") * scale);
        p.same("top edge", panel.top() - p.path("surface").top(), p.at("top") * scale);
        p.same("height from the side", p.path("edge").height(), panel.height());
        if (p.has("center")) {
            p.same("center of pressure", p.path("center-of-pressure").top() - surface, p.at("center") * scale);
        }
        if (p.isAsCut() && p.shows("yours-center")) {
            p.yours("center of pressure", p.path("yours-center").top() - surface, p.theirs("center") * scale);
        }
        for (Box yours : p.isAsCut() ? p.svg.rectangles("yours-part") : List.<Box>of()) {
            p.yours("width", yours.width(), p.theirs("width") * scale);
            p.yours("height", yours.height(), p.theirs("height") * scale);
        }
    }

    /** The section is to a scale of its own; its plate is drawn three pixels thick at least. */
    private static void floor(Paper p) {
        Box clear = p.svg.rectangle("clear");
        p.same("short span", clear.height(), p.at("short") * clear.width() / p.at("long"));
        List<Box> bearers = p.svg.rectangles("bearer");
        double span = bearers.get(1).left() - bearers.get(0).right();
        p.same("thickness", p.svg.rectangle("section-plate").height(), Math.max(3, p.at("thickness") * span / p.at("short")));
        p.same("sag", p.path("sag").width(), span);
        double depth = p.svg.rectangle("section-plate").top() - p.path("surface").top();
        p.same("depth of water", depth, Math.min(90, p.at("depth") * span / p.at("short")));
    }

    private static void column(Paper p) {
        Box column = p.svg.rectangle("column");
        double scale = column.height() / p.at("depth");
        p.same("surface", column.top(), p.path("surface").top());
        p.same("gauge", p.svg.circles("gauge").get(0).y(), column.bottom());
        if (p.isAsCut() && p.shows("yours-head")) {
            p.yours("column", column.bottom() - p.path("yours-head").top(), p.theirs("head") * scale);
        }
    }

    private static void receiver(Paper p) {
        List<Box> walls = p.svg.rectangles("wall");
        double inside = walls.get(1).left() - walls.get(0).right();
        p.same("wall", walls.get(0).width(), Math.max(3, p.at("thickness") / p.at("diameter") * inside));
        p.paths("head").forEach(h -> p.same("head", h.height() - walls.get(0).width(), inside / 4));
    }

    /** An answer's level far over the rim is kept on the sheet, with an arrow that says so. */
    private static void filling(Paper p) {
        double bottom = p.path("part").bottom();
        double full = bottom - p.path("full").top();
        p.same("level at the start", bottom - p.path("start").top(), p.at("start") / p.at("capacity") * full);
        if (p.isAsCut() && p.shows("yours-level")) {
            p.yours("level", bottom - p.path("yours-level").top(), Math.min(1.35, p.theirs("filled") / p.at("capacity")) * full);
        }
    }

    private static void tankAndTrailer(Paper p) {
        List<Box> parts = p.svg.rectangles("part");
        box(p, parts.get(0));
        baffles(p, parts.get(1), "inside", "inside_height", "baffle");
        LoadMeasures.trailer(p);
    }

    private static void plate(Paper p) {
        Box plate = p.part();
        double scale = plate.width() / p.at("length");
        p.same("width", plate.height(), p.at("width") * scale);
        if (p.has("window_length")) {
            p.same("length of the window", p.svg.rectangle("window").width(), p.at("window_length") * scale);
            p.same("width of the window", p.svg.rectangle("window").height(), p.at("window_width") * scale);
        }
        if (p.has("thickness")) {
            p.same("edge", p.svg.rectangle("edge").width(), Math.max(3, p.at("thickness") * scale));
        }
    }

    /** Told, all to one scale and three pixels at least; else all alike. */
    private static void metals(Paper p) {
        List<String> metals = List.of("aluminum", "carbon", "galvanized", "stainless");
        boolean told = metals.stream().noneMatch(p::isHidden);
        String most = metals.stream().max(Comparator.comparingDouble(p::at)).orElseThrow();
        double scale = p.svg.rectangle(most).height() / p.at(most);
        for (String metal : metals) {
            p.same(metal, p.svg.rectangle(metal).height(), told ? Math.max(3, p.at(metal) * scale) : p.svg.rectangle(most).height());
        }
        List<Box> around = p.isAsCut() ? p.paths("yours-edge") : List.of();
        if (!around.isEmpty()) {
            String picked = metals.stream().filter(m -> Math.abs(p.theirs(m) - p.theirs("picked")) < 1e-9).findFirst().orElseThrow();
            Box edge = p.svg.rectangle(picked);
            p.yours("the picked one, above", around.get(0).top(), edge.top() - 5);
            p.yours("the picked one, below", around.get(1).top(), edge.bottom() + 5);
        }
    }

    private static void grid(Paper p) {
        Box panel = p.part();
        double scale = panel.width() / p.at("length");
        double step = (p.isMetric() ? 1000 : 12) * scale;
        p.same("width", panel.height(), p.at("width") * scale);
        p.row("line along", Paper.from(panel.left(), Paper.lefts(p.paths("line-along"))), p.paths("line-along").size(), step, step);
        List<Double> up = p.paths("line-across").stream().map(b -> panel.bottom() - b.top()).toList();
        p.row("line across", up, up.size(), step, step);
    }

    private static void tube(Paper p) {
        double outside = p.svg.radius("outside");
        p.same("wall", outside - p.svg.radius("inside"), p.at("wall") / p.at("outside") * 2 * outside);
        p.same("tube from the side", p.svg.rectangle("side").height(), 2 * outside);
    }

    private static void edge(Paper p) {
        double lower = p.path("lower").top();
        double thick = lower - p.path("upper").top();
        p.same("upper face", thick, Math.max(3, thick));
        if (p.isAsCut() && p.shows("yours-upper") && thick > 3.1) {
            p.yours("upper face", lower - p.path("yours-upper").top(), Math.max(1, p.theirs("thickness") / p.at("thickness") * thick));
        }
    }
}
