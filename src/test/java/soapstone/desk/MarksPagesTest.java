package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.htmlunit.HttpMethod;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.WebRequest;
import org.htmlunit.html.DomNode;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.web.PlainHttp;
import soapstone.web.SchoolUnderTest;

/** The instructor's pages about marks, as a browser without scripts sees them. */
class MarksPagesTest {

    private WorkingClass room;
    private WebClient browser;

    @BeforeEach
    void start() throws Exception {
        room = new WorkingClass(14);
        browser = room.site.browser(room.instructor);
    }

    @AfterEach
    void stop() {
        browser.close();
        room.close();
    }

    private HtmlPage open(String path) throws Exception {
        HtmlPage page = room.site.open(browser, path);
        assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
        return page;
    }

    private static String text(Page page) {
        return RealSite.text((HtmlPage) page);
    }

    private static HtmlForm form(HtmlPage page, String action) {
        return page.getForms().stream().filter(f -> f.getActionAttribute().equals(action)).findFirst().orElseThrow();
    }

    private static HtmlPage press(HtmlForm form) throws Exception {
        return (HtmlPage) form.getElementsByTagName("button").get(0).click();
    }

    private String row(HtmlPage page, int seat) {
        return RealSite.text(page.<DomNode>getFirstByXPath("//tr[td[1] = '" + seat + "']")).strip();
    }

    private String student(int seat) {
        return "/classes/" + room.in.id() + "/students/" + room.person(seat);
    }

    private Attempt first(Assignment assignment, int seat) {
        return room.site.school.attempts().of(room.problem(assignment, seat, 1).id()).get(0);
    }

    private List<Audit.Entry> audit(String act) {
        return room.site.school.audit().aboutClass(room.in.id()).stream().filter(e -> e.act().equals(act)).toList();
    }

    @Test
    void theGridHasAColumnForEachAskAndWordsForEachSign() throws Exception {
        Assignment a = room.morning();
        HtmlPage page = open("/assignments/" + a.id() + "/marks");
        assertThat(RealSite.text(page.<DomNode>getFirstByXPath("//thead/tr"))).isEqualTo("Seat Name 1 2a 2b 2c Points Notes");
        assertThat(row(page, 1)).isEqualTo("1 Student 1 a known mistake fits right right right 2/4");
        assertThat(row(page, 7)).contains("right a known mistake fits right with the own earlier answer");
        assertThat(row(page, 10)).contains("not right, no known mistake fits");
        assertThat(row(page, 11)).contains("nothing handed in").endsWith("2/4 open");
        assertThat(row(page, 14)).endsWith("0/4 not begun");
        assertThat(page.getAnchorByText("Student 1").getHrefAttribute()).isEqualTo(student(1) + "?assignment=" + a.id());
    }

    @Test
    void whoLeftTheClassStaysWithWhatWasHandedIn() throws Exception {
        Assignment a = room.morning();
        for (int seat : List.of(2, 14)) {
            room.site.school.classes().seat(room.in.id(), room.person(seat), "", Member.State.LEFT, 0, room.site.now());
        }
        String page = text(open("/assignments/" + a.id() + "/marks"));
        assertThat(page).contains("Student 2").contains("left the class").doesNotContain("Student 14");
        assertThat(text(open("/assignments/" + a.id() + "/morning"))).contains("12 on the roll").doesNotContain("Student 2,");
    }

