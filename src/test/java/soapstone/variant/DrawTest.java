package soapstone.variant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.LongUnaryOperator;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.Baseline;

/** The generator behind all draws: fixed for ever, and even. */
class DrawTest {

    /** How improbable a count may be before it fails; the seeds are fixed, so it fails always or never. */
    private static final double RARE = 1e-4;
    private static final int PER_VALUE = 200;

    record Vector(long seed, String name, int attempt, long size, long bits, long index) {}

    static List<Vector> vectors() {
        return Baseline.read("soapstone/variant/draw-vectors.csv").lines().filter(l -> !l.startsWith("#") && !l.startsWith("seed")).map(line -> {
            String[] c = line.split(",");
            return new Vector(Long.parseLong(c[0]), c[1], Integer.parseInt(c[2]), Long.parseLong(c[3]), Long.parseLong(c[4]), Long.parseLong(c[5]));
        }).toList();
    }

    @Test
    void thereAreVectors() {
        assertThat(vectors()).hasSize(180);
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void theSequenceIsFixedForEver(Vector v) {
        assertThat(Draw.bits(v.seed(), v.name(), v.attempt())).isEqualTo(v.bits());
        assertThat(Draw.index(v.seed(), Draw.hash(v.name()), v.attempt(), v.size())).isEqualTo(v.index());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 7, 10, 14, 64, 181, 1000})
    void everyValueComesUpEquallyOften(int size) {
        long name = Draw.hash("length");
        assertThat(unevenness(size, i -> Draw.index(i, name, 0, size))).as("over seeds 1, 2, 3 …").isLessThan(limit(size));
        assertThat(unevenness(size, i -> Draw.index(17, name, (int) i, size))).as("over the tries of seed 17").isLessThan(limit(size));
        assertThat(unevenness(size, i -> Draw.index(17, Draw.hash("given_" + i), 0, size))).as("over names, seed 17").isLessThan(limit(size));
        assertThat(unevenness(size, i -> Draw.index(i << 32, name, 0, size))).as("over seeds that differ in high bits").isLessThan(limit(size));
    }

    @Test
    void twoGivensOfOneSeedHaveNothingToDoWithEachOther() {
        long a = Draw.hash("length");
        long b = Draw.hash("width");
        assertThat(unevenness(64, i -> 8 * Draw.index(i, a, 0, 8) + Draw.index(i, b, 0, 8))).as("pairs of two givens").isLessThan(limit(64));
        assertThat(unevenness(64, i -> 8 * Draw.index(i, a, 0, 8) + Draw.index(i, a, 1, 8))).as("pairs of two tries").isLessThan(limit(64));
        assertThat(unevenness(64, i -> 8 * Draw.index(i, a, 0, 8) + Draw.index(i + 1, a, 0, 8))).as("pairs of two seeds").isLessThan(limit(64));
    }

    @Test
    void theTestOfEvennessSeesAnUnevenDraw() {
        assertThat(unevenness(10, i -> Math.min(9, Draw.index(i, 1, 0, 11)))).isGreaterThan(limit(10));
    }

    private static double unevenness(int size, LongUnaryOperator draw) {
        int[] counts = new int[size];
        long draws = (long) size * PER_VALUE;
        for (long i = 1; i <= draws; i++) {
            counts[(int) draw.applyAsLong(i)]++;
        }
        double sum = 0;
        for (int count : counts) {
            sum += (count - PER_VALUE) * (double) (count - PER_VALUE) / PER_VALUE;
        }
        return sum;
    }

    private static double limit(int size) {
        return new ChiSquaredDistribution(size - 1).inverseCumulativeProbability(1 - RARE);
    }
}
