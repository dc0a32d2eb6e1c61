package soapstone.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.Heap;
import soapstone.bank.SmallBank;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/** Whatever is typed is marked: one verdict for each ask, points in bounds, no exception, nothing kept. */
class AnyAnswerTest {

    private static final int SHEETS = 4_000;
    private static final double FLAT = 4;
    private static final String[] PIECES = {"0", "1", "2", "7", "12", "100", "999999999", ".5", "3.14", "1/2", "3/8", "31/2", " ", "-", "'", "\"", "''", "in", "ft", "mm", "gal",
        "lb", "deg", "°", "½", "⅝", ",", ";", "\n", "(", ")", "x", "large", "small", "middle", "NaN", "Infinity", "1e9", "1e-9", "\u0000", "\ud83d\ude00", "{", "$", "%"};

    @ParameterizedTest
    @ValueSource(strings = {"bends/one-bend", "circles/bolt-circle", "measuring/rule", "spacing/bolt-holes", "tanks/drum"})
    void getsOneVerdictEach(String id) {
        for (UnitSystem system : UnitSystem.values()) {
            Variant variant = SmallBank.draw(id, system, 3);
            for (long seed = 1; seed <= SHEETS / 4; seed++) {
                String at = id + " " + system.word() + " seed " + seed;
                marked(variant, seed, at);
            }
        }
    }

    private static void marked(Variant variant, long seed, String at) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> answers = new ArrayList<>();
        variant.model().asks().forEach(ask -> answers.add(answer(random)));
        try {
            Marked marked = Marker.mark(variant, answers, '.', MarkRules.USUAL);
            assertThat(marked.asks()).as(at).hasSameSizeAs(variant.model().asks());
            for (AskMark mark : marked.asks()) {
                assertThat(mark.points()).as("%s: %s", at, answers).isBetween(0.0, mark.ask().points());
                assertThat(mark.verdict() == Verdict.SLIP || mark.verdict() == Verdict.CARRIED || mark.fits().isEmpty()).as("%s: %s", at, answers).isTrue();
            }
            assertThat(marked.points()).isLessThanOrEqualTo(marked.possible());
            marked.consequence();
        } catch (RuntimeException e) {
            throw new AssertionError(at + ": " + answers, e);
        }
    }

    private static String answer(SplittableRandom random) {
        StringBuilder answer = new StringBuilder();
        for (int n = random.nextInt(7); n > 0; n--) {
            answer.append(PIECES[random.nextInt(random.nextInt(3) == 0 ? PIECES.length : 12)]);
        }
        return answer.toString();
    }

    @Test
    void nothingIsKept() {
        Variant variant = SmallBank.draw("circles/bolt-circle", UnitSystem.US, 3);
        for (long seed = 1; seed <= SHEETS / 4; seed++) {
            marked(variant, seed, "seed " + seed);
        }
        double before = Heap.heldMegabytes();
        for (long seed = 1; seed <= SHEETS; seed++) {
            marked(variant, seed, "seed " + seed);
        }
        assertThat(Heap.heldMegabytes() - before).as("megabytes held more than before").isLessThan(FLAT);
    }

    @Test
    void aLongAnswerIsAskedAgain() {
        Variant variant = SmallBank.draw("spacing/bolt-holes", UnitSystem.US, 3);
        for (String piece : PIECES) {
            Marked marked = Marker.mark(variant, List.of(piece.repeat(20_000)), '.', MarkRules.USUAL);
            assertThat(marked.asks().get(0).verdict()).as("20,000 times <%s>", piece).isIn(Verdict.ASK_AGAIN, Verdict.BLANK);
        }
    }
}
