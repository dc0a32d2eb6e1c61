package soapstone.bank;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import soapstone.exercise.Table;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Place;
import soapstone.source.Source;

/** Reads a CSV table: comment lines with title and source, a head with units in brackets, rows. */
final class TableReader {

    private static final String RULE = "table";
    private static final int MOST_ROWS = 500;

    private final Source source;
    private final Issues issues;

    TableReader(Source source, Issues issues) {
        this.source = source;
        this.issues = issues;
    }

    /** A head such as {@code carbon [in]}: name and unit, or null for none. */
    record Head(String name, Unit unit) {}

    /** Head and rows of a CSV with the line each row stands on. */
    record Rows(List<String> head, List<List<String>> rows, List<Integer> lines, int headLine) {}

    static Optional<Rows> rows(Source source, Issues issues) {
        CSVFormat format = CSVFormat.DEFAULT.builder().setCommentMarker('#').setIgnoreEmptyLines(true).setTrim(true).get();
        List<List<String>> rows = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        try (CSVParser parser = format.parse(new StringReader(source.text()))) {
            for (CSVRecord row : parser) {
                rows.add(row.toList());
                lines.add((int) parser.getCurrentLineNumber());
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            issues.add(RULE, source.at(lines.isEmpty() ? 1 : lines.get(lines.size() - 1) + 1, 1),
                    "the table cannot be read from here: a quote is not closed, or something stands behind one", "Check the quotes");
            return Optional.empty();
        }
        if (rows.size() < 2 || rows.size() > MOST_ROWS) {
            issues.add(RULE, source.at(1, 1), "the table has " + Math.max(0, rows.size() - 1) + " rows under its head", "1 to " + MOST_ROWS);
            return Optional.empty();
        }
        return Optional.of(new Rows(rows.get(0), rows.subList(1, rows.size()), lines.subList(1, lines.size()), lines.get(0)));
    }

    Optional<Table> read(String name) {
        Optional<Rows> rows = rows(source, issues);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        List<Head> heads = new ArrayList<>();
        for (String text : rows.get().head()) {
            Place place = at(source, rows.get().headLine(), text);
            Head head = head(text, place, issues).orElse(new Head(text, Units.ONE));
            if (heads.stream().anyMatch(h -> h.name().equals(head.name()))) {
                issues.add(RULE, place, "the column '" + head.name() + "' stands twice", "Keep one");
            }
            heads.add(head);
        }
        if (heads.size() < 1) {
            issues.add(RULE, source.at(rows.get().headLine(), 1), "the head has no columns", "key,value [unit]");
            return Optional.empty();
        }
        return Optional.of(table(name, heads, rows.get()));
    }

    /** Where a cell stands, or the begin of its line. */
    static Place at(Source source, int line, String cell) {
        return source.at(line, Math.max(0, cell.isEmpty() ? 0 : source.line(line).indexOf(cell)) + 1);
    }

    static Optional<Head> head(String text, Place place, Issues issues) {
        int open = text.indexOf('[');
        if (open < 0) {
            return Optional.of(new Head(text.trim(), null));
        }
        String unit = text.substring(open + 1).replace("]", "").trim();
        Optional<Unit> known = Units.parse(unit);
        if (known.isEmpty()) {
            issues.add(RULE, place, "unknown unit '" + unit + "' in the head '" + text + "'", "Such as [in] or [lb/ft2]");
            return Optional.empty();
        }
        return Optional.of(new Head(text.substring(0, open).trim(), known.get()));
    }

    private Table table(String name, List<Head> heads, Rows rows) {
        int count = rows.rows().size();
        List<String> labels = new ArrayList<>();
        double[][] cells = new double[count][heads.size() - 1];
        for (int r = 0; r < count; r++) {
            List<String> row = rows.rows().get(r);
            Place place = source.at(rows.lines().get(r), 1);
            if (row.size() > heads.size()) {
                issues.add(RULE, place, "the row has " + row.size() + " cells, the head " + heads.size(), "As many as the head");
            }
            String key = row.get(0);
            if (labels.contains(key)) {
                issues.add(RULE, place, "the key '" + key + "' stands twice", "Keep one");
            }
            labels.add(key);
            for (int c = 1; c < heads.size(); c++) {
                String cell = c < row.size() ? row.get(c) : "";
                cells[r][c - 1] = cell.isEmpty() ? Double.NaN : amount(cell, at(source, rows.lines().get(r), cell));
            }
        }
        boolean numeric = labels.stream().allMatch(TableReader::isNumber);
        Unit keyUnit = !numeric ? null : heads.get(0).unit() == null ? Units.ONE : heads.get(0).unit();
        double[] keys = labels.stream().mapToDouble(l -> numeric ? Double.parseDouble(l) : Double.NaN).toArray();
        List<Head> values = heads.subList(1, heads.size());
        if (values.isEmpty()) {
            // A table of sizes alone: looked through by at_least and at_most.
            return new Table(name, note("title"), note("source"), heads.get(0).name(), keyUnit, labels, keys, List.of(heads.get(0).name()),
                    List.of(keyUnit == null ? Units.ONE : keyUnit), Arrays.stream(keys).mapToObj(k -> new double[] {k}).toArray(double[][]::new));
        }
        return new Table(name, note("title"), note("source"), heads.get(0).name(), keyUnit, labels, keys,
                values.stream().map(Head::name).toList(), values.stream().map(h -> h.unit() == null ? Units.ONE : h.unit()).toList(), cells);
    }

    private double amount(String cell, Place place) {
        if (!isNumber(cell)) {
            issues.add(RULE, place, "'" + cell + "' is not a number", "A decimal number, or nothing");
            return Double.NaN;
        }
        return Double.parseDouble(cell);
    }

    static boolean isNumber(String text) {
        if (text.isEmpty() || text.length() > 24 || !text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-')) {
            return false;
        }
        try {
            Double.parseDouble(text);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private String note(String key) {
        for (String line : source.text().split("\n", -1)) {
            String start = "# " + key + ":";
            if (line.startsWith(start)) {
                return line.substring(start.length()).trim();
            }
        }
        issues.add(RULE, source.at(1, 1), "the table does not name its " + key, "A line such as: # " + key + ": …");
        return "";
    }
}
