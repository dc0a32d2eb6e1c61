package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where assignments are kept. */
public interface Assignments {

    Optional<Assignment> find(long id);

    /** All of a class, the newest first. */
    List<Assignment> of(long schoolClass);

    /** Keeps a new assignment; its id and those of its tasks are ignored and given here. */
    Assignment add(Assignment fresh, List<GivenTo> given);

    /**
     * Keeps a new assignment unless the same was asked for before, be it at this very moment and by somebody else.
     *
     * @param once says what is the same: a hash of 64 signs
     */
    Made addOnce(Assignment fresh, List<GivenTo> given, String once);

    /** @param fresh whether it was made now; else it was there before */
    record Made(Assignment assignment, boolean fresh) {}

    /** Changes a draft as a whole; false when it is no draft any more, and then nothing changes. */
    boolean change(Assignment assignment, List<GivenTo> given);

    void setState(long id, Assignment.State state);

    void setDue(long id, Optional<Instant> due);

    /** What is different for single students. */
    List<GivenTo> givenTo(long id);

    void give(long id, GivenTo given);

    /**
     * What is different for one student.
     *
     * @param due       their own due time; empty for that of all
     * @param excused   need not do it
     * @param onlyThese the assignment is for those with this mark and nobody else
     */
    record GivenTo(long person, Optional<Instant> due, boolean excused, boolean onlyThese) {}
}
