package soapstone.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Option;
import soapstone.bank.Bank;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;
import soapstone.files.AllCores;
import soapstone.files.Folder;
import soapstone.source.Near;

/** Where the exercises and lessons are. */
final class BankOptions {

    private static final String[] BANK_ENDINGS = {".yaml", ".csv"};

    private static final String[] LESSON_ENDINGS = {".md", ".yaml"};

    @Option(names = "--bank", paramLabel = "DIR", description = "Folder of the exercise bank; without it the one that comes with the program.")
    private Path bank;

    @Option(names = "--lessons", paramLabel = "DIR", description = "Folder of the lessons; without it those beside the bank, or those that come with the program.")
    private Path lessons;

    private Bank read;
    private Optional<CompletableFuture<Library.Result>> ahead = Optional.empty();

    /** Takes what is being read already of bank and lessons that come with the program. */
    void ahead(Optional<CompletableFuture<Library.Result>> reading) {
        ahead = reading;
    }

    /** Takes a folder that was given in another way; lessons that lie beside it belong to it. */
    void bank(Path folder) {
        bank = folder;
    }

    /** Whether it is known which lessons belong to the bank. */
    boolean hasLessons() {
        return lessons != null || bank == null || Files.isDirectory(beside());
    }

    private Path lessonFolder() {
        return lessons == null && bank != null ? beside() : lessons;
    }

    private Path beside() {
        return bank.toAbsolutePath().normalize().resolveSibling("lessons");
    }

    BankFiles files() {
        try {
            return new BankFiles(bank == null ? Folder.builtIn("exercise-bank", BANK_ENDINGS) : Folder.read(bank, BANK_ENDINGS));
        } catch (IOException e) {
            throw Refusal.usage("The bank cannot be read: " + e.getMessage() + ". Name its folder with --bank DIR.");
        }
    }

    Map<String, String> lessonFiles() {
        try {
            Path folder = lessonFolder();
            return folder == null ? Folder.builtIn("lessons", LESSON_ENDINGS) : Folder.read(folder, LESSON_ENDINGS);
        } catch (IOException e) {
            throw Refusal.usage("The lessons cannot be read: " + e.getMessage() + ". Name their folder with --lessons DIR.");
        }
    }

    /** The folders that are read, without those inside of the program. */
    List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        if (bank != null) {
            folders.add(bank);
        }
        if (lessonFolder() != null) {
            folders.add(lessonFolder());
        }
        return folders;
    }

    /** Bank and lessons together. */
    Library.Result library() {
        if (!hasLessons()) {
            throw Refusal.usage("The lessons that belong to the bank " + bank + " are not beside it; name their folder with --lessons DIR.");
        }
        if (ahead.isPresent() && folders().isEmpty()) {
            return ahead.get().join();
        }
        try {
            return Library.read(bank, lessonFolder());
        } catch (IOException e) {
            throw Refusal.usage("Bank or lessons cannot be read: " + e.getMessage() + ". Name their folders with --bank DIR and --lessons DIR.");
        }
    }

    /** The library, which must be without issues. */
    Library goodLibrary() {
        Library.Result result = library();
        return result.library().orElseThrow(() -> Refusal.failed("There are " + result.issues().size()
                + " issues in the bank or its lessons; 'soapstone check' lists them."));
    }

    /** What was said of bank and lessons, to say it again to another process. */
    List<String> asOptions() {
        List<String> options = new ArrayList<>();
        if (bank != null) {
            options.addAll(List.of("--bank", bank.toString()));
        }
        if (lessons != null) {
            options.addAll(List.of("--lessons", lessons.toString()));
        }
        return options;
    }

    /** The bank; of one with issues what can be read, so that an author can try one exercise while others are unfinished. */
    Bank usable() {
        if (read == null) {
            BankFiles files = files();
            read = BankReader.read(files, new AllCores()).bank().orElseGet(() -> BankReader.partial(files));
        }
        return read;
    }

    Exercise exercise(String id) {
        Bank all = usable();
        Optional<Exercise> exercise = all.exercise(id);
        if (exercise.isPresent()) {
            return exercise.get();
        }
        String path = id + ".yaml";
        if (files().texts().containsKey(path)) {
            throw Refusal.failed("The exercise '" + id + "' has issues, so it cannot be used; 'soapstone check' lists them.");
        }
        throw Refusal.usage(("There is no exercise '" + id + "'. " + near(id, List.copyOf(all.exercises().keySet()))).strip());
    }

    /** Near names, also of whoever left the folder out. */
    static String near(String id, List<String> known) {
        List<String> sameEnd = known.stream().filter(k -> k.endsWith("/" + id)).toList();
        return sameEnd.isEmpty() ? Near.suggest(id, known) : "Did you mean " + String.join(" or ", sameEnd) + "?";
    }
}
