package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** However a list of students comes, each line is understood or told. */
class RosterReaderTest {

    private static final RosterRules RULES = new RosterRules("K7WM-2Q", "Seat", Set.of("jo", "ben-k7w", "ben-k7w-2")::contains);

    private static Roster read(String text) {
        return new RosterReader(RULES).read(text);
    }

    /** Seat, name, login and extra time of each row. */
    private static List<String> rows(Roster roster) {
        return roster.rows().stream().map(r -> String.join("|", r.seat(), r.name(), r.login(), Integer.toString(r.extraTime()))).toList();
    }

    /** Line, rule and what was found of each fault and warning; a warning has a question mark. */
    private static List<String> faults(Roster roster) {
        return roster.all().stream()
                .map(f -> f.line() + " " + f.says().key().replace("school.roster.", "") + (f.isFault() ? "" : "?") + " " + f.found()).toList();
    }

    private static void isRight(Roster roster, String... rows) {
        assertThat(faults(roster)).isEmpty();
        assertThat(rows(roster)).containsExactly(rows);
        assertThat(roster.isRight()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '>', textBlock = """
            Ada Q.          > |Ada Q.|ada-q-k7w|0
            7, Ada Q.       > 7|Ada Q.|ada-q-k7w|0
            Ada Q., 7       > 7|Ada Q.|ada-q-k7w|0
            7 Ada Q.        > 7|Ada Q.|ada-q-k7w|0
            7. Ada Q.       > 7|Ada Q.|ada-q-k7w|0
            7               > 7|Seat 7|k7w-7|0
            B-14            > B-14|Seat B-14|k7w-b-14|0
            7;Ada Q.        > 7|Ada Q.|ada-q-k7w|0
            7;Quill, Ada    > 7|Quill, Ada|quill-ada-k7w|0
            7,Ada,ada.q     > 7|Ada|ada.q|0
            7,Ada,,50       > 7|Ada|ada-k7w|50
            7,Ada,,25 %     > 7|Ada|ada-k7w|25
            ,Ada,ADA.Q      > |Ada|ada.q|0
            Álvaro Peña     > |Álvaro Peña|alvaro-pena-k7w|0
            """)
    void oneLineAStudent(String line, String row) {
        isRight(read(line), row);
    }

    @Test
    void pastedFromASpreadsheet() {
        isRight(read("Ada Q.\t7\nBo  R.\t8\n\n\tQuill, Cy\t\n"), "7|Ada Q.|ada-q-k7w|0", "8|Bo R.|bo-r-k7w|0", "|Quill, Cy|quill-cy-k7w|0");
    }

    @Test
    void theIdOfTheSchoolsOwnSystemIsTakenUnderItsHeadingOnly() {
        Roster roster = read("name,sourcedId,seat\nAda,stu-0017,7\nBo,,8");
        assertThat(faults(roster)).isEmpty();
        assertThat(roster.rows()).extracting(Roster.Row::sourcedId).containsExactly("stu-0017", "");
        assertThat(faults(read("name,sourcedId\nAda,a b\nBo,x1\nCy,x1"))).containsExactly("2 sourced-id a b", "4 sourced-id-twice x1");
        assertThat(faults(read("7,Ada,,50,stu-0017"))).containsExactly("1 columns stu-0017");
    }

    @Test
    void aNameWithACommaStandsInQuotes() {
        isRight(read("7, \"Quill, Ada\"\r\n8, \"Ray \"\"Ace\"\" Stone\"\r\n"),
                "7|Quill, Ada|quill-ada-k7w|0", "8|Ray \"Ace\" Stone|ray-ace-stone-k7w|0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"seat,name,login,extra time\n7,Ada,ada.q,50\n", "Name;SEAT;Extra time (%);Login\nAda;7;50 %;ada.q",
        "nombre\tasiento\tUsuario\tTiempo extra\nAda\t7\tada.q\t50",
        "\uFEFFNúmero de asiento,Nombre del alumno,cuenta,tiempo adicional\r\n7,Ada,ada.q,50\r\n",
        "\n\"Seat\",\"Student_Name\",\"User name\",\"Time\"\n\n\"7\",\"Ada\",\"ada.q\",\"50\"\n"})
    void headingsMayStandInAnyOrderAndSpelling(String text) {
        isRight(read(text), "7|Ada|ada.q|50");
    }

    @Test
    void aColumnThatNobodyAskedForIsLeftAloneAndTold() {
        Roster roster = read("Name,Birth date,Seat\nAda,2011-03-04,7\n");
        assertThat(faults(roster)).containsExactly("1 heading-left? Birth date");
        assertThat(roster.isRight()).isTrue();
        assertThat(roster.toString()).doesNotContain("2011-03-04");
    }

    @Test
    void aColumnThatStandsTwiceIsAFault() {
        assertThat(faults(read("Name,Seat,Nickname\nAda,7,Ace\n"))).containsExactly("1 heading-twice Nickname");
    }

    @Test
    void aSeatIsEnoughAndNeitherIsNot() {
        Roster roster = read("seat,name,login\n7,,\n,,cy\n");
        assertThat(rows(roster)).containsExactly("7|Seat 7|k7w-7|0", "||cy|0");
        assertThat(faults(roster)).containsExactly("2 name-from-seat? Seat 7", "3 name-empty ");
        assertThat(roster.isRight()).isFalse();
    }

    @Test
    void aSeatHasOneStudent() {
        assertThat(faults(read("7, Ada\n8, Bo\n07, Cy\n"))).containsExactly("3 seat-twice 07");
        assertThat(read("7, Ada\n8, Bo\n07, Cy\n").all().get(0).says().with()).containsExactly("07", "1");
    }

    @Test
    void twoPeopleMayShareANicknameIfTheyHaveSeats() {
        Roster seated = read("7, Ada\n8, ADA\n");
        assertThat(faults(seated)).containsExactly("2 name-twice? ADA");
        assertThat(seated.isRight()).isTrue();
        assertThat(rows(seated)).containsExactly("7|Ada|ada-k7w|0", "8|ADA|ada-k7w-2|0");
        assertThat(faults(read("Ada\nBo\nAda"))).containsExactly("1 name-twice-no-seat Ada", "3 name-twice-no-seat Ada");
    }

    @Test
    void aLoginThatIsTakenIsToldAndAProposalGoesRoundIt() {
        assertThat(faults(read("1,Jo,JO\n2,Cy,cy\n3,Di,cy\n4,Ed,a b\n5,Flo,=1\n")))
                .containsExactly("1 login-taken JO", "3 login-twice cy", "4 login-signs a b", "5 login-signs =1");
        assertThat(rows(read("Ben\nCy"))).containsExactly("|Ben|ben-k7w-3|0", "|Cy|cy-k7w|0");
    }

    @Test
    void aProposalIsNoLoginThatIsTypedFurtherDown() {
        isRight(read("1,Ada\n2,Bo,ada-k7w"), "1|Ada|ada-k7w-2|0", "2|Bo|ada-k7w|0");
    }

    @Test
    void aNameInAnotherScriptIsProposedItsPlaceAsLogin() {
        isRight(read("7, 玉\n8, Ада"), "7|玉|k7w-7|0", "8|Ада|k7w-8|0");
        isRight(read("Bo\n玉"), "|Bo|bo-k7w|0", "|玉|k7w-2|0");
    }

    @Test
    void theSameListHasTheSameLogins() {
        String list = IntStream.range(0, 100).mapToObj(i -> i + ", Ada").collect(Collectors.joining("\n"));
        assertThat(rows(read(list))).isEqualTo(rows(read(list))).doesNotHaveDuplicates();
        assertThat(read(list).rows().stream().map(Roster.Row::login)).doesNotHaveDuplicates().allMatch(l -> l.length() < 25);
    }

    @Test
    void whereEveryLoginIsTakenThatIsTold() {
        Roster roster = new RosterReader(new RosterRules("", "Seat", login -> true)).read("Ada");
        assertThat(faults(roster)).containsExactly("1 login-none Ada");
    }

    @ParameterizedTest
    @CsvSource({"fifty", "-10", "1.5", "401", "1e3", "NaN", "99999999999"})
    void extraTimeIsAWholeNumberOfPerCent(String time) {
        assertThat(faults(read("7,Ada,," + time))).containsExactly("1 extra-time " + time);
    }

    @Test
    void aNameHasUpToEightyLetters() {
        assertThat(read("a".repeat(80)).isRight()).isTrue();
        Roster longer = read("a".repeat(81));
        assertThat(faults(longer)).containsExactly("1 name-long " + "a".repeat(60) + "…");
        assertThat(longer.all().get(0).says().with()).contains("80", "81");
        assertThat(faults(read("name,seat\nAda," + "1".repeat(21)))).containsExactly("2 seat-long " + "1".repeat(21));
    }

    @ParameterizedTest
    @CsvSource({"\\u0000,[U+0000]", "\\u0007,[U+0007]", "\\u202E,[U+202E]",
        "\\u200B,[U+200B]", "\\uFFFD,[U+FFFD]", "\\uD83D,[U+D83D]", "\\u2028,[U+2028]", "\\uFFFE,[U+FFFE]"})
    void signsThatCannotBeSeenAreShownByNumber(String escape, String shown) {
        String sign = String.valueOf((char) Integer.parseInt(escape.substring(2), 16));
        assertThat(faults(read("Ada" + sign + "Q"))).containsExactly("1 signs Ada" + shown + "Q");
    }

    @Test
    void aLineEndInAQuotedNameIsAFaultAndTheLinesAfterItAreCountedRight() {
        assertThat(faults(read("1,\"Ada\nQ\"\n2,\"Bo\tR\"\n\n3,Cy,,x\n")))
                .containsExactly("1 signs Ada[U+000A]Q", "3 signs Bo[U+0009]R", "5 extra-time x");
    }

    @Test
    void moreThanFiveHundredStudentsAreNoClass() {
        assertThat(read(numbers(500)).isRight()).isTrue();
        Roster more = read(numbers(501));
        assertThat(faults(more)).containsExactly("0 too-many 501");
        assertThat(more.rows()).hasSize(500);
        assertThat(more.isRight()).isFalse();
    }

    private static String numbers(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).collect(Collectors.joining("\r\n"));
    }

