package soapstone.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import soapstone.bank.Bank;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.files.Folder;
import soapstone.quantity.UnitSystem;

/**
 * The Java that is written out of the bank for the sake of measuring marks as the marker does. This says that the ratios
 * of {@code speed} compare the same work, and it tries the marker against a second way of doing the sums.
 */
class TrialTest {

    @Test
    void writtenOutJavaGivesTheSameVerdicts() throws IOException {
        InMemory compiler = InMemory.compiler().orElseThrow();
        Bank bank = BankReader.read(new BankFiles(Folder.builtIn("exercise-bank", ".yaml", ".csv"))).bank().orElseThrow();
        List<Trial.Difference> differences = new ArrayList<>();
        int answers = 0;
        for (Exercise exercise : bank.exercises().values()) {
            for (Ask ask : exercise.model(UnitSystem.US).asks()) {
                Trial trial = new Trial(exercise, ask, bank, compiler, 3);
                differences.addAll(trial.differences());
                answers += trial.answers();
            }
        }
        assertThat(differences).isEmpty();
        assertThat(answers).isGreaterThan(1000);
    }

    @Test
    void aSpreadHasItsMiddleAndItsQuarters() {
        assertThat(Spread.of(new double[] {5, 1, 4, 2, 3})).isEqualTo(new Spread(3, 2, 4));
        assertThat(Spread.of(new double[] {1, 2})).isEqualTo(new Spread(1.5, 1.25, 1.75));
        assertThat(Spread.of(new double[] {7})).isEqualTo(new Spread(7, 7, 7));
    }
}
