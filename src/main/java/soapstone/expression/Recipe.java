package soapstone.expression;

/**
 * The lines to work again when a change is put into a finished run and only some slots are of interest: those that the
 * change can alter and that lead to what is asked for, in order. Found once, used for every draw.
 */
public final class Recipe {

    final int[] slots;
    final Code[] codes;
    final int[] asked;

    Recipe(int[] slots, Code[] codes, int[] asked) {
        this.slots = slots;
        this.codes = codes;
        this.asked = asked;
    }

    /** Whether the change can reach what is asked for. */
    public boolean reaches() {
        return slots.length > 0;
    }
}
