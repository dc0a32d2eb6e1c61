package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A class comes out of a OneRoster 1.2 set with its students' names and logins, and with nothing else about them. */
class OneRosterReaderTest {

    private static final RosterRules RULES = new RosterRules("K7WM", "Seat", l -> false);

    /** An invented set of two classes, with the columns of version 1.2 and all that a school's system may know. */
    static Map<String, String> set() {
        return Map.of(
                "manifest.csv", "propertyName,value\nmanifest.version,1.0\noneroster.version,1.2\nfile.users,bulk\n",
                "classes.csv", """
                        sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,subjects,subjectCodes,periods
                        class-2,,,Welding 1,,course-2,W1,scheduled,,school-1,term-1,,,
                        class-1,,,"Sheet Metal, morning",,course-1,SM1,scheduled,Shop 3,school-1,term-1,,,2
                        """,
                "enrollments.csv", """
                        sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate
                        e1,,,class-1,school-1,user-9,teacher,true,,
                        e2,,,class-1,school-1,user-1,student,,,
                        e3,,,class-1,school-1,user-2,student,,,
                        e4,,,class-2,school-1,user-3,student,,,
                        e5,tobedeleted,,class-1,school-1,user-3,student,,,
                        """,
                "users.csv", """
                        sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns
                        user-1,,,true,aquill,{LDAP:secret-1},Adelaide,Quill,Maud,ID-11,ada@example.org,555-0101,555-0102,parent-1,11,pass-1,master-1,Ada,,,school-1,she
                        user-2,,,true,bstone,,Bo,Stone,,ID-12,bo@example.org,,,,11,,,,,,school-1,
                        user-3,,,true,cray,,Cy,Ray,,,,,,,11,,,,,,school-1,
                        user-9,,,true,teach,,Tess,Forge,,,,,,,,,,,,,school-1,
                        """);
    }

    private static Roster read(Map<String, String> files) {
        return OneRosterReader.read(files, "class-1", OneRosterReader.NameForm.GIVEN_AND_INITIAL, RULES);
    }

    private static Map<String, String> with(String file, String old, String now) {
        Map<String, String> files = new TreeMap<>(set());
        assertThat(files.get(file)).contains(old);
        files.put(file, files.get(file).replace(old, now));
        return files;
    }

    private static List<String> faults(List<RosterFault> faults) {
        return faults.stream().map(f -> f.file() + ":" + f.line() + " " + f.column() + " " + f.says().key().replace("school.roster.", "")
                + (f.isFault() ? "" : "?") + " " + f.found()).toList();
    }

    @Test
    void theClassesAreThereToChooseFrom() {
        OneRosterReader.Choices choices = OneRosterReader.classes(set());
        assertThat(choices.classes()).containsExactly(new OneRosterReader.Choice("class-1", "Sheet Metal, morning", "SM1", 2),
                new OneRosterReader.Choice("class-2", "Welding 1", "W1", 1));
        assertThat(choices.faults()).isEmpty();
    }

    @Test
    void theStudentsOfOneClassComeWithShortNames() {
        Roster roster = read(set());
        assertThat(roster.all()).isEmpty();
        assertThat(roster.rows()).containsExactly(new Roster.Row(2, "1", "Ada Q.", "aquill", false, 0, "user-1", List.of()),
                new Roster.Row(3, "2", "Bo S.", "bstone", false, 0, "user-2", List.of()));
        assertThat(roster.isRight()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"GIVEN_AND_INITIAL,Ada Q.,Bo S.", "GIVEN,Ada,Bo", "WHOLE,Ada Quill,Bo Stone"})
    void theInstructorChoosesHowMuchOfANameIsShown(OneRosterReader.NameForm form, String first, String second) {
        assertThat(OneRosterReader.read(set(), "class-1", form, RULES).rows()).extracting(Roster.Row::name).containsExactly(first, second);
    }

    @ParameterizedTest
    @ValueSource(strings = {"example.org", "555-", "secret", "ID-1", "parent", "pass-", "master", "she", "Maud", "Adelaide", "2011"})
    void nothingElseAboutAStudentIsTaken(String data) {
        Map<String, String> files = new TreeMap<>(set());
        files.put("demographics.csv", "sourcedId,status,dateLastModified,birthDate\nuser-1,,,2011-03-04\n");
        assertThat(read(files).toString()).doesNotContain(data);
    }

