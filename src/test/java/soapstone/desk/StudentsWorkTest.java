package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static soapstone.desk.RealSchool.HOLES_TASK;
import static soapstone.desk.RealSchool.confirm;
import static soapstone.desk.RealSchool.fill;
import static soapstone.desk.RealSchool.form;
import static soapstone.desk.RealSchool.hasForm;
import static soapstone.desk.RealSchool.hidden;
import static soapstone.desk.RealSchool.path;
import static soapstone.desk.RealSchool.press;
import static soapstone.desk.RealSchool.right;
import static soapstone.desk.RealSchool.slip;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.school.Assignment;
import soapstone.school.Assignment.Late;
import soapstone.school.Assignment.Shows;
import soapstone.school.Assignment.Task;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Attempt;
import soapstone.school.Member;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.Sheet;
import soapstone.web.SchoolUnderTest;

/** A student's pages, over the real server, the real bank and a real database, without scripts. */
class StudentsWorkTest {

    private static SchoolUnderTest site;
    private RealSchool s;
    private WebClient ada;

    @BeforeAll
    static void open() throws Exception {
        site = RealSchool.open();
    }

    @AfterAll
    static void close() {
        site.close();
    }

    @BeforeEach
    void start() throws Exception {
        s = new RealSchool(site);
        ada = s.site.browser(s.ada.person());
    }

    private static String text(HtmlPage page) {
        return RealSite.text(page);
    }

    private static String html(HtmlPage page) {
        return page.getWebResponse().getContentAsString(StandardCharsets.UTF_8);
    }

    private static int status(HtmlPage page) {
        return page.getWebResponse().getStatusCode();
    }

    private Sheet begun(Assignment assignment) throws Exception {
        s.begin(ada, assignment);
        return s.sheet(assignment, s.ada);
    }

    private List<Attempt> attempts(Sheet sheet) {
        return s.school.attempts().ofSheet(sheet.id());
    }

