package soapstone.expression;

/** A planned expression: evaluates without parsing anything and, lists aside, without allocating. */
abstract class Code {

    /** The amount in base units; a truth as 1 or 0; a label as its number. */
    double number(Frame f) {
        throw new IllegalStateException("not a number");
    }

    /** The list in base units; null when it is not defined. */
    double[] list(Frame f) {
        throw new IllegalStateException("not a list");
    }

    boolean truth(Frame f) {
        return number(f) == 1;
    }

    static final class Fixed extends Code {
        final double value;

        Fixed(double value) {
            this.value = value;
        }

        @Override
        double number(Frame f) {
            return value;
        }
    }

    static final class Slot extends Code {
        final int slot;

        Slot(int slot) {
            this.slot = slot;
        }

        @Override
        double number(Frame f) {
            return f.numbers[slot];
        }

        @Override
        double[] list(Frame f) {
            return f.lists[slot];
        }
    }

    static final class Local extends Code {
        final int local;

        Local(int local) {
            this.local = local;
        }

        @Override
        double number(Frame f) {
            return f.locals[local];
        }
    }
}
