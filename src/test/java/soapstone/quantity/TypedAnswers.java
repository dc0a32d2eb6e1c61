package soapstone.quantity;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The table of typed answers, read for the tests that run over it. */
final class TypedAnswers {

    record Row(long line, ReadAs as, String text, String expect, String notation) {
        @Override
        public String toString() {
            return "line " + line + ": " + as.kind() + " in " + as.unit() + " " + as.system().word() + " " + as.decimalMark()
                    + " <" + text + ">";
        }
    }

    private TypedAnswers() {}

    static List<Row> rows() {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();
        List<Row> rows = new ArrayList<>();
        try (Reader reader = new InputStreamReader(TypedAnswers.class.getResourceAsStream("typed-answers.csv"), StandardCharsets.UTF_8);
                CSVParser parser = format.parse(reader)) {
            for (CSVRecord r : parser) {
                ReadAs as = new ReadAs(ReadAs.Kind.valueOf(r.get("kind")), Units.parse(r.get("unit")).orElseThrow(),
                        UnitSystem.parse(r.get("system")).orElseThrow(), r.get("mark").charAt(0));
                rows.add(new Row(parser.getCurrentLineNumber(), as, unescape(r.get("text")), r.get("expect"), r.get("notation")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    static String unescape(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char next = text.charAt(i) == '\\' && i + 1 < text.length() ? text.charAt(i + 1) : 0;
            if (next == 'n' || next == 't' || next == 'r') {
                out.append(next == 'n' ? '\n' : next == 't' ? '\t' : '\r');
                i++;
            } else if (next == 'u') {
                out.append((char) Integer.parseInt(text.substring(i + 2, i + 6), 16));
                i += 5;
            } else {
                out.append(text.charAt(i));
            }
        }
        return out.toString();
    }
}