    @Test
    void onlyWhoTeachesTheClassSeesAnyOfIt() throws Exception {
        Assignment a = room.morning();
        List<String> pages = new ArrayList<>();
        List.of("marks", "mistakes", "morning", "live", "live/now").forEach(p -> pages.add("/assignments/" + a.id() + "/" + p));
        List.of("marks", "mistakes", "regrade", "marks/one-roster").forEach(p -> pages.add("/classes/" + room.in.id() + "/" + p));
        pages.add(student(1));
        pages.add("/attempts/" + first(a, 1).id() + "/marks/1");
        List<String> forms = List.of("/assignments/" + a.id() + "/drill", "/classes/" + room.in.id() + "/marks/plain", "/classes/" + room.in.id() + "/marks/one-roster",
                "/classes/" + room.in.id() + "/regrade", student(1) + "/excuse", "/attempts/" + first(a, 1).id() + "/marks/1");
        for (Person other : List.of(room.site.add(Person.Kind.INSTRUCTOR, "Jory S.", "jory"), room.students.get(0).person(),
                room.site.add(Person.Kind.KEEPER, "Keeper", "keeper"))) {
            try (WebClient theirs = room.site.browser(other)) {
                HtmlPage any = room.site.open(theirs, "/units");
                String key = any.<HtmlInput>getFirstByXPath("//input[@name='form-key']").getValue();
                for (String path : pages) {
                    assertThat(room.site.open(theirs, path).getWebResponse().getStatusCode()).as(other.kind() + " " + path).isEqualTo(404);
                }
                for (String path : forms) {
                    WebRequest request = new WebRequest(URI.create(room.site.address(path)).toURL(), HttpMethod.POST);
                    request.setRequestBody("form-key=" + key + "&family=fence-post&choice=right&reason=x&excused=yes&assignment=" + a.id());
                    assertThat(theirs.getPage(request).getWebResponse().getStatusCode()).as(other.kind() + " " + path).isEqualTo(404);
                }
            }
        }
        assertThat(room.site.school.attempts().remarksOfAssignment(a.id())).isEmpty();
        assertThat(room.site.school.assignments().of(room.in.id())).hasSize(1);
    }

    @Test
    void whatIsNotThereIsNotFound() throws Exception {
        Assignment a = room.morning();
        for (String path : List.of("/assignments/999/marks", "/assignments/x/marks", "/classes/999/marks", "/classes/" + room.in.id() + "/students/999",
                student(1) + "?assignment=999", "/attempts/999/marks/1", "/attempts/" + first(a, 1).id() + "/marks/9", "/classes/" + room.in.id() + "/mistakes?skill=none")) {
            assertThat(room.site.open(browser, path).getWebResponse().getStatusCode()).as(path).isEqualTo(404);
        }
    }

    @Test
    void aStudentsPageTellsEachTryAsTypedAsReadAndWhy() throws Exception {
        Assignment a = room.give("Holes", WorkingClass.HOLES);
        room.typed(room.problem(a, 3, 1), " 47\" ");
        room.slip(room.problem(a, 3, 1), "shared-over-holes");
        String page = text(open(student(3)));
        assertThat(page).contains("Seat 3.", "Try 1", "47\"", "read as 47 in", "not right, no known mistake fits", "Try 2", "This answer fits sharing the span out over");
        assertThat(text(open(student(4)))).contains("nothing handed in");
    }

