package soapstone.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import soapstone.record.Backup;
import soapstone.record.BackupFile;
import soapstone.record.Database;

/** Writes all that a school keeps to one file. */
@Command(name = "backup", mixinStandardHelpOptions = true, description = {"Write all that a school keeps to one file.",
    "Sealed with the passphrase in the environment variable SOAPSTONE_BACKUP_PASSPHRASE, if it is set. A data folder that a running site has open cannot be read "
            + "by a second program: that site makes backups by itself."})
final class BackupCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private SchoolOptions school;

    @Option(names = "--to", paramLabel = "FILE", required = true, description = "The file to write; an older one of that name is replaced when the new one is whole.")
    private Path file;

    @Override
    public Integer call() {
        try (Database database = school.open(false)) {
            Backup.Told told = BackupFile.write(database, file, SchoolOptions.passphrase(), Instant.now());
            spec.commandLine().getOut().println("Backed up " + told(told) + " to " + file + (SchoolOptions.passphrase().isEmpty() ? ", without a passphrase." : ", sealed."));
            return 0;
        } catch (IOException e) {
            throw Refusal.failed("The backup cannot be written to '" + file + "': " + e.getMessage() + ".");
        }
    }

    static String told(Backup.Told told) {
        return told.rows().get("person") + " people, " + told.rows().get("class") + " classes and " + told.rows().get("attempt") + " attempts";
    }
}
