package soapstone.exercise;

/**
 * A quantity that is drawn, or derived from those above it.
 *
 * @param slot       where its value stands
 * @param choice     what it can be
 * @param hidden     drawn, but not told to the student
 * @param roundTo    rounded half up to this step of base units after drawing; 0 for not
 * @param convention what it is where a shop has set that; empty for a given of the exercise's own
 */
public record Given(String name, int slot, Choice choice, boolean hidden, double roundTo, String convention) {

    public Given(String name, int slot, Choice choice, boolean hidden, double roundTo) {
        this(name, slot, choice, hidden, roundTo, "");
    }

    /** The same given, as a shop may set it. */
    public Given under(String other) {
        return new Given(name, slot, choice, hidden, roundTo, other);
    }

    /**
     * What nobody is asked for at a bench: a convention that stands behind the numbers and has one value where no shop sets
     * another; NaN for every other given.
     */
    public double settled() {
        return hidden && !convention.isEmpty() && choice instanceof Pick pick && pick.values().length == 1 ? pick.values()[0] : Double.NaN;
    }

    /** What a given can be. */
    public sealed interface Choice {

        /** How many values there are; 1 for a derived one. */
        long size();
    }

    /** {@code first}, {@code first + step} … in base units. */
    public record Range(double first, double step, long size) implements Choice {

        public double value(long index) {
            return first + index * step;
        }
    }

    /** One of some values in base units, or of some labels by their numbers. */
    public record Pick(double[] values) implements Choice {

        @Override
        public long size() {
            return values.length;
        }
    }

    /** Worked out by the program's own line. */
    public record Derived() implements Choice {

        @Override
        public long size() {
            return 1;
        }
    }
}
