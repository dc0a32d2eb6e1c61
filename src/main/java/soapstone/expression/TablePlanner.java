package soapstone.expression;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import soapstone.quantity.Dimension;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.source.Near;

/** Plans look-ups in tables. A row or cell that is not there is not defined, never zero. */
final class TablePlanner {

    private static final double SAME_KEY = 1e-9;

    private final Planner planner;
    private final Scope scope;

    TablePlanner(Planner planner, Scope scope) {
        this.planner = planner;
        this.scope = scope;
    }

    /** {@code TABLE(column, row)} or, with one column of values, {@code TABLE(row)}. */
    Planned lookUp(Node.Call call) {
        LookupTable table = scope.tables().get(call.name());
        int size = call.with().size();
        boolean single = table.columns().size() == 1 && size == 1;
        if (!single && size != 2) {
            return planner.complain(call.at(), "'" + table.name() + "' is looked up with " + size + " values",
                    table.name() + "(column, row); columns: " + String.join(", ", table.columns()));
        }
        Columns columns = single ? new Columns(new Code.Fixed(0), new int[] {0}, 0) : columns(table, call.with().get(0));
        Planned key = key(table, call.with().get(size - 1));
        if (columns == null || key.failed()) {
            return Planned.UNKNOWN;
        }
        Unit unit = table.unit(Arrays.stream(columns.of).filter(c -> c >= 0).findFirst().orElse(0));
        double[][] cells = cells(table);
        Code column = columns.code;
        Code rowOf = row(table, key.code());
        int[] of = columns.of;
        return new Planned(Type.amount(unit.dimension()), new Code() {
            @Override
            double number(Frame f) {
                int row = (int) rowOf.number(f);
                int c = column(of, column.number(f));
                double cell = row < 0 || c < 0 ? Double.NaN : cells[row][c];
                return Double.isNaN(cell) ? f.undefined("the table " + table.name() + " has no such row") : cell;
            }
        }, key.reads() | columns.reads);
    }

    /** Which column to take: code that gives a number, and the column of each number. */
    private record Columns(Code code, int[] of, long reads) {}

    /** The column of a label's number; -1 for one that is not defined, or that a slip has put in from elsewhere. */
    private static int column(int[] of, double label) {
        return label >= 0 && label < of.length ? of[(int) label] : -1;
    }

    private Columns columns(LookupTable table, Node node) {
        Planned planned = planner.plan(node);
        if (planned.failed()) {
            return null;
        }
        Set<String> labels = planned.type().labels();
        if (!planned.type().isLabel() || labels == null) {
            planner.complain(node.at(), "the column of '" + table.name() + "' is given by " + planned.type(),
                    "A label in quotes: " + String.join(", ", table.columns()));
            return null;
        }
        Dimension dimension = null;
        for (String label : labels) {
            int column = table.columns().indexOf(label);
            if (column < 0) {
                planner.complain(node.at(), "the table '" + table.name() + "' has no column \"" + label + "\"",
                        Near.suggest(label, table.columns()));
                return null;
            }
            Dimension d = table.unit(column).dimension();
            if (dimension != null && !dimension.equals(d)) {
                planner.complain(node.at(), "the columns " + new TreeSet<>(labels) + " hold different kinds of quantity", "Columns of one kind");
                return null;
            }
            dimension = d;
        }
        return new Columns(planned.code(), numbering(table.columns()), planned.reads());
    }

    /** For each label number of the program, its place in a list of names, or -1. */
    private int[] numbering(List<String> names) {
        int most = 0;
        for (String name : names) {
            most = Math.max(most, scope.labels().number(name));
        }
        int[] of = new int[most + 1];
        Arrays.fill(of, -1);
        for (int i = 0; i < names.size(); i++) {
            of[scope.labels().number(names.get(i))] = i;
        }
        return of;
    }

    private Planned key(LookupTable table, Node node) {
        Planned key = planner.plan(node);
        if (key.failed()) {
            return key;
        }
        if (table.keyUnit() == null) {
            return labelKey(table, node, key);
        }
        if (!key.type().isAmount() || !key.type().dimension().equals(table.keyDimension())) {
            return planner.complain(node.at(), "rows of '" + table.name() + "' are found by " + Type.amount(table.keyDimension())
                    + ", here by " + key.type(), "");
        }
        return key;
    }

    private Planned labelKey(LookupTable table, Node node, Planned key) {
        Set<String> known = keys(table);
        if (!key.type().isLabel()) {
            return planner.complain(node.at(), "rows of '" + table.name() + "' are found by a label, here by " + key.type(),
                    Near.suggest("", known));
        }
        for (String label : key.type().labels() == null ? Set.<String>of() : key.type().labels()) {
            if (!known.contains(label)) {
                return planner.complain(node.at(), "the table '" + table.name() + "' has no row \"" + label + "\"", Near.suggest(label, known));
            }
        }
        return key;
    }

    private static Set<String> keys(LookupTable table) {
        Set<String> keys = new TreeSet<>();
        for (int i = 0; i < table.rows(); i++) {
            keys.add(table.keyLabel(i));
        }
        return keys;
    }

    /** The row of a key, or -1. */
    private Code row(LookupTable table, Code key) {
        if (table.keyUnit() == null) {
            int[] of = numbering(java.util.stream.IntStream.range(0, table.rows()).mapToObj(table::keyLabel).toList());
            return Arithmetic.apply(k -> k >= 0 && k < of.length ? of[(int) k] : -1, key);
        }
        double[] keys = baseKeys(table);
        return Arithmetic.apply(k -> find(keys, k), key);
    }

