package soapstone.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.record.Backup;
import soapstone.record.BackupFile;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.Privacy;

/** Puts a backup into an empty school. */
@Command(name = "restore", mixinStandardHelpOptions = true, description = {"Put a backup into an empty data folder or database.",
    "A sealed one is opened with the passphrase in the environment variable SOAPSTONE_BACKUP_PASSPHRASE. Everybody signs in anew afterwards."})
final class RestoreCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SchoolOptions school;

    @Option(names = "--from", paramLabel = "FILE", required = true, description = "The backup.")
    private Path file;

    @Option(names = "--old-data", paramLabel = "DIR", description = "The data folder that was used until now: whoever was erased in it is erased again.")
    private Path old;

    private static List<Privacy.Erased> erased(Path folder) {
        if (!Files.exists(folder.resolve("school.mv.db"))) {
            throw Refusal.usage("There is no school in '" + folder + "'.");
        }
        try (Database database = Database.inFolder(folder)) {
            return SqlSchool.of(database).privacy().erased();
        } catch (Database.Unusable e) {
            throw Refusal.failed(e.getMessage());
        }
    }

    @Override
    public Integer call() {
        if (!Files.isReadable(file)) {
            throw Refusal.usage("There is no backup '" + file + "' that can be read.");
        }
        List<Privacy.Erased> erased = old == null ? List.of() : erased(old);
        try (Database database = school.open(true)) {
            Backup.Told told = BackupFile.restore(database, file, SchoolOptions.passphrase());
            int again = SqlSchool.of(database).privacy().eraseAgain(erased);
            spec.commandLine().getOut().println("Restored " + BackupCommand.told(told) + " as they were at " + told.taken() + "."
                    + (again > 0 ? " Erased again: " + again + "." : ""));
            return 0;
        } catch (Backup.Unreadable e) {
            throw Refusal.failed(e.getMessage());
        } catch (IOException e) {
            throw Refusal.failed("The backup '" + file + "' cannot be read: " + e.getMessage() + ".");
        }
    }
}
