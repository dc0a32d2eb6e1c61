package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomNode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.school.Assignment;
import soapstone.school.Codes;
import soapstone.school.Problem;
import soapstone.school.SchoolClass;
import soapstone.school.SecretCodes;
import soapstone.variant.Variant;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** An instructor's first week with a class of 24, from the code on the console to the class that is put away. */
class InstructorsWeekTest {

    private static final String CODE = "K7CW-34MR-XPN9-THQ6";
    private static final String PASSWORD = "copper lanterns drift north";
    private static final String WEEK = "Week 11: holes, trays and tanks";
    private static final String HOLES = "spacing/bolt-holes";
    private static final String TRAY = "bends/hose-tray";
    private static final List<String> POOL = List.of("tanks/box-gallons", "tanks/drum-gallons");
    private static final List<String> ALONE = List.of(HOLES, TRAY, "spacing/pickets", "boxes/corner-notch", "pressure/lid-force");
    private static final int EACH = 2;

    private static final int TOO_WIDE_BY_A_LITTLE = 10;
    private static final int TWO_DAYS_RIGHT = 12;
    private static final int STILL_OPEN = 14;
    private static final int EXCUSED = 23;
    private static final int ABSENT = 24;

    @TempDir
    private Path folder;
    private final MendableBank bank = new MendableBank();
    private final Map<Integer, AtWork> students = new TreeMap<>();
    private SchoolUnderTest site;
    private WebClient browser;
    private Hand hand;
    private List<String> sharedOverHoles;
    private List<String> insideRadius;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new EngineDesk(bank));
        browser = site.browser();
        hand = new Hand(site, browser);
    }

    @AfterEach
    void stop() {
        browser.close();
        site.close();
    }

    @Test
    void theWeek() throws Exception {
        theFirstAccountIsMadeWithTheCodeOfTheConsole();
        aClassOf24ComesFromAFileWithOneFault();
        theirSlipsArePrinted();
        sixProblemsAreGivenOutWithEveryonesOwnNumbers();
        onTwoDaysTheStudentsHandIn();
        onTuesdayAt7TheMorningPageSaysWhoAndWhat();
        theDrillGoesToJustTheseInOneAction();
        theAbsentOneGetsAMakeUp();
        aMarkIsOverruledWithAReason();
        oneIsExcused();
        theBankIsMendedAndTheMarksFollow();
        marksGoOutAsATable();
        marksGoOutForTheSchoolsOwnBook();
        aCompetencyIsSignedOnEvidenceAndWithdrawn();
        theAuditTellsAllOfIt();
        nextTermBeginsWithACopyAndThisOneIsPutAway();
    }

    private SchoolClass in() {
        return site.school.classes().taughtBy(site.school.people().byLogin("kestrel").orElseThrow().id()).stream().filter(c -> c.term().equals("Spring")).findFirst().orElseThrow();
    }

    private Assignment week() {
        return site.school.assignments().of(in().id()).stream().filter(a -> a.title().equals(WEEK)).findFirst().orElseThrow();
    }

    private static String name(int seat) {
        return "Student " + (char) ('A' + seat - 1) + ".";
    }

    private Hand atTheClass() throws Exception {
        return hand.open("/classes").follow("Sheet metal 1, period 2");
    }

    private Hand atTheWeek() throws Exception {
        return atTheClass().follow(WEEK);
    }

    /** Time goes by, and the instructor signs in again. */
    private void later(Duration time) throws Exception {
        site.wait(time);
        browser.close();
        browser = site.browser();
        hand = new Hand(site, browser);
        site.signIn(browser, "kestrel", PASSWORD);
    }

    private void theFirstAccountIsMadeWithTheCodeOfTheConsole() throws Exception {
        site.school.codes().make(SecretCodes.hash(CODE), Codes.Purpose.FIRST_RUN, Optional.empty(), SecretCodes.ends(Codes.Purpose.FIRST_RUN, site.now()));
        hand.open("/start").type("code", CODE).type("school", "Tamarack Valley Technical Center").type("shown", "W. Kestrel").type("login", "kestrel")
                .type("fresh", PASSWORD).type("again", PASSWORD).press("Make the account");
        assertThat(hand.heading()).isEqualTo("Make the keeper");
        hand.follow("Later");
        assertThat(hand.text()).contains("W. Kestrel", "No class yet. A class takes a name; the roster comes next.");
    }

    private void aClassOf24ComesFromAFileWithOneFault() throws Exception {
        hand.follow("New class").type("name", "Sheet metal 1, period 2").type("term", "Spring").press("Make the class");
        String list = "Seat,Name\n" + IntStream.rangeClosed(1, 24).mapToObj(seat -> (seat == 9 ? 8 : seat) + "," + name(seat)).collect(Collectors.joining("\n")) + "\n";
        hand.attach("list", Files.writeString(folder.resolve("period-2.csv"), list)).press("Look at the list");
        assertThat(hand.fault("roster")).isEqualTo("Rows with a fault: 1. Each says what would fit; nothing was saved.");
        assertThat(RealSite.text(hand.page().<DomNode>getFirstByXPath("//tr[@class='row-faults']"))).contains("8");
        assertThat(hand.canPress("Make these 24 accounts")).isFalse();
        assertThat(site.school.classes().members(in().id())).isEmpty();

        hand.type("roster", hand.typed("roster").replace("8," + name(9), "9," + name(9))).press("Look at the list");
        assertThat(hand.text()).contains("24 students, all of them right. Nothing is saved yet.");
        hand.press("Make these 24 accounts");
    }

    private void theirSlipsArePrinted() throws Exception {
        List<AtWork.Slip> slips = AtWork.cut(hand.page());
        assertThat(slips).hasSize(24).extracting(AtWork.Slip::whose).startsWith("1 Student A.", "2 Student B.").endsWith("24 Student X.");
        assertThat(slips).extracting(AtWork.Slip::passphrase).doesNotHaveDuplicates();
        for (int seat = 1; seat <= slips.size(); seat++) {
            students.put(seat, new AtWork(site, slips.get(seat - 1)));
        }
        hand.follow("Printed: back to the class");
        assertThat(hand.row("Student X.")).startsWith("24");
        assertThat(hand.text()).doesNotContain(slips.get(0).passphrase());
    }

    private void sixProblemsAreGivenOutWithEveryonesOwnNumbers() throws Exception {
        hand.follow("New assignment").type("title", WEEK).type("due-date", "2027-03-22").type("due-time", "08:00").tick("formulas");
        ALONE.forEach(id -> hand.tick("use-" + id));
        POOL.forEach(id -> hand.tick("use-" + id));
        hand.press("Order, pools and points");
        POOL.forEach(id -> hand.type("pool-" + id, "A"));
        ALONE.forEach(id -> hand.type("points-" + id, String.valueOf(EACH)));
        POOL.forEach(id -> hand.type("points-" + id, String.valueOf(EACH)));
        hand.press("Save as a draft");
        assertThat(hand.text()).contains("A draft: only instructors see it.", "1 of these 2", "Problems 6", "Points 12");

        hand.follow("See it as a student does");
        for (int place = 1; place <= 6; place++) {
            assertThat(hand.text()).contains("As a student sees it. Nobody gets these numbers, and nothing is kept.", "Your answers");
            hand.follow(place < 6 ? "Next problem" : "Back to the assignment");
        }
        students.get(1).comes(theirs -> assertThat(theirs.text()).contains("Nothing to do here right now."));
        hand.press("Give it out");
        assertThat(hand.text()).contains("For the whole class.").contains("Due ");
    }

    /** Wednesday eleven, Thursday three more, of whom one only begins; one takes other numbers on Friday. Ten do not come. */
    private void onTwoDaysTheStudentsHandIn() throws Exception {
        List<String> shared = new ArrayList<>();
        List<String> inside = new ArrayList<>();
        later(Duration.ofDays(1));
        for (int seat = 1; seat <= STILL_OPEN; seat++) {
            if (seat == TWO_DAYS_RIGHT) {
                later(Duration.ofDays(1));
            }
            int own = seat;
            students.get(seat).does(WEEK, problem -> own == STILL_OPEN && problem.place() > 1 ? Optional.empty() : Optional.of(typed(own, problem, shared, inside)));
        }
        later(Duration.ofDays(1));
        AtWork careful = students.get(TWO_DAYS_RIGHT);
        careful.comes(theirs -> {
            theirs.follow(WEEK).follow(holes() + ". Bolt holes along an angle").press("Take other numbers");
            Problem other = careful.sheet(theirs.path()).problems().get(holes() - 1);
            AtWork.handIn(theirs, other, AtWork.right(other));
            assertThat(theirs.text()).contains("Right.");
        });
        sharedOverHoles = shared;
        insideRadius = inside;
        assertThat(shared).hasSizeGreaterThan(inside.size());
        assertThat(inside).hasSizeGreaterThan(1);
        assertThat(site.school.sheets().all(week().id())).extracting(s -> s.problems().get(0).seed()).doesNotHaveDuplicates().hasSize(24);
    }

    private Map<String, String> typed(int seat, Problem problem, List<String> shared, List<String> inside) {
        Map<String, String> right = AtWork.right(problem);
        if (problem.exercise().equals(HOLES) && seat == TOO_WIDE_BY_A_LITTLE) {
            return AtWork.but(problem, nearly(problem));
        }
        if (problem.exercise().equals(HOLES) && seat <= 6) {
            return made(seat, shared, AtWork.slip(problem, "shared-over-holes")).orElse(right);
        }
        if (problem.exercise().equals(TRAY) && seat >= 6 && seat <= 9) {
            return made(seat, inside, AtWork.slip(problem, "inside-arc")).orElse(right);
        }
        return right;
    }

    private static Optional<Map<String, String>> made(int seat, List<String> who, Optional<Map<String, String>> typed) {
        typed.ifPresent(t -> who.add(name(seat)));
        return typed;
    }

    /** Four hundredths wide of the right spacing: just outside of what is right, which is a thirty-second. */
    private static String nearly(Problem problem) {
        Variant v = AtWork.variant(problem);
        return String.format(Locale.ROOT, "%.3f in", v.right().number(v.model().asks().get(0).slot()) + 0.04);
    }

    private int holes() {
        return week().tasks().stream().filter(t -> t.exercises().contains(HOLES)).findFirst().orElseThrow().place();
    }

    private void onTuesdayAt7TheMorningPageSaysWhoAndWhat() throws Exception {
        later(Duration.ofDays(4));
        assertThat(site.now()).hasToString("2027-03-23T07:00:00Z");
        atTheWeek().follow("Morning");
        assertThat(hand.text()).contains("24 on the roll", "13 handed in", "1 still open: " + name(STILL_OPEN),
                "10 not begun: " + IntStream.rangeClosed(STILL_OPEN + 1, 24).mapToObj(InstructorsWeekTest::name).collect(Collectors.joining(", ")));
        assertThat(hand.text()).containsSubsequence("1 Spaces counted like holes", "Names: " + String.join(", ", sharedOverHoles), "2 Wrong layer of the metal",
                "Names: " + String.join(", ", insideRadius));
    }

    private void theDrillGoesToJustTheseInOneAction() throws Exception {
        hand.press("Give the drill to these " + sharedOverHoles.size() + " students: Spaces counted like holes");
        assertThat(hand.text()).contains("These students have the drill.");
        for (int seat : List.of(1, 13)) {
            students.get(seat).comes(theirs -> assertThat(theirs.text().contains("Drill: Spaces counted like holes")).isEqualTo(sharedOverHoles.contains(name(seat))));
        }
    }

    private void theAbsentOneGetsAMakeUp() throws Exception {
        AtWork absent = students.get(ABSENT);
        atTheWeek().tick("up-" + absent.person().id()).press("Give the make-up");
        assertThat(hand.heading()).isEqualTo("Make-up: " + WEEK);
        assertThat(hand.text()).contains("Only for these: " + name(ABSENT), "Makes up for " + WEEK);
        absent.does("Make-up: " + WEEK, problem -> Optional.of(AtWork.right(problem)));
        hand.follow("Marks");
        assertThat(hand.row(name(ABSENT))).endsWith("12/12");
    }

    private void aMarkIsOverruledWithAReason() throws Exception {
        int seat = insideRadius.get(0).charAt("Student ".length()) - 'A' + 1;
        Problem tray = problem(seat, TRAY);
        double before = points(atTheWeek().follow("Marks").row(name(seat)));
        hand.follow(name(seat)).open("/attempts/" + site.school.attempts().of(tray.id()).get(0).id() + "/marks/1");
        assertThat(hand.text()).contains("The first mark stays as it is.", "Hose tray with a lip", "a known mistake fits");
        hand.choose("choice", "right").type("reason", "Your chart gives the inside arc; it was allowed.").press("Say it");
        assertThat(hand.text()).contains("Overruled", "W. Kestrel", "This counts now.", "Your chart gives the inside arc; it was allowed.");
        assertThat(points(atTheWeek().follow("Marks").row(name(seat)))).isEqualTo(before + tray.points() / 4, within(0.01));
        students.get(seat).comes(theirs -> assertThat(theirs.open("/sheets/" + tray.sheet() + "/" + tray.place() + "/tries/" + site.school.attempts().of(tray.id()).get(0).id()).text())
                .contains("Changed since", "a Now right: 0.5 of 0.5 points.", "Your chart gives the inside arc; it was allowed."));
    }

    private Problem problem(int seat, String exercise) {
        return site.school.sheets().of(week().id(), students.get(seat).person().id()).orElseThrow().problems().stream().filter(p -> p.exercise().equals(exercise)).findFirst().orElseThrow();
    }

    /** What stands before the stroke at the end of a row. */
    private static double points(String row) {
        return Double.parseDouble(row.replaceAll(".* ([0-9.]+)/12.*", "$1"));
    }

    private void oneIsExcused() throws Exception {
        atTheWeek().follow("Marks").follow(name(EXCUSED)).press("Excuse from this assignment");
        assertThat(hand.text()).contains("Excused from this assignment.");
        students.get(EXCUSED).comes(theirs -> assertThat(theirs.row(WEEK)).endsWith("Excused"));
    }

    /** The room finds a limit too sharp; it is widened in the file of the exercise. */
    private void theBankIsMendedAndTheMarksFollow() throws Exception {
        String name = name(TOO_WIDE_BY_A_LITTLE);
        assertThat(atTheWeek().follow("Marks").row(name)).contains("right method, just outside").endsWith("10/12");
        bank.mend("spacing/bolt-holes.yaml", "to: 1/16 in, within: 1/32 in", "to: 1/16 in, within: 1/16 in");
        atTheClass().follow("Marks").follow("Mark again");
        assertThat(hand.text()).contains(WEEK + ": Bolt holes along an angle, tries: 15").doesNotContain("To be looked at by you");
        assertThat(hand.row(name)).contains("right method, just outside Points: 0", "right Points: 2");
        hand.press("Add the new marks");
        assertThat(hand.text()).contains("New marks added: ", "No mark would change.");
        assertThat(atTheWeek().follow("Marks").row(name)).contains("right, changed later").endsWith("12/12");
        Problem holes = problem(TOO_WIDE_BY_A_LITTLE, HOLES);
        students.get(TOO_WIDE_BY_A_LITTLE).comes(theirs -> {
            theirs.follow("Everything I handed in");
            assertThat(theirs.open("/sheets/" + holes.sheet() + "/" + holes.place() + "/tries/" + site.school.attempts().of(holes.id()).get(0).id()).text())
                    .contains("Changed since", "Now right: 2 of 2 points.", "Marked again after the task was mended");
        });
    }

    private void marksGoOutAsATable() throws Exception {
        atTheClass().follow("Marks");
        List<String> lines = hand.take("Plain table (CSV)").getWebResponse().getContentAsString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines.get(0)).contains("Seat,Name,Login").contains(WEEK);
        assertThat(lines).filteredOn(l -> l.contains(",Points possible,")).hasSize(1).first().asString().contains(",12");
        assertThat(lines).hasSize(3 + students.size());
        assertThat(line(lines, 13)).startsWith("13," + name(13) + "," + students.get(13).login() + ",").contains(",12,");
        assertThat(line(lines, EXCUSED)).contains(",excused,");
        assertThat(line(lines, ABSENT)).contains(",not begun,").contains(",12,");
    }

    private static String line(List<String> lines, int seat) {
        return lines.stream().filter(l -> l.startsWith(seat + ",")).findFirst().orElseThrow();
    }

    /** One more comes with the files of the school's own system, which so knows the student. */
    private void marksGoOutForTheSchoolsOwnBook() throws Exception {
        atTheClass().follow("Add students").attach("users", file("users", "sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,"
                        + "email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns\n"
                        + "stu-25,,,true,yara.m,,Yara,Maple,,,,,,,,,,,,,s,\n"))
                .attach("enrollments", file("enrollments", "sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate\n"
                        + "e1,,,c1,s,stu-25,student,false,,\n"))
                .attach("classes", file("classes", "sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,"
                        + "subjects,subjectCodes,periods\nc1,,,Sheet metal 1,,k,,scheduled,,s,t,,,\n")).press("Look at the list").press("Make these 1 accounts");
        AtWork yara = new AtWork(site, AtWork.cut(hand.page()).get(0));
        yara.does(WEEK, problem -> Optional.of(problem.exercise().equals(HOLES) ? AtWork.but(problem, "1 in") : AtWork.right(problem)));
        atTheClass().follow("Marks").follow("OneRoster 1.2 results (CSV)");
        assertThat(hand.text()).contains("Students whose marks do not go: 24").doesNotContain("Yara");
        hand.type("school", "school-1").type("class", "c1").type("session", "t");
        Map<String, String> files = unzip(hand.take("OneRoster 1.2 results (CSV)"));
        assertThat(files).containsOnlyKeys("manifest.csv", "categories.csv", "lineItems.csv", "results.csv");
        assertThat(files.get("lineItems.csv")).contains(WEEK, "12");
        assertThat(files.get("results.csv").lines().filter(l -> l.contains("stu-25") && l.contains("fully graded"))).hasSize(1).first().asString().contains(",10,");
    }

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name + ".csv"), text);
    }

    private static Map<String, String> unzip(Page download) throws Exception {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(download.getWebResponse().getContentAsStream())) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                files.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private void aCompetencyIsSignedOnEvidenceAndWithdrawn() throws Exception {
        String who = TWO_DAYS_RIGHT + " " + name(TWO_DAYS_RIGHT);
        atTheClass().follow("Competencies").follow("Change the list").type("code", "S1").type("title", "Lays out equal spaces").tick("skill-equal-spacing").press("Add this code");
        atTheClass().follow("Competencies");
        assertThat(hand.row(who)).endsWith("Evidence complete");
        assertThat(hand.row("13 " + name(13))).endsWith("No evidence yet");
        hand.follow(who);
        assertThat(hand.text()).contains("2027-03-18 Bolt holes along an angle", "2027-03-19 Bolt holes along an angle");
        hand.follow("Sign S1").type("conditions", "Alone, book closed, own tape.").press("Sign");
        assertThat(hand.text()).contains("Signed by W. Kestrel", "Conditions: Alone, book closed, own tape.");
        hand.follow("Withdraw the signature for S1").type("conditions", "Was signed on the wrong line.").press("Withdraw");
        assertThat(hand.text()).contains("Signed by W. Kestrel", "Withdrawn by W. Kestrel", "Reason: Was signed on the wrong line.");
        students.get(TWO_DAYS_RIGHT).comes(theirs -> assertThat(theirs.follow("My record").text()).contains("S1 Lays out equal spaces", "Withdrawn by W. Kestrel"));
    }

    private void theAuditTellsAllOfIt() throws Exception {
        atTheClass().follow("Changes and exports");
        assertThat(hand.text()).contains("Class made", "Assignment given out", "Drill given", "Make-up given", "Mark overruled", "Excused from an assignment",
                "Marked again after a mended exercise", "Competency signed", "Signature withdrawn");
        hand.follow("Records that went out");
        assertThat(hand.text()).contains("Marks taken out as a table", "Marks taken out as OneRoster files").doesNotContain("Class made");
    }

    private void nextTermBeginsWithACopyAndThisOneIsPutAway() throws Exception {
        String old = "/classes/" + in().id();
        hand.open(old).follow("Settings").type("copy-name", "Sheet metal 1, period 2").type("copy-term", "Fall").press("Make the copy");
        assertThat(hand.text()).contains("Nobody sits in this class yet.", WEEK, "draft").doesNotContain(name(1));
        hand.open(old).follow("Settings").press("Put this class away");
        assertThat(hand.heading()).isEqualTo("Classes");
        assertThat(hand.page().getAnchors().stream().filter(a -> a.getHrefAttribute().equals(old))).hasSize(1);
        students.get(1).comes(theirs -> assertThat(theirs.text()).contains("This class is put away."));
        assertThat(hand.open(old + "/marks").row(name(13))).contains("100 %");
    }
}
