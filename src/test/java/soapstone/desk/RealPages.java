package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soapstone.exercise.Ask;
import soapstone.figure.FigureKinds;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/** Lists of pages for the tests that look at all of them, and at every state of some. */
final class RealPages {

    private RealPages() {}

    /**
     * A page in a state.
     *
     * @param path   of the sheet or bench
     * @param typed  by the boxes' letters
     * @param action what is pressed: {@code read}, {@code mark} (after {@code read}), {@code work}
     * @param shows  a state that one of its boxes is in then; empty for none
     */
    record State(String path, Map<String, String> typed, String action, String shows) {

        @Override
        public String toString() {
            return action + " " + path + " " + typed;
        }
    }

    /** Everything that has an address, exercises and benches in inches. */
    static List<String> all() {
        List<String> all = new ArrayList<>(List.of("/", "/units", "/lessons", "/formulas", "/tables", "/cautions", "/answers", "/about", "/figures"));
        FigureKinds.kinds().forEach(k -> all.add("/figures/" + k.name()));
        RealSite.library().course().units().forEach(u -> all.add("/units/" + u.folder()));
        RealSite.library().course().inOrder().forEach(l -> all.add("/lessons/" + l.id()));
        RealSite.library().bank().tables().keySet().forEach(t -> all.add("/tables/" + t));
        RealSite.library().bank().formulas().keySet().forEach(f -> all.addAll(List.of("/formulas/" + f, "/bench/formula/" + f + "?units=us")));
        RealSite.library().bank().exercises().keySet().forEach(e -> {
            Variant v = RealSite.variant(e, UnitSystem.US);
            all.addAll(List.of(RealSite.path(v), RealSite.benchPath(v)));
        });
        return all;
    }

    /** Exercises of every kind in every state that a box can be in, and benches. */
    static List<State> states() {
        List<State> states = new ArrayList<>();
        Variant holes = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        states.add(state(holes, RealSite.key(holes), "read", "read"));
        states.add(state(holes, Map.of("a", "3 15"), "read", "asked-again"));
        states.add(state(holes, RealSite.key(holes), "mark", "right"));
        states.add(state(holes, slip(holes, "shared-over-holes"), "mark", "slip"));
        states.add(state(holes, Map.of("a", "231 mm"), "mark", "right-but"));
        states.add(state(holes, Map.of("a", "9 5/32"), "mark", "near"));
        states.add(state(holes, Map.of("a", "47"), "mark", "unexplained"));
        states.add(state(holes, Map.of("a", ""), "mark", "blank"));
        Variant tray = RealSite.variant("bends/hose-tray", UnitSystem.US);
        states.add(state(tray, slip(tray, "inside-arc"), "mark", "carried"));
        Variant bars = RealSite.variant("spacing/max-gap", UnitSystem.METRIC);
        states.add(state(bars, slip(bars, "end-gap-not-set-aside"), "mark", "carried"));
        for (String id : List.of("ratio/right-size", "spacing/hole-marks", "circles/bolt-circle-points", "measuring/nearest-sixteenth",
                "pressure/sunken-panel", "tanks/lying-drum", "bends/flat-angle")) {
            states.addAll(usual(RealSite.variant(id, UnitSystem.US)));
        }
        states.addAll(benches());
        return states;
    }

    /** Read back, right, and wrong by the first slip that shows. */
    private static List<State> usual(Variant v) {
        List<State> states = new ArrayList<>();
        states.add(state(v, RealSite.key(v), "read", "read"));
        states.add(state(v, RealSite.key(v), "mark", "right"));
        v.outcomes().stream().filter(o -> o.effect() == Effect.SEEN).findFirst()
                .ifPresent(o -> states.add(state(v, RealSite.answers(v, o.theirs()), "mark", "")));
        if (v.model().asks().stream().noneMatch(a -> a.kind() == Ask.Kind.CHOICE)) {
            Map<String, String> again = new LinkedHashMap<>();
            v.model().asks().forEach(a -> again.put(a.letter(), "1 1/2 in mm"));
            states.add(state(v, again, "read", "asked-again"));
        }
        return states;
    }

    private static List<State> benches() {
        String holes = "/bench/spacing/bolt-holes?units=us";
        String bend = "/bench/formula/bend_allowance?units=us";
        return List.of(new State(holes, Map.of("a", "48", "b", "7", "c", "1 1/2", "d", "3/8"), "work", "read"),
                new State(holes, Map.of("a", "10", "b", "14", "c", "1 1/2", "d", "1/2"), "work", "read"),
                new State(holes, Map.of("a", "3 15", "b", "", "c", "1 1/2", "d", "3/8"), "work", "asked-again"),
                new State(bend, Map.of("a", "90", "b", "1/8", "c", "0.0747", "d", "0.44"), "work", "read"),
                new State(bend, Map.of("a", "200", "b", "1/8", "c", "0.0747", "d", "0.44"), "work", "read"));
    }

    private static State state(Variant v, Map<String, String> typed, String action, String shows) {
        return new State(RealSite.path(v), typed, action, shows);
    }

    private static Map<String, String> slip(Variant v, String name) {
        return RealSite.answers(v, v.outcomes().stream().filter(o -> o.slip().name().equals(name)).findFirst().orElseThrow().theirs());
    }
}
