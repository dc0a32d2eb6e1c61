package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.exercise.Given;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.expression.Value;
import soapstone.page.Answer;
import soapstone.page.AnswerBox;
import soapstone.page.BenchView;
import soapstone.page.WorkedLine;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.ShopReader;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;
import soapstone.variant.Answers;
import soapstone.variant.Shown;
import soapstone.variant.Writing;

/** The bench: an exercise or a formula worked with the visitor's own numbers. */
final class Benches {

    private static final char POINT = '.';

    private final Library library;
    private final Links links;
    private final String language;

    /** @param language of the words in drawings */
    Benches(Library library, Links links, String language) {
        this.library = library;
        this.links = links;
        this.language = language;
    }

    /** A number to be put in: where it goes, and what may stand there. */
    private record Slot(int index, String name, Unit unit, Type type, List<String> options) {}

    /** What was put in so far. */
    private static final class Filled {
        private final List<AnswerBox> boxes = new ArrayList<>();
        private final Frame frame;
        private long known;
        private boolean complete = true;
        private boolean empty = true;

        Filled(Frame frame) {
            this.frame = frame;
        }
    }

    BenchView exercise(Exercise exercise, UnitSystem system, Map<String, String> typed) {
        Model model = exercise.model(system);
        Program program = model.program();
        List<Slot> inputs = inputs(model);
        Filled filled = fill(program, inputs, typed);
        settle(model, filled);
        List<Message> limits = new ArrayList<>();
        List<WorkedLine> worked = List.of();
        List<BenchView.Result> results = new ArrayList<>();
        Optional<soapstone.page.Figure> figure = Optional.empty();
        if (filled.complete) {
            long known = program.runKnown(filled.frame, filled.known);
            if (model.asks().stream().allMatch(a -> (known & 1L << a.slot()) != 0 && Answers.isDefined(a, filled.frame))) {
                model.asks().forEach(a -> results.add(result(model, filled.frame, a)));
                figure = Drawings.in(language).told(model, filled.frame);
                worked = new Lines(library, model).pointingAt(figure).right(filled.frame);
                heed(model, filled.frame, known, limits);
            } else {
                limits.add(Message.of("bench.no-result", filled.frame.problem() == null ? "" : filled.frame.problem()));
            }
        }
        return new BenchView(links.reference(exercise), task(model.story(), inputs), system, notes(model, inputs), links.cautions(exercise.cautions()),
                filled.boxes, limits, worked, results, figure);
    }

    private static void settle(Model model, Filled filled) {
        for (Given given : model.givens()) {
            if (!Double.isNaN(given.settled())) {
                filled.frame.set(given.slot(), given.settled());
                filled.known |= 1L << given.slot();
            }
        }
    }

    /** The task with the letters of the boxes in the places of their numbers, so that each box is known by its place in it. */
    private static String task(Template template, List<Slot> inputs) {
        StringBuilder text = new StringBuilder();
        for (Template.Part part : template.parts()) {
            text.append(part.isText() ? part.text() : place(part.slot(), inputs));
        }
        return text.toString();
    }

