package soapstone.demo;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.expression.Frame;
import soapstone.proof.Written;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/**
 * Somebody invented who works: mostly right, with a misunderstanding or two that turn up where the bank has a slip of
 * that family, and now and then a mistake that is nothing but one.
 *
 * @param person     the account
 * @param ability    how often an answer without a misunderstanding behind it is right
 * @param beliefs    families of slips that this student falls into
 * @param chance     this student's own
 */
public record DemoStudent(Person person, double ability, Set<String> beliefs, SplittableRandom chance) {

    private static final List<String> COMMON = List.of("fence-post", "one-of-two", "allowance-forgotten", "radius-for-diameter", "inside-for-outside",
            "included-angle", "deep-end-everywhere", "gap-or-center", "factor-left-out", "lines-miscounted");
    private static final double FALLS_IN = 0.7;
    private static final double LEAVES_BLANK = 0.05;
    private static final double SOME_SLIP = 0.5;

    /** Somebody with an ability and beliefs by chance. */
    public static DemoStudent of(Person person, SplittableRandom chance) {
        Set<String> beliefs = new HashSet<>();
        int most = chance.nextInt(3);
        for (int i = 0; i <= most; i++) {
            // The first of the list are those that most of a room falls into.
            beliefs.add(COMMON.get(Math.min(chance.nextInt(COMMON.size()), chance.nextInt(COMMON.size()))));
        }
        return new DemoStudent(person, 0.62 + 0.35 * chance.nextDouble(), beliefs, chance);
    }

    /** What this student writes into the boxes of a problem. */
    public Map<String, String> answers(Exercise exercise, Problem problem) {
        Variant variant = problem.drawn(exercise).orElseThrow();
        Optional<Variant.Outcome> believed = variant.outcomes().stream()
                .filter(o -> o.effect() == Effect.SEEN && beliefs.contains(o.slip().family()) && chance.nextDouble() < FALLS_IN).findFirst();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Ask ask : variant.model().asks()) {
            texts.put(ask.letter(), text(variant, ask, believed.map(Variant.Outcome::theirs).orElse(variant.right())));
        }
        return texts;
    }

    private String text(Variant variant, Ask ask, Frame run) {
        if (chance.nextDouble() < LEAVES_BLANK) {
            return "";
        }
        if (chance.nextDouble() < ability || ask.isMany()) {
            return Written.asAsked(variant.model(), ask, run);
        }
        List<Variant.Outcome> slips = variant.outcomes().stream().filter(o -> o.ask() == ask && o.effect() == Effect.SEEN).toList();
        if (!slips.isEmpty() && chance.nextDouble() < SOME_SLIP) {
            return Written.asAsked(variant.model(), ask, slips.get(chance.nextInt(slips.size())).theirs());
        }
        return off(variant, ask, run);
    }

    /** A number that nothing explains. */
    private String off(Variant variant, Ask ask, Frame run) {
        if (!ask.isNumber()) {
            return Written.asAsked(variant.model(), ask, run);
        }
        Frame other = variant.model().program().frame();
        other.copyFrom(run);
        other.set(ask.slot(), run.number(ask.slot()) * (0.7 + 0.6 * chance.nextDouble()));
        return Written.asAsked(variant.model(), ask, other);
    }
}
