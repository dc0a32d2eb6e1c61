package soapstone.exercise;

import java.util.List;
import java.util.Map;
import soapstone.quantity.Quantity;
import soapstone.quantity.UnitSystem;
import soapstone.source.Place;

/**
 * A published example: what goes in, what was printed, where.
 *
 * @param given   by name
 * @param expect  by name; for a formula the single name is {@link #RESULT}
 * @param within  the tolerance of the print; null for exact counts and labels
 * @param misprint a known misprint of the source: the working must not give this value
 */
public record Check(String source, Kind kind, UnitSystem system, Map<String, Item> given, Map<String, Item> expect,
        Quantity within, boolean misprint, String note, Place place) {

    /** The name under which a formula's check expects its value. */
    public static final String RESULT = "result";

    public enum Kind { SEEN, INPUTS, MEMORY, OWN }

    /** A value as written: amounts with units (several for a list), or a label. */
    public record Item(List<Quantity> amounts, String label, boolean isList, String text) {}
}
