package soapstone.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Given;
import soapstone.exercise.Kept;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.exercise.Template;
import soapstone.expression.Change;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.expression.Program;
import soapstone.expression.ProgramBuilder;
import soapstone.expression.Type;
import soapstone.expression.Value;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Place;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads an exercise for one unit system. */
final class ModelReader {

    private static final Set<String> LINE_KEYS = Set.of("let", "say", "in", "show");
    static final Set<String> METRIC_KEYS =
            Set.of("story", "notes", "given", "ask", "in", "show", "constants", "where", "title");

    private final Yaml.Entries root;
    private final Optional<Yaml.Entries> metric;
    private final UnitSystem system;
    private final Book book;
    private final Issues issues;
    private final Literals literals;
    private final ProgramBuilder builder;
    private final Templates templates;
    private final Map<String, Integer> slots = new HashMap<>();
    private final Map<Integer, Show> shows = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    /** Some line is missing or unknown, for a reason that is told where it is found. */
    private boolean incomplete;
    private boolean tooMany;

    ModelReader(Yaml.Entries root, UnitSystem system, Book book, Issues issues) {
        this.root = root;
        this.metric = system == UnitSystem.METRIC ? root.map("metric") : Optional.empty();
        metric.ifPresent(m -> m.only(METRIC_KEYS));
        this.system = system;
        this.book = book;
        this.issues = issues;
        this.literals = new Literals(issues);
        this.builder = new ProgramBuilder(system, book.bodies(), book.tables());
        this.slots.put("pi", 0);
        this.templates = new Templates(issues, slots);
    }

    Optional<Model> read() {
        List<Model.Constant> constants = constants();
        List<Given> givens = givens();
        List<PendingLine> pending = new ArrayList<>();
        working("working", Line.Phase.WORKING, pending);
        working("after", Line.Phase.AFTER, pending);
        if (tooManyNames()) {
            return Optional.empty();
        }
        metricNames();
        List<Ask> asks = new AskReader(root, metric, system, builder, slots, templates, issues).read();
        List<Slip> slips = new SlipReader(root, book, builder, slots, templates, issues).read();
        pending.forEach(p -> lines.add(new Line(p.slot, p.say == null ? Template.EMPTY : templates.read(p.say), p.phase)));
        List<Model.Rule> where = where();
        List<Model.Consequence> consequence = consequence();
        Optional<Model.FigurePlan> figure = figure(asks);
        Template story = pick("story").map(templates::read).orElse(Template.EMPTY);
        List<Template> notes = notes();
        metricShows();
        if (incomplete || !issues.isEmpty() || hasUnknown()) {
            return Optional.empty();
        }
        // Planned before the program is built: it takes cells of its own.
        Change radians = builder.radians();
        Program program = builder.build();
        Show[] all = new Show[program.slots().size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = shows.getOrDefault(i, Show.AUTO);
        }
        return Optional.of(new Model(system, program, all, story, notes, givens, where, lines, asks, slips, consequence, constants, figure,
                radians, new Kept()));
    }

    /** With more names than can be kept apart, nothing else that is said would be of use. */
    private boolean tooManyNames() {
        if (tooMany) {
            issues.add("name", root.place(), "the exercise has more than " + Program.MOST_NAMES + " names", "Cut it into two exercises");
        }
        return tooMany;
    }

    private boolean isFull() {
        tooMany |= builder.isFull();
        return builder.isFull();
    }

    /** A line that calls a formula with a fault is unknown; the fault is told at the formula. */
    private boolean hasUnknown() {
        return slots.keySet().stream().anyMatch(name -> builder.type(name).map(t -> t.kind() == Type.Kind.UNKNOWN).orElse(false));
    }

    /** What the metric part says of lines has to be of lines that there are. */
    private void metricNames() {
        metric.flatMap(m -> m.has("in") ? m.map("in") : Optional.empty()).ifPresent(m -> m.only(slots.keySet()));
        metric.flatMap(m -> m.has("constants") ? m.map("constants") : Optional.empty())
                .ifPresent(m -> m.only(root.map("constants").map(c -> List.copyOf(c.keys())).orElse(List.of())));
    }

    private record PendingLine(int slot, Text say, Line.Phase phase) {}

    /** A text that the metric part may replace. */
    private Optional<Text> pick(String key) {
        return metric.filter(m -> m.has(key)).isPresent() ? metric.get().text(key) : root.text(key);
    }

