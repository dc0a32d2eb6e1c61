package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlAnchor;
import org.htmlunit.html.HtmlButton;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlOption;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlRadioButtonInput;
import org.htmlunit.html.HtmlSelect;
import org.htmlunit.html.HtmlTextArea;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A guest walks through the pages with scripts off. */
class GuestPagesTest {

    private static final String SHEET = "/exercises/spacing/bolt-holes?seed=48213&units=us";
    private static SiteUnderTest site;

    @BeforeAll
    static void start() throws Exception {
        site = SiteUnderTest.start();
    }

    @AfterAll
    static void stop() throws Exception {
        site.close();
    }

    private static String text(DomElement element) {
        return element.asNormalizedText().replace('\u00A0', ' ').replace("\u2060", "").replaceAll("\\s+", " ");
    }

    private static String text(HtmlPage page) {
        return text(page.getHtmlElementById("main"));
    }

    private static HtmlPage press(HtmlPage page, String action) throws Exception {
        return ((HtmlButton) page.getFirstByXPath("//button[@value='" + action + "']")).click();
    }

    private static HtmlPage type(HtmlPage page, String letter, String typed) {
        HtmlInput field = page.getHtmlElementById("answer-" + letter);
        field.setValue(typed);
        return page;
    }

    private static String box(HtmlPage page, String letter) {
        return text(page.getHtmlElementById("box-" + letter));
    }

    private static String state(HtmlPage page, String letter) {
        return page.getHtmlElementById("box-" + letter).getAttribute("class");
    }

    private static List<String> filled(HtmlPage page) {
        List<DomElement> found = page.getByXPath("//*[contains(concat(' ', @class, ' '), ' filled ')]");
        return found.stream().map(GuestPagesTest::text).collect(Collectors.toList());
    }

    @Test
    void oneClickStartsTheFirstExercise() throws Exception {
        HtmlPage front = site.open("/");
        assertThat(filled(front)).containsExactly("Bolt holes along an angle");
        HtmlPage sheet = front.getAnchorByText("Bolt holes along an angle").click();
        assertThat(sheet.getUrl().getQuery()).matches("seed=1\\d\\d&units=us&bank=" + SampleDesk.FINGERPRINT);
        assertThat(sheet.getTitleText()).isEqualTo("Bolt holes along an angle – Soapstone");
    }

    @Test
    void theFrontPageListsTheUnitsInOrder() throws Exception {
        List<HtmlAnchor> units = site.open("/").getByXPath("//table//th[@scope='row']/a");
        assertThat(units).extracting(a -> a.getHrefAttribute()).containsExactly("/units/spacing", "/units/pressure");
    }

    @Test
    void aUnitShowsLessonsSkillsExercisesWithLevelAndCautions() throws Exception {
        String spacing = text((HtmlPage) site.open("/units").getAnchorByText("Equal spacing").click());
        assertThat(spacing).contains("Holes and spaces", "Count spaces, Equal spacing", "Bolt holes along an angle Equal spacing 1", "Next unit: Water");
        assertThat(text(site.open("/units/pressure"))).contains("Caution: pressure.", "Comes after", "Unit: Equal spacing");
    }

    @Test
    void aFreshSheetEachTimeInTheAskedSystem() throws Exception {
        String first = site.get("/exercises/spacing/bolt-holes?units=metric").headers().firstValue("Location").orElseThrow();
        String second = site.get("/exercises/spacing/bolt-holes?units=metric").headers().firstValue("Location").orElseThrow();
        assertThat(first).startsWith("/exercises/spacing/bolt-holes?seed=").contains("units=metric").isNotEqualTo(second);
    }

    @Test
    void anEmptySheetHasStoryDrawingNotesBoxesAndTitleBlock() throws Exception {
        HtmlPage page = site.open(SHEET);
        assertThat(text(page)).contains("A 36 1/2 in length of angle", "Mark all of them from the left end.",
                "Tolerance ±1/32 in", "Sheet 48213-3f9a", "Level 1 of 4", "Units Inch, US", "Sample handbook, section 4; our own value");
        assertThat(page.getByXPath("//*[local-name()='svg' and @role='img']")).hasSize(2);
        assertThat(box(page, "a")).isEqualTo("a Center-to-center spacing to the nearest 1/16 in in");
        assertThat(filled(page)).containsExactly("Read my answers");
    }

