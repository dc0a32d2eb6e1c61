package soapstone.school;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Answers from paper as a table, an answer a row: written out with the last cells empty, and read again from whatever a spreadsheet makes
 * of it. Columns are found by their heads, in any order; others are passed over.
 */
public final class AnswerRows {

    private static final List<String> HEADS = List.of("sheet", "seat", "name", "problem", "letter", "unit", "answer");
    private static final List<String> NEEDED = List.of("sheet", "problem", "letter", "answer");
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private AnswerRows() {}

    /** A row to be filled in. */
    public record Open(String sheet, String seat, String name, int problem, String letter, String unit, String answer) {}

    /**
     * A row that came back.
     *
     * @param line    of the file
     * @param problem as it was written
     */
    public record Filled(int line, String sheet, String problem, String letter, String answer) {}

    /**
     * What came back.
     *
     * @param missing heads without which nothing can be read
     * @param broken  the line from which on the quotes cannot be understood; 0 when all could be read
     */
    public record Read(List<Filled> rows, List<String> missing, int broken) {

        public Read {
            rows = List.copyOf(rows);
            missing = List.copyOf(missing);
        }
    }

    /** The form, for a spreadsheet. */
    public static byte[] form(List<Open> rows) {
        CsvLines lines = new CsvLines().texts(HEADS);
        rows.forEach(r -> lines.texts(List.of(r.sheet(), r.seat(), r.name(), String.valueOf(r.problem()), r.letter(), r.unit(), r.answer())));
        return (BYTE_ORDER_MARK + lines).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    /** Rows without an answer are left out. */
    public static Read read(String text) {
        String plain = CsvText.withoutMark(text);
        CsvText table = CsvText.read(plain, CsvText.separator(plain));
        Map<String, Integer> columns = new HashMap<>();
        if (!table.lines().isEmpty()) {
            List<String> heads = table.lines().get(0).cells();
            for (int i = 0; i < heads.size(); i++) {
                columns.putIfAbsent(heads.get(i).toLowerCase(Locale.ROOT), i);
            }
        }
        List<String> missing = NEEDED.stream().filter(h -> !columns.containsKey(h)).toList();
        List<Filled> rows = new ArrayList<>();
        for (CsvText.Line line : missing.isEmpty() ? table.lines().subList(1, table.lines().size()) : List.<CsvText.Line>of()) {
            Filled row = new Filled(line.number(), line.cell(columns.get("sheet")), line.cell(columns.get("problem")), line.cell(columns.get("letter")),
                    plain(line.cell(columns.get("answer"))));
            if (!row.answer().isEmpty()) {
                rows.add(row);
            }
        }
        return new Read(rows, missing, table.brokenAt());
    }

    /** Without the apostrophe that kept a spreadsheet from working out what begins with a sign. */
    private static String plain(String cell) {
        return cell.matches("'[-+=@].*") ? cell.substring(1) : cell;
    }
}
