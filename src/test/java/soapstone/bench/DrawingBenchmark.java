package soapstone.bench;

import java.io.IOException;
import java.util.Optional;
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
import soapstone.files.Folder;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * Draws the numbers of one sheet, each invocation those of the next seed.
 *
 * <p>Run: see the package.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class DrawingBenchmark {

    @Param({"spacing/bolt-holes", "bends/flat-channel", "tanks/lying-drum", "jobs/sap-hauling-tank"})
    public String exercise;

    private Drawer drawer;
    private long seed;

    @Setup(Level.Trial)
    public void read() throws IOException {
        var bank = BankReader.read(new BankFiles(Folder.builtIn("exercise-bank", ".yaml", ".csv"))).bank().orElseThrow();
        drawer = new Drawer(bank.exercise(exercise).orElseThrow(), UnitSystem.US);
    }

    @Benchmark
    public Optional<Variant> draw() {
        return drawer.draw(seed++);
    }
}
