package soapstone.school;

import java.time.Instant;
import java.util.Optional;
import soapstone.mark.Verdict;

/**
 * A later word on a mark. The first mark stays as it is; the newest remark counts.
 *
 * @param place  of the ask in the exercise
 * @param by     empty for the program itself
 * @param reason told to the student
 */
public record Remark(long id, long attempt, int place, Instant at, Optional<Long> by, Cause cause, Verdict verdict, double points, String reason) {

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
