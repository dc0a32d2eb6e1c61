package soapstone.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.files.Folder;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** A mark can be computed again from what is kept beside it: the whole text of its exercise. */
class KeptWholeTest {

    private static Exercise read(Bank bank, Exercise exercise) {
        return KeptWhole.read(exercise.id(), exercise.fingerprint(), bank.wholes().get(exercise.id()))
                .orElseThrow(() -> new AssertionError(exercise.id() + " does not come back"));
    }

    /** What every slip would have typed, marked: verdicts, names, points and words. */
    private static List<String> marks(Exercise exercise, UnitSystem units, long seed) {
        Variant variant = Drawer.draw(exercise, units, seed).orElseThrow();
        List<String> all = new ArrayList<>(List.of(Shown.text(variant.model(), variant.model().story(), variant.right(), variant.right())));
        for (Variant.Outcome outcome : variant.outcomes()) {
            List<String> texts = variant.model().asks().stream().map(a -> Shown.answer(variant.model(), outcome.theirs(), a)).toList();
            Marked marked = Marker.mark(variant, texts, '.', MarkRules.USUAL);
            marked.asks().forEach(m -> all.add(m.verdict() + " " + m.families() + " " + m.points() + " " + m.fits().stream().map(f -> f.name()).toList()));
        }
        return all;
    }

    private static void comesBack(Bank bank) {
        for (Exercise exercise : bank.exercises().values()) {
            Exercise kept = read(bank, exercise);
            assertThat(kept.fingerprint()).isEqualTo(exercise.fingerprint());
            for (UnitSystem units : UnitSystem.values()) {
                assertThat(marks(kept, units, 5)).as(exercise.id() + " " + units).isEqualTo(marks(exercise, units, 5));
            }
        }
    }

    @Test
    void theSmallBankComesBack() {
        comesBack(SmallBank.bank());
    }

    @Test
    void theWholeBankComesBack() throws IOException {
        Bank bank = SmallBank.read(Folder.builtIn("exercise-bank", ".yaml", ".csv"));
        assertThat(bank.exercises()).hasSizeGreaterThan(60);
        comesBack(bank);
    }

    /** What a class had set stands beside the mark, and the exercise that comes back follows it, whatever the bank says of conventions now. */
    @Test
    void whatComesBackFollowsTheSameConventions() throws IOException {
        Bank bank = SmallBank.read(Folder.builtIn("exercise-bank", ".yaml", ".csv"));
        Conventions set = Conventions.parse("k_factor=0.42; rounding=0.015625 in");
        Exercise exercise = bank.exercise("bends/flat-angle").orElseThrow();
        Variant dealt = Drawer.draw(exercise, UnitSystem.US, set, 5).orElseThrow();
        Variant kept = Drawer.draw(read(bank, exercise), UnitSystem.US, set, 5).orElseThrow();
        assertThat(kept.conventions()).isEqualTo(set);
        assertThat(kept.model().asks()).extracting(Ask::to, Ask::within).isEqualTo(List.of(tuple(1.0 / 64, 1.0 / 128)));
        for (String name : List.of("k", "radius", "first", "flat")) {
            assertThat(kept.right().number(kept.model().program().find(name))).isEqualTo(dealt.right().number(dealt.model().program().find(name)));
        }
    }

    @Test
    void anotherTextOrAnotherLanguageDoesNot() {
        Exercise exercise = SmallBank.exercise("spacing/bolt-holes");
        String whole = SmallBank.bank().wholes().get(exercise.id());
        assertThat(KeptWhole.read(exercise.id(), exercise.fingerprint(), whole.replace("holes - 1", "holes"))).isEmpty();
        assertThat(KeptWhole.read(exercise.id(), exercise.fingerprint(), "")).isEmpty();
        String older = whole.replaceFirst("language \\d+", "language 0");
        assertThat(KeptWhole.read(exercise.id(), Fingerprint.of(older), older)).isEmpty();
    }
}
