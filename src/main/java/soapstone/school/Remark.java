package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import soapstone.mark.Verdict;

/**
 * A later word on a mark. The first mark stays as it is; the newest remark counts.
 *
 * @param place  of the ask in the exercise
 * @param by     empty for the program itself
 * @param reason told to the student
 * @param anew   the answer as it was marked again; empty where somebody only judged the mark
 */
public record Remark(long id, long attempt, int place, Instant at, Optional<Long> by, Cause cause, Verdict verdict, double points, String reason,
        Optional<Anew> anew) {

    /** A remark that judges a mark, whatever the answer was. */
    public Remark(long id, long attempt, int place, Instant at, Optional<Long> by, Cause cause, Verdict verdict, double points, String reason) {
        this(id, attempt, place, at, by, cause, verdict, points, reason, Optional.empty());
    }

    /** The same with the answer as it was marked again. */
    public Remark with(AnswerMark again) {
        Anew own = new Anew(again.typed(), again.readAs(), again.slip(), again.families(), again.says(), again.odds());
        return new Remark(id, attempt, place, at, by, cause, verdict, points, reason, Optional.of(own));
    }

    /** What is said of an answer that was marked again, as in its {@link AnswerMark}. */
    public record Anew(String typed, String readAs, String slip, List<String> families, String says, double odds) {

        public Anew {
            families = List.copyOf(families);
        }
    }

    /** Why a mark was looked at again. */
    public enum Cause {
        /** By an instructor. */
        OVERRULED,
        /** Marked again with a bank that was mended. */
        REGRADED,
        EXCUSED,
        /** A mistake of typing in from paper. */
        CORRECTED
    }
}
