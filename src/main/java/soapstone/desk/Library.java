package soapstone.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import soapstone.bank.Bank;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.expression.Calls;
import soapstone.expression.FormulaBody;
import soapstone.expression.Program;
import soapstone.files.AllCores;
import soapstone.files.Folder;
import soapstone.lesson.Course;
import soapstone.lesson.CourseReader;
import soapstone.page.Recent;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.source.Issue;

/**
 * A bank and its course, read together, and what is looked up in both again and again.
 *
 * @param bodies  formulas as the language knows them, by name
 * @param reached filled as pages ask
 */
public record Library(Bank bank, Course course, Map<String, FormulaBody> bodies, Reached reached) {

    /** What each exercise reaches, found when it is first asked for: every page asks. */
    record Reached(Map<String, List<Formula>> formulas, Map<String, List<String>> tables, Recent<SheetAddress, SheetView> sheets,
            Map<String, Optional<KindBook.Draws>> draws) {

        private static final int MOST_SHEETS = 200;

        Reached() {
            this(new ConcurrentHashMap<>(), new ConcurrentHashMap<>(), new Recent<>(MOST_SHEETS), new ConcurrentHashMap<>());
        }
    }

    /** What a link to a sheet names, and the language of the words in its drawing. */
    record SheetAddress(String exercise, SheetKey key, String language) {}

    private static final String[] BANK_FILES = {".yaml", ".csv"};
    private static final String[] LESSON_FILES = {".md", ".yaml"};

    /** A library, or every fault for which there is none. */
    public record Result(Optional<Library> library, List<Issue> issues) {}

    /**
     * Reads a bank and lessons from folders, or those that come with the program where a folder is null.
     *
     * @throws IOException with a sentence, when a folder is not there
     */
    public static Result read(Path bankFolder, Path lessonFolder) throws IOException {
        Map<String, String> bankTexts = bankFolder == null ? Folder.builtIn("exercise-bank", BANK_FILES) : Folder.read(bankFolder, BANK_FILES);
        BankReader.Result bank = BankReader.read(new BankFiles(bankTexts), new AllCores());
        if (bank.bank().isEmpty()) {
            return new Result(Optional.empty(), bank.issues().all());
        }
        Map<String, String> lessonTexts = lessonFolder == null ? Folder.builtIn("lessons", LESSON_FILES) : Folder.read(lessonFolder, LESSON_FILES);
        CourseReader.Result course = CourseReader.read(lessonTexts, bank.bank().get());
        return new Result(course.course().map(c -> of(bank.bank().get(), c)), course.issues().all());
    }

    public static Library of(Bank bank, Course course) {
        Map<String, FormulaBody> bodies = new HashMap<>();
        bank.formulas().forEach((name, formula) -> bodies.put(name, formula.body()));
        return new Library(bank, course, Map.copyOf(bodies), new Reached());
    }

    /** The formulas that an exercise's lines call, in the book's order. */
    public List<Formula> formulasOf(Exercise exercise) {
        return reached.formulas().computeIfAbsent(exercise.id(),
                id -> bank.formulas().values().stream().filter(f -> calls(exercise, f.name())).toList());
    }

    private boolean calls(Exercise exercise, String formula) {
        return exercise.us().program().slots().stream().map(Program.Slot::value)
                .anyMatch(v -> v != null && Calls.formulas(v, bodies).contains(formula));
    }

    /** The tables that an exercise looks into itself; a value of its own may have a table's name. */
    public List<String> tablesOf(Exercise exercise) {
        return reached.tables().computeIfAbsent(exercise.id(), id -> findTables(exercise));
    }

    private List<String> findTables(Exercise exercise) {
        Program program = exercise.us().program();
        return bank.tables().keySet().stream().filter(t -> program.find(t) < 0).filter(t -> program.slots().stream().map(Program.Slot::value)
                .anyMatch(v -> v != null && Calls.direct(v).contains(t))).toList();
    }

    public List<String> tablesOf(Formula formula) {
        return bank.tables().keySet().stream().filter(t -> formula.body().takes().stream().noneMatch(takes -> takes.name().equals(t)))
                .filter(t -> formula.body().lines().stream().anyMatch(l -> Calls.direct(l.value()).contains(t))).toList();
    }
}