    private double[] baseKeys(LookupTable table) {
        double[] keys = new double[table.rows()];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = table.keyUnit().toBase(table.key(i), scope.system());
        }
        return keys;
    }

    private static int find(double[] keys, double key) {
        for (int i = 0; i < keys.length; i++) {
            if (Math.abs(keys[i] - key) <= SAME_KEY * Math.max(1, Math.abs(key))) {
                return i;
            }
        }
        return -1;
    }

    private double[][] cells(LookupTable table) {
        UnitSystem system = scope.system();
        double[][] cells = new double[table.rows()][table.columns().size()];
        for (int r = 0; r < cells.length; r++) {
            for (int c = 0; c < cells[r].length; c++) {
                cells[r][c] = table.unit(c).toBase(table.cell(r, c), system);
            }
        }
        return cells;
    }

    Planned plan(Builtin b, Node.Call call) {
        LookupTable table = call.with().get(0) instanceof Node.Name name ? scope.tables().get(name.name()) : null;
        if (table == null) {
            return planner.complain(call.with().get(0).at(), "'" + b.word + "' needs the name of a table first",
                    Near.suggest(call.with().get(0) instanceof Node.Name n ? n.name() : "", scope.tables().keySet()));
        }
        if (table.keyUnit() == null) {
            return planner.complain(call.with().get(0).at(), "the rows of '" + table.name() + "' have labels, not sizes", b.told);
        }
        return switch (b) {
            case NEXT_ROW -> nextRow(table, call);
            case BETWEEN -> between(table, call);
            default -> nearest(b, table, call);
        };
    }

    private Planned nearest(Builtin b, LookupTable table, Node.Call call) {
        Planned key = key(table, call.with().get(1));
        if (key.failed()) {
            return key;
        }
        double[] keys = baseKeys(table);
        Arrays.sort(keys);
        Code x = key.code();
        boolean least = b == Builtin.AT_LEAST;
        return new Planned(key.type(), new Code() {
            @Override
            double number(Frame f) {
                double k = least ? notUnder(keys, x.number(f)) : notOver(keys, x.number(f));
                return Double.isNaN(k) ? f.undefined("the table " + table.name() + " has no such size") : k;
            }
        }, key.reads());
    }

    private static double notUnder(double[] keys, double x) {
        for (double k : keys) {
            if (k >= x - SAME_KEY * Math.max(1, Math.abs(x))) {
                return k;
            }
        }
        return Double.NaN;
    }

    private static double notOver(double[] keys, double x) {
        for (int i = keys.length - 1; i >= 0; i--) {
            if (keys[i] <= x + SAME_KEY * Math.max(1, Math.abs(x))) {
                return keys[i];
            }
        }
        return Double.NaN;
    }

    private Planned nextRow(LookupTable table, Node.Call call) {
        Planned key = key(table, call.with().get(1));
        Planned count = planner.plan(call.with().get(2));
        if (key.failed() || count.failed()) {
            return Planned.UNKNOWN;
        }
        if (!count.type().takes(Type.NUMBER)) {
            return planner.complain(call.with().get(2).at(), "'next_row' counts with " + count.type(), Builtin.NEXT_ROW.told);
        }
        double[] keys = baseKeys(table);
        Code x = key.code();
        Code n = count.code();
        return new Planned(key.type(), new Code() {
            @Override
            double number(Frame f) {
                int row = find(keys, x.number(f));
                int wanted = row < 0 ? -1 : row + (int) Math.rint(n.number(f));
                return wanted < 0 || wanted >= keys.length ? f.undefined("the table " + table.name() + " has no such row") : keys[wanted];
            }
        }, key.reads() | count.reads());
    }

    private Planned between(LookupTable table, Node.Call call) {
        boolean named = call.with().size() == 3;
        Columns columns = named ? columns(table, call.with().get(1)) : new Columns(new Code.Fixed(0), new int[] {0}, 0);
        Planned key = key(table, call.with().get(named ? 2 : 1));
        if (columns == null || key.failed()) {
            return Planned.UNKNOWN;
        }
        Unit unit = table.unit(Arrays.stream(columns.of).filter(c -> c >= 0).findFirst().orElse(0));
        double[] keys = baseKeys(table);
        double[][] cells = cells(table);
        Code x = key.code();
        return new Planned(Type.amount(unit.dimension()), new Code() {
            @Override
            double number(Frame f) {
                int c = column(columns.of, columns.code.number(f));
                double v = c < 0 ? Double.NaN : straight(keys, cells, c, x.number(f));
                return Double.isNaN(v) ? f.undefined("the table " + table.name() + " does not reach that far") : v;
            }
        }, key.reads() | columns.reads);
    }

    private static double straight(double[] keys, double[][] cells, int column, double x) {
        int at = find(keys, x);
        if (at >= 0) {
            return cells[at][column];
        }
        for (int i = 0; i + 1 < keys.length; i++) {
            double a = keys[i];
            double b = keys[i + 1];
            if (Math.min(a, b) < x && x < Math.max(a, b)) {
                return cells[i][column] + (cells[i + 1][column] - cells[i][column]) * (x - a) / (b - a);
            }
        }
        return Double.NaN;
    }
}
