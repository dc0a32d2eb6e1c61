package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.mark.Verdict;
import soapstone.school.Attempt;
import soapstone.school.Counted;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;

/** A school that an older program kept opens in this one, with all that was in it; one that a newer program kept does not. */
class OldSchoolsTest {

    @TempDir
    private static Path folders;

    /** Schools at the first step of the tables: made as they were then, and one that was kept. */
    static Stream<OldSchools.Address> firstStep() throws IOException {
        OldSchools.Address h2 = OldSchools.folder(Files.createTempDirectory(folders, "made"));
        OldSchools.Address postgres = OldSchools.postgres();
        OldSchools.make(h2, 1);
        OldSchools.make(postgres, 1);
        return Stream.of(h2, postgres, OldSchools.folder(OldSchools.unpack(1, Files.createTempDirectory(folders, "kept"))));
    }

    private static Map<String, List<Map<String, String>>> rows(OldSchools.Address address) throws SQLException {
        try (Connection connection = address.connect()) {
            return OldSchools.rows(connection);
        }
    }

    private static String newest() {
        MigrationInfo[] steps = Flyway.configure().dataSource("jdbc:h2:mem:", "", "").locations(Database.STEPS).load().info().pending();
        return steps[steps.length - 1].getVersion().getVersion();
    }

    @ParameterizedTest
    @MethodSource("firstStep")
    void everyRowIsThereAfterTheStepsSince(OldSchools.Address address) throws SQLException {
        Map<String, List<Map<String, String>>> before = rows(address);
        assertThat(before).hasSizeGreaterThan(20).allSatisfy((table, rows) -> assertThat(rows).as(table).isNotEmpty());
        try (Database database = address.open()) {
            assertThat(database.step()).isEqualTo(newest());
            assertThat(Doctor.look(database).faults()).isEmpty();
        }
        Map<String, List<Map<String, String>>> after = rows(address);
        before.forEach((table, old) -> {
            assertThat(after.get(table)).as(table).hasSameSizeAs(old);
            for (int i = 0; i < old.size(); i++) {
                assertThat(after.get(table).get(i)).as(table).containsAllEntriesOf(old.get(i));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("firstStep")
    void itsRecordsAreReadAndItGoesOn(OldSchools.Address address) {
        try (Database database = address.open()) {
            reads(SqlSchool.of(database));
        }
        try (Database again = address.open()) {
            assertThat(SqlSchool.of(again).people().byLogin("new")).as("it opens a second time").isPresent();
        }
    }

    /** What {@code school-of-step-1.sql} holds, asked for as the pages ask. */
    private static void reads(School school) {
        Person ada = school.people().byLogin("alder-ada").orElseThrow();
        long in = school.classes().byCode("ALDER7").orElseThrow().id();
        assertThat(school.charters().find().orElseThrow().name()).isEqualTo("Alder Street Shop");
        assertThat(school.classes().members(in)).extracting(m -> m.person().shown()).containsExactly("Ada Q.", "Bo T.", "–");
        assertThat(school.classes().sourcedIds(in)).containsOnly(Map.entry(ada.id(), "u-104"));
        Attempt attempt = school.attempts().ofPerson(ada.id()).get(0);
        assertThat(attempt.marks()).extracting(m -> m.typed()).containsExactly("7 5/16\"");
        assertThat(Counted.of(attempt, school.attempts().remarks(attempt.id()))).extracting(c -> c.mark().verdict()).containsExactly(Verdict.NEAR);
        assertThat(school.sheets().whole(attempt.fingerprint()).orElseThrow()).contains("Bolt holes along an angle");
        assertThat(school.signoffs().of(ada.id())).hasSize(1);
        assertThat(school.notes().of(ada.id())).hasSize(1);
        assertThat(school.privacy().erased()).hasSize(1);
        long added = school.people().add(new People.NewPerson(Person.Kind.STUDENT, "New", "new", "x", false, "en"), FilledSchool.NOW).id();
        assertThat(added).as("numbers go on after the old ones").isGreaterThan(5);
    }

    static Stream<OldSchools.Address> newer() throws IOException {
        List<OldSchools.Address> all = new ArrayList<>(List.of(OldSchools.folder(Files.createTempDirectory(folders, "newer")), OldSchools.postgres()));
        all.forEach(a -> a.open().close());
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("newer")
    void aSchoolOfANewerProgramIsRefusedAndLeftAlone(OldSchools.Address address) throws SQLException {
        try (Connection connection = address.connect(); Statement statement = connection.createStatement()) {
            statement.execute("insert into \"flyway_schema_history\" (\"installed_rank\", \"version\", \"description\", \"type\", \"script\", \"checksum\", \"installed_by\", "
                    + "\"execution_time\", \"success\") values (999, '999', 'later', 'SQL', 'V999__later.sql', 1, 'x', 1, true)");
        }
        Map<String, List<Map<String, String>>> before = rows(address);
        assertThatThrownBy(address::open).isInstanceOf(Database.Unusable.class).hasMessageContainingAll("newer Soapstone", "step 999", "restore a backup");
        assertThat(rows(address)).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aBackupOfTheFirstStepIsRestored(String kind, Database database) throws IOException {
        try (database) {
            Backup.Told told = Backup.restore(database, OldSchools.open("backup-of-step-1.zip"));
            assertThat(told.step()).isEqualTo("1");
            assertThat(told.rows()).containsEntry("person", 5L).containsEntry("mark", 1L).containsEntry("draft", 1L);
            assertThat(Doctor.look(database).faults()).isEmpty();
            reads(SqlSchool.of(database));
        }
    }

    @Test
    void theKeptFolderHoldsWhatTheTextOfItsStepSays() throws SQLException, IOException {
        OldSchools.Address made = OldSchools.folder(Files.createTempDirectory(folders, "all"));
        OldSchools.make(made, 1);
        assertThat(rows(made)).containsAllEntriesOf(rows(OldSchools.folder(OldSchools.unpack(1, Files.createTempDirectory(folders, "same")))));
    }
}
