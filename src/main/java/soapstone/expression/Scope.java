package soapstone.expression;

import java.util.Collection;
import java.util.Map;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;

/**
 * What an expression may speak of: names with their slots, formulas, tables.
 *
 * @param system   the unit system to plan for
 * @param names    named slots
 * @param below    only slots under this one can be read: a line sees what stands above it
 * @param formulas the formula book
 * @param tables   tables by name
 * @param labels   numbers of labels
 */
record Scope(UnitSystem system, Map<String, Name> names, int below, Map<String, FormulaBody> formulas,
        Map<String, LookupTable> tables, Labels labels) {

    /** A named slot and the unit in which its value is shown. */
    record Name(int slot, Type type, Unit shown) {}

    Name find(String name) {
        Name found = names.get(name);
        return found != null && found.slot() < below ? found : null;
    }

    Collection<String> visible() {
        return names.entrySet().stream().filter(e -> e.getValue().slot() < below).map(Map.Entry::getKey).toList();
    }

    Scope upTo(int slot) {
        return new Scope(system, names, slot, formulas, tables, labels);
    }
}
