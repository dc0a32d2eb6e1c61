package soapstone.school;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A mark as it counts: the first mark with the newest remark on it.
 *
 * @param mark    with the verdict and the points that count
 * @param excused whether the ask is left out of what was possible
 * @param remark  the newest; empty when nobody said more
 */
public record Counted(AnswerMark mark, boolean excused, Optional<Remark> remark) {

    private static final Comparator<Remark> IN_TIME = Comparator.comparing(Remark::at).thenComparingLong(Remark::id);

    /** The marks of an attempt, in order, as they count. Remarks on other attempts are passed over. */
    public static List<Counted> of(Attempt attempt, List<Remark> remarks) {
        List<Counted> counted = new ArrayList<>();
        for (AnswerMark mark : attempt.marks()) {
            Optional<Remark> newest = remarks.stream().filter(r -> r.attempt() == attempt.id() && r.place() == mark.place()).max(IN_TIME);
            counted.add(newest.map(r -> new Counted(with(mark, r), r.cause() == Remark.Cause.EXCUSED, newest))
                    .orElseGet(() -> new Counted(mark, false, newest)));
        }
        return List.copyOf(counted);
    }

    private static AnswerMark with(AnswerMark m, Remark remark) {
        Remark.Anew a = remark.anew().orElseGet(() -> new Remark.Anew(m.typed(), m.readAs(), m.slip(), m.families(), m.says(), m.odds()));
        return new AnswerMark(m.place(), m.ask(), m.letter(), a.typed(), a.readAs(), remark.verdict(), a.slip(), a.families(), a.says(), remark.points(),
                m.possible(), a.odds());
    }
}
