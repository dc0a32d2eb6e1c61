package soapstone.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;

/** A published check passes or fails as a reader of the source would say. */
class CheckRunTest {

    /** Runs one check of the bolt holes, written as in a bank file. */
    private static CheckRun run(String check) {
        String old = "  - {source: worked by hand, kind: own, given: {length: 61 1/2 in, holes: 8, edge: 1 1/2 in}, expect: {span: 58 1/2 in, spaces: 7, pitch: 8.3571 in}, within: 0.0001 in}";
        Bank bank = SmallBank.changed("spacing/bolt-holes.yaml", old, "  - {source: tried here, kind: own, " + check + "}");
        return CheckRun.of(bank.exercise("spacing/bolt-holes").orElseThrow(), bank.exercise("spacing/bolt-holes").orElseThrow().checks().get(0));
    }

    private static final String FIVE_HOLES = "given: {length: 50 in, holes: 5, edge: 1 in}, ";

    @Test
    void matchesUpToAndWithTheTolerance() {
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12 in}").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12.01 in}, within: 0.01 in").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12.0101 in}, within: 0.01 in").matches()).isFalse();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12.0001 in}").matches()).isFalse();
    }

    @Test
    void theToleranceMayBeAPercentAnotherUnitOrAPlainNumber() {
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12.05 in}, within: 0.5 %").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12.1 in}, within: 0.5 %").matches()).isFalse();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 1 ft}, within: 0.01 in").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 305 mm}, within: 0.5").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 306 mm}, within: 0.5").matches()).isFalse();
    }

    @Test
    void everyExpectedLineHasToMatch() {
        assertThat(run(FIVE_HOLES + "expect: {span: 48 in, pitch: 12 in}").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {span: 47 in, pitch: 12 in}").matches()).isFalse();
        assertThat(run(FIVE_HOLES + "expect: {spaces: 4}").matches()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {spaces: 5}").matches()).isFalse();
    }

    @Test
    void givesWhatTheLineNeedsAndNoMore() {
        assertThat(run("given: {span: 48 in, holes: 5}, expect: {pitch: 12 in}").matches()).as("a line's value may be given").isTrue();
        CheckRun missing = run("given: {holes: 5}, expect: {pitch: 12 in}");
        assertThat(missing.passes()).isFalse();
        assertThat(missing.told()).isEqualTo("'pitch' needs more than the check gives");
    }

    @Test
    void aMisprintPassesWhereItDoesNotMatch() {
        assertThat(run(FIVE_HOLES + "expect: {pitch: 21 in}, misprint: true").passes()).isTrue();
        assertThat(run(FIVE_HOLES + "expect: {pitch: 12 in}, misprint: true").passes()).isFalse();
    }

    @Test
    void tellsWhatWasPrintedAndWhatComesOut() {
        assertThat(run(FIVE_HOLES + "expect: {spaces: 5, pitch: 1 ft}, within: 0.1 in").told())
                .isEqualTo("spaces printed 5, worked out 4; pitch printed 1 ft, worked out 1 ft");
    }

    @Test
    void listsAndLabelsAreCompared() {
        Bank bank = SmallBank.bank();
        assertThat(CheckRun.of(bank.exercises().get("circles/bolt-circle"), bank.exercises().get("circles/bolt-circle").checks().get(0)).matches()).isTrue();
        Bank list = SmallBank.changed("circles/bolt-circle.yaml", "[1 in, 3 1/2 in, 6 in]", "[1 in, 3 1/2 in, 7 in]");
        assertThat(list.exercises().get("circles/bolt-circle").checks()).map(c -> CheckRun.of(list.exercises().get("circles/bolt-circle"), c).matches()).containsExactly(false);
        Bank shorter = SmallBank.changed("circles/bolt-circle.yaml", "[1 in, 3 1/2 in, 6 in]", "[1 in, 3 1/2 in]");
        assertThat(shorter.exercises().get("circles/bolt-circle").checks()).map(c -> CheckRun.of(shorter.exercises().get("circles/bolt-circle"), c).matches()).containsExactly(false);
        Bank label = SmallBank.changed("tanks/drum.yaml", "kind: middle}}", "kind: small}}");
        assertThat(label.exercises().get("tanks/drum").checks()).map(c -> CheckRun.of(label.exercises().get("tanks/drum"), c).matches()).containsExactly(true, false);
    }

    @Test
    void everyCheckOfABankIsRun() {
        List<CheckRun> runs = Proof.checks(SmallBank.bank());
        assertThat(runs).extracting(CheckRun::owner).contains("formulas/bend_allowance", "formulas/round_area", "spacing/bolt-holes", "tanks/drum");
        Bank wrong = SmallBank.changed("formulas/shop.yaml", "expect: 314.159 mm2", "expect: 341.159 mm2");
        assertThat(Proof.checks(wrong)).filteredOn(run -> !run.passes()).extracting(CheckRun::owner).containsExactly("formulas/round_area");
    }
}
