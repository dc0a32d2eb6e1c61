package soapstone.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Calls;
import soapstone.expression.Node;
import soapstone.expression.Program;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issue;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Source;
import soapstone.source.Yaml;
import soapstone.source.Text;

/** Reads an exercise file: once for each unit system, and what both share. */
final class ExerciseReader {

    private static final Set<String> KEYS = new TreeSet<>(List.of("title", "skill", "level", "story", "notes", "given", "where",
            "working", "after", "ask", "slips", "without", "ties", "constants", "figure", "consequence", "metric", "checks", "caution"));
    /** Goes up whenever the language gives another value for the same text. */
    static final String LANGUAGE = "language 1";

    private final BankFiles files;
    private final Book book;

    ExerciseReader(BankFiles files, Book book) {
        this.files = files;
        this.book = book;
    }

    /** An exercise and the whole of what its fingerprint covers. */
    record Read(Exercise exercise, String whole) {}

    Optional<Read> read(String id, Source source, Issues issues) {
        Issues own = new Issues();
        Optional<Yaml.Entries> root = Yaml.read(source, own);
        Optional<Read> read = root.flatMap(r -> read(id, source, r.only(KEYS), own));
        // A file with a piece missing is not looked at more closely: what is missing would be told in many ways.
        boolean whole = own.all().stream().noneMatch(i -> i.rule().equals("yaml") || i.rule().equals("missing-key"));
        read.filter(r -> whole).ifPresent(r -> Rules.look(new Draft(r.exercise(), root.orElseThrow(), book), own));
        own.all().stream().distinct().forEach(i -> issues.add(i.rule(), i.place(), i.found(), i.fits()));
        return own.isEmpty() ? read : Optional.empty();
    }

    private Optional<Read> read(String id, Source source, Yaml.Entries root, Issues issues) {
        String title = root.need("title").map(Text::value).orElse("");
        String skill = root.need("skill").map(Text::value).orElse("");
        root.need("story");
        int level = level(root, issues);
        List<String> cautions = cautions(root, issues);
        List<Check> checks = new CheckReader(issues, files, false).read(root);
        List<Exercise.Tie> ties = ties(root, issues);
        Optional<Model> us = model(root, UnitSystem.US, issues);
        Optional<Model> metric = model(root, UnitSystem.METRIC, issues);
        if (us.isEmpty() || metric.isEmpty()) {
            return Optional.empty();
        }
        String whole = whole(source, us.get(), metric.get());
        return Optional.of(new Read(new Exercise(id, title, skill, level, cautions, us.get(), metric.get(), checks, ties, Fingerprint.of(whole)), whole));
    }

    private Optional<Model> model(Yaml.Entries root, UnitSystem system, Issues issues) {
        Issues told = new Issues();
        Optional<Model> model = new ModelReader(root, system, book, told).read();
        for (Issue i : told.all()) {
            issues.add(i.rule(), i.place(), i.found(), i.fits());
        }
        return model;
    }

    private int level(Yaml.Entries root, Issues issues) {
        Optional<Text> text = root.need("level");
        if (text.isPresent() && !List.of("1", "2", "3", "4").contains(text.get().value())) {
            issues.add("level", text.get().place(), "'" + text.get().value() + "' is not a level", "1, 2, 3 or 4");
            return 1;
        }
        return text.map(t -> Integer.parseInt(t.value())).orElse(1);
    }

    private List<String> cautions(Yaml.Entries root, Issues issues) {
        List<String> cautions = new ArrayList<>();
        if (!root.has("caution")) {
            issues.add("caution", root.place(), "the exercise does not say which caution belongs to it", "caution: NAME, or caution: none");
        }
        for (Yaml.Value item : root.items("caution")) {
            item.text().filter(t -> !t.value().equals("none")).ifPresent(t -> {
                if (!book.cautions().containsKey(t.value())) {
                    issues.add("caution", t.place(), "unknown caution '" + t.value() + "'", Near.suggest(t.value(), book.cautions().keySet()));
                }
                cautions.add(t.value());
            });
        }
        return cautions;
    }

    private List<Exercise.Tie> ties(Yaml.Entries root, Issues issues) {
        List<Exercise.Tie> ties = new ArrayList<>();
        for (Yaml.Value item : root.items("ties")) {
            item.map().ifPresent(m -> {
                m.only(Set.of("slips", "because"));
                List<String> names = m.items("slips").stream().flatMap(v -> v.text().stream()).map(Text::value).toList();
                ties.add(new Exercise.Tie(names, m.need("because").map(Text::value).orElse("")));
            });
        }
        return ties;
    }

    /** All that a mark depends on, so that it can be computed again: this text, and every formula and table it reaches. */
    private String whole(Source source, Model... models) {
        StringBuilder whole = new StringBuilder(LANGUAGE).append('\n').append(source.text());
        Set<String> formulas = new TreeSet<>();
        Set<String> called = new TreeSet<>();
        for (Model model : models) {
            for (Node node : nodes(model)) {
                formulas.addAll(Calls.formulas(node, book.bodies()));
                called.addAll(Calls.direct(node));
            }
        }
        for (String name : formulas) {
            whole.append("\n# formula ").append(name).append('\n').append(book.formulaTexts().get(name));
            book.bodies().get(name).lines().forEach(l -> called.addAll(Calls.direct(l.value())));
        }
        for (String name : called) {
            if (book.tables().containsKey(name)) {
                whole.append("\n# table ").append(name).append('\n').append(book.tableTexts().get(name));
            }
        }
        return whole.toString();
    }

    /** The lines of one unit system, which may look into another table than the other's, and the lines that slips put in. */
    private static List<Node> nodes(Model model) {
        Stream<Node> lines = model.program().slots().stream().map(Program.Slot::value).filter(Objects::nonNull);
        Stream<Node> slips = model.slips().stream().flatMap(s -> s.lines().stream()).map(Slip.Swapped::value);
        return Stream.concat(lines, slips).toList();
    }
}