    private List<Model.Constant> constants() {
        List<Model.Constant> constants = new ArrayList<>();
        Optional<Yaml.Entries> own = metric.flatMap(m -> m.has("constants") ? m.map("constants") : Optional.empty());
        root.map("constants").ifPresent(all -> all.keys().forEach(name -> {
            Yaml.Entries from = own.filter(o -> o.has(name)).orElse(all);
            List<Quantity> values = new ArrayList<>();
            from.items(name).forEach(v -> v.text().flatMap(literals::amount).ifPresent(values::add));
            boolean alike = values.stream().allMatch(q -> q.unit().dimension().equals(values.get(0).unit().dimension()));
            boolean number = !name.equals("pi") || values.stream().allMatch(q -> q.unit().dimension().isNumber());
            if (!alike || !number) {
                issues.add("constant", all.place(name), "the values of '" + name + "' are not of one kind", "The same constant, as one shop or another takes it");
            }
            if (!values.isEmpty() && alike && number && !isFull()) {
                constants.add(constant(name, values));
            }
        }));
        return constants;
    }

    private Model.Constant constant(String name, List<Quantity> values) {
        if (name.equals("pi")) {
            return new Model.Constant(name, 0, values.stream().mapToDouble(q -> q.base(system)).toArray());
        }
        Quantity first = values.get(0);
        Node node = new Node.Amount(first.amount(), first.unit(), "", 0);
        int slot = declare(name, root.place("constants"), builder.toldLine(name, node, first.unit(), (a, b, c) -> { }));
        lines.add(new Line(slot, Template.EMPTY, Line.Phase.CONSTANT));
        return new Model.Constant(name, slot, values.stream().skip(1).mapToDouble(q -> q.base(system)).toArray());
    }

    private int declare(String name, Place place, int slot) {
        if (slots.putIfAbsent(name, slot) != null) {
            issues.add("name", place, "the name '" + name + "' stands twice", "Every line has a name of its own");
        }
        Names.fault(name).ifPresent(f -> issues.add("name", place, f + ", so it can't be a name", "A word of small letters, such as side_length"));
        return slot;
    }

    private List<Given> givens() {
        List<Given> givens = new ArrayList<>();
        GivenReader reader = new GivenReader(builder, system, book, issues);
        Optional<Yaml.Entries> own = metric.flatMap(m -> m.has("given") ? m.map("given") : Optional.empty());
        Optional<Yaml.Entries> all = root.has("given") ? root.map("given") : Optional.empty();
        if (all.isEmpty()) {
            issues.add("given", root.place(), "the exercise gives nothing", "given: {length: {from: …, to: …, step: …}}");
            return givens;
        }
        own.ifPresent(o -> o.only(all.get().keys()));
        for (String name : all.get().keys()) {
            if (isFull()) {
                break;
            }
            Optional<Yaml.Entries> map = own.filter(o -> o.has(name)).isPresent() ? own.get().map(name) : all.get().map(name);
            if (map.isEmpty()) {
                unknown(name);
            }
            map.ifPresent(m -> {
                Optional<Given> given = reader.read(name, m.only(GivenReader.KEYS));
                if (system == UnitSystem.METRIC && own.filter(o -> o.has(name)).isEmpty()) {
                    given.ifPresent(g -> inInches(name, g, all.get().place(name)));
                }
                int slot = given.map(Given::slot).orElse(-1);
                if (slot >= 0) {
                    declare(name, all.get().place(name), slot);
                    show(slot, m.text("show"), own.filter(o -> o.has(name)).isPresent());
                    lines.add(new Line(slot, Template.EMPTY, Line.Phase.GIVEN));
                    givens.add(convention(m, all.get().map(name)).map(given.get()::under).orElse(given.get()));
                } else {
                    slots.putIfAbsent(name, 0);
                }
            });
        }
        return givens;
    }

    /** In a metric draw the values are other ones, and still follow what the given follows. */
    private static Optional<String> convention(Yaml.Entries map, Optional<Yaml.Entries> base) {
        return map.text("convention").or(() -> base.flatMap(b -> b.text("convention"))).map(Text::value);
    }

    /** A range of lengths in inches would stay one in a metric draw. */
    private void inInches(String name, Given given, Place place) {
        boolean drawn = given.choice() instanceof Given.Range || given.choice() instanceof Given.Pick;
        Unit shown = builder.shown(name).orElse(Units.ONE);
        if (drawn && Set.of(Units.INCH, Units.FOOT, Units.YARD).contains(shown)) {
            issues.add("metric", place, "'" + name + "' has no values for a metric draw: it would stay in " + shown, "metric: {given: {" + name + ": …}}");
        }
    }

    /** A name that is meant, but says nothing: it is known, so that what uses it is not told again. */
    private void unknown(String name) {
        incomplete = true;
        if (!builder.has(name) && !isFull() && Names.fault(name).isEmpty()) {
            slots.putIfAbsent(name, builder.given(name, Type.UNKNOWN, Units.ONE));
        }
    }

    /** How a value prints. In a metric draw, what a US file says of inches does not count. */
    private void show(int slot, Optional<Text> text, boolean ownSystem) {
        text.ifPresent(t -> {
            Optional<Show> show = Show.parse(t.value(), system);
            if (show.isEmpty()) {
                issues.add("show", t.place(), "'" + t.value() + "' does not say how to print", "ft in, fraction, decimal, deg min, or a step such as 0.001 in");
            } else if (system == UnitSystem.US || ownSystem || Literals.asAmount(t).map(q -> !isLength(q.unit())).orElse(false)) {
                shows.put(slot, show.get());
            }
        });
    }

