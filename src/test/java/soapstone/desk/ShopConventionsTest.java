package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Conventions;
import soapstone.mark.Verdict;
import soapstone.quantity.Quantity;
import soapstone.quantity.Units;
import soapstone.school.Assignment;
import soapstone.school.Assignment.Task;
import soapstone.school.ClassSettings;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.variant.Variant;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** What an instructor's shop has settled, from the class's form to the students' sheets, over the real server and bank. */
class ShopConventionsTest {

    private static final String ALLOWANCE = "bends/bend-allowance";
    private static final String KERF = "measuring/pieces-and-kerf";

    private static SchoolUnderTest site;
    private RealSchool s;
    private WebClient ada;
    private Hand wren;

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
        ada = site.browser(s.ada.person());
        wren = new Hand(site, site.browser(s.instructor));
    }

    private Hand settings() throws Exception {
        return wren.open("/classes/" + s.in.id() + "/settings");
    }

    private ClassSettings kept() {
        return site.school.classes().find(s.in.id()).orElseThrow().settings();
    }

    private static Conventions set(String name, double amount, soapstone.quantity.Unit unit) {
        return new Conventions(Map.of(name, new Quantity(amount, unit)));
    }

    private Assignment give(int tries, Task... tasks) {
        return s.give(Assignment.Shows.MISTAKE, Assignment.Late.TAKEN, tries, Optional.empty(), tasks);
    }

    private static Task task(int place, String... exercises) {
        return new Task(0, place, List.of(exercises), 1, 4);
    }

    private Sheet begun(Assignment assignment) throws Exception {
        s.begin(ada, assignment);
        return s.sheet(assignment, s.ada);
    }

    private static double number(Problem problem, String name) {
        Variant v = RealSchool.variant(problem);
        return v.right().number(v.model().program().find(name));
    }

    private String page(Sheet sheet) throws Exception {
        return RealSite.text(site.open(ada, RealSchool.path(sheet, 1)));
    }

    @Test
    void aClassWithItsOwnKHasItOnEverySheetAndIsMarkedByIt() throws Exception {
        settings().type("shop-k_factor", "0.41").press("Save the settings");
        assertThat(kept().shop()).isEqualTo(set("k_factor", 0.41, Units.ONE));
        Assignment week = give(2, task(1, ALLOWANCE));
        Sheet sheet = begun(week);
        Problem problem = sheet.problems().get(0);

        assertThat(page(sheet)).contains("This shop: K = 0.41", "The shop's K is 0.41");
        assertThat(number(problem, "k")).isEqualTo(0.41);
        site.school.sheets().all(week.id()).forEach(other -> assertThat(other.problems().get(0).conventions()).isEqualTo(set("k_factor", 0.41, Units.ONE)));
        String marked = RealSite.text(s.handIn(ada, sheet, 1, RealSchool.right(problem)));
        assertThat(marked).contains("4 of 4 points");
        assertThat(site.school.attempts().of(problem.id()).get(0).marks()).extracting(m -> m.verdict()).containsOnly(Verdict.RIGHT);
    }

    @Test
    void whatIsSetLaterLeavesTheOldSheetAsItIs() throws Exception {
        settings().type("shop-k_factor", ".42").press("Save the settings");
        Sheet sheet = begun(give(3, task(1, ALLOWANCE)));
        Problem problem = sheet.problems().get(0);
        String before = page(sheet);
        Map<String, String> right = RealSchool.right(problem);

        settings().type("shop-k_factor", "0.33").press("Save the settings");
        assertThat(page(sheet)).isEqualTo(before).contains("K = 0.42");
        s.handIn(ada, sheet, 1, right);
        assertThat(site.school.attempts().of(problem.id()).get(0).marks()).extracting(m -> m.verdict()).containsOnly(Verdict.RIGHT);

        HtmlPage own = site.open(ada, RealSchool.path(sheet, 1));
        RealSchool.form(own, RealSchool.path(sheet, 1) + "/again").getElementsByTagName("button").get(0).click();
        Problem next = s.sheet(site.school.assignments().find(sheet.assignment()).orElseThrow(), s.ada).problems().get(0);
        assertThat(next.round()).as("other numbers are dealt as the class is set now").isEqualTo(2);
        assertThat(number(next, "k")).isEqualTo(0.33);
        assertThat(number(problem, "k")).isEqualTo(0.42);
    }

    @Test
    void roundingAndEdgesAreThoseOfTheShop() throws Exception {
        settings().type("shop-edge_distance", "2").type("shop-rounding", "1/64 in").press("Save the settings");
        assertThat(settings().typed("shop-rounding")).isEqualTo("1/64 in");
        Sheet sheet = begun(give(2, task(1, RealSchool.HOLES)));
        Problem problem = sheet.problems().get(0);
        assertThat(number(problem, "edge")).isGreaterThanOrEqualTo(2 * number(problem, "hole"));
        assertThat(page(sheet)).contains("This shop: hole centers 2 diameters or more from an end; lengths to 1/64 in", "±0.0078");
        assertThat(RealSite.text(s.handIn(ada, sheet, 1, RealSchool.right(problem)))).contains("4 of 4 points");
    }

    @Test
    void whatDoesNotFitComesBackWithASentence() throws Exception {
        settings().type("shop-k_factor", "1.4").type("shop-saw_kerf", "wide").type("shop-lid_gap", "2 lb").type("units", "METRIC").type("shop-rounding", "1/32 in")
                .press("Save the settings");
        assertThat(wren.status()).isEqualTo(422);
        assertThat(wren.fault("shop-k_factor")).isEqualTo("In the units of this class that is from 0.25 to 0.5.");
        assertThat(wren.fault("shop-saw_kerf")).contains("wide");
        assertThat(wren.fault("shop-lid_gap")).contains("lb");
        assertThat(wren.fault("shop-rounding")).isEqualTo("In the units of this class that is one of these: 1 mm, 0.5 mm.");
        assertThat(wren.typed("shop-k_factor")).isEqualTo("1.4");
        assertThat(kept()).isEqualTo(ClassSettings.USUAL);
        wren.type("shop-k_factor", "0,42").type("mark", "comma").type("shop-saw_kerf", "2,5").type("shop-lid_gap", "").type("shop-rounding", "0.5 mm")
                .press("Save the settings");
        assertThat(kept().shop()).isEqualTo(new Conventions(Map.of("k_factor", new Quantity(0.42, Units.ONE), "saw_kerf", new Quantity(2.5, Units.MILLIMETER),
                "rounding", new Quantity(0.5, Units.MILLIMETER))));
        assertThat(settings().press("Save the settings").status()).as("what it shows it takes").isEqualTo(200);
        assertThat(kept().shop().values()).hasSize(3);
    }

    /** With a saw of 1/16 in and answers to 1/16 in, one cut more or less cannot be told. */
    @Test
    void anExerciseWithoutFairNumbersIsNotDealtAndThePagesSayWhy() throws Exception {
        settings().type("shop-saw_kerf", "1/16").press("Save the settings");
        String why = "Bar for a row of equal pieces is not dealt: with what this class has set (saw kerf 1/16 in)";
        wren.open("/classes/" + s.in.id() + "/assignments/new").type("title", "Cuts").tick("use-" + KERF).press("Give it out");
        assertThat(wren.status()).isEqualTo(422);
        assertThat(wren.text()).contains(why);
        assertThat(site.school.assignments().of(s.in.id())).isEmpty();

        wren.press("Save as a draft");
        assertThat(wren.text()).contains(why);
        wren.follow("See it as a student does");
        assertThat(wren.status()).isEqualTo(422);
        assertThat(wren.text()).contains(why);
        wren.press("Give it out");
        assertThat(wren.status()).isEqualTo(422);
        assertThat(site.school.assignments().of(s.in.id()).get(0).state()).isEqualTo(Assignment.State.DRAFT);
        assertThat(wren.open("/classes/" + s.in.id()).text()).contains(why);

        settings().type("shop-rounding", "1/64 in").press("Save the settings");
        assertThat(wren.open("/classes/" + s.in.id()).text()).doesNotContain("is not dealt");
        wren.open("/assignments/" + site.school.assignments().of(s.in.id()).get(0).id() + "/preview/1");
        assertThat(wren.text()).contains("The saw takes 1/16 in at every cut.", "This shop: lengths to 1/64 in; saw kerf 1/16 in");
    }

    @Test
    void ofAPoolOnlyFairExercisesAreDealtAndWithoutAnyTheStudentIsTold() throws Exception {
        settings().type("shop-saw_kerf", "1/16 in").press("Save the settings");
        Sheet sheet = begun(give(1, task(1, KERF, RealSchool.HOLES)));
        assertThat(site.school.sheets().all(sheet.assignment())).allMatch(x -> x.problems().get(0).exercise().equals(RealSchool.HOLES));
        Assignment alone = give(1, task(1, KERF));
        assertThat(RealSite.text(s.begin(ada, alone))).contains("No numbers can be drawn for this right now.");
        assertThat(site.school.sheets().all(alone.id())).isEmpty();
    }
}
