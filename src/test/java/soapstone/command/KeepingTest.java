package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.People;
import soapstone.school.Person;

/** Backing a school up, putting it back, and looking it over, from the command line. */
class KeepingTest {

    @TempDir
    private Path folder;

    private Path school() {
        Path data = folder.resolve("data");
        try (Database database = Databases.h2(data)) {
            SqlSchool.of(database).people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Wren K.", "wren", "encoded", false, "en"), Instant.EPOCH);
        }
        return data;
    }

    @Test
    void aBackupGoesIntoAnEmptyFolder() {
        Path file = folder.resolve("backups/today.zip");
        Shell.Result backup = Shell.run("backup", "--data", school().toString(), "--to", file.toString());
        assertThat(backup.code()).isZero();
        assertThat(backup.out()).startsWith("Backed up 1 people").contains("without a passphrase");
        Path fresh = folder.resolve("fresh");
        Shell.Result restored = Shell.run("restore", "--data", fresh.toString(), "--from", file.toString());
        assertThat(restored.code()).as(restored.err()).isZero();
        try (Database database = Databases.h2(fresh)) {
            assertThat(SqlSchool.of(database).people().byLogin("wren")).isPresent();
        }
        assertThat(Shell.run("restore", "--data", fresh.toString(), "--from", file.toString()).err()).contains("empty data folder");
    }

    @Test
    void whoeverWasErasedInTheOldFolderIsErasedAgain() {
        Path data = school();
        Path file = folder.resolve("today.zip");
        Shell.run("backup", "--data", data.toString(), "--to", file.toString());
        try (Database database = Databases.h2(data)) {
            SqlSchool.of(database).privacy().erase(1, java.util.Optional.empty(), Instant.EPOCH);
        }
        Path fresh = folder.resolve("fresh");
        Shell.Result restored = Shell.run("restore", "--data", fresh.toString(), "--from", file.toString(), "--old-data", data.toString());
        assertThat(restored.out()).contains("Erased again: 1.");
        try (Database database = Databases.h2(fresh)) {
            assertThat(SqlSchool.of(database).people().byLogin("wren")).isEmpty();
        }
    }

    @Test
    void whatIsNoBackupIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("notes.txt"), "not a backup");
        Shell.Result refused = Shell.run("restore", "--data", folder.resolve("fresh").toString(), "--from", file.toString());
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("no backup").doesNotContain("Exception");
        assertThat(Shell.run("restore", "--data", folder.toString(), "--from", folder.resolve("none").toString()).code()).isEqualTo(2);
    }

    @Test
    void theDoctorSaysWhatTheFolderHolds() {
        Shell.Result well = Shell.run("doctor", "--data", school().toString());
        assertThat(well.code()).isZero();
        assertThat(well.out()).contains("1  person").contains("All is well.");
    }

    @Test
    void theDoctorFindsWhatDoesNotFit() {
        Path data = school();
        try (Database database = Databases.h2(data)) {
            database.run(h -> h.execute("update person set password = null"));
        }
        Shell.Result found = Shell.run("doctor", "--data", data.toString());
        assertThat(found.code()).isEqualTo(1);
        assertThat(found.out()).contains("Not well: 1 people who can sign in have no password.");
    }

    @Test
    void withoutASchoolItSaysWhatToName() {
        assertThat(Shell.run("doctor").err()).contains("--data DIR or --database URL");
        Shell.Result none = Shell.run("doctor", "--data", folder.toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("There is no school in");
    }
}
