package soapstone.figure;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * How the drawing of each kind is measured: that what is drawn lies where the amounts say, within a pixel, of the right part and
 * of the answer's part over it. The same measures are taken of likely parts and of every exercise of the bank.
 */
public final class Measures {

    /** Kinds of which nothing is to scale, so that there is nothing to measure. */
    static final Map<String, String> NOTHING_TO_SCALE = Map.of(
            "torch-run", "volts, amperes and inches a minute have no place on paper; its note says that nothing is to scale");

    private static final Map<String, Consumer<Paper>> ALL = new LinkedHashMap<>();

    static {
        RowMeasures.put(ALL);
        VesselMeasures.put(ALL);
        BlankMeasures.put(ALL);
        BendMeasures.put(ALL);
        LoadMeasures.put(ALL);
    }

    /** How many sizes were measured, and how many of them were of the answer's part. */
    public record Taken(int all, int yours) {

        public Taken plus(Taken other) {
            return new Taken(all + other.all, yours + other.yours);
        }
    }

    private Measures() {}

    static boolean has(String kind) {
        return ALL.containsKey(kind);
    }

    /** Whether a kind is drawn to scale at all. */
    public static boolean areOf(String kind) {
        return !NOTHING_TO_SCALE.containsKey(kind);
    }

    /** Fails where something lies elsewhere than the amounts say. */
    public static Taken take(FigureInput right, FigureInput yoursOrNull, DrawnSvg drawn, String what) {
        if (!areOf(right.kind())) {
            return new Taken(0, 0);
        }
        Paper paper = new Paper(right, yoursOrNull, drawn);
        try {
            ALL.get(right.kind()).accept(paper);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError(what + ": " + e.getMessage() + "\n" + drawn.text(), e);
        }
        return new Taken(paper.taken(), paper.takenOfYours());
    }
}
