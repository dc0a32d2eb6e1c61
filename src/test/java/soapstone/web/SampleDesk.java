package soapstone.web;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import soapstone.exercise.Convention;
import soapstone.page.AboutView;
import soapstone.page.Answer;
import soapstone.page.Answer.Own;
import soapstone.page.Answer.State;
import soapstone.page.AnswerBox;
import soapstone.page.AnswerBox.Kind;
import soapstone.page.AnswersView;
import soapstone.page.AsCut;
import soapstone.page.BenchView;
import soapstone.page.Caution;
import soapstone.page.CheckRow;
import soapstone.page.CheckSource;
import soapstone.page.CourseUnit;
import soapstone.page.ExerciseLink;
import soapstone.page.Explanation;
import soapstone.page.Feedback;
import soapstone.page.FigureKindLink;
import soapstone.page.FigureKindView;
import soapstone.page.FormulaTopic;
import soapstone.page.FormulaView;
import soapstone.page.FrontView;
import soapstone.page.Html;
import soapstone.page.LessonLink;
import soapstone.page.LessonView;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.page.SheetView.Stage;
import soapstone.page.TableView;
import soapstone.page.UnitSummary;
import soapstone.page.UnitView;
import soapstone.page.Words;
import soapstone.page.WorkedLine;
import soapstone.page.WorkedLine.Side;
import soapstone.page.WorkedLine.Yours;
import soapstone.quantity.UnitSystem;
import soapstone.school.ClassSettings;
import soapstone.source.Message;

/**
 * A desk with invented content for the tests of the pages: one exercise that is marked in full, one with a caution and a
 * choice, and one that shows every state of a box at once. It knows a handful of answers by heart.
 */
class SampleDesk implements Desk {

    static final String FINGERPRINT = "3f9a21c4";
    static final ExerciseLink BOLT_HOLES = new ExerciseLink("spacing", "bolt-holes", "Bolt holes along an angle", 1, "Equal spacing");
    static final ExerciseLink PUMP_LID = new ExerciseLink("pressure", "pump-lid", "Lid of the pump box", 3, "Force on a lid");
    static final ExerciseLink EVERY_STATE = new ExerciseLink("spacing", "every-state",
            "A long name for an exercise that shows every state in which a box can be after it was read and marked", 4, "Equal spacing");
    static final Reference SPACING = Reference.unit("spacing", "Equal spacing");
    static final Reference PRESSURE = Reference.unit("pressure", "Water and pressure");
    static final Reference FENCE_POST = Reference.lesson("holes-and-spaces", "Holes and spaces");
    static final Caution LID = new Caution("pressure", "pressure",
            "The numbers are for learning. A real vessel follows the local code and is checked by licensed people. Never test one with air.");
    static final Message MILLIMETERS = Message.of("beside.mark.right-but-unit", "mm", "in");

    private static final Map<String, Answer> KNOWN = new LinkedHashMap<>();

    static {
        KNOWN.put("4 1/4", Answer.read("4 1/4", "4 1/4 in"));
        KNOWN.put("4-1/4\"", Answer.read("4-1/4\"", "4 1/4 in"));
        KNOWN.put("3-3/4\"", Answer.read("3-3/4\"", "3 3/4 in"));
        KNOWN.put("22 1/2", Answer.read("22 1/2", "22 1/2 in"));
        KNOWN.put("20", Answer.read("20", "20 in"));
        KNOWN.put("108 mm", Answer.read("108 mm", "108 mm"));
        KNOWN.put("more", Answer.read("more", "More than 500 lb"));
        KNOWN.put("3 15", Answer.askedAgain("3 15", Message.of("verbatim", "There are two ways to read 3 15: 3 15/16, or 315.")));
        KNOWN.put("<script>alert(1)</script>", Answer.askedAgain("<script>alert(1)</script>",
                Message.of("verbatim", "There is no number in <script>alert(1)</script>.")));
    }

    /** All drawings are English. */
    @Override
    public Desk in(String language) {
        return this;
    }

    @Override
    public FrontView front() {
        return new FrontView(BOLT_HOLES, Optional.of(SampleFigures.holeRow(Optional.empty())), units());
    }

    /** The pages of a school are tried with the real bank. */
    @Override
    public WorkDesk work() {
        return null;
    }

    /** A sample shop that settles nothing. */
    @Override
    public ShopDesk shop() {
        return new ShopDesk() {
            @Override
            public List<Convention> conventions() {
                return List.of();
            }

            @Override
            public List<Refused> refused(Collection<String> exercises, ClassSettings settings) {
                return List.of();
            }

            @Override
            public Optional<SheetView> trial(String exercise, ClassSettings settings, long seed) {
                String[] id = exercise.split("/", 2);
                return sheet(id[0], id[1], new SheetKey(seed, settings.units(), ""));
            }
        };
    }