    private static boolean isLength(Unit unit) {
        return unit.dimension().equals(soapstone.quantity.Dimension.LENGTH);
    }

    private void metricShows() {
        metric.flatMap(m -> m.has("show") ? m.map("show") : Optional.empty()).ifPresent(m -> m.keys().forEach(name -> {
            if (slots.containsKey(name)) {
                show(slots.get(name), m.text(name), true);
            } else {
                issues.add("name", m.place(name), "unknown name '" + name + "'", Near.suggest(name, slots.keySet()));
            }
        }));
    }

    private void working(String key, Line.Phase phase, List<PendingLine> pending) {
        Optional<Yaml.Entries> units = metric.flatMap(m -> m.has("in") ? m.map("in") : Optional.empty());
        if (key.equals("working")) {
            if (!root.has(key)) {
                issues.add("working", root.place(), "the exercise has no working", "working: with lines {let: name = expression, say: …}");
            }
        }
        for (Yaml.Value item : root.items(key)) {
            item.map().ifPresent(m -> line(m.only(LINE_KEYS), phase, units, pending));
        }
    }

    private void line(Yaml.Entries map, Line.Phase phase, Optional<Yaml.Entries> units, List<PendingLine> pending) {
        Optional<Text> let = map.need("let");
        Optional<Parser.Assignment> line = let.flatMap(literals::assignment);
        if (line.isEmpty()) {
            unknown(let.map(t -> t.value().split("=", 2)[0].strip()).orElse(""));
        }
        if (line.isEmpty() || isFull()) {
            return;
        }
        String name = line.get().name();
        Optional<Text> unit = units.filter(u -> u.has(name)).isPresent() ? units.get().text(name) : map.text("in");
        Unit shown = unit.flatMap(t -> new GivenReader(builder, system, book, issues).unit(t)).orElse(null);
        int slot = builder.line(name, line.get().value(), shown, (at, found, fits) -> issues.add("expression", let.get().at(at), found, fits));
        declare(name, let.get().place(), slot);
        show(slot, map.text("show"), false);
        pending.add(new PendingLine(slot, map.text("say").orElse(null), phase));
    }

    private List<Model.Rule> where() {
        List<Model.Rule> rules = new ArrayList<>();
        Yaml.Entries from = metric.filter(m -> m.has("where")).orElse(root);
        for (Yaml.Value item : from.items("where")) {
            item.text().ifPresent(t -> condition(t).ifPresent(v -> rules.add(new Model.Rule(v, t.value()))));
        }
        return rules;
    }

    private Optional<Value> condition(Text t) {
        return literals.expression(t).flatMap(n -> builder.condition(n, (at, found, fits) -> issues.add("expression", t.at(at), found, fits)));
    }

    private List<Model.Consequence> consequence() {
        List<Model.Consequence> all = new ArrayList<>();
        for (Yaml.Value item : root.items("consequence")) {
            item.map().ifPresent(m -> {
                m.only(Set.of("if", "say"));
                Optional<Value> when = m.need("if").flatMap(this::condition);
                Optional<Text> say = m.need("say");
                if (when.isPresent() && say.isPresent()) {
                    all.add(new Model.Consequence(when.get(), templates.read(say.get())));
                }
            });
        }
        return all;
    }

    private List<Template> notes() {
        Yaml.Entries from = metric.filter(m -> m.has("notes")).orElse(root);
        return from.items("notes").stream().flatMap(v -> v.text().stream()).map(templates::read).toList();
    }

    private Optional<Model.FigurePlan> figure(List<Ask> asks) {
        if (!root.has("figure")) {
            return Optional.empty();
        }
        return root.map("figure").flatMap(m -> {
            Map<String, Value> with = new LinkedHashMap<>();
            Map<String, String> asked = new LinkedHashMap<>();
            Map<String, Integer> named = new LinkedHashMap<>();
            Map<String, String> texts = new LinkedHashMap<>();
            for (String key : m.keys()) {
                if (!key.equals("kind")) {
                    m.text(key).ifPresent(t -> literals.expression(t).ifPresent(n -> {
                        builder.value(n, (at, found, fits) -> issues.add("expression", t.at(at), found, fits)).ifPresent(v -> with.put(key, v));
                        texts.put(key, t.value());
                        if (n instanceof Node.Name name && slots.containsKey(name.name())) {
                            named.put(key, slots.get(name.name()));
                            asks.stream().filter(a -> a.name().equals(name.name())).findFirst().ifPresent(a -> asked.put(key, a.letter()));
                        }
                    }));
                }
            }
            return m.need("kind").map(k -> new Model.FigurePlan(k.value(), with, asked, named, texts));
        });
    }
}
