package soapstone.school;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soapstone.source.Message;

/**
 * Marks as one plain CSV, for a spreadsheet: a line of headings, a line of the points possible, a line of the days due, then a
 * line for each student. Points are numbers with a decimal point, so that sums work; a mark without points is a word. What was
 * late is named in the last column, since beside its number it would make a text of it.
 */
public final class PlainMarks {

    private static final String KEY = "school.marks-";
    private static final String MARK = "\uFEFF";
    private static final String BETWEEN = "; ";

    private final MarksTable table;
    private final Function<Message, String> words;

    private PlainMarks(MarksTable table, Function<Message, String> words) {
        this.table = table;
        this.words = words;
    }

    /** @param words of the reader's language */
    public static String text(MarksTable table, Function<Message, String> words) {
        return new PlainMarks(table, words).text();
    }

    /** The same as a file: UTF-8, with the mark by which spreadsheets know it. */
    public static byte[] file(MarksTable table, Function<Message, String> words) {
        return (MARK + text(table, words)).getBytes(StandardCharsets.UTF_8);
    }

    private String text() {
        CsvLines lines = new CsvLines();
        lines.texts(around(say("seat"), say("name"), say("login"), table.columns().stream().map(MarksTable.Column::title).toList(), say("late")));
        lines.line(aboveMarks("possible", table.columns().stream().map(c -> CsvLines.Cell.number(c.possible())).toList()));
        lines.line(aboveMarks("due", table.columns().stream().map(c -> CsvLines.Cell.text(c.due().map(Object::toString).orElse(""))).toList()));
        IntStream.range(0, table.students().size()).forEach(s -> lines.line(student(s)));
        return lines.toString();
    }

    private String say(String key) {
        return words.apply(Message.of(KEY + key));
    }

    private static List<String> around(String seat, String name, String login, List<String> titles, String late) {
        return Stream.of(Stream.of(seat, name, login), titles.stream(), Stream.of(late)).flatMap(s -> s).toList();
    }

    private List<CsvLines.Cell> aboveMarks(String key, List<CsvLines.Cell> cells) {
        Stream<CsvLines.Cell> start = Stream.of(CsvLines.Cell.EMPTY, CsvLines.Cell.text(say(key)), CsvLines.Cell.EMPTY);
        return Stream.of(start, cells.stream(), Stream.of(CsvLines.Cell.EMPTY)).flatMap(s -> s).toList();
    }

    private List<CsvLines.Cell> student(int number) {
        MarksTable.Student student = table.students().get(number);
        List<CsvLines.Cell> cells = new ArrayList<>();
        Stream.of(student.seat(), student.name(), student.login()).map(CsvLines.Cell::text).forEach(cells::add);
        table.marks().get(number).stream().map(this::mark).forEach(cells::add);
        cells.add(CsvLines.Cell.text(String.join(BETWEEN, IntStream.range(0, table.columns().size()).filter(c -> table.mark(number, c).late())
                .mapToObj(c -> table.columns().get(c).title()).toList())));
        return cells;
    }

    private CsvLines.Cell mark(MarksTable.Mark mark) {
        return switch (mark.state()) {
            case NOT_BEGUN -> CsvLines.Cell.text(say("not-begun"));
            case EXCUSED -> CsvLines.Cell.text(say("excused"));
            case BEGUN, DONE -> CsvLines.Cell.number(mark.points());
        };
    }
}
