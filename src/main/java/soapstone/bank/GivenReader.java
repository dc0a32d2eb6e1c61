package soapstone.bank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Given;
import soapstone.exercise.Table;
import soapstone.expression.Node;
import soapstone.expression.ProgramBuilder;
import soapstone.expression.Type;
import soapstone.quantity.Quantity;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads what is drawn, and declares it in the program. */
final class GivenReader {

    private static final String RULE = "given";
    static final Set<String> KEYS = Set.of("from", "to", "step", "pick", "row", "is", "hidden", "in", "show", "convention");
    private static final long MOST_VALUES = 1_000_000;

    private final ProgramBuilder builder;
    private final UnitSystem system;
    private final Tables tables;
    private final Issues issues;
    private final Literals literals;

    /** The tables of the bank by name. */
    interface Tables {
        Optional<Table> find(String name);

        Set<String> names();
    }

    GivenReader(ProgramBuilder builder, UnitSystem system, Tables tables, Issues issues) {
        this.builder = builder;
        this.system = system;
        this.tables = tables;
        this.issues = issues;
        this.literals = new Literals(issues);
    }

    /** @return the given, or empty after a fault (the name is then known with an unknown type) */
    Optional<Given> read(String name, Yaml.Entries map) {
        boolean hidden = map.flag("hidden");
        Optional<Unit> in = map.text("in").flatMap(this::unit);
        if (map.has("is")) {
            return derived(name, map, in.orElse(null), hidden);
        }
        if (map.has("pick")) {
            return pick(name, map, in, hidden);
        }
        if (map.has("row")) {
            return row(name, map, hidden);
        }
        if (map.has("from")) {
            return range(name, map, in, hidden);
        }
        issues.add(RULE, map.place(), "'" + name + "' does not say what it can be", "from/to/step, pick, row or is");
        builder.given(name, Type.UNKNOWN, Units.ONE);
        return Optional.empty();
    }

    Optional<Unit> unit(Text text) {
        Optional<Unit> unit = Units.parse(text.value());
        if (unit.isEmpty()) {
            issues.add("unit", text.place(), "unknown unit '" + text.value() + "'",
                    Near.suggest(text.value(), Units.all().stream().map(Unit::name).filter(n -> !n.equals(Units.ONE.name())).toList()));
        }
        return unit;
    }

    private Optional<Given> unknown(String name) {
        builder.given(name, Type.UNKNOWN, Units.ONE);
        return Optional.empty();
    }

    private Optional<Given> derived(String name, Yaml.Entries map, Unit in, boolean hidden) {
        Optional<Text> text = map.text("is");
        Optional<Node> node = text.flatMap(literals::expression);
        if (node.isEmpty()) {
            return unknown(name);
        }
        Node value = node.get();
        if (map.has("to")) {
            Optional<Node> step = map.text("to").flatMap(literals::expression);
            if (step.isPresent()) {
                value = new Node.Call("round", List.of(value, step.get()), value.at());
            }
        }
        int slot = builder.toldLine(name, value, in, (at, found, fits) -> issues.add("expression", text.get().at(at), found, fits));
        return Optional.of(new Given(name, slot, new Given.Derived(), hidden, 0));
    }

    private Optional<Given> range(String name, Yaml.Entries map, Optional<Unit> in, boolean hidden) {
        Optional<Quantity> from = map.need("from").flatMap(literals::amount);
        Optional<Quantity> to = map.need("to").flatMap(literals::amount);
        Optional<Quantity> step = map.has("step") ? map.text("step").flatMap(literals::amount)
                : from.map(f -> new Quantity(1, f.unit()));
        if (from.isEmpty() || to.isEmpty() || step.isEmpty()) {
            return unknown(name);
        }
        var d = from.get().unit().dimension();
        if (!to.get().unit().dimension().equals(d) || !step.get().unit().dimension().equals(d)) {
            issues.add(RULE, map.place(), "from, to and step of '" + name + "' are not of one kind: " + from.get().unit() + ", "
                    + to.get().unit() + ", " + step.get().unit(), "One unit for all three");
            return unknown(name);
        }
        double first = from.get().base(system);
        double last = to.get().base(system);
        double by = step.get().base(system);
        double count = by > 0 ? Math.floor((last - first) / by + 1e-6) + 1 : 0;
        if (!(count >= 2 && count <= MOST_VALUES)) {
            issues.add(RULE, map.place(), "'" + name + "' has no range of values from " + map.string("from", "") + " to " + map.string("to", ""),
                    "to over from, and a step that fits between");
            return unknown(name);
        }
        int slot = builder.given(name, Type.amount(d), shown(map, in, from.get().unit()));
        return Optional.of(new Given(name, slot, new Given.Range(first, by, (long) count), hidden, 0));
    }

