package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.htmlunit.html.DomAttr;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlTextArea;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Ask;
import soapstone.exercise.Caution;
import soapstone.exercise.Given;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.mark.AskMark;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.mark.Verdict;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** Every exercise of the bank, in inches and in metric, asked and marked on its page. */
class RealExercisesTest {

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

    @Test
    void anEmptySheetTellsTheTask() throws Exception {
        for (Variant v : RealSite.variants()) {
            HtmlPage page = site.open(RealSite.path(v));
            String text = RealSite.text(page);
            assertThat(page.getWebResponse().getStatusCode()).as(RealSite.name(v)).isEqualTo(200);
            assertThat(text).as(RealSite.name(v)).contains(v.exercise().title()).contains(told(v, v.model().story()));
            v.model().notes().forEach(note -> assertThat(text).as(RealSite.name(v)).contains(told(v, note)));
            for (Ask ask : v.model().asks()) {
                assertThat(RealSite.box(page, ask.letter())).as(RealSite.name(v)).contains(told(v, ask.prompt()));
                assertThat(RealSite.state(page, ask.letter())).as(RealSite.name(v)).isEqualTo("empty");
            }
            everyGivenIsTold(v, text);
            assertThat(RealSiteTest.innards(page)).as(RealSite.name(v)).isEmpty();
        }
    }

    private static String told(Variant v, Template template) {
        return RealSite.plain(Shown.text(v.model(), template, v.right(), v.right()));
    }

    private static void everyGivenIsTold(Variant v, String text) {
        for (Given given : v.model().givens()) {
            if (!given.hidden()) {
                assertThat(text).as(RealSite.name(v) + ": " + given.name()).contains(RealSite.plain(Shown.value(v.model(), v.right(), given.slot())));
            }
        }
    }

    @Test
    void cautionsStandOnEverySheetAndBenchThatNamesThem() throws Exception {
        for (Variant v : RealSite.variants()) {
            String sheet = RealSite.text(site.open(RealSite.path(v)));
            String marked = RealSite.text(site.mark(v, RealSite.key(v)));
            String bench = RealSite.text(site.open(RealSite.benchPath(v)));
            for (String name : v.exercise().cautions()) {
                Caution caution = RealSite.library().bank().cautions().get(name);
                String says = "Caution: " + caution.title() + ". " + RealSite.plain(caution.says());
                assertThat(List.of(sheet, marked, bench)).as(RealSite.name(v)).allMatch(t -> t.contains(says));
            }
            assertThat(sheet.contains("Caution:")).as(RealSite.name(v)).isEqualTo(!v.exercise().cautions().isEmpty());
        }
    }

    /** Attributes that place a drawing on the page; any number may stand there. */
    private static final Set<String> PLACES = Set.of("d", "x", "y", "x1", "x2", "y1", "y2", "cx", "cy", "r", "rx", "ry", "points", "transform", "viewbox",
            "width", "height", "dx", "dy", "stroke-width", "font-size", "stroke-dasharray", "textlength");

