package soapstone.mark;

import java.util.List;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;

/** What there is to try at each ask of an exercise, and what each single slip says when it fits. */
final class MarkPlan {

    private final AskPlan[] asks;
    private final List<List<Fit>> singles;

    private MarkPlan(Model model) {
        this.asks = model.asks().stream().map(a -> new AskPlan(model, a)).toArray(AskPlan[]::new);
        this.singles = model.slips().stream().map(s -> List.of(Fit.slip(s, false))).toList();
    }

    /** The plan of a model, made at its first use. */
    static MarkPlan of(Model model) {
        return model.kept().get(MarkPlan.class, () -> new MarkPlan(model));
    }

    AskPlan ask(int index) {
        return asks[index];
    }

    /** What a slip says when nothing else fits. */
    List<Fit> alone(int slip) {
        return singles.get(slip);
    }

    /** Which slips make sense with a draw's numbers, a bit each. */
    static long sense(Model model, soapstone.expression.Frame right) {
        long sense = 0;
        List<Slip> slips = model.slips();
        for (int i = 0; i < slips.size(); i++) {
            sense |= slips.get(i).makesSense(right) ? 1L << i : 0;
        }
        return sense;
    }
}
