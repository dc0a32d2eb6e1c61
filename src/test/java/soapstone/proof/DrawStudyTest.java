package soapstone.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.quantity.UnitSystem;

/** What makes an exercise unfair is found. */
class DrawStudyTest {

    private static final String HOLES = "spacing/bolt-holes";

    private static List<String> faults(String piece, String by) {
        Bank bank = SmallBank.changed(HOLES + ".yaml", piece, by);
        return DrawStudy.of(bank.exercise(HOLES).orElseThrow(), UnitSystem.US, 200).faults().stream().map(f -> f.replace('\u00a0', ' ')).toList();
    }

    @Test
    void theSmallBankIsFair() {
        assertThat(Proof.draws(SmallBank.bank(), 200)).hasSize(10).allSatisfy(study -> assertThat(study.faults()).as(study.exercise()).isEmpty());
    }

    @Test
    void tooManyDrawsRefused() {
        assertThat(faults("  - pitch >= 3*hole ", "  - pitch >= 60*hole ")).first().asString()
                .matches("\\d\\d % of the draws are refused, at most 60 %: where: pitch >= 60\\*hole \\(\\d\\d %\\).*");
    }

    @Test
    void aToleranceThatHidesASlip() {
        assertThat(faults("to: 1/16 in, within: 1/32 in", "to: 2 in, within: 1 in")).first().asString().contains("too near: one-end-only");
    }

    @Test
    void aPickThatNeverSurvives() {
        assertThat(faults("hole: {pick: [3/8 in, 7/16 in, 9/16 in]}", "hole: {pick: [3/8 in, 60 in]}")).contains("the pick 60 in of 'hole' never survives");
    }

    @Test
    void anEndOfARangeThatNeverSurvives() {
        assertThat(faults("  - pitch >= 3*hole ", "  - holes <= 9 ")).contains("the highest third of 'holes' never survives");
    }

    @Test
    void aSlipThatIsSeldomSeen() {
        assertThat(faults("swap: spaces = holes + 1\n", "swap: 'spaces = if(length == 44 in, holes + 1, holes - 1)'\n")).first().asString()
                .matches("the slip 'one-space-too-many' is seen in \\d % of the draws in which it makes sense; at least 10 %");
    }

    @Test
    void slipsThatMostlyGiveOneNumberAreTold() {
        Bank bank = SmallBank.changed(HOLES + ".yaml", "swap: spaces = holes + 1\n", "swap: spaces = holes*1\n");
        DrawStudy study = DrawStudy.of(bank.exercise(HOLES).orElseThrow(), UnitSystem.US, 60);
        assertThat(study.seldomApart()).containsEntry("pitch: shared-over-holes ~ one-space-too-many", 100);
    }

    @Test
    void everyTryIsCounted() {
        DrawStudy study = DrawStudy.of(SmallBank.exercise("bends/one-bend"), UnitSystem.US, 100);
        assertThat(study.tries()).isEqualTo(1000);
        assertThat(study.refusedShare()).isBetween(0.01, 0.6);
        assertThat(study.seen()).containsOnlyKeys("other-metal", "one-flat", "allowance-taken-off", "inside-radius-only", "included-angle");
        assertThat(study.seen().values()).allSatisfy(share -> assertThat(share).isBetween(0.9, 1.0));
    }
}