    @Test
    void anotherWordIsAddedOnceAndTheFirstMarkStays() throws Exception {
        Assignment a = room.morning();
        Attempt attempt = first(a, 1);
        String path = "/attempts/" + attempt.id() + "/marks/1";

        HtmlForm empty = form(open(path), path);
        empty.getInputByName("points").setValue("3");
        HtmlPage again = press(empty);
        assertThat(again.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(text(again)).contains("Say what the answer counts as.", "Points are a number from 0 to 2", "Write the reason");
        assertThat(form(again, path).getInputByName("points").getValue()).isEqualTo("3");
        assertThat(again.getElementById("reason").getAttribute("aria-describedby")).contains("reason-trouble");
        assertThat(again.getElementById("reason-trouble")).isNotNull();

        for (int twice = 0; twice < 2; twice++) {
            HtmlForm form = form(open(path), path);
            form.getRadioButtonsByName("choice").stream().filter(r -> r.getValueAttribute().equals("near")).findFirst().orElseThrow().setChecked(true);
            form.getInputByName("points").setValue("1,5");
            form.getTextAreaByName("reason").setText("The sketch was right; only the count slipped.");
            HtmlPage page = press(form);
            assertThat(page.getUrl().getPath()).isEqualTo(student(1));
            assertThat(text(page)).contains("a known mistake fits Points: 0/2", "Overruled", "Odile F.", "right method, just outside Points: 1.5/2", "This counts now.",
                    "The sketch was right; only the count slipped.");
        }
        assertThat(room.site.school.attempts().remarks(attempt.id())).hasSize(1).first().satisfies(r -> {
            assertThat(r.cause()).isEqualTo(Remark.Cause.OVERRULED);
            assertThat(r.verdict()).isEqualTo(Verdict.NEAR);
            assertThat(r.points()).isEqualTo(1.5);
            assertThat(r.by()).contains(room.instructor.id());
        });
        assertThat(room.site.school.attempts().find(attempt.id())).contains(attempt);
        assertThat(audit("mark.overruled")).hasSize(1).first().satisfies(e -> assertThat(e.aboutPerson()).contains(room.person(1)));
        assertThat(row(open("/assignments/" + a.id() + "/marks"), 1)).isEqualTo("1 Student 1 c right method, just outside, changed later right right right 3.5/4");
    }

    @Test
    void anExcusedAnswerAndAnExcusedAssignmentAreLeftOut() throws Exception {
        Assignment a = room.morning();
        String path = "/attempts/" + first(a, 1).id() + "/marks/1";
        HtmlForm form = form(open(path), path);
        form.getRadioButtonsByName("choice").get(5).setChecked(true);
        form.getTextAreaByName("reason").setText("The drawing was torn.");
        press(form);
        assertThat(row(open("/assignments/" + a.id() + "/marks"), 1)).contains("excused, changed later").endsWith("2/2");
        assertThat(press(form(open(student(2)), student(2) + "/excuse")).asNormalizedText()).contains("Excused from this assignment.");
        assertThat(row(open("/assignments/" + a.id() + "/marks"), 2)).contains("excused");
        assertThat(audit("assignment.excused")).hasSize(1);
        press(form(open(student(2)), student(2) + "/excuse"));
        assertThat(row(open("/assignments/" + a.id() + "/marks"), 2)).endsWith("2/4");
        assertThat(audit("assignment.not-excused")).hasSize(1);
    }

    @Test
    void theGradebookAveragesWhatWasDueAndSaysHow() throws Exception {
        Assignment a = room.morning();
        room.site.school.assignments().add(new Assignment(0, room.in.id(), "Not given yet", Assignment.State.DRAFT, room.site.now(), Optional.empty(), Assignment.Late.TAKEN, 1,
                Assignment.Shows.NOTHING, true, room.instructor.id(), room.site.now(), Optional.empty(), a.tasks()), List.of());
        String path = "/classes/" + room.in.id() + "/marks";
        assertThat(text(open(path))).contains("Nothing that counts was due yet").doesNotContain("Not given yet");
        room.site.school.assignments().give(a.id(), new Assignments.GivenTo(room.person(14), Optional.empty(), true, false));
        room.site.wait(Duration.ofHours(20));
        browser = room.site.browser(room.instructor);
        room.site.wait(Duration.ofHours(5));
        browser = room.site.browser(room.instructor);
        HtmlPage page = open(path);
        assertThat(row(page, 1)).isEqualTo("1 Student 1 50 % 2");
        assertThat(row(page, 7)).isEqualTo("7 Student 7 87.5 % 3.5");
        assertThat(row(page, 13)).isEqualTo("13 Student 13 0 % not begun");
        assertThat(row(page, 14)).isEqualTo("14 Student 14 none yet excused");
        assertThat(text(page)).contains("counted: 13", "Excused, and so not counted: 1.", "Due and not handed in, counted as 0 points: 2.");
        assertThat(text(open(student(13)))).contains("Average: 0 %", "Due and not handed in, counted as 0 points: 1.");
    }

    @Test
    void marksLeaveAsAPlainTableAndItIsNoted() throws Exception {
        room.morning();
        HtmlPage page = open("/classes/" + room.in.id() + "/marks");
        Page file = form(page, "/classes/" + room.in.id() + "/marks/plain").getElementsByTagName("button").get(0).click();
        assertThat(file.getWebResponse().getContentType()).isEqualTo("text/csv");
        assertThat(file.getWebResponse().getResponseHeaderValue("Content-Disposition")).isEqualTo("attachment; filename=\"marks-class-" + room.in.id() + ".csv\"");
        assertThat(file.getWebResponse().getContentAsString(StandardCharsets.UTF_8)).contains("7,Student 7,seat7,3.5");
        assertThat(audit("marks.plain")).allMatch(Audit.Entry::leftSchool).hasSize(1 + room.students.size());
        assertThat(room.site.school.audit().about(room.person(1))).extracting(Audit.Entry::act).containsExactly("marks.plain");
    }

    @Test
    void marksLeaveAsOneRosterFilesOfThoseWhoAreKnownThere() throws Exception {
        room.morning();
        room.site.school.classes().setSourcedIds(room.in.id(), Map.of(room.person(7), "stu-7"));
        String path = "/classes/" + room.in.id() + "/marks/one-roster";
        HtmlPage page = open(path);
        assertThat(text(page)).contains("Students whose marks do not go: 13").doesNotContain("Student 7 ");
        HtmlForm form = form(page, path);
        form.getInputByName("school").setValue("school 1");
        form.getInputByName("class").setValue("class-1");
        HtmlPage again = press(form);
        assertThat(again.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(form(again, path).getInputByName("class").getValue()).isEqualTo("class-1");
        assertThat(audit("marks.one-roster")).isEmpty();

        form = form(again, path);
        form.getInputByName("school").setValue("school-1");
        form.getInputByName("session").setValue("spring");
        Page file = form.getElementsByTagName("button").get(0).click();
        List<String> names = new ArrayList<>();
        String results = "";
        try (InputStream in = file.getWebResponse().getContentAsStream(); ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                names.add(e.getName());
                results = e.getName().equals("results.csv") ? new String(zip.readAllBytes(), StandardCharsets.UTF_8) : results;
            }
        }
        assertThat(names).containsExactlyInAnyOrder("manifest.csv", "categories.csv", "lineItems.csv", "results.csv");
        assertThat(results.lines()).hasSize(2).last().asString().contains("stu-7", "fully graded", "3.5");
        assertThat(audit("marks.one-roster")).isNotEmpty().allMatch(Audit.Entry::leftSchool);
    }

    @Test
    void mistakesComeWithNamesAnswersAndOddsAndWhatNothingExplains() throws Exception {
        Assignment a = room.morning();
        String page = text(open("/assignments/" + a.id() + "/mistakes"));
        assertThat(page).contains("The answers of 6 of 11 students fit this.", "If all wrong answers were random", "Lesson: Holes and spaces", "shared over holes",
                "Answers that nothing explains: 1", "Student 10: Bolt holes along an angle a 47 in").doesNotContain("always");
        HtmlPage term = open("/classes/" + room.in.id() + "/mistakes");
        assertThat(text(term)).contains("Spaces counted like holes", "Wrong layer of the metal");
        HtmlForm form = form(term, "/classes/" + room.in.id() + "/mistakes");
        form.getSelectByName("skill").setSelectedAttribute("equal-spacing", true);
        assertThat(text(press(form))).contains("Spaces counted like holes").doesNotContain("Wrong layer of the metal");
        assertThat(term.<DomNode>getByXPath("//details//li[contains(., 'Student 1')]//kbd")).isNotEmpty();
    }

    @Test
    void theMorningPageNamesWhoAndWhatAndPutsItOnTheBoard() throws Exception {
        Assignment a = room.morning();
        String page = text(open("/assignments/" + a.id() + "/morning"));
        assertThat(page).contains("14 on the roll", "10 handed in", "1 still open: Student 11", "Student 13, Student 14");
        assertThat(page).contains("1 Spaces counted like holes", "Names: Student 1, Student 2, Student 3", "spaces = holes \u2212 1", "Their answers fit spaces = holes =",
                "6 not tried with other numbers yet", "2 Wrong layer of the metal");
        assertThat(page.indexOf("Their answers fit")).isNotEqualTo(page.lastIndexOf("Their answers fit"));
        assertThat(text(open("/assignments/" + room.give("Nothing yet", WorkingClass.HOLES).id() + "/morning"))).contains("No wrong answer fits a known mistake yet.");
    }

    @Test
    void nobodyWithExtraTimeIsMissingBeforeTheirOwnTimeIsOver() throws Exception {
        room.give("Holes", WorkingClass.HOLES);
        for (int seat = 1; seat <= 2; seat++) {
            room.site.school.classes().seat(room.in.id(), room.person(seat), String.valueOf(seat), Member.State.IN, seat == 1 ? 100 : 0, room.site.now());
        }
        room.site.wait(Duration.ofHours(36));
        PlainHttp odile = new PlainHttp(room.site).signIn("odile", SchoolUnderTest.PASSWORD);
        String student = "/classes/" + room.in.id() + "/students/";
        assertThat(odile.get(student + room.person(1)).body()).as("due 48 hours after it was given").contains("so not counted: 1.").doesNotContain("Due and not handed in");
        assertThat(odile.get(student + room.person(2)).body()).as("due after 24").contains("Due and not handed in, counted as 0 points: 1.");
        room.site.wait(Duration.ofHours(13));
        odile.signIn("odile", SchoolUnderTest.PASSWORD);
        assertThat(odile.get(student + room.person(1)).body()).as("and that is over as well").contains("Due and not handed in, counted as 0 points: 1.");
    }

    @Test
    void aDrillThatTwoAskForAtTheSameMomentIsGivenOnce() throws Exception {
        Assignment a = room.morning();
        Person rook = room.site.add(Person.Kind.INSTRUCTOR, "Rook T.", "rook");
        room.site.school.classes().addInstructor(room.in.id(), rook.id());
        List<PlainHttp> instructors = List.of(new PlainHttp(room.site).signIn("odile", SchoolUnderTest.PASSWORD), new PlainHttp(room.site).signIn("rook", SchoolUnderTest.PASSWORD));
        HtmlForm form = form(open("/assignments/" + a.id() + "/morning"), "/assignments/" + a.id() + "/drill");
        String family = form.getInputByName("family").getValue();
        ExecutorService hands = Executors.newFixedThreadPool(6);
        try {
            List<Future<Integer>> answers = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                PlainHttp who = instructors.get(i % 2);
                answers.add(hands.submit(() -> who.post("/assignments/" + a.id() + "/drill", "family", family).statusCode()));
            }
            for (Future<Integer> answer : answers) {
                assertThat(answer.get()).isEqualTo(302);
            }
        } finally {
            hands.shutdownNow();
        }
        assertThat(room.site.school.assignments().of(room.in.id()).stream().filter(x -> x.after().equals(Optional.of(a.id())))).hasSize(1);
        assertThat(audit("assignment.drill")).hasSize(1);
    }

