package soapstone.quantity;

/**
 * An amount with its unit, as somebody wrote it. The engine itself works on plain doubles in base units; a quantity
 * stands at the edges, where people read and write.
 *
 * @param amount how many of the unit
 * @param unit   the unit
 */
public record Quantity(double amount, Unit unit) {

    /** The amount in the base units of a system. */
    public double base(UnitSystem system) {
        return unit.toBase(amount, system);
    }

    /** The same quantity in another unit of the same dimension. */
    public Quantity in(Unit other, UnitSystem system) {
        if (!other.dimension().equals(unit.dimension())) {
            throw new IllegalArgumentException(unit + " is " + unit.dimension() + ", " + other + " is " + other.dimension());
        }
        return new Quantity(other.fromBase(base(system), system), other);
    }
}
