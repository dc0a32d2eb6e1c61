package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

class MarkingTest {

    private static final Bank BANK = SmallBank.bank();
    private static final Marking MARKING = new Marking(BANK, Desks.NOTHING_KEPT, Desks.WORDS);

    private static List<AnswerMark> done(Marking.Outcome outcome) {
        assertThat(outcome).isInstanceOf(Marking.Outcome.Done.class);
        return ((Marking.Outcome.Done) outcome).marks();
    }

    private static List<Marking.Again> again(Marking.Outcome outcome) {
        assertThat(outcome).isInstanceOf(Marking.Outcome.AskedAgain.class);
        return ((Marking.Outcome.AskedAgain) outcome).boxes();
    }

    private static ClassSettings with(boolean carried, double near, boolean bare, char decimalMark) {
        return new ClassSettings(UnitSystem.US, "en", decimalMark, carried, true, near, bare, "");
    }

    @Test
    void rightAnswersEarnAllPointsSharedOverTheAsks() {
        for (long seed = 1; seed <= 20; seed++) {
            Problem problem = Desks.problem(BANK, Desks.CIRCLE, seed, 10);
            List<AnswerMark> marks = done(MARKING.mark(problem, Desks.right(problem), ClassSettings.USUAL));
            assertThat(marks).extracting(AnswerMark::verdict).as("seed " + seed).containsOnly(Verdict.RIGHT);
            // The exercise weighs its asks 1, 1 and 3.
            assertThat(marks).extracting(AnswerMark::possible).containsExactly(2.0, 2.0, 6.0);
            assertThat(marks).extracting(AnswerMark::points).containsExactly(2.0, 2.0, 6.0);
            assertThat(marks).extracting(AnswerMark::letter).containsExactly("a", "b", "c");
            assertThat(marks).extracting(AnswerMark::place).containsExactly(0, 1, 2);
        }
    }

