package soapstone.expression;

/**
 * Tries one change after another on a finished run. Only the lines between the change and what is asked for are worked
 * again, and the next trial first takes the last one back; so a trial costs no more than those lines. Not for several
 * threads.
 */
public final class Trials {

    private final Program program;
    private final Frame done;
    private final Frame into;
    private long touched;

    public Trials(Program program, Frame done) {
        this.program = program;
        this.done = done;
        this.into = program.frame();
        into.copyFrom(done);
    }

    /** The run with the last change put in, as far as the asked lines need it. */
    public Frame run() {
        return into;
    }

    /**
     * Puts a change into the finished run.
     *
     * @param between the lines to work again: {@link Program#between} of the change and what is asked for
     * @return the slots whose values now differ, a bit each
     */
    public long put(Change change, long between) {
        takeBack();
        long changed = 0;
        int next = 0;
        for (long rest = between; rest != 0; rest &= rest - 1) {
            int slot = Long.numberOfTrailingZeros(rest);
            while (next < change.parts.length && change.parts[next].slot() < slot) {
                next++;
            }
            if (next < change.parts.length && change.parts[next].slot() == slot) {
                changed |= work(slot, change.parts[next].code());
            } else if ((program.reads(slot) & changed) != 0) {
                changed |= work(slot, program.code(slot));
            }
        }
        return changed;
    }

    /** Puts another amount, in base units, in the place of a line's; else as {@link #put(Change, long)}. */
    public long put(int slot, double amount, long between) {
        takeBack();
        into.numbers[slot] = amount;
        touched |= 1L << slot;
        long changed = amount == done.numbers[slot] ? 0 : 1L << slot;
        for (long rest = between & ~(1L << slot); rest != 0; rest &= rest - 1) {
            int line = Long.numberOfTrailingZeros(rest);
            if ((program.reads(line) & changed) != 0) {
                changed |= work(line, program.code(line));
            }
        }
        return changed;
    }

    private long work(int slot, Code code) {
        program.evaluate(into, slot, code);
        touched |= 1L << slot;
        return program.differs(done, into, slot);
    }

    private void takeBack() {
        for (long rest = touched; rest != 0; rest &= rest - 1) {
            int slot = Long.numberOfTrailingZeros(rest);
            into.numbers[slot] = done.numbers[slot];
            into.lists[slot] = done.lists[slot];
        }
        touched = 0;
        into.start();
    }
}
