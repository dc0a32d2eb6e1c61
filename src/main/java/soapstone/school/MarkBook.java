package soapstone.school;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the instructor's pages read of many answers at once. Each method reads by the class, the assignment or the student
 * that it names and nothing beside, so that its work grows with that one and not with the school. Every round of a problem
 * comes as a work of its own, those with nothing handed in too; by student, place and round.
 */
public interface MarkBook {

    /** Everything that was done for one assignment. */
    List<Work> ofAssignment(long assignment);

    /**
     * What was done for several assignments, by assignment.
     *
     * @param exercises only work on these
     */
    Map<Long, List<Work>> ofAssignments(Set<Long> assignments, Set<String> exercises);

    /**
     * A class's whole term, by assignment. What was typed, read and said is left out: it stands as empty texts.
     */
    Map<Long, List<Work>> points(long schoolClass);

    /** A class's whole term, by assignment, with its texts. */
    Map<Long, List<Work>> ofClass(long schoolClass);

    /** One student's term in a class, by assignment, with its texts. */
    Map<Long, List<Work>> ofStudent(long schoolClass, long student);

    /** Who has something typed on a sheet of that assignment that is not handed in. */
    Set<Long> typing(long assignment);

    /** What differs for single students, by the assignments of a class. */
    Map<Long, List<Assignments.GivenTo>> given(long schoolClass);

    /** With which exercises the attempts of a class were marked. */
    List<MarkedWith> markedWith(long schoolClass);

    /**
     * Attempts that were marked with one form of an exercise.
     *
     * @param attempts how many
     */
    record MarkedWith(long assignment, String exercise, String fingerprint, int attempts) {}
}
