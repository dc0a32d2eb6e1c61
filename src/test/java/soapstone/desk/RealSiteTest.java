package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlAnchor;
import org.htmlunit.html.HtmlButton;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soapstone.exercise.Formula;
import soapstone.exercise.Line;
import soapstone.exercise.Table;
import soapstone.lesson.Lesson;
import soapstone.page.CheckRow;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** A guest walks through the site as it comes with the program: its own bank, its own lessons. */
class RealSiteTest {

    private static RealSite site;

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static HtmlPage press(HtmlPage page, String action) throws Exception {
        return ((HtmlButton) page.getFirstByXPath("//button[@value='" + action + "']")).click();
    }

    private static HtmlPage click(HtmlPage page, String link) throws Exception {
        return page.getAnchorByText(link).click();
    }

    /** What README promises for the first minute, click by click. */
    @Test
    void theFirstDiagnosedAnswer() throws Exception {
        HtmlPage sheet = click(site.open("/"), "Bolt holes along an angle");
        Variant drawn = variantOf(sheet);
        String shared = drawn.outcomes().stream().filter(o -> o.slip().name().equals("shared-over-holes"))
                .map(o -> RealSite.answers(drawn, o.theirs()).get("a")).findFirst().orElseThrow();
        String typed = shared.replaceFirst("(\\d) (\\d+/\\d+) in", "$1-$2\"");
        ((HtmlInput) sheet.getHtmlElementById("answer-a")).setValue(typed);

        HtmlPage read = press(sheet, "read");
        assertThat(RealSite.box(read, "a")).endsWith("reads as " + shared + ". Not marked yet.");

        HtmlPage marked = press(read, "mark");
        assertThat(marked.getTitleText()).isEqualTo("Marked: Bolt holes along an angle – Soapstone");
        assertThat(RealSite.box(marked, "a")).contains("Not right. This answer fits: spaces counted like holes.");
        long holes = Math.round(drawn.right().number(drawn.model().program().find("holes")));
        assertThat(RealSite.text(marked)).contains(
                "This answer fits sharing the span out over the " + holes + " holes. Between " + holes + " holes there are " + (holes - 1) + " spaces",
                "The last hole would stop ", "Right spaces = holes − 1 = " + holes + " − 1 = " + (holes - 1) + " Your answer fits this line spaces = ");
        assertThat(marked.<DomElement>getByXPath("//*[local-name()='svg']//*[contains(@class,'phantom')]")).as("the row as it would be cut").isNotEmpty();
        theWaysOn(marked);
    }

    private static void theWaysOn(HtmlPage marked) throws Exception {
        String numbers = marked.getUrl().getQuery();
        assertThat(click(marked, "Same numbers again").getUrl().getQuery()).isEqualTo(numbers);
        HtmlPage others = click(marked, "Try it with other numbers");
        assertThat(others.getUrl().getQuery()).isNotEqualTo(numbers);
        assertThat(RealSite.state(others, "a")).isEqualTo("empty");

        HtmlPage bench = click(marked, "Work it with your own numbers");
        List<String> own = List.of("48", "7", "1 1/2", "3/8");
        for (int i = 0; i < own.size(); i++) {
            ((HtmlInput) bench.getHtmlElementById("answer-" + (char) ('a' + i))).setValue(own.get(i));
        }
        assertThat(RealSite.text(press(bench, "work"))).contains("Result Center-to-center spacing of the holes 7 1/2 in", "span = length − 2 × edge = 48 in − 2 × 1 1/2 in = 45 in");
    }

    /** The draw whose sheet is open, from its address. */
    private static Variant variantOf(HtmlPage sheet) {
        Matcher m = Pattern.compile("/exercises/([a-z/-]+)\\?seed=(\\d+)&units=(\\w+)").matcher(sheet.getUrl().toString());
        assertThat(m.find()).as(sheet.getUrl().toString()).isTrue();
        return Drawer.draw(RealSite.library().bank().exercise(m.group(1)).orElseThrow(),
                UnitSystem.parse(m.group(3)).orElseThrow(), Long.parseLong(m.group(2))).orElseThrow();
    }

    private static final Pattern INNARDS = Pattern.compile("\\bnull\\b|Exception|\\bNaN\\b|Infinity|FreeMarker|\\bat soapstone\\.|java\\.|\\$\\{|\\{[a-z_.0-9]*}"
            + "|\\b(trouble|beside|reading|mark|answer|hint|block|bench|lesson|formula|check)\\.[a-z-]+\\b");

