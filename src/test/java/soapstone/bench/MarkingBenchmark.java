package soapstone.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.exercise.Ask;
import soapstone.files.Folder;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * Marks one sheet: the right answers, those of a slip, and some that nothing explains; and the text of answers read first,
 * as the site does it. Each invocation takes the next of some draws.
 *
 * <p>Run: see the package. One exercise alone: add {@code -p exercise=spacing/bolt-holes}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class MarkingBenchmark {

    private static final int SEEDS = 16;
    private static final char POINT = '.';

    @Param({"spacing/bolt-holes", "bends/flat-channel", "tanks/lying-drum", "jobs/sap-hauling-tank"})
    public String exercise;

    private final List<Variant> variants = new ArrayList<>();
    private final List<List<String>> right = new ArrayList<>();
    private final List<List<String>> slip = new ArrayList<>();
    private final List<List<String>> unexplained = new ArrayList<>();
    private int next;

    @Setup(Level.Trial)
    public void draw() throws IOException {
        var bank = BankReader.read(new BankFiles(Folder.builtIn("exercise-bank", ".yaml", ".csv"))).bank().orElseThrow();
        Drawer drawer = new Drawer(bank.exercise(exercise).orElseThrow(), UnitSystem.US);
        for (long seed = 1; seed <= SEEDS; seed++) {
            Variant variant = drawer.draw(seed).orElseThrow();
            variants.add(variant);
            right.add(texts(variant, null));
            slip.add(texts(variant, variant.outcomes().stream().filter(o -> o.effect() == Effect.SEEN).findFirst().orElseThrow()));
            unexplained.add(variant.model().asks().stream().map(a -> "1234.567").toList());
        }
    }

    private static List<String> texts(Variant variant, Variant.Outcome slip) {
        List<String> texts = new ArrayList<>();
        for (Ask ask : variant.model().asks()) {
            texts.add(Shown.answer(variant.model(), slip == null ? variant.right() : slip.theirs(), ask));
        }
        return texts;
    }

    private Marked mark(List<List<String>> texts) {
        next = (next + 1) % SEEDS;
        return Marker.mark(variants.get(next), texts.get(next), POINT, MarkRules.USUAL);
    }

    @Benchmark
    public Marked readAndMarkRight() {
        return mark(right);
    }

    @Benchmark
    public Marked readAndMarkSlip() {
        return mark(slip);
    }

    @Benchmark
    public Marked readAndMarkUnexplained() {
        return mark(unexplained);
    }
}
