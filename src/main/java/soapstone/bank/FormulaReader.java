package soapstone.bank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;
import soapstone.expression.Calls;
import soapstone.expression.FormulaBody;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.expression.ProgramBuilder;
import soapstone.expression.Type;
import soapstone.expression.Value;
import soapstone.quantity.Dimension;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads the formula book. First all bodies, so that formulas can call each other; then each is planned and checked. */
final class FormulaReader {

    private static final String RULE = "formula";
    private static final String RESULT = "result";
    private static final Set<String> KEYS = Set.of("says", "symbol", "takes", "gives", "is", "working", "limits", "source",
            "slips", "checks", "caution");
    private static final Set<String> SLIP_KEYS = Set.of("name", "family", "when", "is", "swap", "say");

    private final Issues issues;
    private final Literals literals;
    private final BankFiles files;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();
    /** Formulas with a fault of their own: whoever calls them is not told again. */
    private final Set<String> broken = new HashSet<>();
    private final Set<String> begun = new HashSet<>();

    /** A formula between its two readings. */
    private record Draft(String topic, Yaml.Entries map, FormulaBody body, List<String> dims, List<String> written,
            List<String> steps, Map<String, Text> texts) {}

    FormulaReader(Issues issues, BankFiles files) {
        this.issues = issues;
        this.literals = new Literals(issues);
        this.files = files;
    }

    /** First reading of a file of the book. */
    void collect(String topic, Yaml.Entries file) {
        for (String name : file.keys()) {
            file.map(name).ifPresent(map -> draft(topic, name, map.only(KEYS), file));
        }
    }

    private void draft(String topic, String name, Yaml.Entries map, Yaml.Entries file) {
        if (drafts.containsKey(name)) {
            issues.add(RULE, file.place(name), "the formula '" + name + "' stands twice in the book", "Keep one");
            return;
        }
        Optional<String> fault = Names.fault(name);
        if (fault.isPresent() || Calls.isFunction(name)) {
            issues.add(RULE, file.place(name), fault.orElse("'" + name + "' is a function of the language") + ", so it can't be a formula", "Take another word");
            broken.add(name);
            return;
        }
        List<String> dims = new ArrayList<>();
        List<FormulaBody.Parameter> takes = takes(map, dims);
        Optional<Type> gives = map.need("gives").flatMap(t -> {
            dims.add(t.value());
            return type(t);
        });
        Map<String, Text> texts = new LinkedHashMap<>();
        List<String> steps = new ArrayList<>();
        List<FormulaBody.Line> lines = lines(map, texts, steps);
        if (gives.isEmpty() || lines.isEmpty() || takes.size() + lines.size() > Program.MOST_NAMES) {
            if (gives.isPresent() && !lines.isEmpty()) {
                issues.add(RULE, file.place(name), "the formula has more than " + Program.MOST_NAMES + " names", "Cut it into two formulas");
            }
            broken.add(name);
            return;
        }
        List<String> written = texts.entrySet().stream()
                .map(e -> e.getKey().equals(RESULT) ? e.getValue().value() : e.getKey() + " = " + e.getValue().value()).toList();
        drafts.put(name, new Draft(topic, map, new FormulaBody(name, takes, gives.get(), lines), dims, written, steps, texts));
    }

    private List<FormulaBody.Parameter> takes(Yaml.Entries map, List<String> dims) {
        List<FormulaBody.Parameter> takes = new ArrayList<>();
        if (!map.has("takes")) {
            issues.add(RULE, map.place(), "the formula takes nothing", "takes: {radius: length, angle: angle}");
        }
        map.map("takes").ifPresent(all -> all.keys().forEach(k -> all.text(k).ifPresent(t -> {
            Names.fault(k).ifPresent(f -> issues.add(RULE, all.place(k), f + ", so it can't be a name", "A word of small letters, such as side_length"));
            dims.add(t.value());
            takes.add(new FormulaBody.Parameter(k, type(t).orElse(Type.UNKNOWN)));
        })));
        return takes;
    }

    private Optional<Type> type(Text text) {
        String word = text.value();
        if (word.equals("label")) {
            return Optional.of(Type.label(null));
        }
        boolean list = word.startsWith("list of ");
        Optional<Dimension> d = Dimension.parse(list ? word.substring("list of ".length()) : word);
        if (d.isEmpty()) {
            issues.add(RULE, text.place(), "unknown dimension '" + word + "'", "Words joined by * / ^: " + String.join(", ", Dimension.knownWords()));
        }
        return d.map(x -> list ? Type.list(x) : Type.amount(x));
    }

