package soapstone.bank;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Caution;
import soapstone.exercise.Convention;
import soapstone.exercise.Exercise;
import soapstone.exercise.Family;
import soapstone.exercise.Formula;
import soapstone.exercise.Table;
import soapstone.expression.Calls;
import soapstone.source.Issues;
import soapstone.source.Source;
import soapstone.source.Yaml;
import soapstone.source.Text;

/**
 * Reads a whole bank: families and cautions, conventions, tables, the formula book, exercises. Every fault of every file is an issue;
 * with any issue there is no bank.
 */
public final class BankReader {

    private static final String FORMULAS = "formulas/";
    private static final String TABLES = "tables/";
    private static final String CHECKS = "checks/";
    private static final String CONVENTIONS = "conventions.yaml";

    private final BankFiles files;
    private final Workers workers;
    private final boolean kept;
    private final Issues issues = new Issues();

    private BankReader(BankFiles files, Workers workers, boolean kept) {
        this.files = files;
        this.workers = workers;
        this.kept = kept;
    }

    /** A bank, or why there is none. */
    public record Result(Optional<Bank> bank, Issues issues) {}

    public static Result read(BankFiles files) {
        return read(files, Workers.ONE);
    }

    /** @param workers read the exercises, which do not need each other */
    public static Result read(BankFiles files, Workers workers) {
        return new BankReader(files, workers, false).result();
    }

    /** What was read before and kept: the conventions that it follows need not stand in the files. */
    static Result readKept(BankFiles files) {
        return new BankReader(files, Workers.ONE, true).result();
    }

    private Result result() {
        Bank bank = bank();
        return new Result(issues.isEmpty() ? Optional.of(bank) : Optional.empty(), issues);
    }

    /** What of a bank can be read, leaving out exercises with faults: for an author who is at work on the others. */
    public static Bank partial(BankFiles files) {
        return new BankReader(files, Workers.ONE, false).bank();
    }

    private Bank bank() {
        Map<String, Family> families = families();
        Map<String, Caution> cautions = cautions();
        Map<String, Convention> conventions = conventions();
        Map<String, String> tableTexts = new HashMap<>();
        Map<String, Table> tables = tables(tableTexts);
        FormulaReader formulaReader = new FormulaReader(issues, files);
        files.texts().forEach((path, text) -> {
            if (path.startsWith(FORMULAS) && isYaml(path)) {
                String topic = path.substring(FORMULAS.length(), path.lastIndexOf('.'));
                Yaml.read(source(path), issues).ifPresent(file -> formulaReader.collect(topic, file));
            }
        });
        Map<String, Formula> formulas = formulaReader.finish(tables, families.keySet(), cautions.keySet());
        Book book = new Book(formulas, formulaReader.bodies(), formulaReader.texts(), tables, tableTexts, families, cautions,
                kept ? Optional.empty() : Optional.of(conventions));
        Map<String, Exercise> exercises = new LinkedHashMap<>();
        Map<String, String> wholes = new LinkedHashMap<>();
        exercises(book, exercises, wholes);
        return new Bank(exercises, formulas, tables, families, cautions, conventions, wholes);
    }

    private Source source(String path) {
        return new Source(BankFiles.shown(path), files.texts().get(path));
    }

    private static boolean isYaml(String path) {
        return path.endsWith(".yaml");
    }

    private Map<String, Family> families() {
        Map<String, Family> families = new LinkedHashMap<>();
        file("slips.yaml").ifPresent(file -> file.keys().forEach(name -> file.map(name).ifPresent(m -> {
            m.only(Set.of("title", "says", "lesson"));
            families.put(name, new Family(name, m.need("title").map(Text::value).orElse(""), m.need("says").map(Text::value).orElse(""),
                    m.string("lesson", "")));
        })));
        return families;
    }

    private Map<String, Caution> cautions() {
        Map<String, Caution> cautions = new LinkedHashMap<>();
        file("cautions.yaml").ifPresent(file -> file.keys().forEach(name -> file.map(name).ifPresent(m -> {
            m.only(Set.of("title", "says"));
            cautions.put(name, new Caution(name, m.need("title").map(Text::value).orElse(""), m.need("says").map(Text::value).orElse("")));
        })));
        return cautions;
    }

    /** A bank whose exercises follow none needs no such file. */
    private Map<String, Convention> conventions() {
        Map<String, Convention> conventions = new LinkedHashMap<>();
        if (files.texts().containsKey(CONVENTIONS)) {
            ConventionReader reader = new ConventionReader(issues);
            file(CONVENTIONS).ifPresent(file -> file.keys().forEach(name -> reader.read(name, file).ifPresent(c -> conventions.put(name, c))));
        }
        return conventions;
    }

    private Optional<Yaml.Entries> file(String path) {
        if (!files.texts().containsKey(path)) {
            issues.add("bank", new Source(BankFiles.shown(path), "").at(1, 1), "the bank has no " + path, "Every bank has one");
            return Optional.empty();
        }
        return Yaml.read(source(path), issues);
    }

    private Map<String, Table> tables(Map<String, String> texts) {
        Map<String, Table> tables = new LinkedHashMap<>();
        files.texts().forEach((path, text) -> {
            if (path.startsWith(TABLES) && path.endsWith(".csv")) {
                String name = path.substring(TABLES.length(), path.length() - ".csv".length()).replace('-', '_');
                Optional<String> fault = Names.fault(name);
                if (fault.isPresent() || Calls.isFunction(name)) {
                    issues.add("table", source(path).at(1, 1), fault.orElse("'" + name + "' is a function of the language") + ", so it can't be a table",
                            "Take another word");
                }
                new TableReader(source(path), issues).read(name).ifPresent(t -> tables.put(name, t));
                texts.put(name, text);
            }
        });
        return tables;
    }

    /** One exercise file, read apart from the others; its issues wait until those of the files before it are told. */
    private final class Piece implements Runnable {
        private final String id;
        private final Source source;
        private final ExerciseReader reader;
        private final Issues own = new Issues();
        private Optional<ExerciseReader.Read> read = Optional.empty();

        Piece(String path, ExerciseReader reader) {
            this.id = path.substring(0, path.length() - ".yaml".length());
            this.source = source(path);
            this.reader = reader;
        }

        @Override
        public void run() {
            read = reader.read(id, source, own);
        }
    }

    private void exercises(Book book, Map<String, Exercise> exercises, Map<String, String> wholes) {
        ExerciseReader reader = new ExerciseReader(files, book);
        List<Piece> pieces = files.texts().keySet().stream().filter(BankReader::isExercise).map(path -> new Piece(path, reader)).toList();
        workers.all(List.copyOf(pieces));
        for (Piece piece : pieces) {
            issues.addAll(piece.own);
            piece.read.ifPresent(r -> {
                exercises.put(piece.id, r.exercise());
                wholes.put(piece.id, r.whole());
            });
        }
    }

    private static boolean isExercise(String path) {
        return isYaml(path) && path.indexOf('/') > 0 && !path.startsWith(FORMULAS) && !path.startsWith(TABLES) && !path.startsWith(CHECKS);
    }
}
