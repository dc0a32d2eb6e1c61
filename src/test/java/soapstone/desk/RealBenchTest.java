package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Ask;
import soapstone.exercise.Formula;
import soapstone.expression.Program;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** Every bench: the exercises with the numbers of a draw, the formulas within and outside of their limits. */
class RealBenchTest {

    private static final String CANARY = "\"><svg onload=x>'{{7*7}}${7*7}";

    private static RealSite site;

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    /** The boxes of a bench by their letters, with what each asks for. */
    private static Map<String, String> boxes(HtmlPage bench) {
        Map<String, String> boxes = new LinkedHashMap<>();
        for (DomElement box : bench.<DomElement>getByXPath("//*[starts-with(@id, 'box-')]")) {
            String letter = box.getId().substring("box-".length());
            DomElement label = box.getFirstByXPath("./label | ./legend");
            boxes.put(letter, RealSite.text(label).substring(letter.length()).strip());
        }
        return boxes;
    }

    private static int slot(Program program, String label) {
        return program.slots().stream().filter(s -> s.name().replace('_', ' ').equalsIgnoreCase(label)).findFirst().orElseThrow(() -> new AssertionError(label)).index();
    }

    @Test
    void everyBenchGivesTheKeyOfADraw() throws Exception {
        List<String> off = new ArrayList<>();
        for (Variant v : RealSite.variants()) {
            HtmlPage empty = site.open(RealSite.benchPath(v));
            assertThat(RealSite.text(empty)).as(RealSite.name(v)).contains("Bench: " + v.exercise().title(), "Put in your numbers, then work it.");
            Map<String, String> typed = new LinkedHashMap<>();
            boxes(empty).forEach((letter, label) -> typed.put(letter, Shown.value(v.model(), v.right(), slot(v.model().program(), label))));
            assertThat(typed).as(RealSite.name(v)).isNotEmpty();
            HtmlPage worked = site.work(RealSite.benchPath(v), typed);
            String text = RealSite.text(worked);
            assertThat(text).as(RealSite.name(v) + " " + typed).contains("Worked line by line").doesNotContain("No result", "give no result", "Heed:");
            assertThat(RealSiteTest.innards(worked)).as(RealSite.name(v)).isEmpty();
            for (Ask ask : v.model().asks()) {
                String key = RealSite.plain(Boxes.answer(v.model(), v.right(), ask));
                if (!results(worked).contains(key)) {
                    off.add(RealSite.name(v) + " " + typed + ": " + key + " in " + results(worked));
                }
            }
        }
        assertThat(off).isEmpty();
    }

    private static String results(HtmlPage bench) {
        return RealSite.text((DomElement) bench.getFirstByXPath("//dl[@class='results']"));
    }

    @Test
    void theCautionStandsAboveTheResult() throws Exception {
        for (Variant v : RealSite.variants()) {
            if (v.exercise().cautions().isEmpty()) {
                continue;
            }
            Map<String, String> typed = new LinkedHashMap<>();
            boxes(site.open(RealSite.benchPath(v))).forEach((letter, label) -> typed.put(letter, Shown.value(v.model(), v.right(), slot(v.model().program(), label))));
            HtmlPage worked = site.work(RealSite.benchPath(v), typed);
            assertThat(worked.<DomElement>getByXPath("//div[@class='caution'][following::dl[@class='results']]")).as(RealSite.name(v))
                    .hasSameSizeAs(v.exercise().cautions());
        }
        for (Formula f : RealSite.library().bank().formulas().values()) {
            String text = RealSite.text(site.open("/bench/formula/" + f.name()));
            assertThat(text.contains("Caution:")).as(f.name()).isEqualTo(!f.caution().isEmpty());
        }
    }