    @Test
    void aLineWithTooManyCellsIsAFault() {
        assertThat(faults(read("7,Ada,ada,50,x\n8,Bo,,,,,\n"))).containsExactly("1 columns x");
        assertThat(faults(read("seat,name\n7,Ada\n8,Quill, Bo\n"))).containsExactly("3 columns Bo");
    }

    @Test
    void twoTextsWithoutASeatAreAskedAgain() {
        Roster roster = read("Quill, Ada");
        assertThat(faults(roster)).containsExactly("1 no-seat Quill, Ada");
        assertThat(roster.isRight()).isFalse();
    }

    @Test
    void aQuoteThatIsNotClosedIsToldWithItsLine() {
        Roster roster = read("1,Ada\n\n2,\"Bo\n3,Cy\n");
        assertThat(rows(roster)).containsExactly("1|Ada|ada-k7w|0");
        assertThat(faults(roster)).containsExactly("3 quotes ");
        assertThat(faults(read("\"Ace\" Ada"))).containsExactly("1 quotes ");
    }

    @Test
    void oneHeadingAloneIsTakenAndTold() {
        Roster roster = read("Student\nAda\n");
        assertThat(faults(roster)).containsExactly("1 heading-taken? Student");
        assertThat(faults(read("Student"))).containsExactly("1 heading-taken? Student", "0 empty ");
        assertThat(rows(roster)).containsExactly("|Ada|ada-k7w|0");
        assertThat(roster.isRight()).isTrue();
        isRight(read("1, Student\n2, Ada\n"), "1|Student|student-k7w|0", "2|Ada|ada-k7w|0");
        assertThat(faults(read("Name,Seat,Q1\nAda,7,3\n"))).containsExactly("1 heading-left? Q1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n", "\uFEFF", ",,,\n,\n", "\u00A0\n\u00A0,\u00A0", "name,seat\n"})
    void nothingIsNoRoster(String text) {
        Roster roster = read(text);
        assertThat(faults(roster)).containsExactly("0 empty ");
        assertThat(roster.isRight()).isFalse();
    }