    private List<FormulaBody.Line> lines(Yaml.Entries map, Map<String, Text> texts, List<String> steps) {
        List<FormulaBody.Line> lines = new ArrayList<>();
        if (map.has("is")) {
            map.text("is").ifPresent(t -> literals.expression(t).ifPresent(n -> {
                lines.add(new FormulaBody.Line(RESULT, n));
                texts.put(RESULT, t);
                steps.add("");
            }));
            return lines;
        }
        if (!map.has("working")) {
            issues.add(RULE, map.place(), "the formula says nothing of how it is worked", "is: EXPRESSION, or working: with lines");
        }
        for (Yaml.Value item : map.items("working")) {
            Optional<Text> line = item.isText() ? item.text() : item.map().flatMap(m -> m.only(Set.of("let", "say", "in", "show")).need("let"));
            String say = item.isMap() ? item.map().map(m -> m.string("say", "")).orElse("") : "";
            line.ifPresent(t -> literals.assignment(t).ifPresent(a -> {
                boolean taken = texts.containsKey(a.name()) || map.map("takes").map(all -> all.has(a.name())).orElse(false);
                if (taken || a.name().equals("pi")) {
                    issues.add(RULE, t.place(), "the name '" + a.name() + "' stands twice", "Every line has a name of its own");
                    return;
                }
                lines.add(new FormulaBody.Line(a.name(), a.value()));
                texts.put(a.name(), new Text(t.value().substring(t.value().indexOf('=') + 1).trim(), t.place(), false, true));
                steps.add(say);
            }));
        }
        return lines;
    }

    Map<String, FormulaBody> bodies() {
        Map<String, FormulaBody> bodies = new LinkedHashMap<>();
        drafts.forEach((n, d) -> bodies.put(n, broken.contains(n) ? unknown(n) : d.body()));
        broken.forEach(n -> bodies.putIfAbsent(n, unknown(n)));
        return bodies;
    }

    private static FormulaBody unknown(String name) {
        return new FormulaBody(name, List.of(), Type.UNKNOWN, List.of());
    }

