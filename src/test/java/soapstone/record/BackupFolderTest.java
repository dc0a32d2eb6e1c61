package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One backup a day, and only so many of them. */
class BackupFolderTest {

    private static final Instant NOW = Instant.parse("2027-02-26T23:30:00Z");

    @TempDir
    private Path folder;

    @Test
    void eachDayHasOneAndTheOldestGo() throws Exception {
        Path other = Files.writeString(folder.resolve("notes.txt"), "mine");
        try (Database database = Databases.h2()) {
            new FilledSchool(database, 1);
            BackupFolder backups = new BackupFolder(folder, "", 3);
            assertThat(backups.newest()).isEmpty();
            for (int day = 0; day < 5; day++) {
                assertThat(backups.takeIfDue(database, NOW.plus(Duration.ofDays(day)))).isTrue();
                assertThat(backups.takeIfDue(database, NOW.plus(Duration.ofDays(day)).plusSeconds(60))).isFalse();
            }
            assertThat(backups.newest()).contains(folder.resolve("school-2027-03-02.zip"));
        }
        assertThat(folder).isDirectoryContaining(p -> p.equals(other));
        try (var files = Files.list(folder)) {
            assertThat(files.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("notes.txt", "school-2027-02-28.zip", "school-2027-03-01.zip",
                    "school-2027-03-02.zip");
        }
    }

    @Test
    void withAPassphraseTheyAreSealedAndOpenAgain() throws Exception {
        try (Database database = Databases.h2(); Database fresh = Databases.h2()) {
            new FilledSchool(database, 1);
            BackupFolder backups = new BackupFolder(folder, "four plain words here", 3);
            backups.takeIfDue(database, NOW);
            Path sealed = backups.newest().orElseThrow();
            assertThat(sealed.getFileName().toString()).endsWith(".sealed");
            assertThat(BackupFile.restore(fresh, sealed, "four plain words here").rows()).containsEntry("person", 2L);
        }
    }
}