    @Test
    void aSlipIsKeptWithItsNameFamilyWordsAndOdds() {
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 5);
        Variant variant = SmallBank.draw(Desks.HOLES, UnitSystem.US, 3);
        AnswerMark mark = done(MARKING.mark(problem, Desks.slip(variant, "shared-over-holes"), ClassSettings.USUAL)).get(0);
        assertThat(mark.verdict()).isEqualTo(Verdict.SLIP);
        assertThat(mark.slip()).isEqualTo("shared-over-holes");
        assertThat(mark.families()).containsExactly("fence-post");
        assertThat(mark.says()).startsWith("Not right. This answer fits sharing the span out over the ").doesNotContain("{");
        assertThat(mark.points()).isZero();
        assertThat(mark.possible()).isEqualTo(5);
        assertThat(mark.odds()).isEqualTo(Chance.ofBeingNamed(variant, variant.model().asks().get(0))).isPositive();
        assertThat(mark.typed()).isEqualTo(Desks.slip(variant, "shared-over-holes").get("a"));
        assertThat(mark.readAs()).endsWith("in");
    }

    @Test
    void blankIsNoFaultAndEarnsNothing() {
        List<AnswerMark> marks = done(MARKING.mark(Desks.problem(BANK, Desks.CIRCLE, 2, 10), Map.of(), ClassSettings.USUAL));
        assertThat(marks).extracting(AnswerMark::verdict).containsOnly(Verdict.BLANK);
        assertThat(marks).extracting(AnswerMark::points).containsOnly(0.0);
        assertThat(marks).extracting(AnswerMark::readAs).containsOnly("");
    }

    @Test
    void whatCanBeReadInTwoWaysIsAskedAgainAndNothingIsMarked() {
        Problem problem = Desks.problem(BANK, Desks.CIRCLE, 2, 10);
        Map<String, String> texts = new HashMap<>(Desks.right(problem));
        texts.put("b", "31/2");
        List<Marking.Again> boxes = again(MARKING.mark(problem, texts, ClassSettings.USUAL));
        assertThat(boxes).extracting(Marking.Again::letter).containsExactly("b");
        assertThat(boxes.get(0).typed()).isEqualTo("31/2");
        assertThat(Desks.WORDS.apply(boxes.get(0).why())).contains("31/2");
    }

    @Test
    void aClassMayAskForTheUnit() {
        ClassSettings strict = with(true, 0, false, '.');
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 5);
        List<Marking.Again> boxes = again(MARKING.mark(problem, Map.of("a", " 8 3/8 "), strict));
        assertThat(Desks.WORDS.apply(boxes.get(0).why())).isEqualTo("\"8 3/8\" has no unit. Write the unit behind the number.");
        assertThat(done(MARKING.mark(problem, Map.of("a", "8 3/8 in"), strict))).hasSize(1);
        assertThat(done(MARKING.mark(problem, Map.of("a", "8 3/8"), ClassSettings.USUAL))).hasSize(1);
        assertThat(done(MARKING.mark(problem, Map.of("a", "0"), strict))).as("0 is 0 in any unit").hasSize(1);
        assertThat(done(MARKING.mark(problem, Map.of(), strict))).as("nothing typed").hasSize(1);
        Problem circle = Desks.problem(BANK, Desks.CIRCLE, 2, 10);
        assertThat(again(MARKING.mark(circle, Map.of("a", "1.5, 2.5", "c", "1; 2; 3"), strict))).extracting(Marking.Again::letter).containsExactly("a", "c");
    }

    @Test
    void theClassSaysWhatMarksADecimal() {
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 5);
        AnswerMark comma = done(MARKING.mark(problem, Map.of("a", "8,375 in"), with(true, 0, true, ','))).get(0);
        AnswerMark thousands = done(MARKING.mark(problem, Map.of("a", "8,375 in"), ClassSettings.USUAL)).get(0);
        AnswerMark point = done(MARKING.mark(problem, Map.of("a", "8.375 in"), ClassSettings.USUAL)).get(0);
        assertThat(comma.readAs()).isEqualTo("8,375\u00a0in");
        assertThat(point.readAs()).isEqualTo("8.375\u00a0in");
        assertThat(thousands.readAs()).isEqualTo("8375\u00a0in");
        assertThat(comma.verdict()).isEqualTo(point.verdict());
    }

    @Test
    void theClassSaysWhatANearAnswerEarns() {
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 8);
        Variant variant = SmallBank.draw(Desks.HOLES, UnitSystem.US, 3);
        String near = String.format(java.util.Locale.ROOT, "%.4f in", variant.right().number(variant.model().asks().get(0).slot()) + 0.07);
        AnswerMark mark = done(MARKING.mark(problem, Map.of("a", near), with(true, 0.25, true, '.'))).get(0);
        assertThat(mark.verdict()).isEqualTo(Verdict.NEAR);
        assertThat(mark.points()).isCloseTo(2, within(1e-12));
        assertThat(done(MARKING.mark(problem, Map.of("a", near), with(true, 0, true, '.'))).get(0).points()).isZero();
    }

    private static final Bank MENDED = SmallBank.changed("spacing/bolt-holes.yaml", "say: Take the edge distance off both ends.", "say: Take both edges off.");

    @Test
    void aMendedExerciseIsMarkedWithTheOneThatWasDealt() {
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 5);
        Marking kept = new Marking(MENDED, Shelf.of(BANK), Desks.WORDS);
        assertThat(kept.isStale(problem)).isFalse();
        Marking.Outcome outcome = kept.mark(problem, Desks.right(problem), ClassSettings.USUAL);
        assertThat(((Marking.Outcome.Done) outcome).fingerprint()).isEqualTo(problem.fingerprint());
        assertThat(outcome).isEqualTo(MARKING.mark(problem, Desks.right(problem), ClassSettings.USUAL));
    }

    @Test
    void theTextThatWasKeptBesideTheMarksIsEnough() {
        for (String exercise : List.of(Desks.HOLES, Desks.BEND, Desks.CIRCLE, Desks.DRUM, Desks.RULE)) {
            Problem problem = Desks.problem(BANK, exercise, 6, 5);
            Map<String, String> texts = Map.of(problem.fingerprint(), BANK.wholes().get(exercise));
            Bank empty = new Bank(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
            Marking readBack = new Marking(empty, Shelf.of(f -> Optional.ofNullable(texts.get(f))), Desks.WORDS);
            assertThat(readBack.mark(problem, Desks.right(problem), ClassSettings.USUAL)).isEqualTo(MARKING.mark(problem, Desks.right(problem), ClassSettings.USUAL));
        }
    }

    @Test
    void withoutTheOneThatWasDealtNothingIsMarkedAndItIsSaid() {
        Problem problem = Desks.problem(BANK, Desks.HOLES, 3, 5);
        Marking alone = new Marking(MENDED, Desks.NOTHING_KEPT, Desks.WORDS);
        assertThat(alone.isStale(problem)).isTrue();
        Marking.Outcome outcome = alone.mark(problem, Desks.right(problem), ClassSettings.USUAL);
        assertThat(outcome).isInstanceOf(Marking.Outcome.Stale.class);
        assertThat(Desks.WORDS.apply(((Marking.Outcome.Stale) outcome).why())).contains("mended", "no try was used");
        Problem gone = new Problem(1, 1, 1, 1, 1, "spacing/no-such", 1, UnitSystem.US, "0123456789abcdef", 1);
        assertThat(alone.exercise(gone)).isEqualTo(Optional.empty());
        assertThat(alone.mark(gone, Map.of(), ClassSettings.USUAL)).isInstanceOf(Marking.Outcome.Stale.class);
    }

    /** A carried answer is kept with the slip behind it, and earns what the class says. */
    @Test
    void carriedAnswersEarnWhatTheClassSays() {
        int carried = 0;
        for (long seed = 1; seed <= 20; seed++) {
            Problem problem = Desks.problem(BANK, Desks.BEND, seed, 6);
            Variant variant = SmallBank.draw(Desks.BEND, UnitSystem.US, seed);
            for (String slip : variant.model().slips().stream().map(s -> s.name()).toList()) {
                Map<String, String> texts = Desks.slip(variant, slip);
                List<AnswerMark> earns = done(MARKING.mark(problem, texts, with(true, 0, true, '.')));
                List<AnswerMark> earnsNot = done(MARKING.mark(problem, texts, with(false, 0, true, '.')));
                for (int i = 0; i < earns.size(); i++) {
                    if (earns.get(i).verdict() == Verdict.CARRIED) {
                        carried++;
                        assertThat(earns.get(i).points()).isEqualTo(earns.get(i).possible());
                        assertThat(earnsNot.get(i).points()).isZero();
                    }
                }
            }
        }
        assertThat(carried).isPositive();
    }
}
