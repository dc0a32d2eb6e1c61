package soapstone.bank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Template;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.expression.ProgramBuilder;
import soapstone.expression.Type;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads what is asked. */
final class AskReader {

    private static final String RULE = "ask";
    private static final Set<String> KEYS = Set.of("find", "kind", "prompt", "to", "within", "points", "options", "in", "convention");
    private static final Set<String> METRIC_KEYS = Set.of("to", "within", "prompt", "options", "in");

    private final Yaml.Entries root;
    private final Optional<Yaml.Entries> metric;
    private final UnitSystem system;
    private final ProgramBuilder builder;
    private final Map<String, Integer> slots;
    private final Templates templates;
    private final Issues issues;
    private final Literals literals;
    private final Set<String> named = new LinkedHashSet<>();
    private boolean nameless;

    AskReader(Yaml.Entries root, Optional<Yaml.Entries> metric, UnitSystem system, ProgramBuilder builder, Map<String, Integer> slots,
            Templates templates, Issues issues) {
        this.root = root;
        this.metric = metric.flatMap(m -> m.has("ask") ? m.map("ask") : Optional.empty());
        this.system = system;
        this.builder = builder;
        this.slots = slots;
        this.templates = templates;
        this.issues = issues;
        this.literals = new Literals(issues);
    }

    List<Ask> read() {
        List<Ask> asks = new ArrayList<>();
        if (!root.has("ask")) {
            issues.add(RULE, root.place(), "the exercise asks nothing", "ask: with - find: NAME");
        }
        for (Yaml.Value item : root.items("ask")) {
            item.map().ifPresent(m -> one(m.only(KEYS), String.valueOf((char) ('a' + asks.size()))).ifPresent(asks::add));
        }
        // An ask with a fault of its own is told there.
        metric.filter(m -> !nameless).ifPresent(m -> m.only(named));
        return asks;
    }

    private Optional<Ask> one(Yaml.Entries map, String letter) {
        List<Text> names = new ArrayList<>();
        if (!map.has("find")) {
            nameless = true;
            issues.add("missing-key", map.place(), "the ask has no 'find'", "find: the line that is asked");
            return Optional.empty();
        }
        map.items("find").forEach(v -> v.text().ifPresent(names::add));
        names.forEach(n -> named.add(n.value()));
        for (Text name : names) {
            if (slots.getOrDefault(name.value(), -1) < 0) {
                issues.add(RULE, name.place(), "'" + name.value() + "' is not a line of the working", Near.suggest(name.value(), slots.keySet()));
                return Optional.empty();
            }
        }
        if (names.isEmpty() || names.size() > 2) {
            issues.add(RULE, map.place("find"), "an ask finds one line, or two for a point", "find: NAME or find: [x, y]");
            return Optional.empty();
        }
        return built(map, letter, names);
    }

    private Optional<Ask> built(Yaml.Entries map, String letter, List<Text> names) {
        String name = names.get(0).value();
        Type type = builder.type(name).orElse(Type.UNKNOWN);
        Optional<Ask.Kind> kind = kind(map, type, names.size());
        Optional<Yaml.Entries> own = metric.flatMap(m -> m.has(name) ? m.map(name) : Optional.empty());
        own.ifPresent(o -> o.only(METRIC_KEYS));
        if (kind.isEmpty() || type.kind() == Type.Kind.UNKNOWN) {
            return Optional.empty();
        }
        boolean measured = kind.get() != Ask.Kind.COUNT && kind.get() != Ask.Kind.CHOICE;
        Optional<Text> toText = text(map, own, "to");
        Optional<Quantity> to = measured ? amount(map, toText, "to", type) : Optional.empty();
        Optional<Quantity> within = measured ? amount(map, text(map, own, "within"), "within", type) : Optional.empty();
        if (measured && (to.isEmpty() || within.isEmpty())) {
            return Optional.empty();
        }
        Unit unit = unit(map, own, type, to);
        Template prompt = text(map, own, "prompt").map(templates::read).orElse(Template.EMPTY);
        if (prompt.isEmpty()) {
            issues.add(RULE, map.place(), "the ask has no prompt", "prompt: what the student is to find");
        }
        double points = points(map);
        int second = names.size() == 2 ? slots.get(names.get(1).value()) : -1;
        Show show = kind.get() == Ask.Kind.COUNT ? Show.WHOLE : toText.map(t -> show(t, unit)).orElse(Show.AUTO);
        return Optional.of(new Ask(name, letter, kind.get(), slots.get(name), second, prompt, to.map(q -> q.base(system)).orElse(0.0),
                within.map(q -> q.base(system)).orElse(0.0), unit, show, points, options(map, own, type, kind.get()),
                map.string("convention", "")));
    }

    private Optional<Text> text(Yaml.Entries map, Optional<Yaml.Entries> own, String key) {
        return own.filter(o -> o.has(key)).isPresent() ? own.get().text(key) : map.text(key);
    }