    private Unit shown(Yaml.Entries map, Optional<Unit> in, Unit own) {
        if (in.isPresent() && !in.get().dimension().equals(own.dimension())) {
            issues.add("unit", map.place("in"), in.get() + " is " + in.get().dimension() + ", but the value is " + own.dimension(), "");
            return own;
        }
        return in.orElse(own);
    }

    private Optional<Given> pick(String name, Yaml.Entries map, Optional<Unit> in, boolean hidden) {
        List<Quantity> amounts = new ArrayList<>();
        Set<String> labels = new LinkedHashSet<>();
        for (Yaml.Value item : map.items("pick")) {
            Optional<Text> text = item.text();
            if (text.isEmpty()) {
                return unknown(name);
            }
            Optional<Quantity> amount = Literals.asAmount(text.get());
            if (amount.isPresent()) {
                amounts.add(amount.get());
            } else {
                labels.add(text.get().value());
            }
        }
        if (!amounts.isEmpty() && !labels.isEmpty() || amounts.isEmpty() && labels.isEmpty()) {
            issues.add(RULE, map.place("pick"), "'" + name + "' picks from " + (labels.isEmpty() ? "nothing" : "amounts and words mixed: " + labels),
                    "Either amounts or labels");
            return unknown(name);
        }
        return labels.isEmpty() ? amounts(name, map, amounts, in, hidden) : labels(name, labels, hidden);
    }

    private Optional<Given> labels(String name, Set<String> labels, boolean hidden) {
        double[] numbers = labels.stream().mapToDouble(builder.labels()::number).toArray();
        int slot = builder.given(name, Type.label(Set.copyOf(labels)), Units.ONE);
        return Optional.of(new Given(name, slot, new Given.Pick(numbers), hidden, 0));
    }

    private Optional<Given> amounts(String name, Yaml.Entries map, List<Quantity> amounts, Optional<Unit> in, boolean hidden) {
        Unit own = amounts.get(0).unit();
        if (amounts.stream().anyMatch(q -> !q.unit().dimension().equals(own.dimension()))) {
            issues.add(RULE, map.place("pick"), "'" + name + "' picks from different kinds of quantity", "One kind");
            return unknown(name);
        }
        int slot = builder.given(name, Type.amount(own.dimension()), shown(map, in, own));
        return Optional.of(new Given(name, slot, new Given.Pick(amounts.stream().mapToDouble(q -> q.base(system)).toArray()), hidden, 0));
    }

    private Optional<Given> row(String name, Yaml.Entries map, boolean hidden) {
        Text text = map.text("row").orElse(null);
        Optional<Table> table = text == null ? Optional.empty() : tables.find(text.value().replace(".csv", "").replace('-', '_'));
        if (table.isEmpty()) {
            if (text != null) {
                issues.add(RULE, text.place(), "there is no table '" + text.value() + "'", Near.suggest(text.value(), tables.names()));
            }
            return unknown(name);
        }
        Table t = table.get();
        if (t.keyUnit() == null) {
            return labels(name, new LinkedHashSet<>(t.labels()), hidden);
        }
        int slot = builder.given(name, Type.amount(t.keyDimension()), t.keyUnit());
        double[] keys = new double[t.rows()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = t.keyUnit().toBase(t.key(i), system);
        }
        return Optional.of(new Given(name, slot, new Given.Pick(keys), hidden, 0));
    }
}