    @Test
    void aFormulaIsANameLikeAnyOther() {
        isRight(read("1,=1+1\n2,@x\n3,<b>{{7*7}}'\"\"\"\n"), "1|=1+1|1-1-k7w|0", "2|@x|x-k7w|0", "3|<b>{{7*7}}'\"\"\"|b-7-7-k7w|0");
    }

    @Test
    void aFileIsUtf8WithOrWithoutItsMark() {
        RosterReader reader = new RosterReader(RULES);
        isRight(reader.read("7;José\r\n".getBytes(StandardCharsets.UTF_8)), "7|José|jose-k7w|0");
        isRight(reader.read("\uFEFF7;José\r\n".getBytes(StandardCharsets.UTF_8)), "7|José|jose-k7w|0");
    }

    @Test
    void aFileInAnotherEncodingIsToldWithLineAndByte() {
        RosterReader reader = new RosterReader(RULES);
        assertThat(faults(reader.read("1;Ada\r\n2;José\r\n".getBytes(Charset.forName("windows-1252"))))).containsExactly("2 not-utf8 0xE9");
        assertThat(faults(reader.read("1;Ada".getBytes(StandardCharsets.UTF_16)))).containsExactly("1 not-utf8 0xFE 0xFF");
        assertThat(faults(reader.read(new byte[] {'A', '\n', (byte) 0xC3}))).containsExactly("2 not-utf8 0xC3");
        assertThat(reader.read(new byte[] {(byte) 0xE9}).isRight()).isFalse();
    }

    @Test
    void aHugeTextIsNotTakenApart() {
        assertThat(faults(read("a".repeat(1_000_001)))).containsExactly("0 too-long 1000001");
        assertThat(faults(new RosterReader(RULES).read(new byte[1_000_001]))).containsExactly("0 too-long 1000001");
    }

    @Test
    void aFaultTellsItsPlace() {
        RosterFault fault = read("7,Ada,,x").all().get(0);
        assertThat(fault.where().key()).isEqualTo("school.roster.place-cell");
        assertThat(fault.where().with()).containsExactly("", "1", "@school.roster.column-time");
        assertThat(fault.fits().key()).isEqualTo("school.roster.extra-time-fits");
    }
}