    @Override
    public List<UnitSummary> units() {
        return List.of(
                new UnitSummary("spacing", "Equal spacing", "Holes, pickets, posts: count the spaces, not the things.", 1, 2),
                new UnitSummary("pressure", "Water and pressure", "", 0, 1));
    }

    @Override
    public Optional<UnitView> unit(String unit) {
        return switch (unit) {
            case "spacing" -> Optional.of(new UnitView("spacing", "Equal spacing", "Holes, pickets, posts.",
                    List.of("Count spaces", "Equal spacing"), List.of(), List.of(lessonLink()), List.of(BOLT_HOLES, EVERY_STATE), List.of(),
                    Optional.of(PRESSURE)));
            case "pressure" -> Optional.of(new UnitView("pressure", "Water and pressure", "", List.of("Force on a lid"), List.of(SPACING),
                    List.of(), List.of(PUMP_LID), List.of(LID), Optional.empty()));
            default -> Optional.empty();
        };
    }

    private static LessonLink lessonLink() {
        return new LessonLink("holes-and-spaces", "Holes and spaces", "The fence-post idea on your fingers.");
    }

    private static Optional<ExerciseLink> exercise(String unit, String id) {
        return List.of(BOLT_HOLES, PUMP_LID, EVERY_STATE).stream().filter(e -> e.unit().equals(unit) && e.id().equals(id)).findFirst();
    }

    @Override
    public Optional<String> fingerprint(String unit, String id, UnitSystem units) {
        return exercise(unit, id).map(e -> FINGERPRINT);
    }

    @Override
    public Optional<SheetView> sheet(String unit, String id, SheetKey key) {
        if (key.seed() == 13) {
            throw new NoDraw("seed 13 is kept for this");
        }
        return exercise(unit, id).map(e -> sheet(e, key, Stage.ASKED, empty(e), Optional.empty()));
    }

    @Override
    public Optional<SheetView> read(String unit, String id, SheetKey key, Map<String, String> typed) {
        return exercise(unit, id).map(e -> sheet(e, key, Stage.READ, readBack(e, typed), Optional.empty()));
    }

    @Override
    public Optional<SheetView> mark(String unit, String id, SheetKey key, Map<String, String> typed) {
        return exercise(unit, id).map(e -> {
            List<AnswerBox> read = readBack(e, typed);
            boolean doubtful = read.stream().anyMatch(b -> !b.answer().isReadable());
            return doubtful ? sheet(e, key, Stage.READ, read, Optional.empty()) : marked(e, key, read);
        });
    }

    private static SheetView sheet(ExerciseLink e, SheetKey key, Stage stage, List<AnswerBox> boxes, Optional<Feedback> feedback) {
        boolean lid = e.equals(PUMP_LID);
        boolean changed = !key.fingerprint().isEmpty() && !key.fingerprint().equals(FINGERPRINT);
        return new SheetView(e, lid ? PRESSURE : SPACING, new SheetKey(key.seed(), key.units(), FINGERPRINT), changed, stage,
                lid ? "The lid of the pump box is 14 in across and sits 6 ft under the water of the rain tank. How hard does the water press on it?"
                        : "A 36 1/2 in length of angle gets 9 bolt holes on one line. The first and the last are centered 1 1/4 in from the ends.",
                List.of("Holes are 9/16 in.", "Mark all of them from the left end."), List.of(), lid ? List.of(LID) : List.of(),
                lid ? Optional.empty() : Optional.of(SampleFigures.holeRow(Optional.empty())), boxes,
                List.of(new CheckSource(CheckSource.Kind.SEEN, "Sample handbook, section 4"), new CheckSource(CheckSource.Kind.OWN, "")), feedback);
    }

    private static AnswerBox box(String letter, Kind kind, String prompt, String to, String within, String unit, Answer answer) {
        return new AnswerBox(letter, kind, prompt, to, within, unit, "quantity:in", List.of(), answer);
    }

    private static List<AnswerBox> empty(ExerciseLink e) {
        if (e.equals(PUMP_LID)) {
            return List.of(choice(Answer.empty()), box("b", Kind.LIST, "Force on each of its four bolts", "1 lb", "0.5 lb", "lb", Answer.empty()));
        }
        if (e.equals(EVERY_STATE)) {
            return IntStream.range(0, State.values().length).mapToObj(i -> box(String.valueOf((char) ('a' + i)), Kind.QUANTITY,
                    "Center-to-center spacing", "1/16 in", i == 2 ? "1/64 in" : "1/32 in", "in", Answer.empty())).toList();
        }
        return List.of(
                box("a", Kind.QUANTITY, "Center-to-center spacing", "1/16 in", "1/32 in", "in", Answer.empty()),
                box("b", Kind.QUANTITY, "Center of hole 6 from the left end", "1/16 in", "1/32 in", "in", Answer.empty()));
    }

