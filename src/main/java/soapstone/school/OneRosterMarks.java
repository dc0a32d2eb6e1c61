package soapstone.school;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Marks as a set of OneRoster 1.2 files: {@code lineItems.csv} and {@code results.csv}, the category that the first refers to,
 * and the manifest that every set needs.
 *
 * <p>Source: "1EdTech OneRoster: CSV Binding", version 1.2.1, 22 August 2023, section 3, tables of {@code lineItems.csv},
 * {@code results.csv}, {@code categories.csv} and {@code manifest.csv}: all columns, in the order of the tables. The set is a
 * "delta", since a "bulk" one would say that the school's book holds nothing else; so every row has its status and time.
 */
public final class OneRosterMarks {

    public static final String LINE_ITEMS = "lineItems.csv";
    public static final String RESULTS = "results.csv";
    public static final String CATEGORIES = "categories.csv";
    public static final String MANIFEST = "manifest.csv";

    private static final List<String> LINE_ITEM_COLUMNS = List.of("sourcedId", "status", "dateLastModified", "title", "description", "assignDate",
            "dueDate", "classSourcedId", "categorySourcedId", "academicSessionSourcedId", "resultValueMin", "resultValueMax", "schoolSourcedId");
    private static final List<String> RESULT_COLUMNS = List.of("sourcedId", "status", "dateLastModified", "lineItemSourcedId", "studentSourcedId",
            "scoreStatus", "score", "scoreDate", "comment", "textScore", "classSourcedId", "inProgress", "incomplete", "late", "missing");
    private static final List<String> CATEGORY_COLUMNS = List.of("sourcedId", "status", "dateLastModified", "title", "weight");
    /** Every file that a set of version 1.2 may have. */
    private static final List<String> SET = List.of("academicSessions", "categories", "classes", "classResources", "courses", "courseResources",
            "demographics", "enrollments", "lineItemLearningObjectiveIds", "lineItems", "lineItemScoreScales", "orgs", "resources",
            "resultLearningObjectiveIds", "results", "resultScoreScales", "roles", "scoreScales", "userProfiles", "userResources", "users");
    private static final Set<String> OURS = Set.of("categories", "lineItems", "results");

    private static final String ACTIVE = "active";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

    /**
     * Where the marks go in the school's own system, by its {@code sourcedId}s.
     *
     * @param category      the id of the category, new or known there
     * @param categoryTitle its title
     */
    public record Book(String school, String schoolClass, String academicSession, String category, String categoryTitle) {

        public Book {
            Stream.of(school, schoolClass, academicSession, category).filter(id -> !OneRosterReader.isSourcedId(id)).findFirst().ifPresent(id -> {
                throw new IllegalArgumentException("'" + id + "' is no sourcedId: 1 to 255 letters, digits and . _ / @ - fit");
            });
        }
    }

    private final MarksTable table;
    private final Book book;
    private final String made;
    private final LocalDate today;

    private OneRosterMarks(MarksTable table, Book book, Instant made, LocalDate today) {
        this.table = table;
        this.book = book;
        this.made = TIME.format(made);
        this.today = today;
    }

    /**
     * The texts of the files by their names, all to be written as UTF-8.
     *
     * @param today in the school's time zone
     */
    public static Map<String, String> files(MarksTable table, Book book, Instant made, LocalDate today) {
        return new OneRosterMarks(table, book, made, today).files();
    }

    /** Those whose marks cannot go: the school's system would not know them. */
    public static List<MarksTable.Student> leftOut(MarksTable table) {
        return table.students().stream().filter(s -> !OneRosterReader.isSourcedId(s.sourcedId())).toList();
    }

