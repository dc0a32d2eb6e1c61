package soapstone.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.mark.AskMark;
import soapstone.mark.MarkRules;
import soapstone.mark.Marker;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * How often a random wrong answer is named as a mistake that nobody made. Random answers are log-uniform from a fifth to
 * five times the right one, rounded as asked, with a fixed seed. For a list every item is off by the same random factor.
 *
 * @param answers how many wrong answers were marked
 * @param named   how many of them got the verdict slip
 * @param by      the names they got, and how often
 */
public record FalseNames(String exercise, UnitSystem system, String ask, Ask.Kind kind, int answers, int named, Map<String, Integer> by) {

    private static final double REACH = 5;

    public double share() {
        return answers == 0 ? 0 : named / (double) answers;
    }

    /** One result for each ask but choices, over some seeds with some answers each. */
    public static List<FalseNames> of(Exercise exercise, UnitSystem system, int seeds, int answersPerSeed) {
        Model model = exercise.model(system);
        Drawer drawer = new Drawer(exercise, system);
        List<FalseNames> results = new ArrayList<>();
        for (Ask ask : model.asks()) {
            if (ask.kind() != Ask.Kind.CHOICE) {
                results.add(trial(exercise, model, drawer, ask, seeds, answersPerSeed));
            }
        }
        return results;
    }

    private static FalseNames trial(Exercise exercise, Model model, Drawer drawer, Ask ask, int seeds, int answersPerSeed) {
        SplittableRandom random = new SplittableRandom(20_260_101L + ask.slot());
        int answers = 0;
        int named = 0;
        Map<String, Integer> by = new TreeMap<>();
        for (long seed = 1; seed <= seeds; seed++) {
            Variant variant = drawer.draw(seed).orElse(null);
            if (variant == null) {
                continue;
            }
            for (int i = 0; i < answersPerSeed; i++) {
                Typed typed = random(model, variant, ask, Math.exp((random.nextDouble() * 2 - 1) * Math.log(REACH)));
                AskMark mark = mark(variant, ask, typed);
                if (mark.verdict().isRight() || mark.verdict() == Verdict.ASK_AGAIN) {
                    continue;
                }
                answers++;
                if (mark.verdict() == Verdict.SLIP) {
                    named++;
                    by.merge(mark.fits().get(0).name(), 1, Integer::sum);
                }
            }
        }
        return new FalseNames(exercise.id(), model.system(), ask.name(), ask.kind(), answers, named, by);
    }

    private static Typed random(Model model, Variant variant, Ask ask, double factor) {
        var f = model.program().frame();
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
        return Written.read(model, ask, Written.asAsked(model, ask, f));
    }

    static AskMark mark(Variant variant, Ask ask, Typed typed) {
        List<Typed> all = Written.rightUpTo(variant.model(), variant.right(), ask, typed);
        return new Marker(variant, MarkRules.USUAL).mark(all).asks().get(variant.model().asks().indexOf(ask));
    }
}