    private static String place(int slot, List<Slot> inputs) {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).index() == slot) {
                return "(" + letter(i) + ")";
            }
        }
        return "…";
    }

    /** The conventions; one that tells of a number which is not asked for here has nothing to say. */
    private static List<String> notes(Model model, List<Slot> inputs) {
        return model.notes().stream().map(n -> task(n, inputs)).filter(n -> !n.contains("…")).toList();
    }

    private static String plain(Template template) {
        return task(template, List.of());
    }

    /**
     * The givens that something is worked from, but those that are worked out from other ones put in. A given that is
     * worked out from hidden ones, such as a length from a pitch that came out even, is put in like any other; so is a
     * hidden one that only the drawing would show.
     */
    private static List<Slot> inputs(Model model) {
        Program program = model.program();
        long derivable = 1;
        for (Line line : model.lines()) {
            derivable |= line.phase() == Line.Phase.CONSTANT ? 1L << line.slot() : 0;
        }
        List<Given> free = new ArrayList<>();
        for (Given given : model.givens()) {
            boolean derived = !Double.isNaN(given.settled()) || given.choice() instanceof Given.Derived && (program.reads(given.slot()) & ~derivable) == 0;
            derivable |= derived || !given.hidden() ? 1L << given.slot() : 0;
            if (!derived) {
                free.add(given);
            }
        }
        long used = used(model, free);
        return free.stream().filter(g -> (used & 1L << g.slot()) != 0).map(g -> slot(program, g)).toList();
    }

    /** All slots that answers, drawing and conditions are worked from, down to the numbers that are put in. */
    private static long used(Model model, List<Given> free) {
        long put = free.stream().mapToLong(g -> 1L << g.slot()).reduce(0, (x, y) -> x | y);
        long used = 0;
        for (Ask ask : model.asks()) {
            used |= 1L << ask.slot() | (ask.second() < 0 ? 0 : 1L << ask.second());
        }
        used |= model.where().stream().mapToLong(r -> r.condition().reads()).reduce(0, (x, y) -> x | y);
        used |= model.figure().map(f -> f.with().values().stream().mapToLong(Value::reads).reduce(0, (x, y) -> x | y)).orElse(0L);
        for (int slot = model.program().slots().size() - 1; slot >= 0; slot--) {
            boolean through = (used & 1L << slot) != 0 && (put & 1L << slot) == 0;
            used |= through ? model.program().reads(slot) : 0;
        }
        return used;
    }

    private static Slot slot(Program program, Given given) {
        Program.Slot s = program.slot(given.slot());
        List<String> options = new ArrayList<>();
        if (s.type().isLabel() && given.choice() instanceof Given.Pick pick) {
            for (double label : pick.values()) {
                options.add(program.labels().text(label));
            }
        }
        return new Slot(s.index(), s.name(), s.shown(), s.type(), options);
    }

    private Filled fill(Program program, List<Slot> inputs, Map<String, String> typed) {
        Filled filled = new Filled(program.frame());
        for (int i = 0; i < inputs.size(); i++) {
            String letter = letter(i);
            fill(program, inputs.get(i), letter, typed.getOrDefault(letter, ""), !typed.isEmpty(), filled);
        }
        return filled;
    }

    /** a … z, then aa, ab …: an exercise has few givens, but a bank is free. */
    private static String letter(int i) {
        return (i >= 26 ? String.valueOf((char) ('a' + i / 26 - 1)) : "") + (char) ('a' + i % 26);
    }

    private void fill(Program program, Slot slot, String letter, String text, boolean asked, Filled filled) {
        filled.empty &= text.isBlank();
        if (slot.type().isLabel()) {
            int label = program.labels().find(text.strip());
            boolean ok = slot.options().contains(text.strip());
            Answer answer = ok ? Answer.read(text, text) : asked ? Answer.marked(text, Answer.State.BLANK, "") : Answer.empty();
            filled.boxes.add(new AnswerBox(letter, AnswerBox.Kind.CHOICE, words(slot), "", "", "", "",
                    slot.options().stream().map(o -> new AnswerBox.Option(o, o)).toList(), answer));
            put(slot, ok ? new double[] {label} : null, filled);
            return;
        }
        ReadAs as = new ReadAs(slot.type().isList() ? ReadAs.Kind.LIST : ReadAs.Kind.QUANTITY, slot.unit(), program.system(), POINT);
        Reading reading = ShopReader.read(text, as);
        Answer answer = reading instanceof Reading.Again again ? Answer.askedAgain(text, again.why())
                : reading instanceof Reading.Blank ? asked ? Answer.marked(text, Answer.State.BLANK, "") : Answer.empty()
                : Answer.read(text, Boxes.understood(reading));
        filled.boxes.add(new AnswerBox(letter, slot.type().isList() ? AnswerBox.Kind.LIST : AnswerBox.Kind.QUANTITY, words(slot), "", "",
                slot.unit().symbol(), Ways.shorthand(as), List.of(), answer));
        put(slot, reading instanceof Reading.One one ? new double[] {one.base()}
                : reading instanceof Reading.Many many ? many.items().stream().mapToDouble(Reading.One::base).toArray() : null, filled);
    }

    private static void put(Slot slot, double[] values, Filled filled) {
        if (values == null) {
            filled.complete = false;
            return;
        }
        if (slot.type().isList()) {
            filled.frame.set(slot.index(), values);
        } else {
            filled.frame.set(slot.index(), values[0]);
        }
        filled.known |= 1L << slot.index();
    }

    private static String words(Slot slot) {
        String words = slot.name().replace('_', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static BenchView.Result result(Model model, Frame f, Ask ask) {
        boolean onMark = !ask.isNumber() || ask.to() == 0 || soapstone.quantity.Rounding.isOn(f.number(ask.slot()), ask.to());
        String exact = onMark ? "" : ShopPrinter.text(f.number(ask.slot()), ask.unit(), model.system(), Show.decimal(0), POINT);
        return new BenchView.Result(Shown.text(model, ask.prompt(), f, f), Boxes.answer(model, f, ask), exact);
    }

    /** What a fair task would have kept to, and these numbers do not. */
    private static void heed(Model model, Frame f, long known, List<Message> limits) {
        for (Model.Rule rule : model.where()) {
            if ((rule.condition().reads() & ~known) == 0 && !rule.condition().holds(f)) {
                limits.add(Message.of("bench.heed", written(Shown.condition(model, rule), model.system())));
            }
        }
    }

    private static String written(String condition, UnitSystem system) {
        try {
            return Writing.symbolic(soapstone.expression.Parser.expression(condition), system);
        } catch (soapstone.expression.Parser.Fault e) {
            return condition;
        }
    }

    BenchView formula(Formula formula, UnitSystem system, Map<String, String> typed) {
        Program program = formula.program(system);
        List<Slot> inputs = new ArrayList<>();
        for (var takes : formula.body().takes()) {
            Program.Slot s = program.slot(program.find(takes.name()));
            inputs.add(new Slot(s.index(), s.name(), s.shown(), s.type(), labels(formula, s)));
        }
        Filled filled = fill(program, inputs, typed);
        List<Message> limits = new ArrayList<>();
        List<WorkedLine> worked = new ArrayList<>();
        List<BenchView.Result> results = new ArrayList<>();
        if (filled.complete) {
            work(formula, program, filled, limits, worked, results);
        }
        List<String> cautions = formula.caution().isEmpty() ? List.of() : List.of(formula.caution());
        return new BenchView(links.formula(formula.name()), formula.says(), system, List.of(), links.cautions(cautions), filled.boxes, limits,
                worked, results, Optional.empty());
    }

    /** A label that a formula takes is one that it compares with, or else the column or row of a table: any that the tables know. */
    private List<String> labels(Formula formula, Program.Slot slot) {
        if (!slot.type().isLabel()) {
            return List.of();
        }
        Set<String> compared = new LinkedHashSet<>();
        formula.body().lines().forEach(line -> compared(line.value(), slot.name(), compared));
        if (!compared.isEmpty()) {
            return List.copyOf(compared);
        }
        return library.tablesOf(formula).stream().map(library.bank().tables()::get)
                .flatMap(t -> t.keyUnit() == null ? t.labels().stream() : t.columns().stream()).distinct().toList();
    }

    private static void compared(Node node, String name, Set<String> found) {
        if (node instanceof Node.Pair pair) {
            if (pair.left() instanceof Node.Name n && n.name().equals(name) && pair.right() instanceof Node.Label label) {
                found.add(label.text());
            }
            compared(pair.left(), name, found);
            compared(pair.right(), name, found);
        } else if (node instanceof Node.Sign sign) {
            compared(sign.of(), name, found);
        } else if (node instanceof Node.Call call) {
            call.with().forEach(w -> compared(w, name, found));
        }
    }

    private void work(Formula formula, Program program, Filled filled, List<Message> limits, List<WorkedLine> worked, List<BenchView.Result> results) {
        program.runKnown(filled.frame, filled.known);
        for (int i = 0; i < formula.limits().size(); i++) {
            if (!formula.limits(program.system()).get(i).holds(filled.frame)) {
                limits.add(Message.of("bench.limit", written(formula.limits().get(i).text(), program.system())));
            }
        }
        String last = formula.body().lines().get(formula.body().lines().size() - 1).name();
        double value = filled.frame.number(program.find(last));
        if (!limits.isEmpty() || !Double.isFinite(value)) {
            if (limits.isEmpty()) {
                limits.add(Message.of("bench.no-result", filled.frame.problem() == null ? "" : filled.frame.problem()));
            }
            return;
        }
        Program.Slot slot = program.slot(program.find(last));
        results.add(new BenchView.Result(formula.says(), ShopPrinter.text(value, slot.shown(), program.system(), Show.AUTO, POINT), ""));
        for (int i = 0; i < formula.body().lines().size(); i++) {
            worked.add(line(formula, program, filled.frame, i));
        }
    }

    private WorkedLine line(Formula formula, Program program, Frame f, int i) {
        var line = formula.body().lines().get(i);
        Program.Slot slot = program.slot(program.find(line.name()));
        // A name without a slot counts through a row.
        Writing numbers = new Writing(n -> program.find(n) < 0 ? n : Shown.value(program, f, program.find(n), Show.AUTO),
                n -> program.find(n) < 0 ? null : program.slot(program.find(n)).shown(), library.bodies(), program.system());
        String result = Shown.value(program, f, slot.index(), Show.AUTO);
        String name = line.name().equals("result") ? formula.symbol().isEmpty() ? "result" : formula.symbol() : line.name().replace('_', ' ');
        return new WorkedLine(formula.steps().get(i), new WorkedLine.Side(name, Writing.symbolic(line.value(), program.system()),
                numbers.write(line.value(), slot.shown()), result), Optional.empty());
    }
}
