package soapstone.expression;

import java.util.List;
import java.util.Map;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;

/**
 * The lines of an exercise, planned for one unit system. A run goes down the lines once; a rerun starts from a finished
 * run, puts a {@link Change} in, and works out again only what depends on it. Immutable, and good for any number of
 * threads as long as each has frames of its own.
 */
public final class Program {

    /** The slot of {@code pi}. */
    static final int PI = 0;
    /** The most names of one exercise, beside {@code pi}: a bit each in a long. */
    public static final int MOST_NAMES = 60;
    /** The most items of one list. */
    public static final int MOST_ITEMS = 400;
    /** The most steps of one run, counted in list items and tries of {@code solve}. */
    public static final int MOST_STEPS = 40_000;

    private final UnitSystem system;
    private final List<Slot> slots;
    private final Map<String, Integer> byName;
    private final Code[] codes;
    private final long[] reads;
    private final boolean[] lists;
    private final boolean anyLists;
    private final int locals;
    private final Labels labels;

    /**
     * A named value.
     *
     * @param shown the unit in which it is worked and shown; {@code ONE} for counts, labels and conditions
     * @param value the right side as written; null for a value that is given
     */
    public record Slot(int index, String name, Type type, Unit shown, Node value) {}

    Program(UnitSystem system, List<Slot> slots, Map<String, Integer> byName, Code[] codes, long[] reads, int locals, Labels labels) {
        this.system = system;
        this.slots = List.copyOf(slots);
        this.byName = Map.copyOf(byName);
        this.codes = codes;
        this.reads = reads;
        this.locals = locals;
        this.labels = labels;
        this.lists = new boolean[codes.length];
        boolean any = false;
        for (Slot slot : slots) {
            lists[slot.index()] = slot.type().isList();
            any |= lists[slot.index()];
        }
        this.anyLists = any;
    }

    public UnitSystem system() {
        return system;
    }

    public Labels labels() {
        return labels;
    }

    public List<Slot> slots() {
        return slots;
    }

    public Slot slot(int index) {
        return slots.get(index);
    }

    /** The slot of a name, or -1. */
    public int find(String name) {
        return byName.getOrDefault(name, -1);
    }

    /** Whether the slot holds a value that is given and not worked out. */
    public boolean isGiven(int slot) {
        return codes[slot] == null;
    }

    /** Which slots a line reads, a bit each. */
    public long reads(int slot) {
        return reads[slot];
    }

    public Frame frame() {
        return new Frame(codes.length, locals, anyLists);
    }

    /** Works out all lines from the givens that stand in the frame. */
    public void run(Frame f) {
        run(f, 0, codes.length);
    }

    /** Works out the lines from one slot up to, not with, another. */
    public void run(Frame f, int from, int to) {
        f.start();
        for (int i = from; i < to; i++) {
            if (codes[i] != null) {
                evaluate(f, i, codes[i]);
            }
        }
    }

    void copy(Frame from, Frame to, int slot) {
        if (lists[slot]) {
            to.lists[slot] = from.lists[slot];
        } else {
            to.numbers[slot] = from.numbers[slot];
        }
    }

    /**
     * Works out every line whose inputs are known.
     *
     * @param known the slots that stand in the frame already, a bit each
     * @return the slots that are known afterwards
     */
    public long runKnown(Frame f, long known) {
        f.start();
        long now = known;
        for (int i = 0; i < codes.length; i++) {
            if (codes[i] != null && (now & 1L << i) == 0 && (reads[i] & ~now) == 0) {
                evaluate(f, i, codes[i]);
                now |= 1L << i;
            }
        }
        return now;
    }

    void evaluate(Frame f, int slot, Code code) {
        if (lists[slot]) {
            f.lists[slot] = code.list(f);
        } else {
            f.numbers[slot] = code.number(f);
        }
    }

    /**
     * Copies a finished run into another frame and works out again what a change alters, up to a slot.
     *
     * @param done a finished run
     * @param into receives the changed run
     * @param last the last slot that is of interest
     * @return the slots whose values differ from the finished run, a bit each
     */
    public long rerun(Frame done, Frame into, Change change, int last) {
        into.copyFrom(done);
        into.steps = 0;
        Change.Part[] parts = change.parts;
        long changed = 0;
        int next = 0;
        int start = parts.length == 0 ? codes.length : parts[0].slot();
        for (int i = start; i <= last; i++) {
            if (next < parts.length && parts[next].slot() == i) {
                evaluate(into, i, parts[next++].code());
                changed |= differs(done, into, i);
            } else if ((reads[i] & changed) != 0 && codes[i] != null) {
                evaluate(into, i, codes[i]);
                changed |= differs(done, into, i);
            }
        }
        return changed;
    }

    long differs(Frame a, Frame b, int slot) {
        boolean same = lists[slot] ? java.util.Arrays.equals(a.lists[slot], b.lists[slot]) : isSame(a.numbers[slot], b.numbers[slot]);
        return same ? 0 : 1L << slot;
    }

    /** Two values that are both not defined are no difference. */
    private static boolean isSame(double a, double b) {
        return a == b || Double.isNaN(a) && Double.isNaN(b);
    }

    /** The line's own amount rounded half up to a step of base units, as somebody does who rounds on the way. */
    public Change rounded(int slot, double step) {
        return new Change(new Change.Part(slot, Arithmetic.apply(x -> Arithmetic.roundTo(x, step), codes[slot]), reads[slot]));
    }

    /** An amount rounded as {@link #rounded} does it. */
    public static double rounded(double amount, double step) {
        return Arithmetic.roundTo(amount, step);
    }

    /**
     * What to work again when a change is put in.
     *
     * @param asked the slots that are of interest; kept as it is
     */
    public Recipe recipe(Change change, int... asked) {
        return recipe(Change.NONE, change, asked, 0);
    }

    /** What to work again when a line of this slot gives another amount; the line itself is not of it. */
    public Recipe after(int slot, int... asked) {
        return recipe(Change.NONE, Change.fixed(slot, 0), asked, 1L << slot);
    }

    /** What to work again when a change is put into a run into which another one, of other lines, is put already. */
    public Recipe onTop(Change there, Change change, int... asked) {
        return recipe(there, change, asked, 0);
    }

    private Recipe recipe(Change there, Change change, int[] asked, long without) {
        long[] reading = reads.clone();
        Code[] working = codes.clone();
        for (Change.Part part : change.over(there).parts) {
            reading[part.slot()] = part.reads();
            working[part.slot()] = part.code();
        }
        long altered = change.mask();
        for (int i = 0; i < reading.length; i++) {
            altered |= working[i] != null && (reading[i] & altered) != 0 ? 1L << i : 0;
        }
        long needed = 0;
        for (int slot : asked) {
            needed |= 1L << slot;
        }
        for (int i = reading.length - 1; i >= 0; i--) {
            needed |= (needed & altered & 1L << i) != 0 ? reading[i] : 0;
        }
        int[] slots = slots(altered & needed & ~without);
        Code[] order = new Code[slots.length];
        for (int i = 0; i < slots.length; i++) {
            order[i] = working[slots[i]];
        }
        return new Recipe(slots, order, asked);
    }

    private static int[] slots(long bits) {
        int[] slots = new int[Long.bitCount(bits)];
        long rest = bits;
        for (int i = 0; i < slots.length; i++) {
            slots[i] = Long.numberOfTrailingZeros(rest);
            rest &= rest - 1;
        }
        return slots;
    }
}
