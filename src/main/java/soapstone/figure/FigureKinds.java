package soapstone.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All kinds of drawing, what they take, and the way to have one drawn. */
public final class FigureKinds {

    private static final int WIDE = 720;
    private static final int NARROW = 340;
    private static final double MARGIN = 4;
    private static final double SLACK = 0.3;
    private static final double TALLEST = 2400;
    private static final int MOST_CHARACTERS = 60_000;

    private static final Map<String, Drawer> DRAWERS = drawers();
    private static final Map<String, FigureKind> KINDS = describe();

    private FigureKinds() {}

    private static Map<String, Drawer> drawers() {
        Map<String, Drawer> d = new LinkedHashMap<>();
        d.put("hole-row", new HoleRow());
        d.put("gap-row", EvenGaps.pickets());
        d.put("mark-row", new MarkRow());
        d.put("bolt-circle", new BoltCircle());
        d.put("folded", new Folded());
        d.put("flat-strip", new FlatStrip());
        d.put("folded-and-flat", new FoldedAndFlat());
        d.put("box-tank", new BoxTank());
        d.put("lying-drum", new LyingDrum());
        d.put("upright-drum", Elevation.drum());
        d.put("tub", Elevation.tub());
        d.put("baffle-tank", EvenGaps.baffles());
        d.put("panel", new Panel());
        d.put("lid", new Lid());
        d.put("triangle", new Triangle());
        d.put("rule", new Rule());
        d.put("stack", new Stack());
        d.put("sector", new Sector());
        d.put("nest", new Nest());
        work(d);
        return Collections.unmodifiableMap(d);
    }

    /** Vessels, welds, loads and rows as work is done on them, and whole jobs. */
    private static void work(Map<String, Drawer> d) {
        d.put("water-column", new WaterColumn());
        d.put("receiver", new Receiver());
        d.put("baffle-plate", new BafflePlate());
        d.put("compartments", SpacedRow.compartments());
        d.put("filling-tank", new FillingTank());
        d.put("fillet-weld", new FilletWeld());
        d.put("stitch-row", new StitchRow());
        d.put("torch-run", new TorchRun());
        d.put("trailer", new Trailer());
        d.put("loaded-skid", new LoadedSkid());
        d.put("sling", new Sling());
        d.put("load-bar", ShareBar.loads());
        d.put("order-bar", ShareBar.order());
        d.put("price-bar", ShareBar.price());
        d.put("post-row", SpacedRow.posts());
        d.put("cut-bar", new CutBar());
        d.put("butted-bars", new ButtedBars());
        d.put("round-tube", new RoundTube());
        d.put("drill", new Drill());
        d.put("area-grid", new AreaGrid());
        d.put("hauling-tank", Joined.haulingTank());
        d.put("ramp-guard", Joined.rampGuard());
    }

    private static Map<String, FigureKind> describe() {
        Map<String, FigureKind> k = new LinkedHashMap<>();
        DRAWERS.forEach((name, d) -> k.put(name, new FigureKind(name, d.arguments(), d.asCut())));
        return Collections.unmodifiableMap(k);
    }

    /** Every kind, in the order in which they are documented. */
    public static List<FigureKind> kinds() {
        return List.copyOf(KINDS.values());
    }

    /** The kind of that name, or empty. */
    public static Optional<FigureKind> kind(String name) {
        return Optional.ofNullable(KINDS.get(name));
    }

    /**
     * Draws a part, and over it the part as an answer would make it.
     *
     * @param right       the right part
     * @param asCutOrNull the same kind with an answer's amounts; without it, or when nothing can be drawn from it, the
     *                    right part stands alone (in the second case with a note that says so)
     * @param idPrefix    starts the ids in the SVG; must be unique on the page
     * @return the drawing; empty when the right part cannot be drawn from these amounts
     */
    public static Optional<Figure> draw(FigureInput right, FigureInput asCutOrNull, String idPrefix) {
        return draw(right, asCutOrNull, idPrefix, Words.IN_ENGLISH);
    }

    /**
     * The same with words of another language.
     *
     * @param words the words of drawings by their keys; missing ones are said in English
     */
    public static Optional<Figure> draw(FigureInput right, FigureInput asCutOrNull, String idPrefix, Map<String, String> words) {
        return draw(right, asCutOrNull, idPrefix, new Words(words));
    }

    /** The English words of all drawings by key, as a pattern for another language. */
    public static Map<String, String> englishWords() {
        return EnglishWords.ALL;
    }

    private static Optional<Figure> draw(FigureInput right, FigureInput asCut, String id, Words words) {
        Drawer drawer = DRAWERS.get(right.kind());
        if (drawer == null || !suits(drawer, right)) {
            return Optional.empty();
        }
        if (asCut == null || !drawer.asCut()) {
            return figure(new Pair(right, null, false), drawer, id, words);
        }
        if (asCut.kind().equals(right.kind()) && suits(drawer, asCut)) {
            Optional<Figure> both = figure(new Pair(right, asCut, false), drawer, id, words);
            if (both.isPresent()) {
                return both;
            }
        }
        return figure(new Pair(right, null, true), drawer, id, words);
    }

    private record Pair(FigureInput right, FigureInput yours, boolean impossible) {}

    private static boolean suits(Drawer drawer, FigureInput input) {
        Values values = new Values(input);
        return values.suits(drawer.arguments()) && drawer.canDraw(values);
    }

    private static Optional<Figure> figure(Pair pair, Drawer drawer, String id, Words words) {
        Values right = new Values(pair.right()).printing(drawer::prints);
        Values yours = pair.yours() == null ? null : new Values(pair.yours()).printing(drawer::printsOfYours);
        Brief brief = new Brief(right, yours, words, WIDE);
        String title = drawer.title(brief);
        Telling telling = new Telling(words);
        drawer.tell(brief, telling);
        List<Label> extra = new ArrayList<>();
        if (pair.impossible()) {
            telling.say("cannot.draw.yours");
            extra.add(Label.text(words.say("cannot.draw.yours")));
        }
        Optional<String> wide = svg(brief, drawer, extra, new Text(id + "-wide", "wide", title, telling.text()));
        Optional<String> narrow = svg(new Brief(right, yours, words, NARROW), drawer, extra,
                new Text(id + "-narrow", "narrow", title, telling.text()));
        return wide.flatMap(w -> narrow.map(n -> new Figure(w, n, title, telling.text())));
    }

    private record Text(String id, String layout, String title, String desc) {}

    private static Optional<String> svg(Brief brief, Drawer drawer, List<Label> extra, Text text) {
        Sheet sheet = new Layout(brief, drawer, extra).sheet();
        Box all = sheet.bounds();
        boolean inside = all.left() >= -SLACK && all.right() <= brief.width() + SLACK && all.bottom() < TALLEST;
        if (!sheet.isFinite() || !all.isFinite() || !inside) {
            return Optional.empty();
        }
        int height = (int) Math.ceil(all.bottom() + MARGIN);
        String svg = Svg.write(sheet, brief.width(), height, text.id(), text.layout(), text.title(), text.desc());
        return svg.length() <= MOST_CHARACTERS ? Optional.of(svg) : Optional.empty();
    }
}