    /** The numbers of a published check give a result; far too large, negative and zero give a result or a sentence, never a fault. */
    @Test
    void everyFormulasBenchAnswersWithAResultOrASentence() throws Exception {
        for (Formula f : RealSite.library().bank().formulas().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                String path = "/bench/formula/" + f.name() + "?units=" + system.word();
                HtmlPage page = site.open(path);
                Map<String, String> boxes = boxes(page);
                assertThat(boxes).as(path).hasSameSizeAs(f.body().takes());
                for (String number : List.of("0", "-5", "1", "720", "1000000")) {
                    Map<String, String> typed = new LinkedHashMap<>();
                    boxes.keySet().forEach(letter -> typed.put(letter, value(page, letter, number)));
                    HtmlPage worked = site.work(path, typed);
                    String text = RealSite.text(worked);
                    boolean result = !worked.<DomElement>getByXPath("//dl[@class='results']").isEmpty();
                    boolean sentence = !worked.<DomElement>getByXPath("//p[@class='notice']").isEmpty() || text.contains("Please write it again");
                    assertThat(result || sentence).as(path + " " + typed + text).isTrue();
                    assertThat(RealSiteTest.innards(worked)).as(path + " " + typed).isEmpty();
                    assertThat(text).as(path + " " + typed).doesNotContain(" ? ", "no result. ?");
                }
            }
        }
    }

    private static String value(HtmlPage page, String letter, String number) {
        DomElement option = page.getFirstByXPath("//input[@type='radio'][@name='box-" + letter + "']");
        return option == null ? number : option.getAttribute("value");
    }

    @Test
    void outsideOfTheLimitsThereIsASentenceAndNoResult() throws Exception {
        HtmlPage bench = site.work("/bench/formula/bend_allowance?units=us", Map.of("a", "200 deg", "b", "1/8", "c", "0.06", "d", "0.44"));
        assertThat(RealSite.text(bench)).contains("No result: the formula holds only for angle ≤ 180°.").doesNotContain("Worked line by line");
        assertThat(bench.<DomElement>getByXPath("//dl[@class='results']")).isEmpty();
        HtmlPage within = site.work("/bench/formula/bend_allowance?units=us", Map.of("a", "90", "b", "1/8", "c", "0.0747", "d", "0.44"));
        assertThat(RealSite.text(within)).contains("Worked line by line", "Length of the neutral line");
    }

    @Test
    void whatTheExerciseKeepsToIsHeeded() throws Exception {
        Variant v = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        String text = RealSite.text(site.work(RealSite.benchPath(v), Map.of("a", "10", "b", "14", "c", "1 1/2", "d", "1/2")));
        assertThat(text).contains("Heed: the exercise keeps to pitch ≥ 3 × hole. These numbers do not.");
        assertThat(RealSite.text(site.work(RealSite.benchPath(v), Map.of("a", "10", "b", "1", "c", "1 1/2", "d", "1/2")))).contains("These numbers give no result.");
    }

    @Test
    void theSameValueIsNotSaidTwice() throws Exception {
        Variant v = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        assertThat(RealSite.text(site.work(RealSite.benchPath(v), Map.of("a", "48", "b", "7", "c", "1 1/2", "d", "3/8")))).contains("7 1/2 in").doesNotContain("before rounding");
        assertThat(RealSite.text(site.work(RealSite.benchPath(v), Map.of("a", "48", "b", "8", "c", "1 1/2", "d", "3/8")))).contains("6 7/16 in", "before rounding: 6.4286 in");
    }

    @Test
    void whatIsTypedIsNeverMarkup() throws Exception {
        List<String> benches = new ArrayList<>();
        RealSite.library().bank().exercises().keySet().forEach(id -> benches.add("/bench/" + id + "?units=us"));
        RealSite.library().bank().formulas().keySet().forEach(name -> benches.add("/bench/formula/" + name + "?units=us"));
        for (String bench : benches) {
            Map<String, String> typed = new LinkedHashMap<>();
            boxes(site.open(bench)).keySet().forEach(letter -> typed.put(letter, CANARY));
            HtmlPage page = site.work(bench, typed);
            assertThat(page.<DomElement>getByXPath("//*[@onload]")).as(bench).isEmpty();
            for (HtmlInput field : page.<HtmlInput>getByXPath("//input[@type='text']")) {
                assertThat(field.getValue()).as(bench).isEqualTo(CANARY);
            }
            assertThat(RealSite.text(page)).as(bench).doesNotContain("49{{", "{{49", "$49").doesNotContain("Worked line by line");
        }
        HtmlPage answers = site.site().submit("/answers", "way=quantity:in:us&typed=" + java.net.URLEncoder.encode(CANARY, java.nio.charset.StandardCharsets.UTF_8));
        assertThat(answers.<DomElement>getByXPath("//*[@onload]")).isEmpty();
        assertThat(((HtmlInput) answers.getHtmlElementById("answer-a")).getValue()).isEqualTo(CANARY);
    }
}
