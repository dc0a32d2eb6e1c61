package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.ClassSettings;
import soapstone.school.MarkBook;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.Work;

/** Answers read by assignment, class and student, on both databases: all of these, and nobody else's. */
class SqlMarkBookTest {

    private static final Instant NOW = Instant.parse("2027-03-14T07:30:00Z");

    /** Two classes with two assignments and two students each; everybody has a sheet of two problems. */
    private static final class Two {

        final School school;
        final Person instructor;
        int made;

        Two(Database database) {
            school = SqlSchool.of(database);
            instructor = person(Person.Kind.INSTRUCTOR);
        }

        Person person(Person.Kind kind) {
            return school.people().add(new People.NewPerson(kind, "Person " + ++made, "p" + made, "", false, "en"), NOW);
        }

        SchoolClass aClass() {
            return school.classes().add("Sheet metal", "Spring", "CODE" + ++made, ClassSettings.USUAL, instructor.id(), NOW);
        }

        Assignment assignment(SchoolClass in) {
            return school.assignments().add(new Assignment(0, in.id(), "Holes", Assignment.State.GIVEN, NOW, Optional.empty(), Assignment.Late.TAKEN, 3,
                    Assignment.Shows.MISTAKE, true, instructor.id(), NOW, Optional.empty(), List.of(new Assignment.Task(0, 1, List.of("spacing/bolt-holes"), 1, 1),
                    new Assignment.Task(0, 2, List.of("bends/setback"), 1, 2))), List.of());
        }

        Sheet sheet(Assignment of, Person student) {
            List<Sheets.Dealt> dealt = of.tasks().stream().map(t -> new Sheets.Dealt(t.id(), t.place(), t.exercises().get(0), ++made, UnitSystem.US, "print1",
                    t.points())).toList();
            return school.sheets().deal(of.id(), student.id(), "N" + ++made, dealt, NOW);
        }

        Attempt hand(Problem problem, String fingerprint, AnswerMark... marks) {
            Attempts.Handed handed = new Attempts.Handed(problem.id(), "receipt" + ++made, NOW, false, Attempt.Way.SCREEN, "0.2.0", fingerprint, List.of(marks));
            return ((Attempts.Kept.Counted) school.attempts().hand(handed, 9)).attempt();
        }
    }