    @Test
    void aDrillIsGivenOnceToThoseWhoMadeTheMistakeAndShowsHowItWent() throws Exception {
        Assignment a = room.morning();
        String path = "/assignments/" + a.id() + "/drill";
        HtmlPage stale = open("/assignments/" + a.id() + "/morning");
        press(form(stale, path));
        HtmlPage page = press(form(stale, path));
        assertThat(text(page)).contains("These students have the drill.");
        List<Assignment> drills = room.site.school.assignments().of(room.in.id()).stream().filter(x -> x.after().equals(Optional.of(a.id()))).toList();
        assertThat(drills).hasSize(1);
        Assignment drill = drills.get(0);
        assertThat(drill.title()).isEqualTo("Drill: Spaces counted like holes");
        assertThat(drill.state()).isEqualTo(Assignment.State.GIVEN);
        assertThat(drill.tasks()).hasSize(2).first().satisfies(t -> assertThat(t.exercises()).containsExactly(WorkingClass.HOLES));
        assertThat(room.site.school.assignments().givenTo(drill.id())).hasSize(6).allMatch(Assignments.GivenTo::onlyThese).extracting(Assignments.GivenTo::person)
                .containsExactlyInAnyOrder(room.person(1), room.person(2), room.person(3), room.person(4), room.person(5), room.person(6));
        assertThat(text(open("/assignments/" + drill.id() + "/marks"))).contains("Student 6").doesNotContain("Student 7");
        assertThat(audit("assignment.drill")).hasSize(1);

        room.site.wait(Duration.ofMinutes(5));
        room.deal(drill);
        room.right(room.problem(drill, 1, 1));
        room.slip(room.problem(drill, 2, 1), "shared-over-holes");
        assertThat(text(open("/assignments/" + a.id() + "/morning"))).contains("1 did it again with other numbers: Student 2", "1 right with other numbers: Student 1",
                "4 not tried with other numbers yet");
    }

