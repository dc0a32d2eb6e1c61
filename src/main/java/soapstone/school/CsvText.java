package soapstone.school;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A text of separated cells, taken apart.
 *
 * @param lines    that hold something, each with the number of the line that it begins on
 * @param brokenAt the line from which on the quotes cannot be understood; 0 when all could be read
 */
record CsvText(List<Line> lines, int brokenAt) {

    /** Cells in the form of {@link RosterSigns#tidy}. */
    record Line(int number, List<String> cells) {

        /** The cell of a column, from 0; empty where the line is too short. */
        String cell(int column) {
            return column >= 0 && column < cells.size() ? cells.get(column) : "";
        }

        boolean isEmpty() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    private static final char[] SEPARATORS = {'\t', ';', ','};

    /** The text without the mark that some programs put before UTF-8. */
    static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    static CsvText read(String text, char separator) {
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(separator).setIgnoreEmptyLines(false).setIgnoreSurroundingSpaces(true).get();
        List<Line> lines = new ArrayList<>();
        int next = 1;
        try (CSVParser parser = format.parse(new StringReader(text))) {
            for (CSVRecord row : parser) {
                Line line = new Line(next, row.stream().map(RosterSigns::tidy).toList());
                next = (int) parser.getCurrentLineNumber() + 1;
                if (!line.isEmpty()) {
                    lines.add(line);
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return new CsvText(lines, next);
        }
        return new CsvText(lines, 0);
    }

    /**
     * The sign that parts the cells: the one that stands outside of quotes in the most lines. Of equals, a tab goes before a
     * semicolon and that before a comma, since commas stand in names.
     */
    static char separator(String text) {
        char best = ',';
        int most = 0;
        for (char separator : SEPARATORS) {
            int lines = linesWith(text, separator);
            if (lines > most) {
                most = lines;
                best = separator;
            }
        }
        return best;
    }

    private static int linesWith(String text, char separator) {
        int lines = 0;
        boolean quoted = false;
        boolean counted = false;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign == '"') {
                quoted = !quoted;
            } else if (!quoted && sign == separator && !counted) {
                lines++;
                counted = true;
            } else if (!quoted && (sign == '\n' || sign == '\r')) {
                counted = false;
            }
        }
        return lines;
    }
}
