package soapstone.variant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.Baseline;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.quantity.UnitSystem;

/** A draw is fair, or it is not used. */
class DrawerTest {

    private static final String HOLES = "spacing/bolt-holes";
    private static final String BEND = "bends/one-bend";

    private static Exercise changed(String id, String... pieces) {
        Map<String, String> files = SmallBank.files();
        for (int i = 0; i < pieces.length; i += 2) {
            String text = files.get(id + ".yaml");
            assertThat(text).contains(pieces[i]);
            files.put(id + ".yaml", text.replace(pieces[i], pieces[i + 1]));
        }
        Bank bank = SmallBank.read(files);
        return bank.exercise(id).orElseThrow();
    }

    private static String told(Variant v) {
        StringBuilder text = new StringBuilder();
        for (Given given : v.model().givens()) {
            text.append(text.length() == 0 ? "" : ", ").append(given.name()).append(' ').append(Shown.value(v.model(), v.right(), given.slot()));
        }
        return text.toString();
    }

    /** How many of the first single tries are refused for each reason; passed ones under "passed". */
    private static Map<String, Integer> reasons(Exercise exercise, UnitSystem system, int tries) {
        Drawer drawer = new Drawer(exercise, system);
        Map<String, Integer> reasons = new HashMap<>();
        for (long seed = 1; seed <= tries; seed++) {
            String reason = drawer.attempt(seed, 0);
            reasons.merge(reason == null ? "passed" : reason, 1, Integer::sum);
        }
        return reasons;
    }

