package soapstone.quantity;

import java.util.Objects;

/**
 * A unit of measure: how it is written, what it measures, and what one of it is in the base units of each system. The
 * factors are kept as a product over a divisor, so that an exact definition (1 in = 25.4 mm) stays exact both ways.
 */
public final class Unit {

    private final String name;
    private final String symbol;
    private final Dimension dimension;
    private final Factor us;
    private final Factor metric;

    Unit(String name, String symbol, Dimension dimension, Factor us, Factor metric) {
        this.name = Objects.requireNonNull(name);
        this.symbol = Objects.requireNonNull(symbol);
        this.dimension = Objects.requireNonNull(dimension);
        this.us = us;
        this.metric = metric;
    }

    /** How many base units one of it is: {@code times / by}, plus {@code shift} of the unit for temperatures. */
    record Factor(double times, double by, double shift) {
        static final Factor ONE = new Factor(1, 1, 0);

        static Factor of(double times) {
            return new Factor(times, 1, 0);
        }

        static Factor over(double by) {
            return new Factor(1, by, 0);
        }

        Factor multiplied(Factor other) {
            return new Factor(times * other.times, by * other.by, 0);
        }

        Factor inverse() {
            return new Factor(by, times, 0);
        }

        double forward(double v) {
            return (v + shift) * times / by;
        }

        double back(double v) {
            return v * by / times - shift;
        }
    }

    /** The spelling in bank files, links and JSON: plain ASCII such as {@code in2}. */
    public String name() {
        return name;
    }

    /** The spelling on a page: such as {@code in²}. Empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** An amount in this unit, as an amount in the system's base units. */
    public double toBase(double amount, UnitSystem system) {
        return (system == UnitSystem.US ? us : metric).forward(amount);
    }

    /** An amount in the system's base units, as an amount in this unit. */
    public double fromBase(double amount, UnitSystem system) {
        return (system == UnitSystem.US ? us : metric).back(amount);
    }

    /** The unit made of this one over another, such as lbf/ft3. */
    public Unit over(Unit other) {
        String bottom = other.name.contains("/") || other.name.contains("*") ? "(" + other.name + ")" : other.name;
        String bottomSymbol = bottom.startsWith("(") ? "(" + other.symbol + ")" : other.symbol;
        return new Unit(name + "/" + bottom, symbol + "/" + bottomSymbol, dimension.over(other.dimension),
                us.multiplied(other.us.inverse()), metric.multiplied(other.metric.inverse()));
    }

    /** The unit made of this one times another, such as lbf*in. */
    public Unit times(Unit other) {
        return new Unit(name + "*" + other.name, symbol + "·" + other.symbol, dimension.times(other.dimension),
                us.multiplied(other.us), metric.multiplied(other.metric));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit that && name.equals(that.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