    private static AnswerBox choice(Answer answer) {
        return new AnswerBox("a", Kind.CHOICE, "About how hard?", "", "", "", "choice:less,about,more",
                List.of(new AnswerBox.Option("less", "Less than 300 lb"), new AnswerBox.Option("about", "About 400 lb"),
                        new AnswerBox.Option("more", "More than 500 lb")), answer);
    }

    private static AnswerBox with(AnswerBox box, Answer answer) {
        return new AnswerBox(box.letter(), box.kind(), box.prompt(), box.to(), box.within(), box.unit(), box.reads(), box.options(), answer);
    }

    private static List<AnswerBox> readBack(ExerciseLink e, Map<String, String> typed) {
        return empty(e).stream().map(b -> with(b, reading(typed.getOrDefault(b.letter(), "")))).toList();
    }

    private static Answer reading(String typed) {
        if (typed.isBlank()) {
            return Answer.marked(typed, State.BLANK, "");
        }
        Answer known = KNOWN.get(typed);
        return known != null ? known : Answer.read(typed, typed + " in");
    }

    private static SheetView marked(ExerciseLink e, SheetKey key, List<AnswerBox> read) {
        if (e.equals(EVERY_STATE)) {
            List<AnswerBox> boxes = new ArrayList<>();
            for (int i = 0; i < read.size(); i++) {
                boxes.add(with(read.get(i), inState(State.values()[i])));
            }
            return sheet(e, key, Stage.MARKED, boxes, Optional.of(feedback(boxes)));
        }
        List<AnswerBox> boxes = read.stream().map(b -> with(b, verdict(b))).toList();
        return sheet(e, key, Stage.MARKED, boxes, Optional.of(feedback(boxes)));
    }

    private static Answer verdict(AnswerBox box) {
        Answer a = box.answer();
        return switch (a.typed()) {
            case "4 1/4", "4-1/4\"", "22 1/2", "more" -> Answer.marked(a.typed(), State.RIGHT, a.readAs());
            case "3-3/4\"" -> Answer.slip(a.typed(), a.readAs(), "holes counted as spaces");
            case "20" -> Answer.carried(a.typed(), a.readAs(), new Own("a", "3 3/4 in"));
            case "" -> a;
            default -> Answer.marked(a.typed(), State.UNEXPLAINED, a.readAs());
        };
    }

    static Answer inState(State state) {
        return switch (state) {
            case EMPTY -> Answer.empty();
            case READ -> Answer.read("4-1/4\"", "4 1/4 in");
            case ASKED_AGAIN -> KNOWN.get("3 15");
            case RIGHT -> Answer.marked("4.25", state, "4.25 in");
            case RIGHT_BUT -> Answer.marked("108 mm", state, "108 mm", MILLIMETERS);
            case CARRIED -> Answer.carried("20", "20 in", new Own("a", "3 3/4 in"));
            case NEAR -> Answer.marked("4 5/16", state, "4 5/16 in", Message.of("beside.mark.near", "1/16 in", "1/32 in"));
            case SLIP -> Answer.slip("3-3/4\"", "3 3/4 in", "holes counted as spaces", "one end left in");
            case UNEXPLAINED, NOT_RIGHT -> Answer.marked("6 1/8", state, "6 1/8 in");
            case BLANK -> Answer.marked("", state, "");
        };
    }

    private static Feedback feedback(List<AnswerBox> boxes) {
        List<State> good = List.of(State.RIGHT, State.RIGHT_BUT, State.CARRIED);
        int right = (int) boxes.stream().filter(b -> good.contains(b.answer().state())).count();
        boolean slip = boxes.stream().anyMatch(b -> b.answer().state() == State.SLIP);
        if (!slip) {
            return new Feedback(right, boxes.size(), List.of(), Optional.empty(), Optional.empty(), worked(false), List.of());
        }
        Explanation fence = new Explanation(List.of("a"), Words.verbatim("Holes counted as spaces"),
                List.of(Words.verbatim("This answer fits sharing the span out over the 9 holes. Between 9 holes there are 8 spaces: each space has a hole at both of its ends.")),
                Optional.of(FENCE_POST));
        return new Feedback(right, boxes.size(), List.of(fence), Optional.of(new AsCut(Optional.of(SampleFigures.holeRow(Optional.of(3.75))),
                List.of(Words.verbatim("The last hole would land at 31 1/4 in. It belongs at 35 1/4 in: 4 in short.")))), Optional.empty(),
                worked(true), List.of(FENCE_POST, Reference.formula("spacing_pitch", "spacing pitch")));
    }