    @Test
    void theNumbersOfASeedComeBackInEveryVersion() {
        StringBuilder text = new StringBuilder("# The numbers of a seed must come back in every later version: links and records name them.\n");
        SmallBank.bank().exercises().values().forEach(e -> {
            for (UnitSystem system : UnitSystem.values()) {
                for (long seed : new long[] {1, 2, 3, 4_000_000_007L}) {
                    Variant v = Drawer.draw(e, system, seed).orElseThrow();
                    text.append(e.id()).append(' ').append(system.word()).append(" seed ").append(seed).append(" try ").append(v.attempt())
                            .append(": ").append(told(v)).append('\n');
                }
            }
        });
        Baseline.check("soapstone/variant/draws.baseline", text.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {HOLES, BEND, "tanks/drum", "circles/bolt-circle", "measuring/rule"})
    void whatWasDrawnBeforeDoesNotMatter(String id) {
        Exercise exercise = SmallBank.exercise(id);
        Drawer used = new Drawer(exercise, UnitSystem.US);
        for (long seed = 20; seed > 0; seed--) {
            Variant again = used.draw(seed).orElseThrow();
            Variant fresh = Drawer.draw(exercise, UnitSystem.US, seed).orElseThrow();
            assertThat(told(again)).as("%s seed %d", id, seed).isEqualTo(told(fresh));
            assertThat(again.attempt()).isEqualTo(fresh.attempt());
        }
    }

    @Test
    void aDrawIsKeptWhenItsDrawerGoesOn() {
        Drawer drawer = new Drawer(SmallBank.exercise(HOLES), UnitSystem.US);
        Variant first = drawer.draw(1).orElseThrow();
        String before = told(first);
        drawer.draw(2);
        assertThat(told(first)).isEqualTo(before);
    }

    @Test
    void differentSeedsGiveDifferentNumbers() {
        Set<String> all = new LinkedHashSet<>();
        LongStream.rangeClosed(1, 100).forEach(seed -> all.add(told(SmallBank.draw(HOLES, UnitSystem.US, seed))));
        assertThat(all).hasSizeGreaterThan(97);
    }

    @Test
    void aNewGivenDoesNotMoveTheOthers() {
        Exercise more = changed(HOLES, "  hole: {pick: [3/8 in, 7/16 in, 9/16 in]}\n", "  hole: {pick: [3/8 in, 7/16 in, 9/16 in]}\n  color: {pick: [red, blue]}\n",
                "The holes are {hole} across.", "The holes are {hole} across. The {color} piece.");
        for (long seed = 1; seed <= 50; seed++) {
            Variant a = SmallBank.draw(HOLES, UnitSystem.US, seed);
            Variant b = Drawer.draw(more, UnitSystem.US, seed).orElseThrow();
            assertThat(told(b)).as("seed %d", seed).startsWith(told(a));
        }
    }

    @Test
    void givensStandOnTheirSteps() {
        for (long seed = 1; seed <= 200; seed++) {
            Variant v = SmallBank.draw(HOLES, UnitSystem.US, seed);
            double length = v.right().number(v.model().program().find("length"));
            assertThat(length * 2).as("seed %d", seed).isEqualTo(Math.rint(length * 2)).isBetween(60.0, 240.0);
        }
    }

    @Test
    void whatCouldNotBeMadeIsRefused() {
        Map<String, Integer> reasons = reasons(changed(HOLES, "  - pitch >= 3*hole ", "  - pitch >= 10*hole "), UnitSystem.US, 500);
        assertThat(reasons).containsKey("where: pitch >= 10*hole");
        assertThat(reasons(SmallBank.exercise(HOLES), UnitSystem.US, 500)).doesNotContainKey("where: pitch >= 10*hole");
    }

    @Test
    void aRowThatIsNotThereIsRefused() {
        Map<String, Integer> reasons = reasons(changed(BEND, "number: {pick: [10, 12, 14]}", "number: {pick: [10, 12, 14, 16]}"), UnitSystem.US, 400);
        // Gauge 16 has no galvanized size: one draw in eight.
        assertThat(reasons.get("undefined: the table gauge has no such row")).isBetween(30, 70);
    }

    @Test
    void aSlipThatIsOnlyNearRefusesTheDraw() {
        Exercise loose = changed(HOLES, "to: 1/16 in, within: 1/32 in", "to: 1/2 in, within: 1/4 in");
        assertThat(reasons(SmallBank.exercise(HOLES), UnitSystem.US, 500).getOrDefault("too near: one-end-only", 0)).isLessThan(10);
        assertThat(reasons(loose, UnitSystem.US, 500).get("too near: one-end-only")).isGreaterThan(150);
        Drawer drawer = new Drawer(loose, UnitSystem.US);
        for (long seed = 1; seed <= 100; seed++) {
            Variant v = drawer.draw(seed).orElseThrow();
            assertThat(v.outcomes()).as("seed %d", seed).extracting(Variant.Outcome::effect).containsOnly(Effect.SEEN);
        }
    }

    @Test
    void aSlipWithoutEffectIsNoReasonToRefuse() {
        Exercise sometimes = changed(HOLES, "swap: spaces = holes\n", "swap: 'spaces = if(holes > 8, holes, holes - 1)'\n");
        assertThat(reasons(sometimes, UnitSystem.US, 300)).doesNotContainKey("too near: shared-over-holes");
        Drawer drawer = new Drawer(sometimes, UnitSystem.US);
        for (long seed = 1; seed <= 100; seed++) {
            Variant v = drawer.draw(seed).orElseThrow();
            Effect expected = v.right().number(v.model().program().find("holes")) > 8 ? Effect.SEEN : Effect.SAME;
            assertThat(v.outcomes().get(0).effect()).as("seed %d", seed).isEqualTo(expected);
        }
    }

    @Test
    void aRightAngleHidesTheAngleBetweenTheLegs() {
        Drawer drawer = new Drawer(SmallBank.exercise(BEND), UnitSystem.US);
        int square = 0;
        for (long seed = 1; seed <= 100; seed++) {
            Variant v = drawer.draw(seed).orElseThrow();
            boolean right = v.right().number(v.model().program().find("angle")) == 90;
            square += right ? 1 : 0;
            List<Effect> effects = v.outcomes().stream().filter(o -> o.slip().name().equals("included-angle")).map(Variant.Outcome::effect).toList();
            assertThat(effects).as("seed %d", seed).containsOnly(right ? Effect.NONE : Effect.SEEN);
        }
        assertThat(square).as("draws with a right angle").isBetween(5, 60);
    }

    @Test
    void aSlipSeenAtOneAskMayBeNearAtAnother() {
        Exercise coarse = changed(BEND, "to: 1/32 in, within: 1/64 in", "to: 1/4 in, within: 1/8 in");
        Drawer drawer = new Drawer(coarse, UnitSystem.US);
        int near = 0;
        for (long seed = 1; seed <= 50; seed++) {
            for (Variant.Outcome o : drawer.draw(seed).orElseThrow().outcomes()) {
                near += o.slip().name().equals("other-metal") && o.ask().name().equals("blank") && o.effect() == Effect.NEAR ? 1 : 0;
            }
        }
        assertThat(near).as("other-metal shows in the allowance, not in the blank").isGreaterThan(40);
    }

    @Test
    void aSlipThatACoarseConstantHidesIsNear() {
        Exercise close = changed("tanks/drum", "swap-bare: gallons = area*depth/1728,", "swap: gallons = area*depth/(231 in3)*1.0005*1 gal,");
        assertThat(reasons(close, UnitSystem.US, 200)).containsKey("too near: by-seven-and-a-half");
    }

    @Test
    void anExerciseThatNoDrawFitsIsEmpty() {
        assertThat(new Drawer(changed(HOLES, "  - pitch >= 3*hole ", "  - pitch >= 300*hole "), UnitSystem.US).draw(1)).isEmpty();
    }

    @Test
    void everySecondDrawInWhichTwoFamiliesGiveOneNumberIsPassedOver() {
        // A third slip that in every draw with more than 8 holes gives what the first gives.
        Exercise exercise = changed(HOLES, "swap: spaces = holes + 1", "swap: 'spaces = if(holes > 8, holes, holes + 1)'");
        int many = 0;
        int manyAtFirst = 0;
        Drawer drawer = new Drawer(exercise, UnitSystem.US);
        for (long seed = 1; seed <= 1000; seed++) {
            manyAtFirst += holes(firstThatPasses(drawer, seed), exercise) > 8 ? 1 : 0;
            many += holes(drawer.draw(seed).orElseThrow().right(), exercise) > 8 ? 1 : 0;
        }
        double expected = 1000 * (manyAtFirst / 2.0) / (1000 - manyAtFirst / 2.0);
        assertThat((double) many).as("draws with many holes, of %d among the first that pass", manyAtFirst).isBetween(expected * 0.85, expected * 1.15);
    }

    private static Frame firstThatPasses(Drawer drawer, long seed) {
        int attempt = 0;
        while (drawer.attempt(seed, attempt) != null) {
            attempt++;
        }
        return drawer.last();
    }

    private static double holes(Frame f, Exercise exercise) {
        return f.number(exercise.us().program().find("holes"));
    }

    @Test
    void aDrawIsFoundWhereTwoFamiliesAlwaysGiveOneNumber() {
        Exercise exercise = changed(HOLES, "swap: spaces = holes + 1", "swap: spaces = holes*1");
        Drawer drawer = new Drawer(exercise, UnitSystem.US);
        for (long seed = 1; seed <= 300; seed++) {
            assertThat(drawer.draw(seed)).as("seed %d", seed).isPresent();
        }
    }

    /** Choosing the draw in which slips are best apart once left students with a single angle of four. */
    @ParameterizedTest
    @ValueSource(strings = {HOLES, BEND, "tanks/drum", "circles/bolt-circle", "measuring/rule"})
    void studentsMeetEveryChoice(String id) {
        for (UnitSystem system : UnitSystem.values()) {
            Model model = SmallBank.exercise(id).model(system);
            Drawer drawer = new Drawer(SmallBank.exercise(id), system);
            Map<String, Integer> met = new HashMap<>();
            for (long seed = 1; seed <= 400; seed++) {
                Frame f = drawer.draw(seed).orElseThrow().right();
                model.givens().forEach(g -> met.merge(g.name() + " " + f.number(g.slot()), 1, Integer::sum));
            }
            for (Given given : model.givens()) {
                if (given.choice() instanceof Given.Pick pick) {
                    for (double value : pick.values()) {
                        assertThat(met.getOrDefault(given.name() + " " + value, 0)).as("%s %s: %s %s in 400 draws", id, system, given.name(), value)
                                .isGreaterThan(400 / pick.values().length / 4);
                    }
                }
            }
        }
    }

    /** Answers to a draw are marked with its numbers, also when the exercise was mended and would pass them over now. */
    @Test
    void oneTryOfASeedComesBackWhetherOrNotItWouldBeTaken() {
        Exercise exercise = SmallBank.exercise(HOLES);
        Exercise mended = changed(HOLES, "pitch >= 3*hole ", "pitch >= 30*hole ");
        for (long seed = 1; seed <= 30; seed++) {
            Variant drawn = Drawer.draw(exercise, UnitSystem.US, seed).orElseThrow();
            assertThat(told(new Drawer(exercise, UnitSystem.US).at(seed, drawn.attempt()).orElseThrow())).isEqualTo(told(drawn));
            assertThat(told(new Drawer(mended, UnitSystem.US).at(seed, drawn.attempt()).orElseThrow())).isEqualTo(told(drawn));
        }
        Exercise undefined = changed(HOLES, "let: spaces = holes - 1", "let: spaces = holes - holes");
        assertThat(new Drawer(undefined, UnitSystem.US).at(1, 0)).isEmpty();
    }
}
