package soapstone.record;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Audit;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Codes;
import soapstone.school.Member;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Practice;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.SignedIn;

/** Something of everything that a school keeps, with texts that are hard on a file. */
final class FilledSchool {

    static final Instant NOW = Instant.parse("2027-03-14T07:30:15.123456Z");
    static final String HARD = "7-5/16\" \u215D ′ \u2028 \\ 'x'; {\"a\": 1}\r\n\t\uD83D\uDD27";

    final School school;
    final Person student;
    final SchoolClass schoolClass;

    FilledSchool(Database database, int students) {
        school = SqlSchool.of(database);
        Person wren = school.people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Wren K.", "wren", "encoded", false, "en"), NOW);
        schoolClass = school.classes().add("Sheet metal 1", "Spring", "MAPLE7", ClassSettings.USUAL, wren.id(), NOW);
        Assignment assignment = school.assignments().add(new Assignment(0, schoolClass.id(), "Holes", Assignment.State.GIVEN, NOW, Optional.of(NOW.plus(Duration.ofDays(2))),
                Assignment.Late.HALF, 3, Assignment.Shows.MISTAKE, true, wren.id(), NOW, Optional.empty(),
                List.of(new Assignment.Task(0, 1, List.of("spacing/bolt-holes"), 1, 2.5))), List.of());
        Member last = null;
        for (int i = 1; i <= students; i++) {
            last = school.classes().enrol(schoolClass.id(), List.of(new Classes.NewMember(
                    new People.NewPerson(Person.Kind.STUDENT, "Ada Q. " + i, "seat" + i, "encoded", true, "es"), String.valueOf(i), 50)), NOW).get(0);
            hand(assignment, last.person(), i);
        }
        student = last.person();
        school.assignments().give(assignment.id(), new Assignments.GivenTo(student.id(), Optional.of(NOW), true, false));
        school.sheets().saveDraft(school.sheets().of(assignment.id(), student.id()).orElseThrow().problems().get(0).id(), Map.of("a", HARD), NOW);
        school.sheets().keepWhole("print1", "title: \"x\"\n" + HARD, NOW);
        school.audit().note(new Audit.Entry(NOW, Optional.of(wren.id()), "mark.overruled", Optional.of(student.id()), Optional.of(schoolClass.id()), HARD, true));
        school.sessions().begin(new SignedIn(wren, "a".repeat(64), "k".repeat(43), false, NOW, NOW));
        school.practices().keep(new Practice(student.id(), NOW, "spacing/bolt-holes", 77, UnitSystem.METRIC, "print1", "0.2.0", List.of(mark(HARD))));
        school.codes().make("b".repeat(64), Codes.Purpose.FIRST_RUN, Optional.empty(), NOW);
    }

    static AnswerMark mark(String typed) {
        return new AnswerMark(0, "pitch", "a", typed, "7 5/16 in", Verdict.SLIP, "shared-over-holes", List.of("fence-post"), HARD, 0.1 + 0.2, 2.5, 1 / 3.0);
    }

    private void hand(Assignment assignment, Person student, int i) {
        Assignment.Task task = assignment.tasks().get(0);
        Sheet sheet = school.sheets().deal(assignment.id(), student.id(), "K" + i,
                List.of(new Sheets.Dealt(task.id(), 1, "spacing/bolt-holes", 40 + i, UnitSystem.US, "print1", task.points())), NOW);
        AnswerMark mark = mark(HARD);
        Attempts.Kept kept = school.attempts().hand(new Attempts.Handed(sheet.problems().get(0).id(), "r" + i, NOW, true, Attempt.Way.PAPER, "0.2.0", "print1", List.of(mark)), 3);
        long attempt = ((Attempts.Kept.Counted) kept).attempt().id();
        school.attempts().remark(List.of(new Remark(0, attempt, 0, NOW, Optional.empty(), Remark.Cause.REGRADED, Verdict.RIGHT, 2.5, HARD)));
    }
}
