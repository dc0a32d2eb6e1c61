package soapstone.school;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * On what terms one student works on one assignment: for whom it is, until when, and what may be shown.
 *
 * @param own what differs for this student
 * @param some whether the assignment is for some of the class only
 */
public record Terms(Assignment assignment, SchoolClass schoolClass, Member member, Optional<Assignments.GivenTo> own, boolean some) {

    private static final int WHOLE = 100;

    /** @param given all that differs for single students */
    public static Terms of(Assignment assignment, SchoolClass schoolClass, Member member, List<Assignments.GivenTo> given) {
        return new Terms(assignment, schoolClass, member, given.stream().filter(g -> g.person() == member.person().id()).findFirst(),
                given.stream().anyMatch(Assignments.GivenTo::onlyThese));
    }

    /** Whether an answer is taken now, and why not. */
    public enum Door {
        OPEN,
        /** The due time is over; an answer is taken and marked as late. */
        LATE,
        NOT_YET, TAKEN_BACK, OVER, ARCHIVED, LEFT;

        public boolean takes() {
            return this == OPEN || this == LATE;
        }
    }

    /** Whether the student is meant to do it, or was meant to and may look at it: a draft is nobody's. */
    public boolean isFor() {
        boolean meant = !some || own.filter(Assignments.GivenTo::onlyThese).isPresent();
        return assignment.state() != Assignment.State.DRAFT && member.state() != Member.State.ASKED && meant;
    }

    public boolean isExcused() {
        return own.filter(Assignments.GivenTo::excused).isPresent();
    }

    /**
     * The due time of this student: their own; else that of all, later by their extra time, which is a share of the time
     * from opening to due. Empty for practice without an end.
     */
    public Optional<Instant> due() {
        return due(assignment, member, own);
    }

    /**
     * The same where only the time is asked for.
     *
     * @param own what differs for this student
     */
    static Optional<Instant> due(Assignment assignment, Member member, Optional<Assignments.GivenTo> own) {
        Optional<Instant> ours = own.flatMap(Assignments.GivenTo::due);
        return ours.isPresent() ? ours : assignment.due().map(due -> extended(assignment, member, due));
    }

    private static Instant extended(Assignment assignment, Member member, Instant due) {
        Duration time = Duration.between(assignment.opens(), due);
        return time.isNegative() ? due : due.plus(time.multipliedBy(member.extraTime()).dividedBy(WHOLE));
    }

    /** An answer that comes exactly at the due time is in time. */
    public boolean isOverdue(Instant now) {
        return due().filter(now::isAfter).isPresent();
    }

    public Door door(Instant now) {
        if (schoolClass.archived().isPresent()) {
            return Door.ARCHIVED;
        } else if (member.state() != Member.State.IN) {
            return Door.LEFT;
        } else if (assignment.state() == Assignment.State.TAKEN) {
            return Door.TAKEN_BACK;
        } else if (now.isBefore(assignment.opens())) {
            return Door.NOT_YET;
        } else if (isOverdue(now)) {
            return assignment.late() == Assignment.Late.REFUSED ? Door.OVER : Door.LATE;
        }
        return Door.OPEN;
    }

    /**
     * What may be shown of a problem: what the assignment says, and everything once it is closed, which is after the due
     * time when no further try is taken.
     *
     * @param triesLeft of the problem
     */
    public Assignment.Shows shows(Instant now, int triesLeft) {
        boolean closed = isOverdue(now) && (triesLeft < 1 || assignment.late() == Assignment.Late.REFUSED);
        return closed ? Assignment.Shows.LINES : assignment.shows();
    }

    /** Practice without an end: other numbers can be taken as often as one likes. */
    public boolean isPractice() {
        return assignment.due().isEmpty();
    }

    /**
     * How many tries are left at a place on the sheet. Other numbers bring new tries in practice only.
     *
     * @param newest attempts at the newest round
     * @param all    attempts at all rounds of the place
     */
    public int triesLeft(int newest, int all) {
        return Math.max(0, assignment.tries() - (isPractice() ? newest : all));
    }
}
