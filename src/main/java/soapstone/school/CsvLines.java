package soapstone.school;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Writes lines of comma-separated cells by RFC 4180, safe to open in a spreadsheet: a text that a spreadsheet would take
 * for a formula gets an apostrophe before it and stands in quotes (OWASP ASVS 5.0.0, 1.2.10). Numbers stay numbers.
 */
final class CsvLines {

    private static final String END = "\r\n";
    private static final int PLACES = 4;
    /** What begins a formula, also in the wide forms of East Asian keyboards, and the signs that some programs skip before one. */
    private static final String FORMULA = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20\u2212";
    private static final String TO_QUOTE = ",;\"\t\r\n\0";

    private final StringBuilder out = new StringBuilder();

    /** A cell, written as it will stand. */
    record Cell(String written) {

        static final Cell EMPTY = new Cell("");

        static Cell text(String text) {
            boolean formula = beginsFormula(text) || beginsFormula(text.strip());
            boolean quotes = formula || !text.equals(text.strip()) || text.chars().anyMatch(c -> TO_QUOTE.indexOf(c) >= 0);
            String shown = (formula ? "'" : "") + text;
            return new Cell(quotes ? "\"" + shown.replace("\"", "\"\"") + "\"" : shown);
        }

        private static boolean beginsFormula(String text) {
            return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
        }

        /** To four places at most, with a decimal point and no zeros behind. */
        static Cell number(double value) {
            BigDecimal rounded = BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
            return new Cell(rounded.toPlainString());
        }
    }

    CsvLines line(List<Cell> cells) {
        out.append(String.join(",", cells.stream().map(Cell::written).toList())).append(END);
        return this;
    }

    CsvLines texts(List<String> texts) {
        return line(texts.stream().map(Cell::text).toList());
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
