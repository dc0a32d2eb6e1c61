package soapstone.mark;

import java.util.List;
import java.util.Optional;
import soapstone.exercise.Model;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.variant.Variant;

/**
 * A marked exercise.
 *
 * @param asks in the order of the exercise
 */
public record Marked(Variant variant, List<AskMark> asks) {

    /** All answers that were typed and are not right, put into the working. */
    public Change typed() {
        Change all = Change.NONE;
        for (AskMark mark : asks) {
            if (mark.verdict().isMarked() && !mark.verdict().isRight()) {
                all = mark.putIn().over(all);
            }
        }
        return all;
    }

    public double points() {
        double sum = 0;
        for (AskMark mark : asks) {
            sum += mark.points();
        }
        return sum;
    }

    public double possible() {
        return asks.stream().mapToDouble(a -> a.ask().points()).sum();
    }

    public boolean isAllRight() {
        return asks.stream().allMatch(a -> a.verdict().isRight());
    }

    /** The first ask that is named by a slip, or else the first that is not right. */
    public Optional<AskMark> first() {
        Optional<AskMark> named = asks.stream().filter(a -> a.verdict() == Verdict.SLIP).findFirst();
        return named.isPresent() ? named
                : asks.stream().filter(a -> a.verdict() == Verdict.NEAR || a.verdict() == Verdict.UNEXPLAINED).findFirst();
    }

    /** The run with the student's answers put in, to say what would come of it. */
    public Frame asCut() {
        return run(typed());
    }

    /** The run with a change put in. */
    public Frame run(Change change) {
        Model model = variant.model();
        Frame f = model.program().frame();
        model.program().rerun(variant.right(), f, change, model.program().slots().size() - 1);
        return f;
    }

    /** What the answers would do to the part: the first consequence that holds, or empty. */
    public Optional<Model.Consequence> consequence() {
        if (typed().isEmpty()) {
            return Optional.empty();
        }
        Frame f = asCut();
        return variant.model().consequence().stream().filter(c -> c.condition().holds(f)).findFirst();
    }
}
