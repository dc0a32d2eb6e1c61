package soapstone.expression;

/** A planned expression that stands beside a program: a condition, a size of a drawing. */
public final class Value {

    private final Planned planned;

    Value(Planned planned) {
        this.planned = planned;
    }

    public Type type() {
        return planned.type();
    }

    /** Which slots it reads, a bit each. */
    public long reads() {
        return planned.reads();
    }

    /** The amount in base units, after a run; NaN when not defined. */
    public double number(Frame f) {
        return planned.code().number(f);
    }

    /** The list in base units, after a run; null when not defined. */
    public double[] list(Frame f) {
        return planned.code().list(f);
    }

    /** Whether the condition holds; a condition over something undefined does not. */
    public boolean holds(Frame f) {
        return planned.code().truth(f);
    }
}
