package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.mark.Verdict;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;
import soapstone.source.Message;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/** An exercise had a wrong line: it took two holes off. */
class RegradingTest {

    private static final Bank GOOD = SmallBank.bank();
    private static final Bank WRONG = SmallBank.changed("spacing/bolt-holes.yaml", "let: spaces = holes - 1", "let: spaces = holes - 2");
    private static final Instant TUESDAY = Desks.MONDAY.plusSeconds(86_400);

    private static Work handedIn(Problem problem, Map<String, String> texts, List<Remark> remarks) {
        Marking.Outcome outcome = new Marking(WRONG, Desks.NOTHING_KEPT, Desks.WORDS).mark(problem, texts, ClassSettings.USUAL);
        Marking.Outcome.Done done = (Marking.Outcome.Done) outcome;
        Attempt attempt = new Attempt(50, problem.id(), 1, "r", Desks.MONDAY, false, Attempt.Way.SCREEN, "test", done.fingerprint(), done.marks());
        return new Work(101, problem, List.of(attempt), remarks);
    }

    private static Regrading regrading() {
        return new Regrading(GOOD, Shelf.of(WRONG), Desks.WORDS);
    }

    /** A draw of the wrong exercise, and the answer that is really right with its numbers. */
    private static Work rightButMarkedWrong(List<Remark> remarks) {
        Problem problem = Desks.problem(WRONG, Desks.HOLES, 4, 5);
        Variant wrong = Drawer.draw(WRONG.exercise(Desks.HOLES).orElseThrow(), problem.units(), 4).orElseThrow();
        Variant good = new Drawer(GOOD.exercise(Desks.HOLES).orElseThrow(), problem.units()).at(4, wrong.attempt()).orElseThrow();
        assertThat(Dealing.told(good)).isEqualTo(Dealing.told(wrong));
        Work work = handedIn(problem, Desks.right(good), remarks);
        assertThat(work.attempts().get(0).marks().get(0).verdict().isRight()).isFalse();
        return work;
    }

    @Test
    void whatTheMendChangesIsRemarkedWithBothMarksInTheReason() {
        Work work = rightButMarkedWrong(List.of());
        Regrading.Result result = regrading().look(List.of(work), ClassSettings.USUAL, TUESDAY);
        assertThat(result.unsettled()).isEmpty();
        assertThat(result.remarks()).hasSize(1);
        Remark remark = result.remarks().get(0);
        assertThat(remark.attempt()).isEqualTo(50);
        assertThat(remark.at()).isEqualTo(TUESDAY);
        assertThat(remark.by()).isEmpty();
        assertThat(remark.cause()).isEqualTo(Remark.Cause.REGRADED);
        assertThat(remark.verdict()).isEqualTo(Verdict.RIGHT);
        assertThat(remark.points()).isEqualTo(5);
        String before = Desks.WORDS.apply(Message.of(Printed.verdictKey(work.attempts().get(0).marks().get(0).verdict())));
        assertThat(remark.reason()).isEqualTo("Marked again after the task was mended. Before: " + before + ", 0 of 5 points. Now: right, 5 of 5 points.");
    }

    @Test
    void lookedAtAgainNothingIsNew() {
        Remark first = regrading().look(List.of(rightButMarkedWrong(List.of())), ClassSettings.USUAL, TUESDAY).remarks().get(0);
        assertThat(regrading().look(List.of(rightButMarkedWrong(List.of(first))), ClassSettings.USUAL, TUESDAY.plusSeconds(9)).remarks()).isEmpty();
    }

    @Test
    void whatAPersonSaidStands() {
        for (Remark.Cause cause : List.of(Remark.Cause.OVERRULED, Remark.Cause.EXCUSED, Remark.Cause.CORRECTED)) {
            Remark said = new Remark(1, 50, 0, Desks.MONDAY.plusSeconds(99), Optional.of(7L), cause, Verdict.NEAR, 2, "Measured on the bench.");
            assertThat(regrading().look(List.of(rightButMarkedWrong(List.of(said))), ClassSettings.USUAL, TUESDAY).remarks()).as(cause.name()).isEmpty();
        }
    }

