package soapstone.quantity;

/** The form in which an amount was typed. Marking needs it: {@code 4.3} for 4 3/8 is a slip only in decimals. */
public enum Notation {
    /** {@code 41}. */
    WHOLE,
    /** {@code 41.375}. */
    DECIMAL,
    /** {@code 5/8}, also top-heavy. */
    FRACTION,
    /** {@code 41 3/8}. */
    MIXED,
    /** {@code 1.2e3}. */
    SCIENTIFIC,
    /** {@code 3' 5-3/8"}. */
    FEET_INCHES,
    /** {@code 22° 30'}. */
    DEGREES_MINUTES,
    /** {@code 1 h 20 min} or {@code 1:20}. */
    HOURS_MINUTES,
    /** {@code 3 lb 4 oz}. */
    POUNDS_OUNCES,
    /** Any other amount in several units, such as {@code 2 m 35 cm}. */
    PARTS
}
