package soapstone.quantity;

import java.util.Objects;
import soapstone.source.Message;

/**
 * How far an answer may be off and still be right. The edge belongs to it: an answer that is off by just this much is
 * in, and so is one that is further off only by the noise of binary arithmetic.
 *
 * @param size   what an answer may be off: in base units of the system, or as a share of the right value
 * @param share  whether size is a share of the right value
 * @param unit   in which the size is told
 * @param system whose base units are meant
 */
public record Tolerance(double size, boolean share, Unit unit, UnitSystem system) {

    /** @throws IllegalArgumentException when the size is negative or not a number */
    public Tolerance {
        Objects.requireNonNull(unit);
        Objects.requireNonNull(system);
        if (!(size >= 0) || Double.isInfinite(size)) {
            throw new IllegalArgumentException("a tolerance cannot be " + size);
        }
    }

    /** So many of a unit, such as 1/32 in. */
    public static Tolerance of(double amount, Unit unit, UnitSystem system) {
        return new Tolerance(Math.abs(unit.toBase(amount, system) - unit.toBase(0, system)), false, unit, system);
    }

    /** A share of the right value: 0.02 for 2 %. */
    public static Tolerance share(double share) {
        return new Tolerance(share, true, Units.PERCENT, UnitSystem.US);
    }

    /** Nothing off at all, for counts. */
    public static Tolerance exact(UnitSystem system) {
        return new Tolerance(0, false, Units.ONE, system);
    }

    /** How far off an answer may be when this is the right value, in base units. */
    public double around(double right) {
        return share ? size * Math.abs(right) : size;
    }

    /** Whether an answer is right. Both in base units. */
    public boolean accepts(double right, double answer) {
        return covers(right, answer, 1);
    }

    /** Whether an answer is within so many times this tolerance: 4 for "near". */
    public boolean covers(double right, double answer, double times) {
        double slack = Rounding.SLACK * Math.max(1, Math.abs(right));
        return Double.isFinite(right) && Math.abs(answer - right) <= times * around(right) + slack;
    }

    /** The words of it, such as "within 1/32 in". */
    public Message message(char decimalMark) {
        return isExact() ? Message.of("tolerance.exact") : Message.of("tolerance.within", printed(decimalMark));
    }

    public boolean isExact() {
        return size == 0;
    }

    private String printed(char decimalMark) {
        double shift = unit.toBase(0, system);
        return share ? ShopPrinter.text(size, Units.PERCENT, system, Show.AUTO, decimalMark)
                : ShopPrinter.text(size + shift, unit, system, Show.AUTO, decimalMark);
    }

    @Override
    public String toString() {
        return isExact() ? "exactly" : "within " + printed('.');
    }
}
