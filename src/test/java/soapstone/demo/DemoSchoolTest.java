package soapstone.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.desk.Library;
import soapstone.mark.Verdict;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.Doctor;
import soapstone.record.SqlSchool;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;

/** The invented school holds what an instructor would find after four weeks. */
class DemoSchoolTest {

    private static final Instant NOW = Instant.parse("2027-10-05T11:00:00Z");
    private static Database database;
    private static School school;
    private static Bank bank;

    @BeforeAll
    static void fill() throws IOException {
        database = Databases.h2();
        school = SqlSchool.of(database);
        bank = Library.read(null, null).library().orElseThrow().bank();
        DemoSchool.fill(school, bank, NOW, 1);
    }

    @AfterAll
    static void close() {
        database.close();
    }

    private static List<SchoolClass> classes() {
        return school.people().all(Person.Kind.INSTRUCTOR).stream().flatMap(p -> school.classes().taughtBy(p.id()).stream()).toList();
    }

    private static List<Attempt> attempts() {
        return classes().stream().flatMap(c -> school.assignments().of(c.id()).stream()).flatMap(a -> school.attempts().ofAssignment(a.id()).stream()).toList();
    }

    @Test
    void thereAreTwoClassesOf24AndFourWeeksOfWork() {
        assertThat(classes()).hasSize(2);
        for (SchoolClass c : classes()) {
            assertThat(school.classes().members(c.id())).hasSize(24);
            List<Assignment> given = school.assignments().of(c.id());
            assertThat(given).hasSize(4);
            given.forEach(a -> assertThat(a.tasks()).allSatisfy(t -> assertThat(bank.exercise(t.exercises().get(0))).as(t.exercises().get(0)).isPresent()));
        }
        assertThat(school.people().all(Person.Kind.STUDENT)).extracting(Person::shown).doesNotHaveDuplicates().hasSize(48);
    }

    @Test
    void nothingWasHandedInAfterNow() {
        assertThat(attempts()).hasSizeGreaterThan(500).allSatisfy(a -> assertThat(a.handedIn()).isBeforeOrEqualTo(NOW));
    }

    @Test
    void everybodyHasOwnNumbers() {
        for (SchoolClass c : classes()) {
            for (Assignment a : school.assignments().of(c.id())) {
                Set<String> seen = new HashSet<>();
                school.sheets().all(a.id()).forEach(s -> s.problems().forEach(p -> assertThat(seen.add(p.exercise() + p.seed())).isTrue()));
            }
        }
    }

    @Test
    void mostAnswersAreRightAndEachVerdictIsThere() {
        Map<Verdict, Integer> counts = new HashMap<>();
        attempts().forEach(a -> a.marks().forEach(m -> counts.merge(m.verdict(), 1, Integer::sum)));
        int all = counts.values().stream().mapToInt(Integer::intValue).sum();
        int right = counts.getOrDefault(Verdict.RIGHT, 0);
        assertThat(right).isBetween(all / 2, all * 9 / 10);
        assertThat(counts).containsKeys(Verdict.SLIP, Verdict.UNEXPLAINED, Verdict.BLANK, Verdict.CARRIED);
    }

    @Test
    void someMistakeIsMadeByASixthOfAClassAtLeast() {
        for (SchoolClass c : classes()) {
            Map<String, Set<Long>> who = new HashMap<>();
            for (Assignment a : school.assignments().of(c.id())) {
                Map<Long, Long> persons = new HashMap<>();
                school.sheets().all(a.id()).forEach(s -> s.problems().forEach(p -> persons.put(p.id(), s.person())));
                for (Attempt attempt : school.attempts().ofAssignment(a.id())) {
                    for (AnswerMark m : attempt.marks()) {
                        m.families().forEach(f -> who.computeIfAbsent(f, k -> new HashSet<>()).add(persons.get(attempt.problem())));
                    }
                }
            }
            assertThat(who.values().stream().mapToInt(Set::size).max().orElse(0)).as(c.name()).isGreaterThanOrEqualTo(4);
        }
    }

    @Test
    void theSameSeedMakesTheSameSchool() {
        try (Database other = Databases.h2()) {
            DemoSchool.fill(SqlSchool.of(other), bank, NOW, 1);
            assertThat(Doctor.look(other).holds()).isEqualTo(Doctor.look(database).holds());
        }
    }
}
