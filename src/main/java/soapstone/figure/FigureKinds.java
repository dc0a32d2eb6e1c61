package soapstone.figure;

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
    private static final double FLAG_ROOM = 10;
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
        d.put("bend", new Bend());
        d.put("brake-die", new BrakeDie());
        d.put("brake-force", new BrakeForce());
        d.put("back-gauge", new BackGauge());
        d.put("box-tank", new BoxTank());
        d.put("lying-drum", new LyingDrum());
        d.put("upright-drum", Elevation.drum());
        d.put("tub", Elevation.tub());
        d.put("baffle-tank", EvenGaps.baffles());
        d.put("panel", new Panel());
        d.put("floor-panel", new FloorPanel());
        d.put("lid", new Lid());
        d.put("triangle", new Triangle());
        d.put("skew-frame", new SkewFrame());
        d.put("rule", new Rule());
        d.put("stack", new Stack());
        d.put("sector", new Sector());
        d.put("sheet-edge", new SheetEdge());
        d.put("metal-edges", new MetalEdges());
        d.put("plate", new Plate());
        d.put("ring", new Ring());
        d.put("nest", new Nest());
        d.put("pan", new Pan());
        d.put("notched-edge", new NotchedEdge());
        d.put("lid-over-box", new LidFit());
        d.put("rolled-pipe", new RolledPipe());
        d.put("elbow", new Elbow());
        d.put("square-to-round", new SquareToRound());
        d.put("cone-and-flat", new ConeAndFlat());
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
        d.put("tank-and-trailer", Joined.tankAndTrailer());
        d.put("picket-guard", Joined.picketGuard());
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
        return draw(right, asCutOrNull, idPrefix, Map.of());
    }

    /**
     * The same with words of another language.
     *
     * @param words the words of drawings by their keys; missing ones are said in English
     */
    public static Optional<Figure> draw(FigureInput right, FigureInput asCutOrNull, String idPrefix, Map<String, String> words) {
        return draw(right, asCutOrNull, idPrefix, words, List.of());
    }

    /**
     * The same with numbered flags beside some of the right part's sizes, for a text that points at them.
     *
     * @param flags arguments such as {@code pitch}, or one value of a list, counted from 1, such as {@code bends.2}; those that
     *              are not lettered, or for which one of the layouts has no room, get no flag and no number
     */
    public static Optional<Figure> draw(FigureInput right, FigureInput asCutOrNull, String idPrefix, Map<String, String> words, List<String> flags) {
        return draw(right, asCutOrNull, new Manner(idPrefix, new Words(words), flags));
    }

    /** The English words of all drawings by key, as a pattern for another language. */
    public static Map<String, String> englishWords() {
        return EnglishWords.ALL;
    }

    /** How a drawing is made, whatever it shows. */
    private record Manner(String id, Words words, List<String> flags) {}

    private static Optional<Figure> draw(FigureInput right, FigureInput asCut, Manner how) {
        Drawer drawer = DRAWERS.get(right.kind());
        if (drawer == null || !suits(drawer, right)) {
            return Optional.empty();
        }
        if (asCut == null || !drawer.asCut()) {
            return figure(new Pair(right, null, false), drawer, how);
        }
        if (asCut.kind().equals(right.kind()) && suits(drawer, asCut)) {
            Optional<Figure> both = figure(new Pair(right, asCut, false), drawer, how);
            if (both.isPresent()) {
                return both;
            }
        }
        return figure(new Pair(right, null, true), drawer, how);
    }

    private record Pair(FigureInput right, FigureInput yours, boolean impossible) {}

    private static boolean suits(Drawer drawer, FigureInput input) {
        Values values = new Values(input);
        return values.suits(drawer.arguments()) && drawer.canDraw(values);
    }

    private static Optional<Figure> figure(Pair pair, Drawer drawer, Manner how) {
        Values right = new Values(pair.right()).printing(drawer::prints);
        Values yours = pair.yours() == null ? null : Values.ofAnswer(pair.yours()).printing(drawer::printsOfYours);
        List<Label> extra = pair.impossible() ? List.of(Label.text(how.words().say("cannot.draw.yours"))) : List.of();
        Brief brief = new Brief(right, yours, how.words(), WIDE);
        Optional<Sheet> wide = sheet(brief, drawer, extra, how.flags());
        Optional<Sheet> narrow = wide.isEmpty() ? wide : sheet(new Brief(right, yours, how.words(), NARROW), drawer, extra, how.flags());
        if (narrow.isEmpty()) {
            return Optional.empty();
        }
        Flags flags = flag(how.flags(), wide.get(), narrow.get());
        Telling telling = new Telling(how.words(), flags);
        drawer.tell(brief, telling);
        if (pair.impossible()) {
            telling.say("cannot.draw.yours");
        }
        Text text = new Text(how.id(), drawer.title(brief), telling.text(), flags);
        Optional<String> first = svg(wide.get(), WIDE, "wide", text);
        return first.flatMap(w -> svg(narrow.get(), NARROW, "narrow", text).map(n -> new Figure(w, n, text.title(), text.desc(), flags.names())));
    }

    private record Text(String id, String title, String desc, Flags flags) {}

    /** Sets the flags for which there is room on both sheets. */
    private static Flags flag(List<String> wanted, Sheet wide, Sheet narrow) {
        if (wanted.isEmpty()) {
            return Flags.NONE;
        }
        Map<String, Flag.Spot> here = new Flag(wide, WIDE).places(wanted);
        Map<String, Flag.Spot> there = new Flag(narrow, NARROW).places(wanted);
        List<String> both = wanted.stream().distinct().filter(n -> here.containsKey(n) && there.containsKey(n)).toList();
        for (int i = 0; i < both.size(); i++) {
            new Flag(wide, WIDE).draw(both.get(i), i + 1, here.get(both.get(i)));
            new Flag(narrow, NARROW).draw(both.get(i), i + 1, there.get(both.get(i)));
        }
        return new Flags(both);
    }

    /** The finished sheet, or empty when not all of it is on the page. */
    private static Optional<Sheet> sheet(Brief brief, Drawer drawer, List<Label> extra, List<String> flags) {
        Sheet sheet = roomFor(flags, new Layout(brief, drawer, extra).sheet());
        Box all = sheet.bounds();
        boolean inside = all.left() >= -SLACK && all.right() <= brief.width() + SLACK && all.bottom() < TALLEST;
        return sheet.isFinite() && all.isFinite() && inside ? Optional.of(sheet) : Optional.empty();
    }

    /** A flag is higher than lettering: the topmost dimension needs room for it. */
    private static Sheet roomFor(List<String> flags, Sheet sheet) {
        if (flags.isEmpty()) {
            return sheet;
        }
        Sheet lower = new Sheet();
        lower.add(sheet, 0, FLAG_ROOM);
        return lower;
    }

    private static Optional<String> svg(Sheet sheet, int width, String layout, Text text) {
        int height = (int) Math.ceil(sheet.bounds().bottom() + MARGIN);
        String svg = Svg.write(sheet, width, height, text.id() + "-" + layout, layout, text.title(), text.desc(), text.flags());
        return svg.length() <= MOST_CHARACTERS ? Optional.of(svg) : Optional.empty();
    }
}