    @Test
    void afterAMendTheChangesAreToldFirstAndThenAdded() throws Exception {
        Assignment a = room.give("Holes", WorkingClass.HOLES);
        Problem problem = room.problem(a, 1, 1);
        Attempt attempt = room.slip(problem, "one-space-too-many");
        room.right(room.problem(a, 2, 1));
        String path = "/classes/" + room.in.id() + "/regrade";
        assertThat(text(open(path))).contains("Every try was marked with the exercises as they are now.");

        room.mend("spacing/bolt-holes.yaml", "name: one-space-too-many\n    family: ends-of-the-row\n    swap: spaces = holes + 1",
                "name: two-spaces-too-many\n    family: ends-of-the-row\n    swap: spaces = holes + 2");
        HtmlPage page = open(path);
        assertThat(text(page)).contains("Bolt holes along an angle, tries: 2", "Marks that would change: 1", "Student 1 Holes Bolt holes along an angle a, Try 1");
        assertThat(room.site.school.attempts().remarks(attempt.id())).isEmpty();

        HtmlPage done = press(form(page, path));
        assertThat(text(done)).contains("New marks added: 1.", "No mark would change.");
        assertThat(room.site.school.attempts().find(attempt.id())).contains(attempt);
        assertThat(room.site.school.attempts().remarks(attempt.id())).extracting(Remark::cause, Remark::verdict)
                .containsExactly(tuple(Remark.Cause.REGRADED, Verdict.UNEXPLAINED));
        assertThat(text(open(student(1)))).contains("Marked again after the task was mended");
        assertThat(audit("mark.regraded")).hasSize(1);
    }