    /** The text of each formula as it is written, for fingerprints. */
    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        drafts.forEach((n, d) -> texts.put(n, d.map().written()));
        return texts;
    }

    /** Second reading: plans every formula in both systems and reads what belongs to it. */
    Map<String, Formula> finish(Map<String, Table> tables, Set<String> families, Set<String> cautions) {
        circles(tables.keySet());
        Map<String, Formula> done = new HashMap<>();
        drafts.keySet().forEach(name -> finish(name, done, tables, families, cautions));
        Map<String, Formula> formulas = new LinkedHashMap<>();
        drafts.keySet().forEach(name -> formulas.put(name, done.get(name)));
        return formulas;
    }

    /** Those that a formula calls go first: what calls a broken one is not told again. */
    private void finish(String name, Map<String, Formula> done, Map<String, Table> tables, Set<String> families, Set<String> cautions) {
        Draft draft = drafts.get(name);
        if (draft == null || done.containsKey(name) || !begun.add(name)) {
            return;
        }
        draft.body().lines().forEach(line -> Calls.direct(line.value()).forEach(called -> finish(called, done, tables, families, cautions)));
        int before = issues.size();
        Formula formula = finish(draft, bodies(), tables, families, cautions);
        done.put(name, formula);
        if (issues.size() > before || formula.us().slots().stream().anyMatch(s -> s.type().kind() == Type.Kind.UNKNOWN)) {
            broken.add(name);
        }
    }

    /** Tells formulas that call themselves, in one step or by way of others, and those that hide behind a table. */
    private void circles(Set<String> tables) {
        Map<String, FormulaBody> bodies = bodies();
        drafts.forEach((name, draft) -> {
            boolean circle = draft.body().lines().stream().anyMatch(l -> Calls.formulas(l.value(), bodies).contains(name));
            if (circle || tables.contains(name)) {
                String found = circle ? "the formula '" + name + "' comes back to itself" : "there is a table '" + name + "' too";
                issues.add(RULE, draft.map().place(), found, circle ? "Formulas cannot call themselves" : "Take another word");
                broken.add(name);
            }
        });
    }

    private Formula finish(Draft d, Map<String, FormulaBody> bodies, Map<String, Table> tables, Set<String> families, Set<String> cautions) {
        Yaml.Entries map = d.map();
        List<Formula.Limit> limits = new ArrayList<>();
        Planned us = planned(d, UnitSystem.US, bodies, tables, issues);
        Planned metric = planned(d, UnitSystem.METRIC, bodies, tables, new Issues());
        map.items("limits").forEach(v -> v.text().ifPresent(t -> limits.add(new Formula.Limit(t.value()))));
        List<Formula.FormulaSlip> slips = slips(d, bodies, tables, families);
        String caution = map.string("caution", "");
        if (!caution.isEmpty() && !caution.equals("none") && !cautions.contains(caution)) {
            issues.add(RULE, map.place("caution"), "unknown caution '" + caution + "'", soapstone.source.Near.suggest(caution, cautions));
        }
        return new Formula(d.body(), map.need("says").map(Text::value).orElse(""), map.string("symbol", ""), List.copyOf(d.dims()),
                d.written(), d.steps(), limits, map.need("source").map(Text::value).orElse(""), slips,
                new CheckReader(issues, files, true).read(map), caution.equals("none") ? "" : caution, d.topic(),
                us.program(), metric.program(), us.limits(), metric.limits());
    }

    private record Planned(Program program, List<Value> limits) {}

    private Planned planned(Draft d, UnitSystem system, Map<String, FormulaBody> bodies, Map<String, Table> tables, Issues told) {
        ProgramBuilder builder = builder(d, system, bodies, tables);
        FormulaBody body = d.body();
        for (int i = 0; i < body.lines().size(); i++) {
            FormulaBody.Line line = body.lines().get(i);
            Text text = d.texts().get(line.name());
            builder.line(line.name(), line.value(), null, (at, found, fits) -> told.add(RULE, text.at(at), found, fits));
        }
        String last = body.lines().get(body.lines().size() - 1).name();
        Type type = builder.type(last).orElse(Type.UNKNOWN);
        if (!body.gives().takes(type)) {
            told.add(RULE, d.texts().get(last).place(), "the formula is to give " + body.gives() + ", its working gives " + type, "gives: " + type.dimension());
        }
        List<Value> limits = new ArrayList<>();
        for (Yaml.Value v : d.map().items("limits")) {
            v.text().ifPresent(t -> new Literals(told).expression(t)
                    .flatMap(n -> builder.condition(n, (at, found, fits) -> told.add(RULE, t.at(at), found, fits))).ifPresent(limits::add));
        }
        return new Planned(builder.build(), limits);
    }

    private ProgramBuilder builder(Draft d, UnitSystem system, Map<String, FormulaBody> bodies, Map<String, Table> tables) {
        ProgramBuilder builder = new ProgramBuilder(system, bodies, tables);
        for (FormulaBody.Parameter p : d.body().takes()) {
            builder.given(p.name(), p.type(), p.type().isAmount() || p.type().isList() ? Units.usual(p.type().dimension(), system) : Units.ONE);
        }
        return builder;
    }

    private List<Formula.FormulaSlip> slips(Draft d, Map<String, FormulaBody> bodies, Map<String, Table> tables, Set<String> families) {
        List<Formula.FormulaSlip> slips = new ArrayList<>();
        for (Yaml.Value item : d.map().items("slips")) {
            item.map().ifPresent(m -> slip(d, m.only(SLIP_KEYS), bodies, tables, families).ifPresent(slips::add));
        }
        return slips;
    }

    private Optional<Formula.FormulaSlip> slip(Draft d, Yaml.Entries m, Map<String, FormulaBody> bodies, Map<String, Table> tables, Set<String> families) {
        String name = m.need("name").map(Text::value).orElse("");
        String family = m.need("family").map(Text::value).orElse("");
        if (!family.isEmpty() && !families.contains(family)) {
            issues.add("family", m.place("family"), "unknown slip family '" + family + "'", soapstone.source.Near.suggest(family, families));
        }
        String say = m.need("say").map(Text::value).orElse("");
        Optional<Node> when = m.text("when").flatMap(literals::expression);
        List<FormulaBody.Line> lines = swapped(d, m);
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        checkSlip(d, m, lines, bodies, tables);
        String written = m.has("is") ? m.string("is", "") : m.string("swap", "");
        return Optional.of(new Formula.FormulaSlip(name, family, new FormulaBody.Swap(d.body().name(), lines, when.orElse(null)), written,
                m.string("when", ""), say));
    }

    private List<FormulaBody.Line> swapped(Draft d, Yaml.Entries m) {
        if (m.has("is")) {
            return m.text("is").flatMap(literals::expression).map(n -> List.of(new FormulaBody.Line(RESULT, n))).orElse(List.of());
        }
        Optional<SwapLine> swap = m.need("swap").flatMap(t -> literals.assignment(t).map(a -> new SwapLine(a.name(), a.value(), t)));
        if (swap.isEmpty()) {
            return List.of();
        }
        List<FormulaBody.Line> lines = new ArrayList<>();
        boolean found = false;
        for (FormulaBody.Line line : d.body().lines()) {
            boolean here = line.name().equals(swap.get().name());
            found |= here;
            lines.add(here ? new FormulaBody.Line(line.name(), swap.get().value()) : line);
        }
        if (!found) {
            issues.add(RULE, swap.get().text().place(), "the formula has no line '" + swap.get().name() + "'", "A line of its working");
        }
        return lines;
    }

    private record SwapLine(String name, Node value, Text text) {}

    private void checkSlip(Draft d, Yaml.Entries m, List<FormulaBody.Line> lines, Map<String, FormulaBody> bodies, Map<String, Table> tables) {
        ProgramBuilder builder = builder(d, UnitSystem.US, bodies, tables);
        Text text = (m.has("is") ? m.text("is") : m.text("swap")).orElseThrow();
        m.text("when").ifPresent(t -> literals.expression(t)
                .ifPresent(n -> builder.condition(n, (at, found, fits) -> issues.add(RULE, t.at(at), found, fits))));
        for (FormulaBody.Line line : lines) {
            builder.line(line.name(), line.value(), null, (at, found, fits) -> issues.add(RULE, text.at(at), found, fits));
        }
        Type type = builder.type(lines.get(lines.size() - 1).name()).orElse(Type.UNKNOWN);
        if (!d.body().gives().takes(type)) {
            issues.add(RULE, text.place(), "the slip gives " + type + ", the formula " + d.body().gives(), "The same kind of quantity");
        }
    }
}
