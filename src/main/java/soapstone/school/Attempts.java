package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where attempts are kept: appended, never changed. */
public interface Attempts {

    /**
     * Keeps an attempt. When this returns, it is on the disk. The same receipt again gives back what was kept the first
     * time; two at the same moment are one.
     *
     * @param tries how many the problem allows; one more than that is refused
     */
    Kept hand(Handed handed, int tries);

    /** What is handed in, marked already. */
    record Handed(long problem, String receipt, Instant at, boolean late, Attempt.Way way, String program, String fingerprint, List<AnswerMark> marks) {

        public Handed {
            marks = List.copyOf(marks);
        }
    }

    /** What became of it. */
    sealed interface Kept {
        record Counted(Attempt attempt) implements Kept {}

        /** The same page was sent before. */
        record Before(Attempt attempt) implements Kept {}

        record NoTriesLeft(int tries) implements Kept {}
    }

    Optional<Attempt> find(long id);

    /** All attempts at a problem, in order. */
    List<Attempt> of(long problem);

    /** All attempts at the problems of an assignment. */
    List<Attempt> ofAssignment(long assignment);

    /** All attempts at the problems of a sheet, every round. */
    List<Attempt> ofSheet(long sheet);

    List<Remark> remarksOfSheet(long sheet);

    /** All attempts of a student. */
    List<Attempt> ofPerson(long person);

    List<Remark> remarksOfPerson(long person);

    /** Appends remarks. */
    void remark(List<Remark> remarks);

    /** The remarks on an attempt, in order. */
    List<Remark> remarks(long attempt);

    List<Remark> remarksOfAssignment(long assignment);
}
