package soapstone.variant;

import java.nio.charset.StandardCharsets;

/**
 * The generator behind all draws. Its sequence is fixed for ever: a link or a record names a seed, and the same numbers
 * have to come back in any later version. Each value has a stream of its own, hashed from seed, name and try, so that a
 * new given does not move the others.
 *
 * <p>The mixing step is the finalizer of SplitMix64 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom number
 * generators"); names are hashed with FNV-1a, 64 bits.
 */
public final class Draw {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long FNV_START = 0xCBF29CE484222325L;
    private static final long FNV_PRIME = 0x100000001B3L;

    private Draw() {}

    /** A number of 64 bits for a seed, a name and a try. */
    public static long bits(long seed, String name, int attempt) {
        return bits(seed, hash(name), attempt);
    }

    static long bits(long seed, long name, int attempt) {
        return mix(mix(mix(seed + GOLDEN) ^ name) + GOLDEN * (attempt + 1L));
    }

    /** Which of {@code size} values: even to within {@code size / 2^63}. */
    public static long index(long seed, long name, int attempt, long size) {
        return Math.multiplyHigh(bits(seed, name, attempt) >>> 1, size << 1);
    }

    public static long hash(String name) {
        long h = FNV_START;
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            h = (h ^ (b & 0xff)) * FNV_PRIME;
        }
        return h;
    }

    private static long mix(long x) {
        long z = (x ^ x >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}