    private static List<WorkedLine> worked(boolean slip) {
        return List.of(
                line("Take the edge distance off both ends.", new Side("span", "length − 2 × edge", "36 1/2 − 2 × 1 1/4", "34 in"), slip,
                        WorkedLine.Kind.SAME, new Side("span", "", "", "34 in")),
                line("Count the spaces between the holes: one fewer than the holes.", new Side("spaces", "holes − 1", "9 − 1", "8"), slip,
                        WorkedLine.Kind.SLIP, new Side("spaces", "holes", "", "9")),
                line("Share the span out over the spaces.", new Side("pitch", "span ÷ spaces", "34 ÷ 8", "4 1/4 in"), slip,
                        WorkedLine.Kind.CARRIED, new Side("pitch", "span ÷ spaces", "34 ÷ 9", "3.778 in, to 1/16: 3 3/4 in")));
    }

    private static WorkedLine line(String says, Side right, boolean slip, WorkedLine.Kind kind, Side yours) {
        return new WorkedLine(says, right, slip ? Optional.of(new Yours(kind, yours)) : Optional.empty());
    }

    @Override
    public Optional<Answer> reading(String reads, String typed) {
        boolean known = reads.startsWith("quantity:") || reads.startsWith("choice:");
        return known ? Optional.of(typed.isBlank() ? Answer.empty() : reading(typed)) : Optional.empty();
    }

    @Override
    public List<CourseUnit> lessons() {
        return List.of(new CourseUnit(SPACING, List.of(lessonLink())));
    }