    private Optional<Ask.Kind> kind(Yaml.Entries map, Type type, int names) {
        Optional<Text> said = map.text("kind");
        if (said.isEmpty()) {
            return Optional.of(names == 2 ? type.isList() ? Ask.Kind.POINTS : Ask.Kind.POINT
                    : type.isList() ? Ask.Kind.LIST : type.isLabel() ? Ask.Kind.CHOICE : Ask.Kind.QUANTITY);
        }
        for (Ask.Kind kind : Ask.Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(said.get().value())) {
                return fitting(inSystem(kind, type), type, said.get(), names);
            }
        }
        issues.add(RULE, said.get().place(), "unknown kind '" + said.get().value() + "'", "quantity, count, list, choice, fraction or point");
        return Optional.empty();
    }

    /** Millimetres have no fractions; a point of lists is several points. */
    private Ask.Kind inSystem(Ask.Kind kind, Type type) {
        if (kind == Ask.Kind.FRACTION && system == UnitSystem.METRIC) {
            return Ask.Kind.QUANTITY;
        }
        return kind == Ask.Kind.POINT && type.isList() ? Ask.Kind.POINTS : kind;
    }

    private Optional<Ask.Kind> fitting(Ask.Kind kind, Type type, Text said, int names) {
        boolean fits = switch (kind) {
            case QUANTITY, FRACTION -> type.isAmount();
            case COUNT -> type.isAmount() && type.dimension().isNumber();
            case LIST -> type.isList();
            case CHOICE -> type.isLabel();
            case POINT, POINTS -> names == 2;
        };
        if (!fits && type.kind() != Type.Kind.UNKNOWN) {
            issues.add(RULE, said.place(), "the asked line is " + type + ", that is no " + said.value(), "Leave kind out, or ask another line");
            return Optional.empty();
        }
        return Optional.of(kind);
    }

    private Optional<Quantity> amount(Yaml.Entries map, Optional<Text> text, String key, Type type) {
        if (text.isEmpty()) {
            issues.add(RULE, map.place(), "the ask has no '" + key + "'", key.equals("to") ? "to: what it is rounded to" : "within: what is marked right");
            return Optional.empty();
        }
        Optional<Quantity> q = text.flatMap(literals::amount);
        if (q.isPresent() && (!q.get().unit().dimension().equals(type.dimension()) || !(q.get().amount() > 0))) {
            issues.add(RULE, text.get().place(), "'" + key + "' is " + q.get().unit().dimension() + ", the answer is " + type, "An amount over 0 of that kind");
            return Optional.empty();
        }
        return q;
    }

    private double points(Yaml.Entries map) {
        Optional<Quantity> points = map.text("points").flatMap(literals::amount);
        if (points.isPresent() && (!points.get().unit().equals(Units.ONE) || points.get().amount() < 0)) {
            issues.add(RULE, map.place("points"), "'points' is " + map.string("points", ""), "A plain number, 0 or more");
        }
        return points.map(Quantity::amount).orElse(1.0);
    }

    /** The unit beside the box: said, else the line's own. */
    private Unit unit(Yaml.Entries map, Optional<Yaml.Entries> own, Type type, Optional<Quantity> to) {
        Optional<Text> text = text(map, own, "in");
        Optional<Unit> said = text.flatMap(t -> Units.parse(t.value()));
        if (said.isPresent() && said.get().dimension().equals(type.dimension())) {
            return said.get();
        }
        text.ifPresent(t -> issues.add("unit", t.place(), said.isEmpty() ? "unknown unit '" + t.value() + "'"
                : t.value() + " is " + said.get().dimension() + ", the answer is " + type, "A unit of " + type.dimension()));
        return to.map(Quantity::unit).orElse(Units.ONE);
    }

    /** A step written as a fraction of an inch is answered in fractions, any other in decimals of the asked unit. */
    private Show show(Text to, Unit unit) {
        try {
            Node node = Parser.expression(to.value());
            if (node instanceof Node.Amount a && a.written().contains("/")) {
                int bottom = (int) Double.parseDouble(a.written().substring(a.written().indexOf('/') + 1));
                return Show.fraction(bottom);
            }
            return Literals.asAmount(to).map(q -> Show.decimal(unit.fromBase(q.base(system), system))).orElse(Show.AUTO);
        } catch (Parser.Fault e) {
            return Show.AUTO;
        }
    }

    private List<Ask.Option> options(Yaml.Entries map, Optional<Yaml.Entries> own, Type type, Ask.Kind kind) {
        if (kind != Ask.Kind.CHOICE) {
            return List.of();
        }
        Yaml.Entries from = own.filter(o -> o.has("options")).orElse(map);
        List<Ask.Option> options = new ArrayList<>();
        Optional<Yaml.Entries> all = from.has("options") ? from.map("options") : Optional.empty();
        all.ifPresent(m -> m.keys().forEach(label -> m.text(label)
                .ifPresent(t -> options.add(new Ask.Option(builder.labels().number(label), label, templates.read(t))))));
        if (options.size() < 3) {
            issues.add(RULE, map.place(), "a choice has " + options.size() + " options", "options: {label: text, …}, three or more");
        }
        if (type.labels() != null && all.isPresent()) {
            type.labels().stream().filter(l -> !all.get().has(l))
                    .forEach(l -> issues.add(RULE, map.place("options"), "the line can give \"" + l + "\", which is no option", "Add it"));
        }
        return options;
    }
}