    private Optional<Instant> in(Duration time) {
        return Optional.of(s.site.now().plus(time));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theWholeWayInBothUnitSystems(UnitSystem units) throws Exception {
        s.settings(RealSchool.units(units));
        Assignment week = s.give(Shows.LINES, Late.HALF, 2, in(Duration.ofDays(2)), HOLES_TASK, new Task(0, 2, List.of("tanks/full-weight", "bends/hose-tray"), 1, 3));
        HtmlPage list = s.site.open(ada, "/work");
        assertThat(text(list)).contains(s.in.name(), "Week 9", "Due in 2 days", "Not opened yet");

        HtmlPage opening = list.getAnchorByText("Week 9").click();
        assertThat(text(opening)).contains("2 tries at each problem", "earns half of its points");
        HtmlPage sheetPage = form(opening, "/sheets/open/" + week.id()).getElementsByTagName("button").get(0).click();
        Sheet sheet = s.sheet(week, s.ada);
        assertThat(text(sheetPage)).contains(sheet.number(), "Bolt holes", "Not handed in", "Chart B hangs by the brake.");

        Problem first = sheet.problems().get(0);
        assertThat(first.units()).isEqualTo(units);
        HtmlPage problem = s.site.open(ada, path(sheet, 1));
        assertThat(text(problem)).contains(sheet.number(), s.in.name(), "1 of 2", "2 tries left");
        HtmlPage review = press(fill(problem, path(sheet, 1), slip(first)), "review");
        assertThat(text(review)).contains("Reads as", "Nothing is marked yet");
        HtmlPage marked = confirm(review, sheet, 1);
        assertThat(text(marked)).contains("Receipt " + attempts(sheet).get(0).id(), "This answer", "0 of 4 points", "Worked line by line", "One try left");

        HtmlPage second = s.handIn(ada, sheet, 1, right(first));
        assertThat(text(second)).contains("Right.", "4 of 4 points", "No try left");
        s.handIn(ada, sheet, 2, right(sheet.problems().get(1)));
        assertThat(text(s.site.open(ada, "/work"))).contains("All handed in", "7 of 7 points");
        assertThat(text(s.site.open(ada, "/sheets/history"))).contains("Handed in", "Week 9", "4 of 4 points", "0 of 4 points", "3 of 3 points");

        Attempt kept = attempts(sheet).get(1);
        assertThat(kept.marks()).allSatisfy(m -> assertThat(m.verdict()).isEqualTo(Verdict.RIGHT));
        assertThat(kept.fingerprint()).isEqualTo(first.fingerprint());
        assertThat(kept.program()).isEqualTo(EngineDesk.VERSION);
        assertThat(s.school.sheets().whole(first.fingerprint())).isPresent();
    }

    /** Boxes of every kind: amounts, counts, lists, choices, fractions, points. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyExerciseCanBeHandedInAndItsKeyIsRight(UnitSystem units) throws Exception {
        s.settings(RealSchool.units(units));
        List<Task> tasks = new ArrayList<>();
        RealSite.library().bank().exercises().keySet().forEach(id -> tasks.add(new Task(0, tasks.size() + 1, List.of(id), 1, 1)));
        Sheet sheet = begun(s.give(Shows.VERDICT, Late.REFUSED, 1, in(Duration.ofDays(1)), tasks.toArray(new Task[0])));
        for (Problem problem : sheet.problems()) {
            HtmlPage page = s.handIn(ada, sheet, problem.place(), right(problem));
            assertThat(text(page)).as(problem.exercise() + " seed " + problem.seed()).contains("Handed in ", "1 of 1 points").doesNotContain("Not right");
        }
        assertThat(attempts(sheet)).hasSize(tasks.size());
    }

    @Test
    void theSameSheetComesBackOnEveryDeviceAndNeighboursHaveOthers() throws Exception {
        Assignment week = s.give(Shows.NOTHING);
        HtmlPage first = s.begin(ada, week);
        HtmlPage other = s.begin(s.site.browser(s.ada.person()), week);
        assertThat(other.getUrl()).isEqualTo(first.getUrl());
        HtmlPage bos = s.begin(s.site.browser(s.bo.person()), week);
        assertThat(bos.getUrl()).isNotEqualTo(first.getUrl());
        assertThat(s.sheet(week, s.bo).problems().get(0).seed()).isNotEqualTo(s.sheet(week, s.ada).problems().get(0).seed());
        assertThat(s.sheet(week, s.bo).number()).isNotEqualTo(s.sheet(week, s.ada).number()).matches("[2-9B-X]{3}-[2-9B-X]{4}");
    }

    @Test
    void aPoolComesOutEvenHoweverLateSomebodyComes() throws Exception {
        List<Member> late = new ArrayList<>();
        Assignment week = s.give(Shows.NOTHING, Late.TAKEN, 1, in(Duration.ofDays(1)), new Task(0, 1, List.of("spacing/bolt-holes", "tanks/full-weight"), 1, 1));
        begun(week);
        for (int i = 3; i <= 6; i++) {
            late.add(s.site.enrol(s.in, "Late " + i, s.ada.person().login() + "late" + i, String.valueOf(i)));
        }
        s.begin(s.site.browser(late.get(3).person()), week);
        List<Sheet> sheets = s.school.sheets().all(week.id());
        assertThat(sheets).hasSize(6);
        assertThat(sheets.stream().filter(x -> x.problems().get(0).exercise().equals("tanks/full-weight"))).hasSize(3);
    }

    @Test
    void aProblemsPageTellsNothingBeforeItMay() throws Exception {
        Assignment week = s.give(Shows.NOTHING);
        Sheet sheet = begun(week);
        Problem problem = sheet.problems().get(0);
        HtmlPage page = s.site.open(ada, path(sheet, 1));
        HtmlPage review = s.review(ada, sheet, 1, slip(problem));
        HtmlPage handed = confirm(review, sheet, 1);
        String right = right(problem).values().iterator().next();
        for (HtmlPage shown : List.of(page, review, handed, s.site.open(ada, "/sheets/" + sheet.id()), s.site.open(ada, "/sheets/history"))) {
            assertThat(RealSite.plain(html(shown))).doesNotContain(String.valueOf(problem.seed())).doesNotContain(problem.fingerprint()).doesNotContain(">" + right)
                    .doesNotContain("\"" + right + "\"").doesNotContain("shared-over").doesNotContain("fence").doesNotContain("points earned");
            assertThat(text(shown)).doesNotContain("Right.").doesNotContain("Not right").doesNotContain("of 4 points");
        }
        assertThat(text(handed)).contains("How it was marked is shown later", "reads as");
    }

    @Test
    void whatIsShownAfterATryIsWhatTheAssignmentAllows() throws Exception {
        Map<Shows, String> seen = new LinkedHashMap<>();
        for (Shows shows : Shows.values()) {
            Sheet sheet = begun(s.give(shows));
            seen.put(shows, text(s.handIn(ada, sheet, 1, slip(sheet.problems().get(0)))));
        }
        assertThat(seen.get(Shows.NOTHING)).doesNotContain("Not right").doesNotContain("points").doesNotContain("fits").doesNotContain("Worked");
        assertThat(seen.get(Shows.VERDICT)).contains("Not right", "0 of 4 points").doesNotContain("fits").doesNotContain("Worked").doesNotContain("Cut with");
        assertThat(seen.get(Shows.MISTAKE)).contains("Not right", "This answer").doesNotContain("Worked").doesNotContain("Cut with");
        assertThat(seen.get(Shows.LINES)).contains("Not right", "This answer", "Worked line by line");
    }

    @Test
    void everythingIsShownOnceTheSheetIsClosed() throws Exception {
        Sheet sheet = begun(s.give(Shows.NOTHING));
        HtmlPage page = s.handIn(ada, sheet, 1, slip(sheet.problems().get(0)));
        s.site.wait(Duration.ofDays(3));
        ada = s.site.browser(s.ada.person());
        assertThat(text(s.site.open(ada, page.getUrl().getPath()))).contains("Not right", "Worked line by line", "0 of 4 points");
    }

    @Test
    void whatIsTypedIsKeptAsTyped() throws Exception {
        Sheet sheet = begun(s.give(Shows.NOTHING));
        HtmlPage page = press(fill(s.site.open(ada, path(sheet, 1)), path(sheet, 1), Map.of("a", " 7 5/16'' ?")), "keep");
        assertThat(text(page)).contains("Kept ");
        assertThat(hidden(form(page, path(sheet, 1)))).containsEntry("box-a", " 7 5/16'' ?");
        HtmlPage elsewhere = s.site.open(s.site.browser(s.ada.person()), path(sheet, 1));
        assertThat(hidden(form(elsewhere, path(sheet, 1)))).containsEntry("box-a", " 7 5/16'' ?");
        assertThat(attempts(sheet)).isEmpty();
    }

    @Test
    void ofTwoTabsTheLaterOneIsToldOfTheNewerDraft() throws Exception {
        Sheet sheet = begun(s.give(Shows.NOTHING));
        HtmlPage one = s.site.open(ada, path(sheet, 1));
        HtmlPage other = s.site.open(ada, path(sheet, 1));
        press(fill(one, path(sheet, 1), Map.of("a", "5 in")), "keep");
        HtmlPage told = press(fill(other, path(sheet, 1), Map.of("a", "6 in")), "keep");
        assertThat(status(told)).isEqualTo(409);
        assertThat(text(told)).contains("Something newer is kept", "Kept: 5 in", "Here: 6 in", "Take what is kept");
        assertThat(s.school.sheets().draft(sheet.problems().get(0).id())).containsEntry("a", "5 in");
        HtmlPage mine = press(form(told, path(sheet, 1)), "keep");
        assertThat(hidden(form(mine, path(sheet, 1)))).containsEntry("box-a", "6 in");
        assertThat(s.school.sheets().draft(sheet.problems().get(0).id())).containsEntry("a", "6 in");
    }

    @Test
    void aSessionThatIsOverLeadsBackToThePageAndItsDraft() throws Exception {
        Sheet sheet = begun(s.give(Shows.NOTHING));
        HtmlPage page = press(fill(s.site.open(ada, path(sheet, 1)), path(sheet, 1), Map.of("a", "5 in")), "keep");
        s.site.wait(Duration.ofHours(1));
        HtmlPage signIn = press(form(page, path(sheet, 1)), "keep");
        assertThat(signIn.getUrl().getPath()).isEqualTo("/sign-in");
        HtmlForm form = form(signIn, "/sign-in");
        form.getInputByName("login").setValue(s.ada.person().login());
        form.getInputByName("password").setValue(SchoolUnderTest.PASSWORD);
        HtmlPage back = form.getElementsByTagName("button").get(0).click();
        assertThat(back.getUrl().getPath()).isEqualTo(path(sheet, 1));
        assertThat(hidden(form(back, path(sheet, 1)))).containsEntry("box-a", "5 in");
    }

    @Test
    void theReviewTellsWhatIsEmptyAndWhatMustBeWrittenAgain() throws Exception {
        Sheet sheet = begun(s.give(Shows.NOTHING));
        HtmlPage nothing = s.review(ada, sheet, 1, Map.of("a", "  "));
        assertThat(text(nothing)).contains("Nothing is typed yet");
        assertThat(hasForm(nothing, path(sheet, 1) + "/review")).isFalse();
        HtmlPage doubtful = s.review(ada, sheet, 1, Map.of("a", "31/2"));
        assertThat(text(doubtful)).contains("Please write it again", "31/2", "No try used");
        assertThat(hasForm(doubtful, path(sheet, 1) + "/review")).isFalse();
        assertThat(attempts(sheet)).isEmpty();
    }

    @Test
    void aClassMayAskForTheUnit() throws Exception {
        s.settings(RealSchool.settings(UnitSystem.US, '.', false));
        Sheet sheet = begun(s.give(Shows.NOTHING));
        assertThat(text(s.review(ada, sheet, 1, Map.of("a", "7")))).contains("has no unit");
        assertThat(text(s.review(ada, sheet, 1, Map.of("a", "7 in")))).contains("Reads as 7 in");
    }

    @Test
    void aCommaMayBeTheDecimalMark() throws Exception {
        s.settings(RealSchool.settings(UnitSystem.METRIC, ',', true));
        Sheet sheet = begun(s.give(Shows.NOTHING));
        assertThat(text(s.review(ada, sheet, 1, Map.of("a", "107,5 mm")))).contains("Reads as 107");
        assertThat(html(s.site.open(ada, path(sheet, 1)))).contains("data-reads=\"quantity:mm:metric:comma\"");
    }

    @Test
    void reloadAndASecondTabCountOnce() throws Exception {
        Sheet sheet = begun(s.give(Shows.VERDICT));
        HtmlPage review = s.review(ada, sheet, 1, right(sheet.problems().get(0)));
        HtmlPage first = confirm(review, sheet, 1);
        HtmlPage again = confirm(review, sheet, 1);
        assertThat(again.getUrl()).isEqualTo(first.getUrl());
        assertThat(attempts(sheet)).hasSize(1);
        s.site.wait(Duration.ofMinutes(1));
        assertThat(confirm(review, sheet, 1).getUrl()).isEqualTo(first.getUrl());
    }

    @Test
    void sixteenTimesTheSamePageAtOnceCountOnce() throws Exception {
        Sheet sheet = begun(s.give(Shows.VERDICT, Late.REFUSED, 16, in(Duration.ofDays(1)), HOLES_TASK));
        Map<String, String> form = hidden(form(s.review(ada, sheet, 1, right(sheet.problems().get(0))), path(sheet, 1) + "/review"));
        String cookie = ada.getCookieManager().getCookies().iterator().next().getValue();
        ExecutorService crowd = Executors.newFixedThreadPool(16);
        List<Future<String>> answers = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            answers.add(crowd.submit(() -> {
                WebClient browser = s.site.browser();
                browser.getCookieManager().addCookie(new org.htmlunit.util.Cookie("127.0.0.1", "soapstone", cookie));
                return s.send(browser, path(sheet, 1) + "/review", form).getUrl().getPath();
            }));
        }
        for (Future<String> answer : answers) {
            assertThat(answer.get()).isEqualTo(path(sheet, 1) + "/tries/" + attempts(sheet).get(0).id());
        }
        crowd.shutdown();
        assertThat(attempts(sheet)).hasSize(1);
    }

    @Test
    void noMoreTriesThanThereAre() throws Exception {
        Sheet sheet = begun(s.give(Shows.VERDICT));
        Map<String, String> right = right(sheet.problems().get(0));
        HtmlPage left = s.review(ada, sheet, 1, slip(sheet.problems().get(0)));
        s.handIn(ada, sheet, 1, right);
        s.handIn(ada, sheet, 1, right);
        HtmlPage refused = confirm(left, sheet, 1);
        assertThat(status(refused)).isEqualTo(409);
        assertThat(text(refused)).contains("All 2 tries at this problem are used");
        assertThat(attempts(sheet)).hasSize(2);
        assertThat(text(s.site.open(ada, path(sheet, 1)))).contains("All 2 tries");
    }

    @ParameterizedTest
    @ValueSource(strings = {"over", "taken", "archived", "left"})
    void whatIsNotTakenIsRefusedWithASentence(String why) throws Exception {
        Assignment week = s.give(Shows.VERDICT);
        Sheet sheet = begun(week);
        HtmlPage review = s.review(ada, sheet, 1, right(sheet.problems().get(0)));
        HtmlPage problem = s.site.open(ada, path(sheet, 1));
        String says = switch (why) {
            case "over" -> {
                s.school.assignments().setDue(week.id(), Optional.of(s.site.now().minusSeconds(1)));
                yield "Nothing is taken any more";
            }
            case "taken" -> {
                s.school.assignments().setState(week.id(), Assignment.State.TAKEN);
                yield "taken this back";
            }
            case "archived" -> {
                s.school.classes().setArchived(s.in.id(), Optional.of(s.site.now()));
                yield "This class is put away";
            }
            default -> {
                s.school.classes().seat(s.in.id(), s.ada.person().id(), "1", Member.State.LEFT, 0, s.site.now());
                yield "not in this class any more";
            }
        };
        for (HtmlPage refused : List.of(confirm(review, sheet, 1), press(form(problem, path(sheet, 1)), "keep"))) {
            assertThat(status(refused)).isEqualTo(409);
            assertThat(text(refused)).contains(says);
        }
        assertThat(attempts(sheet)).isEmpty();
        HtmlPage read = s.site.open(ada, path(sheet, 1));
        assertThat(status(read)).isEqualTo(200);
        assertThat(text(read)).contains(says);
        assertThat(hasForm(read, path(sheet, 1))).isFalse();
    }

    @Test
    void nothingOpensBeforeItsTime() throws Exception {
        Assignment week = s.give(Shows.VERDICT);
        Instant later = s.site.now().plus(Duration.ofDays(1));
        Assignment next = s.add(new Assignment(0, s.in.id(), "Week 10", Assignment.State.GIVEN, later, in(Duration.ofDays(5)), Late.TAKEN, 1, Shows.LINES, true,
                s.instructor.id(), s.site.now(), Optional.empty(), week.tasks()), List.of());
        HtmlPage list = s.site.open(ada, "/work");
        assertThat(text(list)).contains("Week 10", "This opens ");
        HtmlPage opening = s.site.open(ada, "/sheets/open/" + next.id());
        assertThat(text(opening)).contains("This opens ");
        assertThat(hasForm(opening, "/sheets/open/" + next.id())).isFalse();
        String key = hidden(form(list, "/sign-out")).get("form-key");
        assertThat(status(s.send(ada, "/sheets/open/" + next.id(), Map.of("form-key", key)))).isEqualTo(409);
        assertThat(s.school.sheets().all(next.id())).isEmpty();
    }

    @Test
    void nobodySeesOthersWork() throws Exception {
        Assignment week = s.give(Shows.VERDICT);
        Sheet sheet = begun(week);
        HtmlPage handed = s.handIn(ada, sheet, 1, right(sheet.problems().get(0)));
        HtmlPage review = s.review(ada, sheet, 1, right(sheet.problems().get(0)));
        WebClient bo = s.site.browser(s.bo.person());
        Map<String, String> form = hidden(form(review, path(sheet, 1) + "/review"));
        form.put("form-key", hidden(form(s.site.open(bo, "/work"), "/sign-out")).get("form-key"));
        for (String path : List.of("", "/1", "/1/review", "/1/draft", "/1/tries/" + attempts(sheet).get(0).id())) {
            assertThat(status(s.site.open(bo, "/sheets/" + sheet.id() + path))).as(path).isIn(404, 405);
        }
        for (String path : List.of("/1", "/1/review", "/1/draft", "/1/again")) {
            assertThat(status(s.send(bo, "/sheets/" + sheet.id() + path, form))).as(path).isEqualTo(404);
        }
        Sheet bos = s.sheet(week, s.bo);
        String others = "/sheets/" + bos.id() + "/1/tries/" + attempts(sheet).get(0).id();
        assertThat(status(s.site.open(bo, others))).isEqualTo(404);
        assertThat(status(s.site.open(ada, path(sheet, 2)))).isEqualTo(404);
        assertThat(status(s.site.open(ada, "/sheets/" + sheet.id() + "/99999999999"))).isEqualTo(404);
        assertThat(status(s.site.open(s.site.browser(s.instructor), handed.getUrl().getPath()))).isEqualTo(404);
        assertThat(s.site.open(s.site.browser(), path(sheet, 1)).getUrl().getPath()).isEqualTo("/sign-in");
        assertThat(attempts(sheet)).hasSize(1);
    }

    @Test
    void aDraftOfTheInstructorAndWorkForOthersAreNobodysBusiness() throws Exception {
        Assignment week = s.give(Shows.VERDICT);
        Assignment hidden = s.add(new Assignment(0, s.in.id(), "Secret", Assignment.State.DRAFT, week.opens(), week.due(), Late.TAKEN, 1, Shows.LINES, true,
                s.instructor.id(), s.site.now(), Optional.empty(), week.tasks()), List.of());
        Assignment bos = s.add(new Assignment(0, s.in.id(), "For Bo", Assignment.State.GIVEN, week.opens(), week.due(), Late.TAKEN, 1, Shows.LINES, true,
                s.instructor.id(), s.site.now(), Optional.empty(), week.tasks()), List.of(new GivenTo(s.bo.person().id(), Optional.empty(), false, true)));
        assertThat(text(s.site.open(ada, "/work"))).doesNotContain("Secret").doesNotContain("For Bo");
        for (Assignment other : List.of(hidden, bos)) {
            assertThat(status(s.site.open(ada, "/sheets/open/" + other.id()))).isEqualTo(404);
        }
        s.begin(s.site.browser(s.bo.person()), bos);
        assertThat(s.school.sheets().all(bos.id())).extracting(Sheet::person).containsExactly(s.bo.person().id());
    }

    @Test
    void lateAnswersGoByTheRuleAndExtraTimeCounts() throws Exception {
        Assignment half = s.give(Shows.VERDICT, Late.HALF, 1, in(Duration.ofMinutes(1)), HOLES_TASK);
        s.school.classes().seat(s.in.id(), s.bo.person().id(), "2", Member.State.IN, 50, s.site.now());
        Sheet adas = begun(half);
        s.site.wait(Duration.ofMinutes(2));
        HtmlPage late = s.handIn(ada, adas, 1, right(adas.problems().get(0)));
        assertThat(text(late)).contains("It came after the due time", "2 of 4 points");
        Sheet bos = s.sheet(half, s.bo);
        HtmlPage inTime = s.handIn(s.site.browser(s.bo.person()), bos, 1, right(bos.problems().get(0)));
        assertThat(text(inTime)).contains("4 of 4 points").doesNotContain("after the due time");
    }

    @Test
    void otherNumbersShareTheTriesUnlessItIsPractice() throws Exception {
        Sheet sheet = begun(s.give(Shows.LINES));
        assertThat(hasForm(s.site.open(ada, path(sheet, 1)), path(sheet, 1) + "/again")).isFalse();
        HtmlPage old = s.review(ada, sheet, 1, right(sheet.problems().get(0)));
        HtmlPage first = s.handIn(ada, sheet, 1, slip(sheet.problems().get(0)));
        HtmlForm more = form(first, path(sheet, 1) + "/again");
        HtmlPage fresh = more.getElementsByTagName("button").get(0).click();
        more.getElementsByTagName("button").get(0).click();
        assertThat(text(fresh)).contains("Numbers no. 2", "One try left", "Try 1");
        assertThat(s.school.sheets().allRounds(sheet.id())).hasSize(2);
        assertThat(text(confirm(old, sheet, 1))).contains("Other numbers were taken");
        Sheet now = s.sheet(s.school.assignments().find(sheet.assignment()).orElseThrow(), s.ada);
        HtmlPage second = s.handIn(ada, now, 1, right(now.problems().get(0)));
        assertThat(text(second)).contains("No try left", "4 of 4 points");
        assertThat(hasForm(second, path(sheet, 1) + "/again")).isFalse();
        assertThat(text(s.site.open(ada, "/sheets/" + sheet.id()))).contains("4 of 4 points");

        Sheet practice = begun(s.give(Shows.LINES, Late.TAKEN, 1, Optional.empty(), HOLES_TASK));
        HtmlPage done = s.handIn(ada, practice, 1, right(practice.problems().get(0)));
        HtmlPage next = form(done, path(practice, 1) + "/again").getElementsByTagName("button").get(0).click();
        assertThat(text(next)).contains("Numbers no. 2", "One try left");
    }

    @Test
    void aMarkThatWasChangedIsToldWithItsReason() throws Exception {
        Sheet sheet = begun(s.give(Shows.VERDICT));
        HtmlPage page = s.handIn(ada, sheet, 1, slip(sheet.problems().get(0)));
        s.school.attempts().remark(List.of(new Remark(0, attempts(sheet).get(0).id(), 0, s.site.now(), Optional.of(s.instructor.id()), Remark.Cause.OVERRULED,
                Verdict.RIGHT, 3, "The drawing was hard to read.")));
        assertThat(text(s.site.open(ada, page.getUrl().getPath()))).contains("Not right", "Now right: 3 of 4 points", "The drawing was hard to read.", "3 of 4 points");
    }

    @Test
    void anExerciseThatWasMendedAndNotKeptGivesOtherNumbers() throws Exception {
        Assignment week = s.give(Shows.VERDICT);
        Task task = week.tasks().get(0);
        s.school.sheets().deal(week.id(), s.ada.person().id(), "OLD-111", List.of(new soapstone.school.Sheets.Dealt(task.id(), 1, RealSchool.HOLES, 5, UnitSystem.US, "gone", 4)),
                s.site.now());
        Sheet sheet = s.sheet(week, s.ada);
        HtmlPage page = s.site.open(ada, path(sheet, 1));
        assertThat(text(page)).contains("was mended");
        HtmlPage fresh = form(page, path(sheet, 1) + "/again").getElementsByTagName("button").get(0).click();
        assertThat(text(fresh)).contains("Numbers no. 2", "2 tries left");
    }

    @Test
    void formsThatNoPageOfOursSendsChangeNothing() throws Exception {
        Sheet sheet = begun(s.give(Shows.VERDICT));
        Map<String, String> form = hidden(form(s.review(ada, sheet, 1, right(sheet.problems().get(0))), path(sheet, 1) + "/review"));
        Map<String, String> noKey = new LinkedHashMap<>(form);
        noKey.remove("form-key");
        assertThat(status(s.send(ada, path(sheet, 1) + "/review", noKey))).isEqualTo(403);
        Map<String, String> noReceipt = new LinkedHashMap<>(form);
        noReceipt.put("receipt", "x");
        assertThat(status(s.send(ada, path(sheet, 1) + "/review", noReceipt))).isEqualTo(400);
        Map<String, String> more = new LinkedHashMap<>(form);
        more.putAll(Map.of("box-zz", "1", "points", "100", "person", "1", "was-a", "x"));
        assertThat(status(s.send(ada, path(sheet, 1) + "/review", more))).isEqualTo(200);
        assertThat(attempts(sheet)).hasSize(1).allSatisfy(a -> assertThat(a.points()).isEqualTo(4));
    }
}