    @Override
    public Optional<LessonView> lesson(String id) {
        String body = "<h2>On your fingers</h2><p>Hold up a hand: five fingers, four gaps. <code>spaces = holes − 1</code></p>"
                + SampleFigures.holeRow(Optional.empty()).narrow().markup();
        return id.equals("holes-and-spaces")
                ? Optional.of(new LessonView(id, "Holes and spaces", SPACING, 10, List.of(LessonView.Part.of(new Html(body))), List.of(BOLT_HOLES), Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    @Override
    public List<FormulaTopic> formulas() {
        return List.of(new FormulaTopic("Bends", List.of(
                new FormulaTopic.FormulaLink("bend_allowance", "BA", "Length of the neutral line round the bend"))));
    }

    @Override
    public Optional<FormulaView> formula(String name) {
        if (!name.equals("bend_allowance")) {
            return Optional.empty();
        }
        CheckSource source = new CheckSource(CheckSource.Kind.SEEN, "Sample handbook, table 7");
        return Optional.of(new FormulaView(name, "Length of the neutral line round the bend", "BA",
                List.of(new FormulaView.Takes("angle", "angle"), new FormulaView.Takes("radius", "length"), new FormulaView.Takes("thickness", "length"),
                        new FormulaView.Takes("k", "number")), "length",
                List.of(new FormulaView.Line("", "arc(radius + k × thickness, angle)", "")), List.of("angle > 0°", "angle ≤ 180°", "radius ≥ 0 in"),
                "common practice, no source", List.of(),
                List.of(new FormulaView.Slip("Inside radius in place of the neutral line", "arc(radius, angle)", "The metal is longest outside.", List.of(FENCE_POST))),
                List.of(new CheckRow("angle 90°, radius 0.16 in, thickness 0.04 in, k 0.5", "0.2827 in", "0.0001 in", "0.28274 in", CheckRow.Outcome.AGREES, source, ""),
                        new CheckRow("angle 90°, radius 1/8 in", "0.2500 in", "", "0.1963 in", CheckRow.Outcome.MISPRINT, source, "The print has the wrong row.")),
                List.of(BOLT_HOLES), List.of(Reference.table("gauge", "Sheet gauges"))));
    }

    @Override
    public Optional<BenchView> bench(String unit, String id, UnitSystem units, Map<String, String> typed) {
        return exercise(unit, id).map(e -> bench(Reference.exercise(unit, id, e.title()), e.equals(PUMP_LID) ? List.of(LID) : List.of(), units, typed));
    }

    @Override
    public Optional<BenchView> formulaBench(String name, UnitSystem units, Map<String, String> typed) {
        return formula(name).map(f -> bench(Reference.formula(name, name), List.of(), units, typed));
    }

    private static BenchView bench(Reference of, List<Caution> cautions, UnitSystem units, Map<String, String> typed) {
        List<AnswerBox> boxes = List.of(
                box("a", Kind.QUANTITY, "Length of the angle", "", "", units == UnitSystem.US ? "in" : "mm", Answer.empty()),
                box("b", Kind.COUNT, "Number of holes", "", "", "", Answer.empty()));
        if (typed.isEmpty()) {
            return new BenchView(of, "Spacing of holes on one line.", units, List.of("Edge distance 1 1/4 in."), cautions, boxes, List.of(), List.of(),
                    List.of(), Optional.empty());
        }
        List<AnswerBox> read = boxes.stream().map(b -> with(b, reading(typed.getOrDefault(b.letter(), "")))).toList();
        boolean over = "1".equals(typed.get("b"));
        return new BenchView(of, "Spacing of holes on one line.", units, List.of("Edge distance 1 1/4 in."), cautions, read,
                over ? List.of(Words.verbatim("There must be at least 2 holes.")) : List.of(), over ? List.of() : worked(false),
                over ? List.of() : List.of(new BenchView.Result("Center-to-center spacing", "4 1/4 in", "4.2497 in")),
                over ? Optional.empty() : Optional.of(SampleFigures.holeRow(Optional.empty())));
    }

    @Override
    public List<Reference> tables() {
        return List.of(Reference.table("gauge", "Sheet gauges"));
    }

    @Override
    public Optional<TableView> table(String name) {
        List<List<String>> rows = IntStream.range(3, 43)
                .mapToObj(n -> List.of(String.valueOf(n), "0." + (2000 - 40 * n), n % 5 == 0 ? "" : "0." + (2100 - 40 * n), "0.05", "0.06", "0.07")).toList();
        return name.equals("gauge")
                ? Optional.of(new TableView(name, "Sheet gauges", "Invented for the tests", List.of("A gauge number is a name."),
                        List.of("Number", "Carbon [in]", "Galvanized [in]", "Stainless [in]", "Aluminum [in]", "Copper [in]"), rows,
                        List.of(SPACING)))
                : Optional.empty();
    }

    private static FigureKindLink holeRow() {
        return new FigureKindLink("hole-row", "Row of holes", true, 1);
    }

    @Override
    public List<FigureKindLink> figureKinds() {
        return List.of(holeRow());
    }

    @Override
    public Optional<FigureKindView> figureKind(String name) {
        return Optional.of(new FigureKindView(holeRow(), List.of(new FigureKindView.Argument("pitch", Message.of("dimension.length"), false, false)),
                List.of(new FigureKindView.Use(BOLT_HOLES, "figure: {kind: hole-row, pitch: pitch}")), 1,
                List.of(new FigureKindView.Sample(FigureKindView.Which.SMALLEST, BOLT_HOLES, UnitSystem.US, "", SampleFigures.holeRow(Optional.empty())))))
                .filter(k -> name.equals("hole-row"));
    }

    @Override
    public List<Caution> cautions() {
        return List.of(LID, new Caution("press", "press brake", "A press brake is run only by people trained on it."));
    }

    @Override
    public AnswersView answers() {
        return new AnswersView(
                List.of(new AnswersView.Group(Words.verbatim("Lengths"), List.of(
                        new AnswersView.Example("41 3/8", Answer.read("41 3/8", "41 3/8 in")),
                        new AnswersView.Example("3' 5-3/8\"", Answer.read("3' 5-3/8\"", "41 3/8 in")),
                        new AnswersView.Example("3 15", KNOWN.get("3 15"))))),
                List.of(new AnswersView.Way("quantity:in", Words.verbatim("A length in inches"), "in"),
                        new AnswersView.Way("quantity:mm", Words.verbatim("A length in millimeters"), "mm")),
                Optional.empty());
    }

    @Override
    public AboutView about() {
        return new AboutView("0.1.0", 2, 1, 3, 1, 2);
    }

    @Override
    public PaperDesk paper() {
        return null;
    }

    @Override
    public MarksDesk marks() {
        return new SampleMarks();
    }

    @Override
    public List<Reference> contents() {
        List<Reference> all = new ArrayList<>(List.of(SPACING, PRESSURE, FENCE_POST, Reference.formula("bend_allowance", "bend allowance"),
                Reference.table("gauge", "Sheet gauges"), Reference.caution("pressure", "pressure")));
        List.of(BOLT_HOLES, PUMP_LID, EVERY_STATE).forEach(e -> all.add(Reference.exercise(e.unit(), e.id(), e.title())));
        return all;
    }
}