    @Test
    void answersAreReadBackBeforeTheyAreMarked() throws Exception {
        HtmlPage read = press(type(type(site.open(SHEET), "a", "3-3/4\""), "b", "20"), "read");
        assertThat(box(read, "a")).endsWith("reads as 3 3/4 in. Not marked yet.");
        assertThat(((HtmlInput) read.getHtmlElementById("answer-a")).getValue()).isEqualTo("3-3/4\"");
        assertThat(filled(read)).containsExactly("Hand in");
        assertThat(read.getTitleText()).startsWith("Read back: ");

        HtmlPage marked = press(read, "mark");
        assertThat(marked.getTitleText()).startsWith("Marked: ");
        assertThat(state(marked, "a")).isEqualTo("box is-slip");
        assertThat(box(marked, "a")).contains("Not right. This answer fits: holes counted as spaces.");
        assertThat(state(marked, "b")).isEqualTo("box is-carried");
        assertThat(marked.getAnchorByHref("#box-a").asNormalizedText().replace('\u00A0', ' ')).isEqualTo("Right with your own (a), 3 3/4 in");
        assertThat(text(marked)).contains("Between 9 holes there are 8 spaces", "The last hole would land at 31 1/4 in.",
                "One wrong answer proves nothing.", "Right: 1 of 2", "Lesson: Holes and spaces");
        assertThat(filled(marked)).containsExactly("Try it with other numbers");
    }

    @Test
    void theWorkingStandsRightAndYours() throws Exception {
        HtmlPage marked = press(press(type(type(site.open(SHEET), "a", "3-3/4\""), "b", "20"), "read"), "mark");
        String worked = text(marked);
        assertThat(worked).contains("Right span = length − 2 × edge = 36 1/2 − 2 × 1 1/4 = 34 in Yours the same, 34 in",
                "Right spaces = holes − 1 = 9 − 1 = 8 Your answer fits this line spaces = holes = 9", "With your number pitch = span ÷ spaces = 34 ÷ 9 =");
    }

    @Test
    void rightAnswersAreSaidToBeRight() throws Exception {
        HtmlPage marked = press(press(type(type(site.open(SHEET), "a", "4 1/4"), "b", "22 1/2"), "read"), "mark");
        assertThat(box(marked, "a")).contains("reads as 4 1/4 in. Right.");
        assertThat(text(marked)).contains("Right: 2 of 2").doesNotContain("Yours").doesNotContain("This answer fits");
    }

