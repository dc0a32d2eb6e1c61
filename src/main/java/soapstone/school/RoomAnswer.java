package soapstone.school;

import java.time.Instant;
import soapstone.mark.Verdict;

/**
 * One answer of a room, with all that is asked of it when the room is looked at.
 *
 * @param seed of the draw: another seed is other numbers
 * @param mark as it counts
 */
public record RoomAnswer(long person, long assignment, long problem, Instant at, String exercise, String skill, long seed, AnswerMark mark) {

    /** Whether it can be named: it was answered, it is wrong, and no earlier answer stands behind that. */
    boolean isWrong() {
        return mark.verdict() == Verdict.SLIP || mark.verdict() == Verdict.UNEXPLAINED || mark.verdict() == Verdict.NEAR;
    }

    /** Whether one slip of the bank or one slip of the pen is named. Two slips at once are not counted: chance gives them too often. */
    boolean isNamed() {
        return mark.verdict() == Verdict.SLIP && !mark.slip().isEmpty() && mark.slip().indexOf('+') < 0;
    }

    /** Whether what is named stands in no file: the mark then has the family's own name. */
    boolean isMechanical() {
        return mark.families().contains(mark.slip());
    }
}
