package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.page.Words;

/** Marks go out as a plain table and as OneRoster files; what is written is read back as the same texts. */
class MarksOutTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final LocalDate TODAY = LocalDate.of(2026, 10, 20);
    private static final Instant MADE = Instant.parse("2026-10-20T13:05:00Z");
    private static final OneRosterMarks.Book BOOK = new OneRosterMarks.Book("school-1", "class-1", "term-1", "shop-math", "Shop math");

    private static MarksTable table() {
        List<MarksTable.Column> columns = List.of(new MarksTable.Column(41, "Bolt holes", 10, MONDAY, Optional.of(MONDAY.plusDays(2))),
                new MarksTable.Column(42, "Bends, \"one\" and two", 7.5, MONDAY, Optional.empty()));
        List<MarksTable.Student> students = List.of(new MarksTable.Student("1", "Ada Q.", "ada-q-k7w", "user-1"),
                new MarksTable.Student("2", "Bo S.", "bo-s-k7w", "user-2"),
                new MarksTable.Student("3", "Cy", "cy-k7w", ""));
        MarksTable.Mark whole = new MarksTable.Mark(MarksTable.State.DONE, 8.5, false, Optional.of(MONDAY.plusDays(1)));
        MarksTable.Mark late = new MarksTable.Mark(MarksTable.State.BEGUN, 10 / 3.0, true, Optional.of(MONDAY.plusDays(4)));
        return new MarksTable(students, columns, List.of(List.of(whole, late),
                List.of(MarksTable.Mark.NOT_BEGUN, MarksTable.Mark.EXCUSED), List.of(whole, whole)));
    }

    private static MarksTable named(String name) {
        return new MarksTable(List.of(new MarksTable.Student("", name, "x", "user-1")),
                List.of(new MarksTable.Column(1, name, 1, MONDAY, Optional.empty())),
                List.of(List.of(MarksTable.Mark.NOT_BEGUN)));
    }

    private static String plain(MarksTable table) {
        return PlainMarks.text(table, Words.of("en")::say);
    }

    private static List<List<String>> readBack(String text) {
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
            return parser.getRecords().stream().map(CSVRecord::toList).toList();
        } catch (IOException e) {
            throw new AssertionError(text, e);
        }
    }

    @Test
    void aPlainTableHasAStudentALine() {
        assertThat(plain(table())).isEqualTo(String.join("\r\n", "Seat,Name,Login,Bolt holes,\"Bends, \"\"one\"\" and two\",Handed in late",
                ",Points possible,,10,7.5,", ",Due,,2026-10-07,,",
                "1,Ada Q.,ada-q-k7w,8.5,3.3333,\"Bends, \"\"one\"\" and two\"", "2,Bo S.,bo-s-k7w,not begun,excused,", "3,Cy,cy-k7w,8.5,8.5,", ""));
    }

    @Test
    void whoHasTimeLeftIsNotMissing() {
        List<MarksTable.Student> three = List.of(new MarksTable.Student("1", "Ada", "ada", "user-1"), new MarksTable.Student("2", "Bo", "bo", "user-2"),
                new MarksTable.Student("3", "Cy", "cy", "user-3"));
        MarksTable table = new MarksTable(three, List.of(new MarksTable.Column(41, "Bolt holes", 10, MONDAY, Optional.of(MONDAY.plusDays(2)))),
                List.of(List.of(MarksTable.Mark.NOT_BEGUN), List.of(MarksTable.Mark.notBegun(Optional.of(MONDAY.plusDays(4)))),
                        List.of(MarksTable.Mark.notBegun(Optional.of(MONDAY.plusDays(1))))));
        List<List<String>> results = readBack(OneRosterMarks.files(table, BOOK, MADE, MONDAY.plusDays(3)).get("results.csv"));
        int missing = results.get(0).indexOf("missing");
        assertThat(results.stream().skip(1).map(r -> r.get(missing))).containsExactly("true", "false", "true");
    }

    @Test
    void aFileBeginsWithTheMarkOfUtf8() {
        byte[] file = PlainMarks.file(named("José"), Words.of("en")::say);
        assertThat(file).startsWith(0xEF, 0xBB, 0xBF);
        assertThat(new String(file, StandardCharsets.UTF_8)).contains("José");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-2+3", "@x", "\tx", "\rx", "\nx", "\0x", " =1+1", "\uFF1D1", "\u22121", "=\"a\",b"})
    void aTextThatASpreadsheetWouldWorkOutIsGivenAnApostropheAndQuotes(String name) {
        String text = plain(named(name));
        assertThat(text).contains(",\"'" + name.replace("\"", "\"\"") + "\",");
        assertThat(readBack(text).get(3).get(1)).isEqualTo("'" + name);
        assertThat(readBack(text).get(0).get(3)).isEqualTo("'" + name);
    }

    @Test
    void numbersStayNumbers() {
        for (double points : new double[] {-0.5, 0, 1e-9, 0.1 + 0.2, 12, 1e7}) {
            MarksTable.Mark mark = new MarksTable.Mark(MarksTable.State.DONE, points, false, Optional.empty());
            MarksTable table = new MarksTable(named("a").students(), named("a").columns(), List.of(List.of(mark)));
            assertThat(plain(table).lines().skip(3).findFirst().orElseThrow()).matches(",a,x,-?[0-9]+(\\.[0-9]{1,4})?,");
        }
    }

    /** Row 28 of the security table: nothing in a name gets out of its cell. */
    @Test
    void whatIsWrittenIsReadBackAsTheSameTexts() {
        String[] pieces = {"\"", ",", ";", "\n", "\r\n", "\t", " ", "'", "=", "-", "@", "é", "玉", "\uD83D\uDE00", "a",
            "<svg onload=x>", "{{7*7}}", "\\", "\0"};
        for (int seed = 1; seed <= 2_000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            StringBuilder name = new StringBuilder("a");
            for (int n = random.nextInt(8); n > 0; n--) {
                name.append(pieces[random.nextInt(pieces.length)]);
            }
            List<List<String>> back = readBack(plain(named(name.toString())));
            assertThat(back).as("seed %d", seed).hasSize(4);
            assertThat(back.get(3)).as("seed %d", seed).containsExactly("", name.toString(), "x", "not begun", "");
        }
    }

    @Test
    void aSetSaysWhatIsInIt() {
        Map<String, String> files = OneRosterMarks.files(table(), BOOK, MADE, TODAY);
        assertThat(files.keySet()).containsExactly("manifest.csv", "categories.csv", "lineItems.csv", "results.csv");
        List<List<String>> manifest = readBack(files.get("manifest.csv"));
        assertThat(manifest).contains(List.of("propertyName", "value"), List.of("manifest.version", "1.0"), List.of("oneroster.version", "1.2"),
                List.of("file.lineItems", "delta"), List.of("file.results", "delta"), List.of("file.categories", "delta"), List.of("file.users", "absent"));
        assertThat(manifest.stream().filter(l -> l.get(0).startsWith("file."))).hasSize(21);
        assertThat(files.get("categories.csv"))
                .isEqualTo("sourcedId,status,dateLastModified,title,weight\r\nshop-math,active,2026-10-20T13:05:00.000Z,Shop math,\r\n");
    }

    @Test
    void anAssignmentIsALineItem() {
        assertThat(readBack(OneRosterMarks.files(table(), BOOK, MADE, TODAY).get("lineItems.csv"))).containsExactly(
                List.of("sourcedId", "status", "dateLastModified", "title", "description", "assignDate", "dueDate", "classSourcedId",
                        "categorySourcedId", "academicSessionSourcedId", "resultValueMin", "resultValueMax", "schoolSourcedId"),
                List.of("soapstone-assignment-41", "active", "2026-10-20T13:05:00.000Z", "Bolt holes", "", "2026-10-05", "2026-10-07",
                        "class-1", "shop-math", "term-1", "0", "10", "school-1"),
                List.of("soapstone-assignment-42", "active", "2026-10-20T13:05:00.000Z", "Bends, \"one\" and two", "",
                        "2026-10-05", "2026-10-05", "class-1", "shop-math", "term-1", "0", "7.5", "school-1"));
    }

    @Test
    void aMarkIsAResultWithTheStatusOfTheStandard() {
        List<List<String>> results = readBack(OneRosterMarks.files(table(), BOOK, MADE, TODAY).get("results.csv"));
        assertThat(results.get(0)).containsExactly("sourcedId", "status", "dateLastModified", "lineItemSourcedId", "studentSourcedId", "scoreStatus",
                "score", "scoreDate", "comment", "textScore", "classSourcedId", "inProgress", "incomplete", "late", "missing");
        assertThat(results.stream().skip(1).map(r -> String.join("|", r.subList(3, r.size())))).containsExactly(
                "soapstone-assignment-41|user-1|fully graded|8.5|2026-10-06|||class-1|false|false|false|false",
                "soapstone-assignment-42|user-1|partially graded|3.3333|2026-10-09|||class-1|true|false|true|false",
                "soapstone-assignment-41|user-2|not submitted||2026-10-20|||class-1|false|false|false|true",
                "soapstone-assignment-42|user-2|exempt||2026-10-20|||class-1|false|false|false|false");
        List<String> ids = new ArrayList<>(results.stream().skip(1).map(r -> r.get(0)).toList());
        assertThat(ids).doesNotHaveDuplicates().allMatch(OneRosterReader::isSourcedId);
        List<List<String>> again = readBack(OneRosterMarks.files(table(), BOOK, MADE.plusSeconds(60), TODAY).get("results.csv"));
        assertThat(again.stream().skip(1).map(r -> r.get(0))).containsExactlyElementsOf(ids);
    }

    @Test
    void whoIsUnknownToTheSchoolsSystemIsLeftOutAndNamed() {
        assertThat(OneRosterMarks.leftOut(table())).extracting(MarksTable.Student::name).containsExactly("Cy");
        assertThat(OneRosterMarks.files(table(), BOOK, MADE, TODAY).get("results.csv")).doesNotContain("Cy");
    }

    @Test
    void aTitleInTheSetIsGuardedTooAndHasNoLineEnds() {
        List<List<String>> items = readBack(OneRosterMarks.files(named("=1\r\n+1"), BOOK, MADE, TODAY).get("lineItems.csv"));
        assertThat(items.get(1).get(3)).isEqualTo("'=1 +1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "=1", "a,b", "a\nb"})
    void anIdOfTheBookHasTheSignsOfTheStandard(String id) {
        assertThatThrownBy(() -> new OneRosterMarks.Book("school-1", id, "term-1", "c", "C")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'" + id + "'");
    }

    @Test
    void aTableHasAMarkInEachPlaceAndNumbersForPoints() {
        assertThatThrownBy(() -> new MarksTable(table().students(), table().columns(), List.of()))
                .hasMessageContaining("3 students").hasMessageContaining("2 assignments");
        assertThatThrownBy(() -> new MarksTable.Mark(MarksTable.State.DONE, Double.NaN, false, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MarksTable.Column(1, "Bends", Double.POSITIVE_INFINITY, MONDAY, Optional.empty()))
                .hasMessageContaining("Bends");
    }
}