    /** From the front page every link is followed, once for each page; no page shows what is inside of the house. */
    @Test
    void everyLinkLeadsSomewhereAndNoPageShowsInnards() throws Exception {
        Set<String> seen = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(List.of("/"));
        while (!open.isEmpty()) {
            String path = open.pop();
            if (!seen.add(path.replaceAll("seed=\\d+", "seed=…"))) {
                continue;
            }
            HtmlPage page = site.open(path);
            assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
            assertThat(innards(page)).as(path).isEmpty();
            for (HtmlAnchor a : page.getAnchors()) {
                String to = a.getHrefAttribute();
                if (to.startsWith("#")) {
                    assertThat(page.getElementById(to.substring(1))).as(path + to).isNotNull();
                } else if (to.startsWith("/") && !to.startsWith("/site/")) {
                    open.push(to);
                } else {
                    assertThat(to).as("a link on " + path).startsWith("/site/");
                }
            }
        }
        assertThat(seen).contains("/lessons/holes-and-spaces", "/formulas/bend_allowance", "/tables/gauge", "/cautions", "/about", "/answers");
        assertThat(seen.stream().filter(p -> p.startsWith("/exercises/")).map(p -> p.replaceAll("\\?.*", "")).distinct().toList())
                .hasSameSizeAs(RealSite.library().bank().exercises().keySet());
        assertThat(seen.stream().filter(p -> p.startsWith("/bench/formula/")).map(p -> p.replaceAll("\\?.*", "")).distinct().toList())
                .hasSameSizeAs(RealSite.library().bank().formulas().keySet());
    }