    private static AnswerMark mark(int place, String typed, Verdict verdict) {
        return new AnswerMark(place, "pitch", place == 0 ? "a" : "b", typed, "7 in", verdict, "shared-over-holes", List.of("fence-post"), "One space fewer.", 0.5, 1, 0.02);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void anAssignmentComesWithEveryRoundTryAndRemarkAndNothingOfAnother(String name, Database database) {
        try (database) {
            Two two = new Two(database);
            SchoolClass in = two.aClass();
            Assignment first = two.assignment(in);
            Assignment second = two.assignment(in);
            Person wren = two.person(Person.Kind.STUDENT);
            Person kaya = two.person(Person.Kind.STUDENT);
            Sheet sheet = two.sheet(first, wren);
            two.sheet(first, kaya);
            two.hand(two.sheet(second, wren).problems().get(0), "print1", mark(0, "other", Verdict.RIGHT));
            Attempt one = two.hand(sheet.problems().get(0), "print1", mark(1, "9", Verdict.SLIP), mark(0, " 8 ", Verdict.RIGHT));
            Attempt again = two.hand(sheet.problems().get(0), "print1", mark(0, "7", Verdict.NEAR));
            two.school.sheets().again(sheet.problems().get(0).id(),
                    new Sheets.Dealt(1, 1, "spacing/bolt-holes", 99, UnitSystem.US, "print1", 1));
            two.school.attempts().remark(List.of(new Remark(0, one.id(), 1, NOW, Optional.of(two.instructor.id()), Remark.Cause.OVERRULED, Verdict.RIGHT, 1, "Seen"),
                    new Remark(0, one.id(), 1, NOW, Optional.empty(), Remark.Cause.REGRADED, Verdict.NEAR, 0.5, "Mended")));

            List<Work> works = two.school.book().ofAssignment(first.id());

            assertThat(works).extracting(Work::person, w -> w.problem().place(), w -> w.problem().round(), w -> w.attempts().size()).containsExactly(
                    tuple(wren.id(), 1, 1, 2), tuple(wren.id(), 1, 2, 0),
                    tuple(wren.id(), 2, 1, 0), tuple(kaya.id(), 1, 1, 0),
                    tuple(kaya.id(), 2, 1, 0));
            Work work = works.get(0);
            assertThat(work.problem()).isEqualTo(sheet.problems().get(0));
            assertThat(work.attempts()).isEqualTo(two.school.attempts().of(work.problem().id())).extracting(Attempt::id).containsExactly(one.id(), again.id());
            assertThat(work.attempts().get(0).marks()).extracting(AnswerMark::typed).containsExactly(" 8 ", "9");
            assertThat(work.remarks()).isEqualTo(two.school.attempts().remarks(one.id())).extracting(Remark::reason).containsExactly("Seen", "Mended");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aClassAStudentAndSomeExercises(String name, Database database) {
        try (database) {
            Two two = new Two(database);
            SchoolClass in = two.aClass();
            SchoolClass other = two.aClass();
            Assignment first = two.assignment(in);
            Assignment second = two.assignment(in);
            Assignment elsewhere = two.assignment(other);
            Person wren = two.person(Person.Kind.STUDENT);
            Person kaya = two.person(Person.Kind.STUDENT);
            Problem holes = two.sheet(first, wren).problems().get(0);
            two.sheet(second, wren);
            Problem setback = two.sheet(second, kaya).problems().get(1);
            Problem away = two.sheet(elsewhere, wren).problems().get(0);
            two.hand(holes, "print1", mark(0, "8", Verdict.RIGHT));
            two.hand(setback, "print0", mark(0, "5", Verdict.UNEXPLAINED));
            two.hand(setback, "print1", mark(0, "6", Verdict.UNEXPLAINED));
            two.hand(away, "print0", mark(0, "9", Verdict.RIGHT));
            MarkBook book = two.school.book();

            assertThat(book.ofClass(in.id())).containsOnlyKeys(first.id(), second.id());
            assertThat(book.ofClass(in.id()).get(second.id())).extracting(Work::person).containsExactly(wren.id(), wren.id(), kaya.id(), kaya.id());
            assertThat(book.points(in.id())).containsOnlyKeys(first.id(), second.id());
            assertThat(book.points(in.id()).get(first.id()).get(0).attempts().get(0).marks()).containsExactly(
                    new AnswerMark(0, "pitch", "a", "", "", Verdict.RIGHT, "shared-over-holes", List.of("fence-post"), "", 0.5, 1, 0.02));
            assertThat(book.ofStudent(in.id(), kaya.id())).containsOnlyKeys(second.id());
            assertThat(book.ofStudent(in.id(), kaya.id()).get(second.id())).hasSize(2).allMatch(w -> w.person() == kaya.id());
            assertThat(book.ofAssignments(Set.of(first.id(), second.id()), Set.of("bends/setback")).get(second.id())).extracting(w -> w.problem().exercise())
                    .containsOnly("bends/setback");
            assertThat(book.ofAssignments(Set.of(), Set.of("bends/setback"))).isEmpty();
            assertThat(book.ofAssignments(Set.of(first.id()), Set.of())).isEmpty();
            assertThat(book.markedWith(in.id())).containsExactly(new MarkBook.MarkedWith(first.id(), "spacing/bolt-holes", "print1", 1),
                    new MarkBook.MarkedWith(second.id(), "bends/setback", "print0", 1), new MarkBook.MarkedWith(second.id(), "bends/setback", "print1", 1));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void typingIsWhoHasADraftWithATextInIt(String name, Database database) {
        try (database) {
            Two two = new Two(database);
            Assignment first = two.assignment(two.aClass());
            Person wren = two.person(Person.Kind.STUDENT);
            Person kaya = two.person(Person.Kind.STUDENT);
            Person fitz = two.person(Person.Kind.STUDENT);
            two.school.sheets().saveDraft(two.sheet(first, wren).problems().get(1).id(), Map.of("a", "3 1/2"), NOW);
            two.school.sheets().saveDraft(two.sheet(first, kaya).problems().get(0).id(), Map.of("a", ""), NOW);
            Problem handed = two.sheet(first, fitz).problems().get(0);
            two.school.sheets().saveDraft(handed.id(), Map.of("a", "4"), NOW);
            two.hand(handed, "print1", mark(0, "4", Verdict.RIGHT));
            assertThat(two.school.book().typing(first.id())).containsExactly(wren.id());
        }
    }
}
