package soapstone.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.proof.Written;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/** The mixed answers to one ask of one draw: the right one, each slip's that is seen, and some that nothing explains. */
final class Answers {

    private static final int UNEXPLAINED = 2;
    private static final int MOST_TRIES = 40;
    private static final double REACH = 5;

    private final Variant variant;
    private final Ask ask;

    Answers(Variant variant, Ask ask) {
        this.variant = variant;
        this.ask = ask;
    }

    /** As they are typed: rounded as asked, without units. */
    List<Typed> mixed() {
        List<Typed> all = new ArrayList<>();
        all.add(typed(variant.right()));
        for (Variant.Outcome o : variant.outcomes()) {
            if (o.ask() == ask && o.effect() == Effect.SEEN) {
                all.add(typed(o.theirs()));
            }
        }
        unexplained(all);
        return all;
    }

    private Typed typed(Frame run) {
        return Written.read(variant.model(), ask, Written.asAsked(variant.model(), ask, run));
    }

    private void unexplained(List<Typed> all) {
        SplittableRandom random = new SplittableRandom(variant.seed() * 31 + ask.slot());
        int found = 0;
        for (int i = 0; i < MOST_TRIES && found < UNEXPLAINED && ask.kind() != Ask.Kind.CHOICE; i++) {
            Typed typed = typed(times(Math.exp((random.nextDouble() * 2 - 1) * Math.log(REACH))));
            if (Trial.mark(variant, ask, typed).verdict() == Verdict.UNEXPLAINED) {
                all.add(typed);
                found++;
            }
        }
    }

    /** The right run with what is asked for made larger or smaller. */
    private Frame times(double factor) {
        Model model = variant.model();
        Frame f = model.program().frame();
        f.copyFrom(variant.right());
        for (int slot : ask.second() < 0 ? new int[] {ask.slot()} : new int[] {ask.slot(), ask.second()}) {
            if (ask.isMany()) {
                double[] list = f.list(slot).clone();
                for (int i = 0; i < list.length; i++) {
                    list[i] *= factor;
                }
                f.set(slot, list);
            } else {
                f.set(slot, f.number(slot) * factor);
            }
        }
        return f;
    }
}