    @Test
    void theLivePagesPartComesAlone() throws Exception {
        Assignment a = room.morning();
        HtmlPage part = open("/assignments/" + a.id() + "/live/now");
        assertThat(part.getBody().asNormalizedText()).startsWith("10 handed in, 1 still open, 3 not begun");
        assertThat(part.getWebResponse().getContentAsString()).doesNotContain("<html", "<script");
        assertThat(part.getWebResponse().getResponseHeaderValue("Cache-Control")).isEqualTo("no-store");
        HtmlPage page = open("/assignments/" + a.id() + "/live");
        assertThat(page.getAnchorByText("Look again now").getHrefAttribute()).isEqualTo("/assignments/" + a.id() + "/live");
        assertThat(page.getWebResponse().getContentAsString()).doesNotContain("http-equiv");
    }

    @Test
    void aClassThatIsPutAwayCanBeReadAndNothingInItChanges() throws Exception {
        Assignment a = room.morning();
        HtmlPage stale = open("/assignments/" + a.id() + "/morning");
        room.site.school.classes().setArchived(room.in.id(), Optional.of(room.site.now()));
        assertThat(open("/assignments/" + a.id() + "/morning").getForms()).noneMatch(f -> f.getActionAttribute().endsWith("/drill"));
        assertThat(text(open("/attempts/" + first(a, 1).id() + "/marks/1"))).contains("The class is put away");
        assertThat(press(form(stale, "/assignments/" + a.id() + "/drill")).getWebResponse().getStatusCode()).isEqualTo(404);
    }
}
