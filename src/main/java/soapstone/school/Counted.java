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
            List<Remark> own = remarks.stream().filter(r -> r.attempt() == attempt.id() && r.place() == mark.place()).sorted(IN_TIME).toList();
            AnswerMark last = mark;
            for (Remark remark : own) {
                last = with(last, remark);
            }
            Optional<Remark> newest = own.stream().reduce((before, after) -> after);
            counted.add(new Counted(last, newest.filter(r -> r.cause() == Remark.Cause.EXCUSED).isPresent(), newest));
        }
        return List.copyOf(counted);
    }

    /** A remark that only judges leaves the answer as an earlier one marked it anew. */
    private static AnswerMark with(AnswerMark m, Remark remark) {
        Remark.Anew a = remark.anew().orElseGet(() -> new Remark.Anew(m.typed(), m.readAs(), m.slip(), m.families(), m.says(), m.odds()));
        return new AnswerMark(m.place(), m.ask(), m.letter(), a.typed(), a.readAs(), remark.verdict(), a.slip(), a.families(), a.says(), remark.points(),
                m.possible(), a.odds());
    }
}
