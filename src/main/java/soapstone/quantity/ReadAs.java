package soapstone.quantity;

import java.util.Objects;

/**
 * How a typed answer is to be read.
 *
 * @param kind        what stands in the box
 * @param unit        the unit named beside the box; a bare number takes it, and its dimension is the one that is asked
 * @param system      whose base units the reading is given in
 * @param decimalMark what this class writes before decimals, {@code '.'} or {@code ','}; the other one parts thousands
 */
public record ReadAs(Kind kind, Unit unit, UnitSystem system, char decimalMark) {

    /** What stands in the box. */
    public enum Kind {
        /** One amount with a unit. */
        QUANTITY,
        /** A whole number of things: {@code 9}, {@code 9 holes}. */
        COUNT,
        /** One amount written as a fraction: a decimal is asked again. */
        FRACTION,
        /** Several amounts, parted by {@code ;} or line ends. */
        LIST,
        /** Two coordinates. */
        POINT,
        /** Several points, parted by {@code ;} or line ends. */
        POINTS
    }

    /** @throws IllegalArgumentException when the decimal mark is neither a point nor a comma */
    public ReadAs {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(system, "system");
        if (decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("a decimal mark is '.' or ',', not '" + decimalMark + "'");
        }
    }

    /** The mark between thousands. */
    public char groupMark() {
        return decimalMark == '.' ? ',' : '.';
    }

    /** The same with another kind of box. */
    public ReadAs as(Kind other) {
        return new ReadAs(other, unit, system, decimalMark);
    }

    /** Whether a comma or an "and" more likely stands between two values than within one. */
    boolean partsValues() {
        return kind == Kind.LIST || kind == Kind.POINT || kind == Kind.POINTS;
    }

    boolean countsThings() {
        return kind == Kind.COUNT || unit.equals(Units.ONE);
    }
}