    @Test
    void aUserNameThatIsAnAddressStaysWhereItIs() {
        Roster roster = read(with("users.csv", "aquill", "ada@example.org"));
        assertThat(roster.rows().get(0).login()).isEqualTo("ada-q-k7w");
        assertThat(faults(roster.all())).containsExactly("users.csv:2 username address? ");
        assertThat(roster.toString()).doesNotContain("example.org");
        assertThat(roster.isRight()).isTrue();
    }

    @Test
    void aSetOfOneEncodingMarkAndWindowsLineEndsIsTheSame() {
        Map<String, String> files = new TreeMap<>();
        set().forEach((name, text) -> files.put(name, "\uFEFF" + text.replace("\n", "\r\n")));
        assertThat(read(files)).isEqualTo(read(set()));
    }

    @Test
    void aFaultTellsFileLineAndColumn() {
        assertThat(faults(read(with("enrollments.csv", "user-2", "user-7")).all())).containsExactly("enrollments.csv:4 userSourcedId no-user user-7");
        assertThat(faults(read(with("enrollments.csv", "user-2", "user-1")).all())).containsExactly("enrollments.csv:4 userSourcedId enrolled-twice? user-1");
        assertThat(faults(read(with("users.csv", "givenName,familyName", "givenname,familyName")).all())).contains("users.csv:1 givenName no-column givenName");
        assertThat(faults(read(with("users.csv", "user-3", "user-1")).all())).containsExactly("users.csv:4 sourcedId sourced-id-twice user-1");
        assertThat(faults(read(with("users.csv", "user-2,,,true", "user-2,,,false")).all())).containsExactly("users.csv:3 enabledUser not-enabled? false");
        assertThat(faults(read(with("users.csv", "bstone", "b stone")).all())).containsExactly("users.csv:3 username login-signs b stone");
        assertThat(faults(read(with("users.csv", ",Bo,", ",B\u0007o,")).all())).containsExactly("users.csv:3 givenName signs B[U+0007]o S.");
        assertThat(faults(read(with("users.csv", ",Bo,", ",\"Bo,")).all())).contains("users.csv:3  quotes ");
        assertThat(faults(read(with("manifest.csv", "1.2", "1.1")).all())).containsExactly("manifest.csv:3 value version? 1.1");
    }

    @Test
    void anIdWithSignsThatTheStandardHasNotIsAFault() {
        Map<String, String> files = with("users.csv", "user-2", "=2+5");
        files.put("enrollments.csv", set().get("enrollments.csv").replace("user-2", "=2+5"));
        assertThat(faults(read(files).all())).contains("users.csv:3 sourcedId sourced-id =2+5");
    }

    @Test
    void aMissingFileIsTold() {
        Map<String, String> files = new TreeMap<>(set());
        files.remove("users.csv");
        assertThat(faults(read(files).all())).contains("users.csv:0  no-file users.csv");
        assertThat(faults(OneRosterReader.classes(Map.of()).faults())).containsExactly("enrollments.csv:0  no-file enrollments.csv",
                "classes.csv:0  no-file classes.csv");
    }

    @Test
    void aClassWithoutStudentsIsTold() {
        Roster roster = OneRosterReader.read(set(), "class-7", OneRosterReader.NameForm.GIVEN, RULES);
        assertThat(faults(roster.all())).containsExactly("enrollments.csv:0  nobody class-7");
        assertThat(roster.isRight()).isFalse();
    }

    @Test
    void whatIsWrongWithOtherClassesDoesNotMatter() {
        assertThat(read(with("users.csv", "user-3,,,true", "user 3,,,maybe")).isRight()).isTrue();
    }

    @Test
    void twoWithTheSameShortNameAreToldApartByTheirSeats() {
        Roster roster = read(with("users.csv", "Bo,Stone", "Ada,Quarry"));
        assertThat(roster.rows()).extracting(r -> r.seat() + " " + r.name()).containsExactly("1 Ada Q.", "2 Ada Q.");
        assertThat(faults(roster.all())).containsExactly("users.csv:3 givenName name-twice? Ada Q.");
        assertThat(roster.isRight()).isTrue();
    }
}
