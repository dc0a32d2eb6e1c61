package soapstone.exercise;

import java.util.List;
import soapstone.expression.LookupTable;
import soapstone.quantity.Unit;

/**
 * A table of the bank.
 *
 * @param title   what it holds
 * @param source  where its values are from
 * @param keyName head of the first column
 * @param keyUnit unit of the first column; null when its entries are labels
 * @param labels  the first column as written
 * @param keys    the first column as amounts; NaN for labels
 * @param cells   rows of amounts in each column's unit; NaN where empty
 */
public record Table(String name, String title, String source, String keyName, Unit keyUnit, List<String> labels, double[] keys,
        List<String> columns, List<Unit> units, double[][] cells) implements LookupTable {

    @Override
    public int rows() {
        return keys.length;
    }

    @Override
    public double key(int row) {
        return keys[row];
    }

    @Override
    public String keyLabel(int row) {
        return labels.get(row);
    }

    @Override
    public Unit unit(int column) {
        return units.get(column);
    }

    @Override
    public double cell(int row, int column) {
        return cells[row][column];
    }
}
