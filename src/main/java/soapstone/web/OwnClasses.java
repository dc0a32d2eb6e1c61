package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import soapstone.school.Assignment;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.School;
import soapstone.school.SchoolClass;

/** Opens to instructors what is theirs; what is not might as well not be there. */
final class OwnClasses {

    private final SchoolOffice office;

    OwnClasses(SchoolOffice office) {
        this.office = office;
    }

    School school() {
        return office.school().get();
    }

    Instant now() {
        return office.clock().instant();
    }

    /** How browsers reach this site. */
    String address(Visit v) {
        return (office.secure() ? "https://" : "http://") + v.caller().site();
    }

    private SchoolClass own(Visit v, long id) {
        Optional<SchoolClass> found = school().classes().find(id);
        if (found.isEmpty() || !school().classes().teaches(id, v.person().id())) {
            throw Trouble.of(404);
        }
        return found.get();
    }

    /** The class that the path names. */
    SchoolClass schoolClass(Visit v) {
        return own(v, v.id("class"));
    }

    /** The same, to change something in it; one that is put away does not change. */
    SchoolClass open(Visit v) {
        return open(schoolClass(v));
    }

    private static SchoolClass open(SchoolClass in) {
        if (in.archived().isPresent()) {
            throw Trouble.of(409);
        }
        return in;
    }

    /** The place in the class of the person that the path names. */
    Member member(Visit v, SchoolClass in) {
        return school().classes().member(in.id(), v.id("person")).orElseThrow(() -> Trouble.of(404));
    }

    /** Where a form of a class stands, and whether it makes something new. */
    record Place(SchoolClass in, String path, boolean fresh) {}

    /** An assignment and its class. */
    record Work(SchoolClass in, Assignment assignment) {

        /** The students who do it. */
        boolean isFor(Member member, List<GivenTo> given) {
            boolean some = given.stream().anyMatch(GivenTo::onlyThese);
            return member.state() == Member.State.IN
                    && (!some || given.stream().anyMatch(g -> g.onlyThese() && g.person() == member.person().id()));
        }
    }

    /** The assignment that the path names. */
    Work work(Visit v) {
        return work(v, v.id("assignment"));
    }

    /** An assignment of theirs. */
    Work work(Visit v, long id) {
        Assignment assignment = school().assignments().find(id).orElseThrow(() -> Trouble.of(404));
        return new Work(own(v, assignment.schoolClass()), assignment);
    }

    /** The same, to change something. */
    Work openWork(Visit v) {
        Work work = work(v);
        open(work.in());
        return work;
    }

    /** The students who sit in a class. */
    List<Member> sitting(SchoolClass in) {
        return school().classes().members(in.id()).stream().filter(m -> m.state() == Member.State.IN).toList();
    }

    /** Writes down that something broke which nobody waits for. */
    void failed(String event, Throwable fault, long assignment) {
        office.log().fault(now(), event, fault, "assignment", String.valueOf(assignment));
    }

    /** Notes that something of a class left the school. */
    void left(Visit v, String act, SchoolClass in, String detail) {
        school().audit().note(new Audit.Entry(now(), v.caller().signedIn().map(s -> s.person().id()), act, Optional.empty(), Optional.of(in.id()), detail, true));
    }

    void note(Visit v, String act, Optional<Long> person, SchoolClass in, String detail) {
        school().audit().note(new Audit.Entry(now(), v.caller().signedIn().map(s -> s.person().id()), act, person, Optional.of(in.id()), detail, false));
    }
}
