package soapstone.bank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Check;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Place;
import soapstone.source.Source;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads the published checks of an exercise or a formula, single ones and those that stand as rows of a CSV. */
final class CheckReader {

    private static final String RULE = "check";
    private static final Set<String> KEYS =
            Set.of("source", "kind", "units", "given", "expect", "within", "misprint", "note", "rows");
    private static final String EXPECT = "expect";

    private final Issues issues;
    private final Literals literals;
    private final BankFiles files;
    private final boolean single;

    /** @param single whether the expected value has no name of its own, as in a formula */
    CheckReader(Issues issues, BankFiles files, boolean single) {
        this.issues = issues;
        this.literals = new Literals(issues);
        this.files = files;
        this.single = single;
    }

    List<Check> read(Yaml.Entries owner) {
        List<Check> checks = new ArrayList<>();
        for (Yaml.Value item : owner.items("checks")) {
            item.map().ifPresent(map -> one(map.only(KEYS), checks));
        }
        return checks;
    }

    private void one(Yaml.Entries map, List<Check> checks) {
        String source = map.need("source").map(Text::value).orElse("");
        Check.Kind kind = kind(map);
        UnitSystem system = system(map);
        boolean misprint = map.flag("misprint");
        if (map.has("rows")) {
            rows(map, checks, source, kind, system);
            return;
        }
        Map<String, Check.Item> given = map.has("given") ? items(map.map("given")) : Map.of();
        Map<String, Check.Item> expect = expect(map);
        Quantity within = map.text("within").flatMap(literals::amount).orElse(null);
        checks.add(new Check(source, kind, system, given, expect, within, misprint, map.string("note", ""), map.place()));
    }

    private UnitSystem system(Yaml.Entries map) {
        Optional<Text> text = map.text("units");
        Optional<UnitSystem> system = text.flatMap(t -> UnitSystem.parse(t.value()));
        if (text.isPresent() && system.isEmpty()) {
            issues.add(RULE, text.get().place(), "unknown units '" + text.get().value() + "'", "us or metric");
        }
        return system.orElse(UnitSystem.US);
    }

    private Check.Kind kind(Yaml.Entries map) {
        Optional<Text> text = map.need("kind");
        for (Check.Kind kind : Check.Kind.values()) {
            if (text.isPresent() && kind.name().toLowerCase(Locale.ROOT).equals(text.get().value())) {
                return kind;
            }
        }
        text.ifPresent(t -> issues.add(RULE, t.place(), "unknown kind '" + t.value() + "'", "seen, inputs, memory or own"));
        return Check.Kind.OWN;
    }

    private Map<String, Check.Item> expect(Yaml.Entries map) {
        if (!map.has(EXPECT)) {
            issues.add(RULE, map.place(), "the check expects nothing", "Add expect: …");
            return Map.of();
        }
        Yaml.Value value = map.get(EXPECT).orElseThrow();
        if (single && !value.isMap()) {
            return item(value).map(i -> Map.of(Check.RESULT, i)).orElse(Map.of());
        }
        return items(value.map());
    }

    private Map<String, Check.Item> items(Optional<Yaml.Entries> map) {
        Map<String, Check.Item> items = new LinkedHashMap<>();
        map.ifPresent(m -> m.keys().forEach(k -> m.get(k).flatMap(this::item).ifPresent(i -> items.put(k, i))));
        return items;
    }

    private Optional<Check.Item> item(Yaml.Value value) {
        List<Quantity> amounts = new ArrayList<>();
        List<String> written = new ArrayList<>();
        for (Yaml.Value part : value.items()) {
            Optional<Text> text = part.text();
            if (text.isEmpty()) {
                return Optional.empty();
            }
            written.add(text.get().value());
            Literals.asAmount(text.get()).ifPresent(amounts::add);
        }
        String text = String.join("; ", written);
        if (amounts.isEmpty() && written.size() == 1) {
            String label = text.startsWith("\"") && text.endsWith("\"") && text.length() > 1 ? text.substring(1, text.length() - 1) : text;
            return Optional.of(new Check.Item(List.of(), label, false, text));
        }
        if (amounts.size() != written.size()) {
            issues.add(RULE, value.place(), "'" + text + "' is not a list of amounts", "Such as [1 in, 3 1/2 in]");
            return Optional.empty();
        }
        return Optional.of(new Check.Item(amounts, null, value.isList(), text));
    }

    private void rows(Yaml.Entries map, List<Check> checks, String source, Check.Kind kind, UnitSystem system) {
        Text name = map.text("rows").orElseThrow();
        String path = "checks/" + name.value();
        String text = files.texts().get(path);
        if (text == null) {
            issues.add(RULE, name.place(), "there is no file " + BankFiles.shown(path), "Put it there");
            return;
        }
        Source csv = new Source(BankFiles.shown(path), text);
        TableReader.rows(csv, issues).ifPresent(rows -> {
            for (int r = 0; r < rows.rows().size(); r++) {
                row(csv.at(rows.lines().get(r), 1), rows.head(), rows.rows().get(r), checks, source, kind, system);
            }
        });
    }

    private void row(Place place, List<String> heads, List<String> row, List<Check> checks, String source, Check.Kind kind, UnitSystem system) {
        Map<String, Check.Item> given = new LinkedHashMap<>();
        Map<String, Check.Item> expect = new LinkedHashMap<>();
        Quantity within = null;
        String note = "";
        boolean misprint = false;
        for (int c = 0; c < heads.size() && c < row.size(); c++) {
            Optional<TableReader.Head> head = TableReader.head(heads.get(c), place, issues);
            String cell = row.get(c);
            if (head.isEmpty() || cell.isEmpty()) {
                continue;
            }
            String name = head.get().name();
            if (name.equals("note")) {
                note = cell;
            } else if (name.equals("misprint")) {
                misprint = cell.equals("true");
            } else if (name.equals("within")) {
                within = cell(cell, head.get(), place).filter(i -> i.amounts().size() == 1).map(i -> i.amounts().get(0)).orElse(null);
            } else if (name.startsWith(EXPECT)) {
                String asked = name.substring(EXPECT.length()).trim();
                cell(cell, head.get(), place).ifPresent(i -> expect.put(asked.isEmpty() ? Check.RESULT : asked, i));
            } else {
                cell(cell, head.get(), place).ifPresent(i -> given.put(name, i));
            }
        }
        if (expect.isEmpty()) {
            issues.add(RULE, place, "the row expects nothing", "A column headed: expect name [unit]");
        }
        checks.add(new Check(source, kind, system, given, expect, within, misprint, note, place));
    }

    private Optional<Check.Item> cell(String cell, TableReader.Head head, Place place) {
        if (TableReader.isNumber(cell)) {
            Quantity q = new Quantity(Double.parseDouble(cell), head.unit() == null ? Units.ONE : head.unit());
            return Optional.of(new Check.Item(List.of(q), null, false, cell + (head.unit() == null ? "" : " " + head.unit())));
        }
        Optional<Quantity> amount = Literals.asAmount(new Text(cell + (head.unit() == null ? "" : " " + head.unit()), place, false, true));
        return Optional.of(amount.map(q -> new Check.Item(List.of(q), null, false, cell)).orElse(new Check.Item(List.of(), cell, false, cell)));
    }
}
