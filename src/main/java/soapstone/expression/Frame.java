package soapstone.expression;

/**
 * The values of one run: amounts in base units, lists, labels by number. Made once and used again and again; not for
 * several threads.
 */
public final class Frame {

    private static final double[][] NO_LISTS = {};

    final double[] numbers;
    final double[][] lists;
    final double[] locals;
    int steps;
    private String problem;

    /** @param lists whether there are any in the program; without them no room is made for them */
    Frame(int slots, int locals, boolean lists) {
        this.numbers = new double[slots];
        this.lists = lists ? new double[slots][] : NO_LISTS;
        this.locals = new double[locals];
    }

    /** The amount at a slot, in base units; NaN when it is not defined in this run. */
    public double number(int slot) {
        return numbers[slot];
    }

    /** The list at a slot, in base units; null when it is not defined in this run. */
    public double[] list(int slot) {
        return slot < lists.length ? lists[slot] : null;
    }

    public void set(int slot, double value) {
        numbers[slot] = value;
    }

    public void set(int slot, double[] list) {
        lists[slot] = list;
    }

    /** Takes over all named values of another run of the same program. */
    public void copyFrom(Frame other) {
        System.arraycopy(other.numbers, 0, numbers, 0, numbers.length);
        System.arraycopy(other.lists, 0, lists, 0, lists.length);
        problem = null;
    }

    /** Notes why a value is not defined (the first reason stands) and gives NaN. */
    double undefined(String why) {
        if (problem == null) {
            problem = why;
        }
        return Double.NaN;
    }

    /** Counts work, so that a run has an end; false when the bound is passed. */
    boolean spend(int work) {
        steps += work;
        if (steps > Program.MOST_STEPS) {
            undefined("the working takes more than " + Program.MOST_STEPS + " steps");
            return false;
        }
        return true;
    }

    /** Why some value of the last run is not defined, or null. */
    public String problem() {
        return problem;
    }

    void start() {
        problem = null;
        steps = 0;
    }
}
