package soapstone.school;

import java.time.Instant;
import java.util.List;
import soapstone.mark.Verdict;

/**
 * One answer of a room, with all that is asked of it when the room is looked at.
 *
 * @param seed of the draw: another seed is other numbers
 * @param mark as it counts
 */
public record RoomAnswer(long person, long assignment, long problem, Instant at, String exercise, String skill, long seed, AnswerMark mark) {

    /** All answers to a problem, of every try, as they count; without those that are excused. */
    public static List<RoomAnswer> of(Work work, long assignment, String skill) {
        Problem problem = work.problem();
        return work.attempts().stream().flatMap(a -> work.marks(a).stream().filter(c -> !c.excused()).map(c -> new RoomAnswer(work.person(), assignment,
                problem.id(), a.handedIn(), problem.exercise(), skill, problem.seed(), c.mark()))).toList();
    }

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
