package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.exercise.Ask;
import soapstone.files.Folder;
import soapstone.mark.MarkRules;
import soapstone.mark.Marker;
import soapstone.mark.Odds;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

class ChanceTest {

    /** Where all odds are equal it is the binomial distribution, here that of Apache Commons Math. */
    @Test
    void equalOddsAreBinomial() {
        for (double p : new double[] {0, 0.004, 0.03, 0.25, 0.5, 0.97, 1}) {
            for (int n = 1; n <= 40; n += 3) {
                double[] each = new double[n];
                Arrays.fill(each, p);
                BinomialDistribution binomial = new BinomialDistribution(null, n, p);
                for (int k = 0; k <= n; k++) {
                    double expected = 0;
                    for (int i = n; i >= k; i--) {
                        expected += binomial.probability(i);
                    }
                    assertThat(Chance.atLeast(k, each)).as(k + " of " + n + " at " + p).isCloseTo(expected, within(1e-12 + 1e-9 * expected));
                }
            }
        }
    }

    @Test
    void smallCasesAreCountedOut() {
        SplittableRandom chance = new SplittableRandom(4);
        for (int n = 1; n <= 10; n++) {
            double[] each = chance.doubles(n).toArray();
            double[] exactly = new double[n + 1];
            for (int outcome = 0; outcome < 1 << n; outcome++) {
                double p = 1;
                for (int i = 0; i < n; i++) {
                    p *= (outcome & 1 << i) != 0 ? each[i] : 1 - each[i];
                }
                exactly[Integer.bitCount(outcome)] += p;
            }
            for (int k = 0; k <= n; k++) {
                double expected = Arrays.stream(exactly, k, n + 1).sum();
                assertThat(Chance.atLeast(k, each)).as(k + " of " + Arrays.toString(each)).isCloseTo(expected, within(1e-12));
            }
            assertThat(Chance.any(each)).isCloseTo(1 - exactly[0], within(1e-12));
        }
    }

    @Test
    void tinyTailsKeepTheirDigits() {
        double[] each = {0.01, 0.01, 0.01, 0.01, 0.01, 0.01};
        assertThat(Chance.atLeast(6, each)).isCloseTo(1e-12, within(1e-24));
    }

    @Test
    void moreThanThereAreIsImpossibleAndNoneIsCertain() {
        assertThat(Chance.atLeast(3, new double[] {1, 1})).isZero();
        assertThat(Chance.atLeast(0, new double[0])).isEqualTo(1);
        assertThat(Chance.any(new double[0])).isZero();
    }

    @Test
    void whatIsNoProbabilityIsRefused() {
        assertThatThrownBy(() -> Chance.atLeast(1, new double[] {1.5})).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("1.5");
        assertThatThrownBy(() -> Chance.atLeast(1, new double[] {Double.NaN})).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anAmountHasTheOddsOfTheEngineAndListsHaveNone() {
        Variant holes = SmallBank.draw(Desks.HOLES, UnitSystem.US, 3);
        Ask pitch = holes.model().asks().get(0);
        assertThat(Chance.ofBeingNamed(holes, pitch)).isEqualTo(Odds.of(holes, pitch)).isBetween(0.001, 0.5);
        Variant circle = SmallBank.draw(Desks.CIRCLE, UnitSystem.US, 3);
        assertThat(Chance.ofBeingNamed(circle, circle.model().asks().get(0))).isZero();
        assertThat(Chance.ofBeingNamed(circle, circle.model().asks().get(2))).isZero();
    }

    private static Variant asked(String ask, String... values) {
        String text = SmallBank.files().get("spacing/bolt-holes.yaml").replaceFirst("(?m)^ask:\n", "ask:\n" + ask);
        for (int i = 0; i < values.length; i += 2) {
            text = text.replaceAll("(?m)^  " + values[i] + ": \\{.*}", "  " + values[i] + ": {pick: [" + values[i + 1] + "]}");
        }
        Bank bank = SmallBank.read(SmallBank.with("spacing/bolt-holes.yaml", text));
        return Drawer.draw(bank.exercise(Desks.HOLES).orElseThrow(), UnitSystem.US, 1).orElseThrow();
    }

    /** Five holes have 4 spaces; slips say 5 and 6. Of 1 to 20 without 4, each by one over itself, 5 and 6 are 0.36667 of 3.34774. */
    @Test
    void aCountIsNamedByTheNumbersThatItsSlipsGive() {
        Variant five = asked("  - {find: spaces, kind: count, prompt: Spaces}\n", "holes", "5");
        assertThat(Chance.ofBeingNamed(five, five.model().asks().get(0))).isCloseTo(0.36667 / 3.34774, within(1e-5));
    }

    @Test
    void aChoiceIsNamedByTheOptionsThatOneSlipGives() throws IOException {
        Bank bank = SmallBank.read(Folder.builtIn("exercise-bank", ".yaml", ".csv"));
        long all = 0;
        for (long seed = 1; seed <= 20; seed++) {
            Variant variant = Drawer.draw(bank.exercise("ratio/right-size").orElseThrow(), UnitSystem.US, seed).orElseThrow();
            Ask choice = variant.model().asks().stream().filter(a -> a.kind() == Ask.Kind.CHOICE).findFirst().orElseThrow();
            int place = variant.model().asks().indexOf(choice);
            long named = choice.options().stream().filter(o -> o.label() != variant.right().number(choice.slot()))
                    .filter(o -> Marker.mark(variant, texts(place, o.name()), '.', MarkRules.USUAL).asks().get(place).verdict() == Verdict.SLIP).count();
            assertThat(Chance.ofBeingNamed(variant, choice)).as("seed " + seed).isEqualTo((double) named / (choice.options().size() - 1));
            all += named;
        }
        assertThat(all).isPositive();
    }

    private static List<String> texts(int place, String text) {
        List<String> texts = new ArrayList<>(Collections.nCopies(place, ""));
        texts.add(text);
        return texts;
    }

    @Test
    void everyAskHasAChanceFromNoneToOne() {
        for (String exercise : new String[] {Desks.HOLES, Desks.CIRCLE, Desks.BEND, Desks.DRUM, Desks.RULE}) {
            for (long seed = 1; seed <= 20; seed++) {
                Variant variant = SmallBank.draw(exercise, UnitSystem.US, seed);
                for (Ask ask : variant.model().asks()) {
                    assertThat(Chance.ofBeingNamed(variant, ask)).as(exercise + " " + seed + " " + ask.name()).isBetween(0.0, 1.0);
                }
            }
        }
    }
}
