package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import soapstone.page.AssignmentHead;
import soapstone.page.ClassHead;
import soapstone.page.SchoolTimes;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.Member;
import soapstone.school.School;
import soapstone.school.SchoolClass;

/** Lets an instructor into the classes that they teach; for anybody else these classes are not there. */
final class Taught {

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Map<String, Words> spoken = new ConcurrentHashMap<>();

    Taught(SchoolOffice office, MarksDesk desk) {
        this.office = office;
        this.desk = desk;
    }

    /** In the language of a class: what its students will read. */
    Words words(SchoolClass in) {
        return spoken.computeIfAbsent(in.settings().language(), Words::of);
    }

    School school() {
        return office.school().get();
    }

    /** The class that the address names. */
    SchoolClass schoolClass(Visit v) {
        return schoolClass(v, v.id("class"));
    }

    /**
     * A class.
     *
     * @throws Trouble 404 when whoever asks does not teach it
     */
    SchoolClass schoolClass(Visit v, long id) {
        if (!v.person().isInstructor() || !school().classes().teaches(id, v.person().id())) {
            throw Trouble.of(404);
        }
        return school().classes().find(id).orElseThrow(() -> Trouble.of(404));
    }

    /** A class in which something is to change: one that is put away does not. */
    SchoolClass open(SchoolClass in) {
        if (in.archived().isPresent()) {
            throw Trouble.of(404);
        }
        return in;
    }

    /** The assignment that the address names, and its class. */
    Given assignment(Visit v) {
        return assignment(v, v.id("assignment"));
    }

    Given assignment(Visit v, long id) {
        Assignment assignment = school().assignments().find(id).orElseThrow(() -> Trouble.of(404));
        return new Given(assignment, schoolClass(v, assignment.schoolClass()));
    }

    /** An assignment of a class. */
    record Given(Assignment assignment, SchoolClass in) {}

    /** A student of a class, also one who left it. */
    Member member(SchoolClass in, long person) {
        return school().classes().member(in.id(), person).filter(m -> m.state() != Member.State.ASKED).orElseThrow(() -> Trouble.of(404));
    }

    /** Its students, those who left last. */
    List<Member> members(SchoolClass in) {
        return school().classes().members(in.id()).stream().filter(m -> m.state() != Member.State.ASKED).toList();
    }

    static ClassHead head(SchoolClass in) {
        return new ClassHead(in.id(), in.name(), in.term(), in.archived().isPresent());
    }

    AssignmentHead head(Given given, Visit v) {
        Assignment a = given.assignment();
        List<String> tasks = a.tasks().stream().map(t -> String.join(" / ", t.exercises().stream().map(e -> desk.exercise(e).title()).toList())).toList();
        return new AssignmentHead(a.id(), a.title(), head(given.in()), due(a.due(), v), tasks);
    }

    static String due(Optional<Instant> due, Visit v) {
        return due.map(d -> SchoolTimes.moment(d, v.reader().words().language())).orElse("");
    }
}
