package soapstone.bank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Convention;
import soapstone.exercise.Convention.Allowed;
import soapstone.quantity.Dimension;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Text;
import soapstone.source.Yaml;

/** Reads what a shop may set, one convention after the other. */
final class ConventionReader {

    private static final String RULE = "convention";
    private static final Set<String> ALLOWED = Set.of("from", "to", "pick", "usual");
    private static final Set<String> KEYS = Set.of("title", "says", "told", "dimension", "source", "metric", "from", "to", "pick", "usual");

    private final Issues issues;
    private final Literals literals;

    ConventionReader(Issues issues) {
        this.issues = issues;
        this.literals = new Literals(issues);
    }

    /** @return the convention, or empty after a fault */
    Optional<Convention> read(String name, Yaml.Entries file) {
        Names.fault(name).ifPresent(f -> issues.add("name", file.place(name), f + ", so it can't be a name", "A word of small letters, such as saw_kerf"));
        return file.map(name).flatMap(m -> convention(name, m.only(KEYS)));
    }

    private Optional<Convention> convention(String name, Yaml.Entries map) {
        Optional<Text> title = map.need("title");
        Optional<Text> says = map.need("says");
        Optional<Text> told = map.need("told").filter(this::tellsTheAmount);
        Optional<Text> source = map.need("source");
        Optional<Dimension> dimension = map.need("dimension").flatMap(this::dimension);
        if (title.isEmpty() || says.isEmpty() || told.isEmpty() || source.isEmpty() || dimension.isEmpty()) {
            return Optional.empty();
        }
        Optional<Allowed> us = allowed(name, map, dimension.get(), UnitSystem.US);
        Optional<Allowed> metric = metric(name, map, dimension.get(), us);
        return us.isEmpty() || metric.isEmpty() ? Optional.empty() : Optional.of(new Convention(name, title.get().value(), says.get().value(),
                told.get().value(), dimension.get(), us.get(), metric.get(), source.get().value()));
    }

    private boolean tellsTheAmount(Text text) {
        String rest = text.value().replaceFirst("\\{value}", "");
        boolean tells = text.value().contains(Convention.VALUE) && rest.indexOf('{') < 0 && rest.indexOf('}') < 0;
        if (!tells) {
            issues.add(RULE, text.place(), "'" + text.value() + "' does not say where the amount goes", "Once " + Convention.VALUE + ", such as: told: \"K = {value}\"");
        }
        return tells;
    }

    private Optional<Dimension> dimension(Text text) {
        Optional<Dimension> dimension = Dimension.parse(text.value());
        if (dimension.isEmpty()) {
            List<String> known = new ArrayList<>();
            Dimension.knownWords().forEach(known::add);
            issues.add(RULE, text.place(), "unknown dimension '" + text.value() + "'", Near.suggest(text.value(), known));
        }
        return dimension;
    }

    /** A number is the same in both systems; a length in inches would stay one. */
    private Optional<Allowed> metric(String name, Yaml.Entries map, Dimension dimension, Optional<Allowed> us) {
        if (map.has("metric")) {
            return map.map("metric").flatMap(m -> allowed(name, m.only(ALLOWED), dimension, UnitSystem.METRIC));
        }
        if (!dimension.isNumber()) {
            issues.add("metric", map.place(), "'" + name + "' does not say what it is in a metric shop", "metric: {from: …, to: …, usual: …}");
            return Optional.empty();
        }
        return us;
    }

    private Optional<Allowed> allowed(String name, Yaml.Entries map, Dimension dimension, UnitSystem system) {
        if (map.has("pick") == (map.has("from") || map.has("to"))) {
            issues.add(RULE, map.place(), "'" + name + "' does not say what it may be set to", "Either from and to, or pick");
            return Optional.empty();
        }
        Optional<List<Quantity>> amounts = map.has("pick") ? amounts(map.items("pick").stream().map(Yaml.Value::text).toList(), dimension)
                : amounts(List.of(map.need("from"), map.need("to")), dimension);
        Optional<List<Quantity>> usual = amounts(List.of(map.need("usual")), dimension);
        if (amounts.isEmpty() || usual.isEmpty()) {
            return Optional.empty();
        }
        return fitting(name, map, amounts.get(), usual.get().get(0), system);
    }

    private Optional<Allowed> fitting(String name, Yaml.Entries map, List<Quantity> amounts, Quantity usual, UnitSystem system) {
        boolean pick = map.has("pick");
        Comparator<Quantity> bySize = Comparator.comparingDouble(q -> q.base(system));
        Quantity least = amounts.stream().min(bySize).orElse(usual);
        Quantity most = amounts.stream().max(bySize).orElse(usual);
        Allowed allowed = new Allowed(usual, pick ? amounts : List.of(), least, most);
        if (pick ? amounts.size() < 2 : bySize.compare(amounts.get(0), amounts.get(1)) >= 0) {
            issues.add(RULE, map.place(pick ? "pick" : "from"), "'" + name + "' leaves a shop nothing to set", pick ? "Two amounts or more" : "to over from");
            return Optional.empty();
        }
        if (!allowed.takes(usual.base(system), system)) {
            issues.add(RULE, map.place("usual"), "the usual value of '" + name + "' is none of those that it may be set to", "One of them");
            return Optional.empty();
        }
        return Optional.of(allowed);
    }

    /** Every amount, or empty when one of them is none or of another kind. */
    private Optional<List<Quantity>> amounts(List<Optional<Text>> texts, Dimension dimension) {
        List<Quantity> amounts = new ArrayList<>();
        for (Optional<Text> text : texts) {
            text.flatMap(literals::amount).filter(q -> isOf(dimension, q, text.get())).ifPresent(amounts::add);
        }
        return amounts.size() == texts.size() ? Optional.of(amounts) : Optional.empty();
    }

    private boolean isOf(Dimension dimension, Quantity q, Text text) {
        boolean fits = q.unit().dimension().equals(dimension) && q.amount() >= 0;
        if (!fits) {
            issues.add(RULE, text.place(), "'" + text.value() + "' is " + (q.amount() < 0 ? "below 0" : q.unit().dimension().toString())
                    + ", the convention is " + dimension, "An amount of that kind, 0 or more");
        }
        return fits;
    }
}
