package soapstone.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Ask;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.proof.CheckRun;
import soapstone.proof.DrawStudy;
import soapstone.proof.Proof;
import soapstone.quantity.Units;
import soapstone.variant.Shown;

class BankReaderTest {

    private final Bank bank = SmallBank.bank();

    @Test
    void readsEveryPartOfABank() {
        assertThat(bank.exercises()).containsOnlyKeys("bends/one-bend", "circles/bolt-circle", "measuring/rule", "spacing/bolt-holes", "tanks/drum");
        assertThat(bank.formulas()).containsOnlyKeys("bend_allowance", "by_metal", "round_area");
        assertThat(bank.tables()).containsOnlyKeys("gauge", "pail");
        assertThat(bank.families()).containsKey("fence-post").hasSize(11);
        assertThat(bank.cautions()).containsOnlyKeys("hot-tank", "sharp-edges");
        assertThat(bank.unit("spacing")).extracting(Exercise::title).containsExactly("Bolt holes along an angle");
    }

    @Test
    void theSmallBankIsFairAndItsChecksPass() {
        assertThat(Proof.checks(bank)).hasSize(11).allSatisfy(run -> assertThat(run.passes()).as(run.owner() + ": " + run.told()).isTrue());
        assertThat(Proof.checks(bank)).filteredOn(run -> run.check().misprint()).extracting(CheckRun::matches).containsExactly(false);
        assertThat(Proof.draws(bank, 60)).flatExtracting(DrawStudy::faults).isEmpty();
    }

    @Test
    void aFormulaBringsItsSlipsIntoTheExercise() {
        Model model = SmallBank.exercise("bends/one-bend").us();
        assertThat(model.slips()).extracting(Slip::name)
                .containsExactly("other-metal", "one-flat", "allowance-taken-off", "inside-radius-only", "included-angle");
        assertThat(model.slips()).extracting(Slip::formula).containsExactly("", "", "", "bend_allowance", "bend_allowance");
    }

    @Test
    void aSlipOfAFormulaSpeaksOfTheNamesOfTheExercise() {
        var variant = SmallBank.draw("bends/one-bend", soapstone.quantity.UnitSystem.US, 5);
        Slip slip = variant.model().slips().get(3);
        String radius = Shown.value(variant.model(), variant.right(), variant.model().program().find("radius"));
        assertThat(Shown.text(variant.model(), slip.say(), variant.right(), variant.right()))
                .isEqualTo("This answer fits the inside radius " + radius + " alone.");
    }

    @Test
    void aMetricDrawHasItsOwnRangesAndUnits() {
        Model us = SmallBank.exercise("tanks/drum").us();
        Model metric = SmallBank.exercise("tanks/drum").metric();
        assertThat(range(us, "across").first()).isEqualTo(18.0);
        assertThat(range(metric, "across")).isEqualTo(new Given.Range(450, 10, 31));
        assertThat(us.ask("gallons").unit()).isEqualTo(Units.GALLONS);
        assertThat(metric.ask("gallons").unit()).isEqualTo(Units.LITER);
        assertThat(us.program().slots()).hasSameSizeAs(metric.program().slots());
    }

    private static Given.Range range(Model model, String name) {
        return (Given.Range) model.givens().stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow().choice();
    }

    @Test
    void everyKindOfAskIsRead() {
        assertThat(bank.exercises().values()).flatExtracting(e -> e.us().asks()).extracting(Ask::kind)
                .contains(Ask.Kind.QUANTITY, Ask.Kind.COUNT, Ask.Kind.CHOICE, Ask.Kind.FRACTION, Ask.Kind.POINT, Ask.Kind.LIST);
        // A rule in millimetres has no fractions.
        assertThat(SmallBank.exercise("measuring/rule").metric().asks().get(0).kind()).isEqualTo(Ask.Kind.QUANTITY);
    }

    @Test
    void rowsOfATableAreChecksOfTheirOwn() {
        List<Check> checks = SmallBank.exercise("spacing/bolt-holes").checks();
        assertThat(checks).hasSize(4);
        assertThat(checks.get(3).note()).isEqualTo("six spaces");
        assertThat(checks.get(3).place()).hasToString("exercise-bank/checks/holes.csv:3:1");
    }

    @Test
    void theFingerprintCoversAllThatTheExerciseReaches() {
        String before = SmallBank.exercise("bends/one-bend").fingerprint();
        assertThat(before).matches("[0-9a-f]{16}");
        Bank table = SmallBank.changed("tables/gauge.csv", "14,0.0747", "14,0.0748");
        Bank formula = SmallBank.changed("formulas/shop.yaml", "Length of the neutral line", "The length of the neutral line");
        Bank own = SmallBank.changed("bends/one-bend.yaml", "Both flats.", "The two flats.");
        assertThat(List.of(table, formula, own)).extracting(b -> b.exercise("bends/one-bend").orElseThrow().fingerprint())
                .doesNotContain(before).doesNotHaveDuplicates();
    }

    @Test
    void theFingerprintOfAnExerciseDoesNotChangeWithWhatItDoesNotReach() {
        String before = SmallBank.exercise("spacing/bolt-holes").fingerprint();
        Bank table = SmallBank.changed("tables/gauge.csv", "14,0.0747", "14,0.0748");
        assertThat(table.exercise("spacing/bolt-holes").orElseThrow().fingerprint()).isEqualTo(before);
    }

    @Test
    void anAuthorAtWorkStillGetsTheOtherExercises() {
        BankFiles files = new BankFiles(SmallBank.with("spacing/bolt-holes.yaml", "title: Half written"));
        assertThat(BankReader.read(files).bank()).isEmpty();
        assertThat(BankReader.partial(files).exercises()).containsOnlyKeys("bends/one-bend", "circles/bolt-circle", "measuring/rule", "tanks/drum");
    }

    @Test
    void sixtyNamesFitAndNoMore() {
        // Fifty-one lines beside the four givens and five lines that are there.
        StringBuilder more = new StringBuilder();
        for (int i = 1; i <= 51; i++) {
            more.append("  - let: more_").append(i).append(" = ").append(i == 1 ? "last" : "more_" + (i - 1)).append(" + 1 in\n");
        }
        Bank sixty = SmallBank.changed("spacing/bolt-holes.yaml", "\nask:\n", "\n" + more + "ask:\n");
        assertThat(sixty.exercise("spacing/bolt-holes").orElseThrow().us().program().slots()).as("pi and sixty names").hasSize(61);
        var frame = sixty.exercise("spacing/bolt-holes").orElseThrow().us().program();
        assertThat(frame.reads(60)).isEqualTo(1L << 59);
        String text = SmallBank.files().get("spacing/bolt-holes.yaml").replace("\nask:\n", "\n" + more + "  - let: one_too_many = last\nask:\n");
        assertThat(BankReader.read(new BankFiles(SmallBank.with("spacing/bolt-holes.yaml", text))).issues().all()).extracting(i -> i.found())
                .containsExactly("the exercise has more than 60 names");
    }
}