    private Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(MANIFEST, manifest());
        files.put(CATEGORIES, categories());
        files.put(LINE_ITEMS, lineItems());
        files.put(RESULTS, results());
        return files;
    }

    private static String manifest() {
        CsvLines lines = new CsvLines().texts(List.of("propertyName", "value"));
        lines.texts(List.of("manifest.version", "1.0")).texts(List.of("oneroster.version", "1.2"));
        SET.forEach(f -> lines.texts(List.of("file." + f, OURS.contains(f) ? "delta" : "absent")));
        return lines.texts(List.of("source.systemName", "Soapstone")).texts(List.of("source.systemCode", "")).toString();
    }

    private String categories() {
        List<CsvLines.Cell> category = List.of(id(book.category()), id(ACTIVE), id(made), text(book.categoryTitle()), CsvLines.Cell.EMPTY);
        return new CsvLines().texts(CATEGORY_COLUMNS).line(category).toString();
    }

    private String lineItems() {
        CsvLines lines = new CsvLines().texts(LINE_ITEM_COLUMNS);
        for (MarksTable.Column column : table.columns()) {
            // The due day must be there; of practice without an end it is the day it was given.
            lines.line(List.of(id(lineItem(column)), id(ACTIVE), id(made), text(column.title()), CsvLines.Cell.EMPTY, id(column.given().toString()),
                    id(column.due().orElse(column.given()).toString()), id(book.schoolClass()), id(book.category()), id(book.academicSession()),
                    CsvLines.Cell.number(0), CsvLines.Cell.number(column.possible()), id(book.school())));
        }
        return lines.toString();
    }

    private String results() {
        CsvLines lines = new CsvLines().texts(RESULT_COLUMNS);
        IntStream.range(0, table.students().size()).filter(s -> OneRosterReader.isSourcedId(table.students().get(s).sourcedId()))
                .forEach(s -> IntStream.range(0, table.columns().size())
                        .forEach(c -> lines.line(result(table.students().get(s).sourcedId(), table.columns().get(c), table.mark(s, c)))));
        return lines.toString();
    }

    private List<CsvLines.Cell> result(String student, MarksTable.Column column, MarksTable.Mark mark) {
        boolean missing = mark.state() == MarksTable.State.NOT_BEGUN && mark.due().or(column::due).filter(d -> d.isBefore(today)).isPresent();
        return List.of(id(resultId(column, student)), id(ACTIVE), id(made), id(lineItem(column)), id(student), id(scoreStatus(mark.state())),
                mark.isMarked() ? CsvLines.Cell.number(mark.points()) : CsvLines.Cell.EMPTY, id(mark.on().orElse(today).toString()),
                CsvLines.Cell.EMPTY, CsvLines.Cell.EMPTY, id(book.schoolClass()), flag(mark.state() == MarksTable.State.BEGUN), flag(false),
                flag(mark.late()), flag(missing));
    }

    /** The values of the enumeration ScoreStatus. */
    private static String scoreStatus(MarksTable.State state) {
        return switch (state) {
            case NOT_BEGUN -> "not submitted";
            case BEGUN -> "partially graded";
            case DONE -> "fully graded";
            case EXCUSED -> "exempt";
        };
    }

    private static String lineItem(MarksTable.Column column) {
        return "soapstone-assignment-" + column.assignment();
    }

    /** The same for the same student and assignment each time, so that a mark that is sent again takes the old one's place. */
    private static String resultId(MarksTable.Column column, String student) {
        return UUID.nameUUIDFromBytes((lineItem(column) + " " + student).getBytes(StandardCharsets.UTF_8)).toString();
    }

    private static CsvLines.Cell flag(boolean set) {
        return new CsvLines.Cell(Boolean.toString(set));
    }

    /** Ids, days and words of the standard: their signs can make no formula, and they must arrive as they are. */
    private static CsvLines.Cell id(String known) {
        return new CsvLines.Cell(known);
    }

    /** The standard allows no line ends within a cell. */
    private static CsvLines.Cell text(String text) {
        return CsvLines.Cell.text(text.replaceAll("[\\r\\n]+", " "));
    }
}
