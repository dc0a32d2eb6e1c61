package soapstone.expression;

import java.util.Arrays;
import java.util.Optional;

/**
 * Something else put into the working: other lines in the place of some lines, or fixed values. This one act is a slip,
 * a typed answer carried on, another constant, and the part as it would be cut.
 */
public final class Change {

    public static final Change NONE = new Change(new int[0], new Code[0]);

    final int[] slots;
    final Code[] codes;
    private final long mask;

    Change(int[] slots, Code[] codes) {
        this.slots = slots;
        this.codes = codes;
        long m = 0;
        for (int slot : slots) {
            m |= 1L << slot;
        }
        this.mask = m;
    }

    /** The amount, in base units, in the place of whatever the line gives. */
    public static Change fixed(int slot, double value) {
        return new Change(new int[] {slot}, new Code[] {new Code.Fixed(value)});
    }

    /** The list, in base units, in the place of whatever the line gives. */
    public static Change fixed(int slot, double[] list) {
        double[] kept = list.clone();
        return new Change(new int[] {slot}, new Code[] {new Code() {
            @Override
            double[] list(Frame f) {
                return kept;
            }
        }});
    }

    /** The line's own amount rounded half up to a step, both in base units. */
    static Change rounded(int slot, Code line, double step) {
        return new Change(new int[] {slot}, new Code[] {Arithmetic.apply(x -> Arithmetic.roundTo(x, step), line)});
    }

    /** Which slots it changes, a bit each. */
    public long mask() {
        return mask;
    }

    public boolean isEmpty() {
        return slots.length == 0;
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
        int[] left = Arrays.stream(slots).filter(s -> (taken & 1L << s) == 0).toArray();
        Code[] kept = new Code[left.length];
        for (int i = 0, k = 0; i < slots.length; i++) {
            if ((taken & 1L << slots[i]) == 0) {
                kept[k++] = codes[i];
            }
        }
        return new Change(left, kept);
    }

    private Change merged(Change other) {
        int[] s = new int[slots.length + other.slots.length];
        Code[] c = new Code[s.length];
        int a = 0;
        int b = 0;
        for (int i = 0; i < s.length; i++) {
            boolean mine = b >= other.slots.length || a < slots.length && slots[a] < other.slots[b];
            s[i] = mine ? slots[a] : other.slots[b];
            c[i] = mine ? codes[a++] : other.codes[b++];
        }
        return new Change(s, c);
    }
}