    @Test
    void whatCannotBeReadIsAskedAgainAndKept() throws Exception {
        HtmlPage page = press(type(type(site.open(SHEET), "a", "3 15"), "b", "20"), "read");
        HtmlInput field = page.getHtmlElementById("answer-a");
        assertThat(field.getValue()).isEqualTo("3 15");
        assertThat(field.getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(field.getAttribute("aria-describedby")).contains("says-a");
        assertThat(box(page, "a")).contains("Please write it again. There are two ways to read 3 15", "No try used.");
        assertThat(page.getAnchorByHref("#answer-a").asNormalizedText()).isEqualTo("a: Center-to-center spacing");
        assertThat(page.<DomElement>getByXPath("//button[@value='mark']")).isEmpty();
    }

    /** Handing in something that was changed after it was read shows how it reads now. */
    @Test
    void nothingIsMarkedThatWasNotReadBack() throws Exception {
        HtmlPage read = press(type(type(site.open(SHEET), "a", "4 1/4"), "b", "20"), "read");
        HtmlPage again = press(type(read, "a", "3-3/4\""), "mark");
        assertThat(box(again, "a")).contains("reads as 3 3/4 in. Not marked yet.");
        assertThat(site.post(SHEET, "action=mark&box-a=4+1%2F4&box-b=20").body()).contains("Not marked yet.").doesNotContain("Worked line");
    }

    @Test
    void blanksCanBeHandedIn() throws Exception {
        HtmlPage marked = press(press(type(site.open(SHEET), "a", "4 1/4"), "read"), "mark");
        assertThat(state(marked, "b")).isEqualTo("box is-blank");
        assertThat(box(marked, "b")).endsWith("Not answered.");
        assertThat(text(marked)).contains("Right: 1 of 2");
    }

    @Test
    void aChoiceAndAListAreAnswered() throws Exception {
        HtmlPage page = site.open("/exercises/pressure/pump-lid?seed=7&units=us");
        assertThat(text(page)).contains("Caution: pressure.", "Never test one with air.", "Tolerance a exact · b ±0.5 lb");
        assertThat(box(page, "b")).contains("to the nearest 1 lb, one a line or with ; between");
        ((HtmlRadioButtonInput) page.getFirstByXPath("//input[@value='more']")).setChecked(true);
        ((HtmlTextArea) page.getHtmlElementById("answer-b")).setText("100\n100");
        HtmlPage read = press(page, "read");
        assertThat(((HtmlRadioButtonInput) read.getFirstByXPath("//input[@value='more']")).isChecked()).isTrue();
        assertThat(((HtmlTextArea) read.getHtmlElementById("answer-b")).getText()).isEqualTo("100\n100");
        assertThat(state(press(read, "mark"), "a")).isEqualTo("box is-right");
    }

    @Test
    void everyStateHasItsOwnWords() throws Exception {
        HtmlPage marked = press(press(site.open("/exercises/spacing/every-state?seed=7&units=us"), "read"), "mark");
        assertThat(box(marked, "d")).endsWith("reads as 4.25 in. Right.");
        assertThat(box(marked, "e")).endsWith("reads as 108 mm. Right, but: it is given in mm; in was asked. It costs nothing.");
        assertThat(box(marked, "g")).endsWith("reads as 4 5/16 in. Near. It is 1/16 in off; 1/32 in is allowed.");
        assertThat(box(marked, "h")).endsWith("Not right. This answer could be: holes counted as spaces or one end left in.");
        assertThat(box(marked, "i")).endsWith("reads as 6 1/8 in. Not right. No known mistake gives it.");
        assertThat(text(marked)).contains("Tolerance a, b, d, e, f, g, h, i, j, k ±1/32 in · c ±1/64 in");
    }

    @Test
    void aLinkOfAnOlderBankSaysSo() throws Exception {
        assertThat(text(site.open(SHEET + "&bank=" + SampleDesk.FINGERPRINT))).doesNotContain("The bank has changed");
        assertThat(text(site.open(SHEET + "&bank=0000"))).contains("The bank has changed since this link was made.");
    }

    @Test
    void afterMarkingTheThreeWaysOnAreThere() throws Exception {
        HtmlPage marked = press(press(type(site.open(SHEET), "a", "4 1/4"), "read"), "mark");
        assertThat(((HtmlPage) marked.getAnchorByText("Try it with other numbers").click()).getUrl().getQuery()).doesNotContain("seed=48213");
        assertThat(((HtmlPage) marked.getAnchorByText("Same numbers again").click()).getUrl().getQuery()).contains("seed=48213");
        assertThat(((HtmlPage) marked.getAnchorByText("Work it with your own numbers").click()).getUrl().getPath()).isEqualTo("/bench/spacing/bolt-holes");
    }

    @Test
    void theBenchWorksOwnNumbersUnderItsCaution() throws Exception {
        HtmlPage bench = site.open("/bench/pressure/pump-lid?units=us");
        assertThat(text(bench)).contains("Put in your numbers, then work it.");
        HtmlPage worked = press(type(type(bench, "a", "36 1/2"), "b", "9"), "work");
        assertThat(text(worked)).containsSubsequence("Caution: pressure.", "Center-to-center spacing 4 1/4 in", "before rounding: 4.2497 in", "Worked line by line");
        assertThat(box(worked, "a")).endsWith("reads as 36 1/2 in.");
        assertThat(text(press(type(worked, "b", "1"), "work"))).contains("There must be at least 2 holes.").doesNotContain("Worked line by line");
    }

    @Test
    void theFormulaCardLeadsToItsBench() throws Exception {
        HtmlPage card = site.open("/formulas").getAnchorByText("Bend allowance").click();
        assertThat(text(card)).contains("BA = arc(radius + k × thickness, angle)", "thickness length", "angle ≤ 180°", "common practice, no source",
                "Inside radius in place of the neutral line", "0.2827 in ±0.0001 in 0.28274 in agrees", "misprint in the source");
        HtmlPage bench = card.getAnchorByText("Work it with your own numbers").click();
        assertThat(bench.getUrl().getPath()).isEqualTo("/bench/formula/bend_allowance");
        assertThat(((HtmlPage) bench.getAnchorByText("Work it in metric").click()).getUrl().getQuery()).isEqualTo("units=metric");
    }

    @Test
    void lessonsTablesCautionsAboutStand() throws Exception {
        HtmlPage lesson = site.open("/lessons").getAnchorByText("Holes and spaces").click();
        assertThat(text(lesson)).contains("On your fingers", "Bolt holes along an angle");
        assertThat(text((HtmlPage) site.open("/tables").getAnchorByText("Sheet gauges").click())).contains("Galvanized [in]", "Invented for the tests", "Rows 40");
        assertThat(site.open("/cautions").getElementById("pressure").asNormalizedText()).contains("Never test one with air.");
        assertThat(text(site.open("/about"))).contains("no cookie", "Apache License 2.0", "Version 0.1.0", "Published checks 2");
    }

    @Test
    void anAnswerCanBeTriedOut() throws Exception {
        HtmlPage page = site.open("/answers");
        assertThat(text(page)).contains("3' 5-3/8\" 41 3/8 in");
        ((HtmlSelect) page.getHtmlElementById("way")).setSelectedAttribute((HtmlOption) page.getFirstByXPath("//option[@value='quantity:mm']"), true);
        HtmlPage tried = press(type(page, "a", "4 1/4"), "try");
        assertThat(text(tried)).contains("reads as 4 1/4 in.").doesNotContain("Not marked yet");
        assertThat(((HtmlSelect) tried.getHtmlElementById("way")).getSelectedOptions().get(0).getValueAttribute()).isEqualTo("quantity:mm");
    }

    @Test
    void theScriptGetsItsReadings() throws Exception {
        assertThat(site.post("/read-answer", "reads=quantity%3Ain&typed=4+1%2F4&marking=yes").body())
                .isEqualTo("{\"state\":\"READ\",\"text\":\"reads as 4\u00A01/4\u00A0in. Not marked yet.\"}");
        assertThat(site.post("/read-answer", "reads=quantity%3Ain&typed=3+15").body()).contains("ASKED_AGAIN", "two ways to read");
        assertThat(site.post("/read-answer", "reads=quantity%3Ain&typed=").body()).isEqualTo("{\"state\":\"EMPTY\",\"text\":\"\"}");
        assertThat(site.post("/read-answer", "reads=nonsense&typed=3").statusCode()).isEqualTo(400);
    }

    @Test
    void whatIsTypedIsNeverMarkup() throws Exception {
        String evil = "<script>alert(1)</script>";
        HtmlPage page = press(type(site.open(SHEET), "a", evil), "read");
        assertThat(((HtmlInput) page.getHtmlElementById("answer-a")).getValue()).isEqualTo(evil);
        assertThat(page.<DomElement>getByXPath("//script[not(@src)]")).isEmpty();
    }

    @Test
    void everyLinkOfTheSiteLeadsSomewhere() throws Exception {
        java.util.Set<String> seen = new java.util.TreeSet<>();
        java.util.Deque<String> open = new java.util.ArrayDeque<>(List.of("/"));
        while (!open.isEmpty()) {
            String path = open.pop();
            if (!seen.add(path.replaceAll("seed=\\d+", "seed=1"))) {
                continue;
            }
            HtmlPage page = site.open(path);
            assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
            assertThat(filled(page).size()).as("filled buttons on " + path).isLessThanOrEqualTo(1);
            for (HtmlAnchor a : page.getAnchors()) {
                String to = a.getHrefAttribute();
                if (to.startsWith("/") && !to.startsWith("/site/")) {
                    open.push(to);
                } else if (to.startsWith("#")) {
                    assertThat(page.getElementById(to.substring(1))).as(path + to).isNotNull();
                }
            }
        }
        assertThat(seen).hasSizeGreaterThan(20);
    }
}
