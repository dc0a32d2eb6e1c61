package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.files.SecurityLog;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Retention;
import soapstone.school.Retentions;
import soapstone.school.School;

/** What has been kept long enough goes away by itself: once a day, and students only where the keeper wants it so. */
class DailyWorkTest {

    private static final Instant MADE = Instant.parse("2025-03-16T07:00:00Z");
    /** The year of the last work ended in July 2025, and one more in July 2026. */
    private static final Instant LATER = Instant.parse("2026-08-10T12:00:00Z");
    private static final Retentions.Rule ON = new Retentions.Rule(MonthDay.of(7, 31), true);

    @TempDir
    private Path folder;

    private final StringWriter told = new StringWriter();

    private static void add(School school, String login) {
        school.people().add(new People.NewPerson(Person.Kind.STUDENT, "Seat " + login, login, null, false, "en"), MADE);
    }

    private void once(School school, Instant now) {
        DailyWork.once(school, SecurityLog.in(folder), now, new PrintWriter(told, true));
    }

    @Test
    @DisplayName("Rule 8: nobody is erased by a program that nobody told to")
    void itIsOffAtFirst() {
        try (Database database = Databases.h2()) {
            School school = SqlSchool.of(database);
            add(school, "seat1");
            once(school, LATER);
            assertThat(school.privacy().erased()).isEmpty();
            assertThat(Retention.over(school, LATER, ZoneId.of("UTC"))).extracting(Person::login).containsExactly("seat1");
            assertThat(told.toString()).isEmpty();
        }
    }

    @Test
    @DisplayName("Rule 8: where the keeper wants it, each day those whose time is over are erased, and it is written down how many")
    void oncePerDay() {
        try (Database database = Databases.h2()) {
            School school = SqlSchool.of(database);
            add(school, "seat1");
            school.retentions().write(ON, LATER);
            once(school, LATER.minusSeconds(1));
            assertThat(school.privacy().erased()).as("not before the day of grace is over").isEmpty();
            once(school, LATER);
            assertThat(school.privacy().erased()).hasSize(1);
            assertThat(told.toString().strip()).isEqualTo("Students erased whose time was over: 1.");
            assertThat(school.audit().latest(9)).singleElement().satisfies(e -> {
                assertThat(e.act()).isEqualTo(Retention.ERASED);
                assertThat(e.by()).as("the program").isEmpty();
                assertThat(e.aboutPerson()).isEmpty();
                assertThat(e.detail()).isEqualTo("1");
            });
            add(school, "seat2");
            once(school, LATER.plusSeconds(3600));
            assertThat(school.privacy().erased()).as("the same day").hasSize(1);
            once(school, LATER.plusSeconds(24 * 3600));
            assertThat(school.privacy().erased()).as("the next day").hasSize(2);
            once(school, LATER.plusSeconds(48 * 3600));
            assertThat(school.audit().latest(9)).as("a day without anybody is no entry").hasSize(2);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void ofSeveralProgramsAtTheSameMomentOneDoesIt(String kind, Database database) throws Exception {
        ExecutorService programs = Executors.newFixedThreadPool(8);
        try (database) {
            School school = SqlSchool.of(database);
            add(school, "seat1");
            school.retentions().write(ON, LATER);
            List<Future<Integer>> erased = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                erased.add(programs.submit(() -> Retention.byItself(SqlSchool.of(database), LATER, ZoneId.of("UTC"))));
            }
            int all = 0;
            for (Future<Integer> one : erased) {
                all += one.get();
            }
            assertThat(all).isEqualTo(1);
            assertThat(school.audit().latest(Retention.ERASED, 9)).hasSize(1);
        } finally {
            programs.shutdownNow();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theRuleIsKeptAndSwitchedOffAgain(String kind, Database database) {
        try (database) {
            School school = SqlSchool.of(database);
            assertThat(school.retentions().rule()).isEqualTo(Retentions.Rule.USUAL);
            Retentions.Rule june = new Retentions.Rule(MonthDay.of(6, 15), true);
            school.retentions().write(june, LATER);
            assertThat(school.retentions().rule()).isEqualTo(june);
            school.retentions().write(new Retentions.Rule(MonthDay.of(6, 15), false), LATER);
            assertThat(school.retentions().take(LATER.plusSeconds(1), LATER.plusSeconds(2))).isFalse();
        }
    }

    @Test
    @DisplayName("Rule 8: lines of the log go after 30 days, also where nothing new is written")
    void theLogIsTidiedWithoutANewLine() throws Exception {
        SecurityLog.in(folder).note(LATER, "sign-in", "about", "1");
        SecurityLog.in(folder).note(LATER.plusSeconds(24 * 3600), "sign-in", "about", "2");
        try (Database database = Databases.h2()) {
            School school = SqlSchool.of(database);
            once(school, LATER.plusSeconds(30 * 24 * 3600L));
            assertThat(Files.readString(folder.resolve(SecurityLog.FILE))).contains("about=1").contains("about=2");
            once(school, LATER.plusSeconds(31 * 24 * 3600L - 1));
            assertThat(Files.readString(folder.resolve(SecurityLog.FILE))).doesNotContain("about=1").contains("about=2");
        }
    }

    @Test
    void aSchoolWithoutALogIsTidiedAsWell() {
        try (Database database = Databases.h2()) {
            School school = SqlSchool.of(database);
            once(school, LATER);
            assertThat(folder).isEmptyDirectory();
            assertThat(told.toString()).isEmpty();
        }
    }
}
