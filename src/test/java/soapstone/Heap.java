package soapstone;

/** What is still held on the heap. */
public final class Heap {

    private static final int ROUNDS = 4;

    private Heap() {}

    /** Megabytes that are held after collecting what is free. */
    public static double heldMegabytes() {
        Runtime runtime = Runtime.getRuntime();
        double least = Double.MAX_VALUE;
        for (int i = 0; i < ROUNDS; i++) {
            System.gc();
            least = Math.min(least, (runtime.totalMemory() - runtime.freeMemory()) / 1e6);
        }
        return least;
    }
}
