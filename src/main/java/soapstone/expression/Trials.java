package soapstone.expression;

/**
 * Tries one change after another on a finished run. A trial works only the lines of its recipe, and the next one first
 * takes them back; so it costs no more than those lines. Not for several threads.
 */
public final class Trials {

    private static final Recipe NOTHING = new Recipe(new int[0], new Code[0], new int[0]);

    private final Program program;
    private final Frame right;
    private final Frame into;
    private Frame done;
    private Recipe last = NOTHING;
    private int set = -1;

    /** @param right the finished run from which others differ or not */
    public Trials(Program program, Frame right) {
        this.program = program;
        this.right = right;
        this.into = program.frame();
        this.done = right;
        into.copyFrom(done);
    }

    /** Goes on from another finished run, such as one with a slip put in. */
    public void from(Frame run) {
        if (run != done) {
            done = run;
            last = NOTHING;
            set = -1;
            into.copyFrom(run);
        }
    }

    /** The run with the last change put in, as far as the asked slots need it. */
    public Frame run() {
        return into;
    }

    /**
     * Puts a change into the finished run.
     *
     * @return whether something that is asked for differs from the right run now
     */
    public boolean put(Recipe recipe) {
        takeBack();
        return work(recipe);
    }

    /**
     * Puts another amount, in base units, in the place of a line's.
     *
     * @param after what {@link Program#after} gives for that line
     * @return whether something that is asked for differs now
     */
    public boolean put(int slot, double amount, Recipe after) {
        takeBack();
        into.numbers[slot] = amount;
        set = slot;
        return work(after);
    }

    private boolean work(Recipe recipe) {
        last = recipe;
        int[] slots = recipe.slots;
        Code[] codes = recipe.codes;
        for (int i = 0; i < slots.length; i++) {
            program.evaluate(into, slots[i], codes[i]);
        }
        for (int slot : recipe.asked) {
            if (program.differs(right, into, slot) != 0) {
                return true;
            }
        }
        return false;
    }

    private void takeBack() {
        for (int slot : last.slots) {
            program.copy(done, into, slot);
        }
        if (set >= 0) {
            into.numbers[set] = done.numbers[set];
            set = -1;
        }
        into.start();
    }
}