    static List<String> innards(HtmlPage page) {
        return INNARDS.matcher(RealSite.text(page) + " " + page.getTitleText()).results().map(java.util.regex.MatchResult::group).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "/exercises/spacing/bolt-hole | 404 | Exercise: Bolt holes along an angle",
            "/exercises/bends/hose-trey | 404 | Exercise: Hose tray with a lip",
            "/lessons/hole-and-spaces | 404 | Lesson: Holes and spaces",
            "/formulas/bend-allowance | 404 | Formula: bend allowance",
            "/tables/gage | 404 | Table: Gauge numbers and thicknesses",
            "/units/spacings | 404 | Unit: Equal spacing",
            "/bench/spacing/no-such-thing-at-all | 404 | There is no such page",
            "/bench/formula/nothing | 404 | There is no such page",
            "/exercises/spacing/bolt-holes?seed=0 | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=-3 | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=1.5 | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=seven | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=9223372036854775808 | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=7&seed=8 | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=7&bank=%22%3E%3Csvg%3E | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?seed=7&units=furlong | 400 | That request cannot be read",
            "/exercises/spacing/bolt-holes?units=%00 | 400 | That request cannot be read",
            "/bench/spacing/bolt-holes?units=cubits | 400 | That request cannot be read",
            "/exercises/nowhere/bolt-holes?seed=7 | 404 | Exercise: Bolt holes along an angle",
            "/Exercises/spacing/bolt-holes | 404 | Exercise: Bolt holes along an angle"})
    void oddAddressesGetOurOwnPage(String path, int status, String says) throws Exception {
        HtmlPage page = site.open(path);
        assertThat(page.getWebResponse().getStatusCode()).isEqualTo(status);
        assertThat(RealSite.text(page)).contains(says, "To the front page");
        assertThat(innards(page)).isEmpty();
    }

    @Test
    void theLargestSheetNumbersAreDrawnToo() throws Exception {
        for (long seed : List.of(1L, 99_999L, 999_999_999_999_999_999L)) {
            assertThat(RealSite.text(site.open("/exercises/spacing/bolt-holes?seed=" + seed + "&units=metric"))).contains("Sheet " + seed + "-");
        }
    }

    @Test
    void aLinkOfAnotherBankSaysSo() throws Exception {
        Variant v = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        String own = RealSite.path(v);
        assertThat(RealSite.text(site.open(own))).doesNotContain("The bank has changed");
        String other = own.replace(v.exercise().fingerprint(), "0" + v.exercise().fingerprint().substring(1).replace('a', 'b') + "1");
        assertThat(RealSite.text(site.open(other))).contains("The bank has changed since this link was made. The numbers may not be the same.");
        HtmlPage marked = site.site().submit(other, "action=mark&box-a=9&seen-a=9");
        assertThat(RealSite.text(marked)).as("also when answers come with it").contains("The bank has changed since this link was made.");
    }

    @Test
    void everyLessonShowsItsWorkedExamples() throws Exception {
        for (Lesson lesson : RealSite.library().course().inOrder()) {
            HtmlPage page = site.open("/lessons/" + lesson.id());
            List<Lesson.Example> examples = lesson.parts().stream().filter(Lesson.Example.class::isInstance).map(Lesson.Example.class::cast).toList();
            List<DomElement> shown = page.getByXPath("//div[contains(@class, 'lesson-example')]");
            assertThat(shown).as(lesson.id()).hasSameSizeAs(examples).isNotEmpty();
            for (int i = 0; i < shown.size(); i++) {
                example(lesson.id(), examples.get(i), shown.get(i));
            }
            assertThat(RealSite.text(page)).as(lesson.id()).contains("about " + lesson.minutes() + " minutes");
            List<DomElement> practice = page.getByXPath("//div[@class='part lesson']//ul[@class='links']//a");
            assertThat(practice).as(lesson.id()).hasSameSizeAs(lesson.practice()).isNotEmpty();
        }
    }

    private static void example(String lesson, Lesson.Example example, DomElement shown) {
        Variant v = Drawer.draw(RealSite.library().bank().exercises().get(example.exercise()), example.system(), example.seed()).orElseThrow();
        String text = RealSite.text(shown);
        assertThat(text).as(lesson).contains(v.exercise().title()).contains(RealSite.plain(Shown.text(v.model(), v.model().story(), v.right(), v.right())));
        long lines = v.model().lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).count();
        assertThat(shown.<DomElement>getByXPath(".//ol[@class='working']/li")).as(lesson + ": " + example.exercise()).hasSize((int) lines);
        v.exercise().cautions().forEach(c -> assertThat(text).as(lesson).contains(RealSite.plain(RealSite.library().bank().cautions().get(c).says())));
    }

    @Test
    void everyFormulaShowsItsSourceAndItsChecks() throws Exception {
        Books books = new Books(RealSite.library(), new Links(RealSite.library()));
        for (Formula formula : RealSite.library().bank().formulas().values()) {
            HtmlPage page = site.open("/formulas/" + formula.name());
            String text = RealSite.text(page);
            assertThat(text).as(formula.name()).contains("The formula", "What goes in", "Source " + RealSite.plain(formula.source()), formula.says());
            List<CheckRow> checks = books.formula(formula).checks();
            assertThat(page.<DomElement>getByXPath("//table[@class='checks']/tbody/tr")).as(formula.name()).hasSameSizeAs(checks).isNotEmpty();
            assertThat(checks).as(formula.name()).noneMatch(c -> c.outcome() == CheckRow.Outcome.DIFFERS);
            checks.forEach(c -> assertThat(text).as(formula.name()).contains(RealSite.plain(c.printed()), RealSite.plain(c.computed()), RealSite.plain(c.source().text())));
            formula.slips().forEach(s -> assertThat(text).as(formula.name()).contains(new Links(RealSite.library()).family(s.family())));
        }
    }

    @Test
    void everyCautionOfTheBankStandsOnItsPage() throws Exception {
        String text = RealSite.text(site.open("/cautions"));
        RealSite.library().bank().cautions().values().forEach(c -> assertThat(text).contains(c.title(), RealSite.plain(c.says())));
    }

    @Test
    void everyTableShowsItsSourceAndItsRows() throws Exception {
        for (Table table : RealSite.library().bank().tables().values()) {
            HtmlPage page = site.open("/tables/" + table.name());
            assertThat(page.<DomElement>getByXPath("//table[@class='values']/tbody/tr")).as(table.name()).hasSize(table.rows());
            assertThat(RealSite.text(page)).as(table.name()).contains("Source " + RealSite.plain(table.source()));
        }
    }

    /** The page on answers reads its own examples; the last group is asked again, each with a sentence. */
    @Test
    void theExamplesOfHowToAnswerAreRead() throws Exception {
        HtmlPage page = site.open("/answers");
        for (DomElement row : page.<DomElement>getByXPath("//div[@class='groups']//tbody/tr")) {
            boolean again = RealSite.text((DomElement) row.getFirstByXPath("ancestor::div[@class='part']/h2")).startsWith("Asked again");
            String reading = RealSite.text((DomElement) row.getFirstByXPath("td"));
            assertThat(reading.endsWith(".")).as(RealSite.text(row)).isEqualTo(again);
        }
        assertThat(RealSite.text(page)).contains("3' 5-3/8\" 3 ft 5 3/8 in", "1051 mm 1051 mm", "22 deg 30 min 22° 30′");
    }
}
