package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Privacy;

/** One person's rows come out whole, and go away so that nobody is known by what stays. */
class SqlPrivacyTest {

    /** A rule of the standard on privacy of minors: what an account may hold at most. */
    private static final Set<String> OF_A_PERSON = Set.of("id", "kind", "shown", "login", "password", "must_change", "factor", "factor_step", "language", "disabled", "created");

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void anAccountHoldsNoMoreThanItHasTo(String kind, Database database) {
        try (database) {
            List<String> columns = database.read(h -> h.createQuery("select lower(column_name) from information_schema.columns where lower(table_name) = 'person' "
                    + "and lower(table_schema) = 'public'").mapTo(String.class).list());
            assertThat(new TreeSet<>(columns)).isEqualTo(new TreeSet<>(OF_A_PERSON));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void everythingAboutOnePersonComesOutAndNothingSecret(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 3);
            Map<String, List<Map<String, Object>>> all = f.school.privacy().everything(f.student.id());
            assertThat(all.get("person")).hasSize(1);
            assertThat(all.get("person").get(0)).containsEntry("shown", "Ada Q. 3").doesNotContainKeys("password", "factor");
            assertThat(all.get("mark")).hasSize(1);
            assertThat(all.get("mark").get(0)).containsEntry("typed", FilledSchool.HARD);
            assertThat(all.get("remark")).hasSize(1);
            assertThat(all.get("draft")).hasSize(1);
            assertThat(all.get("audit")).hasSize(1);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void anErasedPersonIsNobodyAndTheFiguresOfTheClassStay(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 3);
            assertThat(f.school.privacy().wouldGo(f.student.id())).containsEntry("draft", 1L).containsEntry("attempt", 1L);
            f.school.privacy().erase(f.student.id(), Optional.empty(), FilledSchool.NOW);
            Person nobody = f.school.people().find(f.student.id()).orElseThrow();
            assertThat(nobody.shown()).isEqualTo("–");
            assertThat(nobody.disabled()).isTrue();
            assertThat(f.school.people().byLogin("seat3")).isEmpty();
            assertThat(f.school.people().password(f.student.id())).isEmpty();
            assertThat(f.school.classes().member(f.schoolClass.id(), f.student.id()).orElseThrow().state()).isEqualTo(Member.State.LEFT);
            assertThat(f.school.attempts().ofAssignment(f.school.assignments().of(f.schoolClass.id()).get(0).id())).hasSize(3);
            assertThat(Doctor.look(database).faults()).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aRestoredBackupErasesThemAgain(String kind, Database database) throws IOException {
        try (database; Database fresh = Databases.h2()) {
            FilledSchool f = new FilledSchool(database, 3);
            ByteArrayOutputStream before = new ByteArrayOutputStream();
            Backup.write(database, before, FilledSchool.NOW);
            f.school.privacy().erase(f.student.id(), Optional.empty(), FilledSchool.NOW);
            List<Privacy.Erased> erased = f.school.privacy().erased();
            Backup.restore(fresh, new ByteArrayInputStream(before.toByteArray()));
            Privacy restored = SqlSchool.of(fresh).privacy();
            assertThat(SqlSchool.of(fresh).people().byLogin("seat3")).isPresent();
            assertThat(restored.eraseAgain(erased)).isEqualTo(1);
            assertThat(restored.erased()).isEqualTo(erased);
            assertThat(SqlSchool.of(fresh).people().byLogin("seat3")).isEmpty();
            assertThat(restored.eraseAgain(erased)).isZero();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theRetentionRuleFindsThoseWhoAreLongGone(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 3);
            assertThat(f.school.privacy().idleSince(FilledSchool.NOW.plus(Duration.ofDays(400)))).as("the class is open").isEmpty();
            f.school.classes().setArchived(f.schoolClass.id(), Optional.of(FilledSchool.NOW));
            assertThat(f.school.privacy().idleSince(FilledSchool.NOW)).as("they handed in then").isEmpty();
            assertThat(f.school.privacy().idleSince(FilledSchool.NOW.plusSeconds(1))).hasSize(3);
        }
    }
}