    @Test
    void nothingChangesWhereTheMendChangesNoMark() {
        Problem problem = Desks.problem(WRONG, Desks.HOLES, 4, 5);
        Regrading.Result result = regrading().look(List.of(handedIn(problem, Map.of("a", ""), List.of())), ClassSettings.USUAL, TUESDAY);
        assertThat(result.remarks()).isEmpty();
        assertThat(result.unsettled()).isEmpty();
    }

    @Test
    void anUnmendedExerciseIsNotLookedAt() {
        Regrading same = new Regrading(WRONG, Desks.NOTHING_KEPT, Desks.WORDS);
        Regrading.Result result = same.look(List.of(rightButMarkedWrong(List.of())), ClassSettings.USUAL, TUESDAY);
        assertThat(result.remarks()).isEmpty();
        assertThat(result.unsettled()).isEmpty();
    }

    @Test
    void whatCannotBeMarkedAgainIsLeftToAPerson() {
        Work work = rightButMarkedWrong(List.of());
        Regrading nothingKept = new Regrading(GOOD, Desks.NOTHING_KEPT, Desks.WORDS);
        assertThat(nothingKept.look(List.of(work), ClassSettings.USUAL, TUESDAY).unsettled()).containsExactly(work.attempts().get(0));
        Bank otherNumbers = SmallBank.changed("spacing/bolt-holes.yaml", "length: {from: 30 in, to: 120 in, step: 1/2 in}", "length: {from: 200 in, to: 220 in, step: 1/2 in}");
        Regrading other = new Regrading(otherNumbers, Shelf.of(WRONG), Desks.WORDS);
        assertThat(other.look(List.of(work), ClassSettings.USUAL, TUESDAY)).isEqualTo(new Regrading.Result(List.of(), work.attempts()));
        Map<String, String> files = SmallBank.files();
        files.remove("spacing/bolt-holes.yaml");
        Regrading gone = new Regrading(SmallBank.read(files), Shelf.of(WRONG), Desks.WORDS);
        assertThat(gone.look(List.of(work), ClassSettings.USUAL, TUESDAY).unsettled()).hasSize(1);
    }

    /** The marks of a problem that was dealt with a K of the shop's own are worked out again with that K, whatever is set now. */
    @Test
    void anAttemptIsMarkedAgainWithWhatWasSetWhenItWasDealt() {
        Bank before = following("flats = left + right - left + right");
        Bank after = following("flats = left + right");
        Conventions set = new Conventions(Map.of("k_factor", new Quantity(0.47, Units.ONE)));
        Exercise dealt = before.exercise(Desks.BEND).orElseThrow();
        Problem problem = new Problem(1, 1, 11, 1, 1, Desks.BEND, 6, UnitSystem.US, dealt.fingerprint(), 3, set);
        Variant good = new Drawer(after.exercise(Desks.BEND).orElseThrow(), problem.units(), set).at(6, problem.drawn(dealt).orElseThrow().attempt()).orElseThrow();
        Marking.Outcome.Done done = (Marking.Outcome.Done) new Marking(before, Desks.NOTHING_KEPT, Desks.WORDS).mark(problem, Desks.right(good), ClassSettings.USUAL);
        assertThat(done.marks()).extracting(m -> m.verdict().isRight()).containsExactly(true, false);
        Attempt attempt = new Attempt(50, 1, 1, "r", Desks.MONDAY, false, Attempt.Way.SCREEN, "test", done.fingerprint(), done.marks());

        ClassSettings now = ClassSettings.USUAL.with(new Conventions(Map.of("k_factor", new Quantity(0.33, Units.ONE))));
        Regrading.Result result = new Regrading(after, Shelf.of(f -> Optional.of(before.wholes().get(Desks.BEND))), Desks.WORDS)
                .look(List.of(new Work(101, problem, List.of(attempt), List.of())), now, TUESDAY);
        assertThat(result.unsettled()).isEmpty();
        assertThat(result.remarks()).extracting(Remark::verdict).containsExactly(Verdict.RIGHT);
    }

    private static Bank following(String flats) {
        String text = SmallBank.files().get(Desks.BEND + ".yaml").replace("  k: {pick", "  k: {convention: k_factor, pick").replace("flats = left + right\n", flats + "\n");
        return SmallBank.read(SmallBank.with(Desks.BEND + ".yaml", text));
    }
}