    /**
     * What is asked stands nowhere before it is marked: not as text, not in the drawing or its description, not in an
     * attribute. A number that is told in the task anyway may of course be the same by chance.
     */
    @Test
    void noAnswerStandsOnTheSheetBeforeItIsMarked() throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (Variant v : RealSite.variants()) {
            for (HtmlPage page : List.of(site.open(RealSite.path(v)), site.read(v, wrong(v)))) {
                String told = taskOf(v);
                for (Ask ask : v.model().asks()) {
                    for (String form : ask.kind() == Ask.Kind.CHOICE ? List.<String>of() : forms(v, ask)) {
                        if (!holds(told, form)) {
                            all.assertThat(places(page, form)).as(RealSite.name(v) + ": " + ask.letter() + " " + form).isEmpty();
                        }
                    }
                }
            }
        }
        all.assertAll();
    }

    /** Nor does the drawing tell what a line of the working gives, on the way to the answer. */
    @Test
    void noLineOfTheWorkingStandsInTheDrawingBeforeItIsMarked() throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (Variant v : RealSite.variants()) {
            HtmlPage page = site.open(RealSite.path(v));
            String drawn = page.<DomElement>getByXPath("//figure").stream().map(f -> RealSite.plain(f.getTextContent())).reduce("", String::concat);
            String told = taskOf(v);
            for (Line line : v.model().lines()) {
                String value = RealSite.plain(Shown.value(v.model(), v.right(), line.slot()));
                if (line.phase() == Line.Phase.WORKING && !value.matches("[−-]?\\d{1,2}") && !holds(told, value)) {
                    all.assertThat(holds(drawn, value)).as(RealSite.name(v) + ": " + v.model().program().slot(line.slot()).name() + " " + value).isFalse();
                }
            }
        }
        all.assertAll();
    }

    /** Something that reads well and is no answer. */
    private static Map<String, String> wrong(Variant v) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Ask ask : v.model().asks()) {
            typed.put(ask.letter(), ask.kind() == Ask.Kind.POINT || ask.kind() == Ask.Kind.POINTS ? "(7771, 7772)" : ask.kind() == Ask.Kind.CHOICE ? "" : "7773");
        }
        return typed;
    }

    /** The text of the task itself: what the bank tells with the numbers of the draw. */
    private static String taskOf(Variant v) {
        Model model = v.model();
        List<Template> texts = new ArrayList<>(model.notes());
        texts.add(model.story());
        model.asks().forEach(a -> texts.add(a.prompt()));
        model.asks().forEach(a -> a.options().forEach(o -> texts.add(o.text())));
        StringBuilder told = new StringBuilder();
        texts.forEach(t -> told.append(told(v, t)).append(" | "));
        model.givens().stream().filter(g -> !g.hidden()).forEach(g -> told.append(RealSite.plain(Shown.value(model, v.right(), g.slot()))).append(" | "));
        model.asks().forEach(a -> told.append(size(v, a, a.to())).append(" | ").append(size(v, a, a.within())).append(" | "));
        RealSite.library().bank().cautions().values().forEach(c -> told.append(c.says()));
        return told.toString();
    }

    private static String size(Variant v, Ask ask, double size) {
        return size == 0 ? "" : ShopPrinter.text(size, ask.unit(), v.system(), Show.AUTO, '.');
    }

    /** The key as it would be printed: as asked, as the working shows it, as a plain decimal. */
    private static List<String> forms(Variant v, Ask ask) {
        Set<String> forms = new TreeSet<>();
        for (String whole : List.of(Shown.answer(v.model(), v.right(), ask), Shown.value(v.model(), v.right(), ask.slot()))) {
            for (String part : RealSite.plain(whole).split("; |, |\\(|\\)")) {
                forms.add(part);
            }
        }
        if (ask.isNumber() && ask.kind() != Ask.Kind.COUNT) {
            forms.add(ShopPrinter.number(ask.unit().fromBase(v.right().number(ask.slot()), v.system()), Show.AUTO, '.'));
            forms.add(ShopPrinter.number(ask.unit().fromBase(v.right().number(ask.slot()), v.system()), Show.decimal(0.001), '.'));
        }
        // A bare small whole number stands in numbered holes, levels and lists of notes.
        forms.removeIf(f -> f.isBlank() || f.matches("[−-]?\\d{1,2}"));
        return List.copyOf(forms);
    }

    private static boolean holds(String text, String form) {
        return Pattern.compile("(?<![\\d.,/−-])" + Pattern.quote(form) + "(?![\\d/]|\\.\\d)").matcher(text).find();
    }

    private static List<String> places(HtmlPage page, String form) {
        List<String> found = new ArrayList<>();
        if (holds(RealSite.plain(page.getDocumentElement().getTextContent()), form)) {
            found.add("text");
        }
        for (DomAttr attribute : page.<DomAttr>getByXPath("//@*")) {
            String name = attribute.getName().toLowerCase(java.util.Locale.ROOT);
            if (!PLACES.contains(name) && holds(RealSite.plain(attribute.getValue()), form)) {
                found.add(name + "=" + attribute.getValue());
            }
        }
        return found;
    }

    @Test
    void theRightAnswersAreAllRight() throws Exception {
        for (Variant v : RealSite.variants()) {
            HtmlPage page = site.mark(v, RealSite.key(v));
            int asks = v.model().asks().size();
            for (Ask ask : v.model().asks()) {
                assertThat(RealSite.state(page, ask.letter())).as(RealSite.name(v) + " " + RealSite.key(v)).isEqualTo("right");
            }
            assertThat(RealSite.text(page)).as(RealSite.name(v)).contains("Right: " + asks + " of " + asks, "Worked line by line")
                    .doesNotContain("This answer fits", "Yours", "proves nothing");
            assertThat(RealSiteTest.innards(page)).as(RealSite.name(v)).isEmpty();
        }
    }

    /** Each slip that shows in the draw, typed at one ask while the others are right: the page names what the marker found, and says so. */
    @Test
    void everySlipIsNamedAndExplained() throws Exception {
        int named = 0;
        List<String> others = new ArrayList<>();
        for (Variant v : RealSite.variants()) {
            for (Variant.Outcome outcome : v.outcomes()) {
                if (outcome.effect() == Effect.SEEN) {
                    boolean found = slip(v, outcome);
                    named += found ? 1 : 0;
                    if (!found) {
                        others.add(RealSite.name(v) + " " + outcome.ask().letter() + " " + outcome.slip().name());
                    }
                }
            }
        }
        System.out.println("Marked: " + named + " of " + (named + others.size()) + " slips are named on their pages");
        assertThat(others.size()).as(others.toString()).isLessThan((named + others.size()) / 20);
    }

    private static boolean slip(Variant v, Variant.Outcome outcome) throws Exception {
        Ask ask = outcome.ask();
        Map<String, String> typed = RealSite.key(v);
        typed.put(ask.letter(), RealSite.plain(Shown.answer(v.model(), outcome.theirs(), ask)));
        Marked marked = new Marker(v, MarkRules.USUAL).mark(Sheets.typed(v.model(), typed, '.'));
        AskMark mark = marked.asks().get(v.model().asks().indexOf(ask));
        String where = RealSite.name(v) + " " + ask.letter() + " " + outcome.slip().name() + " typed " + typed;

        HtmlPage page = site.mark(v, typed);
        assertThat(RealSite.state(page, ask.letter())).as(where).isEqualTo(mark.verdict().word());
        assertThat(RealSiteTest.innards(page)).as(where).isEmpty();
        boolean found = mark.fits().stream().anyMatch(f -> f.slips().size() == 1 && f.slips().get(0).name().equals(outcome.slip().name()));
        if (mark.verdict() != Verdict.SLIP || !found) {
            return false;
        }
        assertThat(RealSite.box(page, ask.letter())).as(where).containsAnyOf("This answer fits: ", "This answer could be: ")
                .contains(Boxes.lower(new Links(RealSite.library()).family(outcome.slip().family())));
        assertThat(RealSite.text(page)).as(where).contains(RealSite.plain(Shown.text(v.model(), outcome.slip().say(), v.right(), outcome.theirs())))
                .contains("Worked line by line", "One wrong answer proves nothing.");
        return true;
    }

    /** Every box of every sheet: what is typed comes back as it was typed, is no markup, and is computed by nobody. */
    @Test
    void whatIsTypedIsNeverMarkup() throws Exception {
        for (Variant v : RealSite.variants()) {
            Map<String, String> typed = new LinkedHashMap<>();
            v.model().asks().forEach(a -> typed.put(a.letter(), CANARY));
            HtmlPage page = site.read(v, typed);
            assertThat(page.<DomElement>getByXPath("//*[@onload]")).as(RealSite.name(v)).isEmpty();
            for (Ask ask : v.model().asks()) {
                assertThat(RealSite.state(page, ask.letter())).as(RealSite.name(v)).isEqualTo("asked-again");
                if (ask.kind() != Ask.Kind.CHOICE) {
                    assertThat(typed(page, ask.letter())).as(RealSite.name(v)).isEqualTo(CANARY);
                }
            }
            assertThat(RealSite.text(page)).as(RealSite.name(v)).doesNotContain("49{{", "{{49", "$49", "49'");
        }
    }

    static String typed(HtmlPage page, String letter) {
        DomElement field = page.getHtmlElementById("answer-" + letter);
        return field instanceof HtmlTextArea area ? area.getText() : ((HtmlInput) field).getValue();
    }
}
