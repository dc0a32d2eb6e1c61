package soapstone.expression;

import java.util.List;
import soapstone.quantity.Dimension;
import soapstone.quantity.Unit;

/**
 * What the language needs of a table: rows with a key in the first column (an amount in one unit, or a label), and
 * further columns of amounts with a unit each.
 */
public interface LookupTable {

    String name();

    /** The unit of the key, or null when keys are labels. */
    Unit keyUnit();

    int rows();

    /** The key of a row, counted from 0, as an amount in {@link #keyUnit()}. */
    double key(int row);

    /** The key of a row as a label. */
    String keyLabel(int row);

    List<String> columns();

    Unit unit(int column);

    /** What stands in a cell, in the column's unit; NaN for an empty one. */
    double cell(int row, int column);

    default Dimension keyDimension() {
        return keyUnit().dimension();
    }
}
