package soapstone.expression;

import java.util.Arrays;
import java.util.Optional;

/**
 * Something else put into the working: other lines in the place of some lines, or fixed values. This one act is a slip,
 * a typed answer carried on, another constant, and the part as it would be cut.
 */
public final class Change {

    public static final Change NONE = new Change(new Part[0]);

    /** In the order of their slots. */
    final Part[] parts;
    private final long mask;

    /** What stands in the place of one line, and which slots it reads, a bit each. */
    record Part(int slot, Code code, long reads) {}

    Change(Part... parts) {
        this.parts = parts;
        long m = 0;
        for (Part part : parts) {
            m |= 1L << part.slot();
        }
        this.mask = m;
    }

    /** The amount, in base units, in the place of whatever the line gives. */
    public static Change fixed(int slot, double value) {
        return new Change(new Part(slot, new Code.Fixed(value), 0));
    }

    /** The list, in base units, in the place of whatever the line gives. */
    public static Change fixed(int slot, double[] list) {
        double[] kept = list.clone();
        return new Change(new Part(slot, new Code() {
            @Override
            double[] list(Frame f) {
                return kept;
            }
        }, 0));
    }

    /** Which slots it changes, a bit each. */
    public long mask() {
        return mask;
    }

    public boolean isEmpty() {
        return parts.length == 0;
    }

    /** Both changes at once, or empty when they touch the same line. */
    public Optional<Change> with(Change other) {
        return (mask & other.mask) != 0 ? Optional.empty() : Optional.of(merged(other));
    }

    /** Both changes at once; where they touch the same line, this one stands. */
    public Change over(Change other) {
        return (mask & other.mask) == 0 ? merged(other) : merged(other.without(mask));
    }

    /** The part of the change that touches these slots, a bit each. */
    public Change only(long wanted) {
        return without(~wanted);
    }

    private Change without(long taken) {
        return new Change(Arrays.stream(parts).filter(p -> (taken & 1L << p.slot()) == 0).toArray(Part[]::new));
    }

    private Change merged(Change other) {
        if (isEmpty() || other.isEmpty()) {
            return isEmpty() ? other : this;
        }
        Part[] all = new Part[parts.length + other.parts.length];
        int a = 0;
        int b = 0;
        for (int i = 0; i < all.length; i++) {
            boolean mine = b >= other.parts.length || a < parts.length && parts[a].slot() < other.parts[b].slot();
            all[i] = mine ? parts[a++] : other.parts[b++];
        }
        return new Change(all);
    }
}
