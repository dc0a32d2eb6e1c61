package soapstone.mark;

import java.util.List;
import soapstone.exercise.Ask;
import soapstone.expression.Change;
import soapstone.source.Message;

/**
 * The mark of one answer.
 *
 * @param fits     what would give the answer: one to three for {@link Verdict#SLIP}; the slip carried on, for
 *                 {@link Verdict#CARRIED}, which was counted at the earlier ask
 * @param families the families behind it, without repeats
 * @param points   earned
 * @param say      the verdict in a sentence
 */
public record AskMark(Ask ask, Typed typed, Verdict verdict, List<Fit> fits, List<String> families, double points, Message say) {

    /** The answer put into the working in the place of what is asked for. */
    public Change putIn() {
        boolean points = ask.second() >= 0;
        if (!ask.isMany()) {
            Change first = Change.fixed(ask.slot(), typed.value(0));
            return points ? first.over(Change.fixed(ask.second(), typed.value(1))) : first;
        }
        Change first = Change.fixed(ask.slot(), typed.list(0, points ? 2 : 1));
        return points ? first.over(Change.fixed(ask.second(), typed.list(1, 2))) : first;
    }

    /** Whether the single slip that fits first is new here, and so counts. */
    public boolean counts() {
        return verdict == Verdict.SLIP && !fits.isEmpty() && fits.get(0).isSingle();
    }
}
