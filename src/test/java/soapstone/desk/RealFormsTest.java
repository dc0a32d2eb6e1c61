package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlButton;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlRadioButtonInput;
import org.htmlunit.html.HtmlTextArea;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.exercise.Ask;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/** Every kind of box, filled in and handed in through the form; and what is asked again. */
class RealFormsTest {

    private static final String HOLES = "spacing/bolt-holes";

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

    private static void fill(HtmlPage page, Ask ask, String answer) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            ((HtmlRadioButtonInput) page.getFirstByXPath("//input[@name='box-" + ask.letter() + "'][@value='" + answer + "']")).setChecked(true);
            return;
        }
        DomElement field = page.getHtmlElementById("answer-" + ask.letter());
        if (field instanceof HtmlTextArea area) {
            area.setText(answer.replace("; ", "\n"));
        } else {
            ((HtmlInput) field).setValue(answer);
        }
    }

    /** Quantity, count, list, choice, fraction, point: read back, then handed in. */
    @ParameterizedTest
    @ValueSource(strings = {"spacing/bolt-holes", "spacing/max-gap", "spacing/hole-marks", "baffles/baffle-marks", "ratio/right-size", "sheet/thicker",
            "measuring/nearest-sixteenth", "circles/bolt-circle-points", "bends/hose-tray"})
    void everyKindOfBoxIsAnsweredThroughItsForm(String id) throws Exception {
        for (UnitSystem system : UnitSystem.values()) {
            Variant v = RealSite.variant(id, system);
            HtmlPage page = site.open(RealSite.path(v));
            Map<String, String> key = RealSite.key(v);
            v.model().asks().forEach(ask -> fill(page, ask, key.get(ask.letter())));
            HtmlPage read = press(page, "read");
            for (Ask ask : v.model().asks()) {
                assertThat(RealSite.state(read, ask.letter())).as(RealSite.name(v)).isEqualTo("read");
                assertThat(RealSite.box(read, ask.letter())).as(RealSite.name(v)).contains("reads as ").endsWith("Not marked yet.");
            }
            HtmlPage marked = press(read, "mark");
            assertThat(RealSite.text(marked)).as(RealSite.name(v)).contains("Right: " + key.size() + " of " + key.size());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
            "31/2 | 31/2 can be 3 1/2 or 15 1/2",
            "3 15 | two numbers, 3 and 15",
            "12 lb | 12 lb is a mass (weight). Asked for here is a length (unit: in).",
            "90° | is an angle. Asked for here is a length",
            "9 1/16 furlongs | The word \"furlongs\" is not known here.",
            "7 3/ | A part of the fraction is missing.",
            "1,5 | Decimals are written with \".\" here.",
            "9 \uD83D\uDD28 | cannot be read here",
            "\uD83D\uDE00 | cannot be read here",
            "NaN | is not a number",
            "Infinity | is not a number",
            "1e999 | more than a shop can hold",
            "1e-999 | smaller than anything a shop can measure",
            "3/0 | The bottom of a fraction cannot be 0.",
            "4+5 | Type the result only"})
    void whatCannotBeReadComesBackWithTheReason(String typed, String reason) throws Exception {
        Variant v = RealSite.variant(HOLES, UnitSystem.US);
        HtmlPage page = site.open(RealSite.path(v));
        fill(page, v.model().asks().get(0), typed);
        HtmlPage read = press(page, "read");
        assertThat(RealExercisesTest.typed(read, "a")).isEqualTo(typed);
        assertThat(RealSite.box(read, "a")).contains("Please write it again.", reason, "No try used.");
        assertThat(((HtmlInput) read.getHtmlElementById("answer-a")).getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(read.<DomElement>getByXPath("//button[@value='mark']")).as("nothing to hand in yet").isEmpty();
        HtmlPage forced = site.mark(v, Map.of("a", typed));
        assertThat(RealSite.text(forced)).as("nor by a form that is not ours").contains("Please write it again.", reason).doesNotContain("Worked line by line");
    }

    @Test
    void longTextsComeBackOrAreTooMuch() throws Exception {
        Variant v = RealSite.variant(HOLES, UnitSystem.US);
        String two = "9".repeat(2000);
        HtmlPage read = site.read(v, Map.of("a", two));
        assertThat(RealExercisesTest.typed(read, "a")).isEqualTo(two);
        assertThat(RealSite.box(read, "a")).contains("Please write it again.", "Type only the answer.");
        HtmlPage refused = site.read(v, Map.of("a", "9".repeat(10_000)));
        assertThat(refused.getWebResponse().getStatusCode()).isEqualTo(413);
        assertThat(RealSite.text(refused)).contains("Too much at once", "an answer up to 2000 characters.");
    }

    @Test
    void anEmptySheetCanBeHandedInAndShowsTheWorking() throws Exception {
        for (Variant v : RealSite.variants()) {
            HtmlPage marked = site.mark(v, Map.of());
            for (Ask ask : v.model().asks()) {
                assertThat(RealSite.state(marked, ask.letter())).as(RealSite.name(v)).isEqualTo("blank");
                assertThat(RealSite.box(marked, ask.letter())).as(RealSite.name(v)).endsWith("Not answered.");
            }
            assertThat(RealSite.text(marked)).as(RealSite.name(v)).contains("Right: 0 of " + v.model().asks().size(), "Worked line by line")
                    .doesNotContain("Cut with your numbers", "proves nothing");
        }
    }

    /** One early slip is one slip: what follows from it counts as right. */
    @Test
    void aLaterAnswerIsCarried() throws Exception {
        Variant v = RealSite.variant("spacing/max-gap", UnitSystem.US);
        Variant.Outcome slip = v.outcomes().stream().filter(o -> o.slip().name().equals("end-gap-not-set-aside") && o.ask().letter().equals("a")).findFirst().orElseThrow();
        HtmlPage marked = site.mark(v, RealSite.answers(v, slip.theirs()));
        assertThat(RealSite.state(marked, "a")).isEqualTo("slip");
        assertThat(RealSite.state(marked, "b")).isEqualTo("carried");
        assertThat(RealSite.text(marked)).contains("Right: 1 of 2", "Right with your own (a), ");
    }

    /** What was typed and is right stays as it was typed, also in the line beside the working of a slip elsewhere. */
    @Test
    void aRightAnswerIsNotMovedByASlipElsewhere() throws Exception {
        Variant v = RealSite.variant("bends/hose-tray", UnitSystem.US);
        Variant.Outcome slip = v.outcomes().stream().filter(o -> o.slip().name().equals("inside-arc") && o.ask().letter().equals("a")).findFirst().orElseThrow();
        Map<String, String> typed = RealSite.key(v);
        typed.put("a", RealSite.answers(v, slip.theirs()).get("a"));
        typed.put("b", RealSite.answers(v, slip.theirs()).get("b"));
        HtmlPage marked = site.mark(v, typed);
        assertThat(List.of(RealSite.state(marked, "a"), RealSite.state(marked, "c"))).containsExactly("slip", "right");
        List<DomElement> lines = marked.getByXPath("//ol[@class='working']/li");
        assertThat(RealSite.text(lines.get(lines.size() - 1))).as("the line of the right answer").contains("Yours the same, ");
    }

    /** A drawing and the sentence under it tell of one and the same part. */
    @Test
    void theDrawingAndTheConsequenceAgree() throws Exception {
        Variant v = RealSite.variant(HOLES, UnitSystem.US);
        Variant.Outcome slip = v.outcomes().stream().filter(o -> o.slip().name().equals("shared-over-holes")).findFirst().orElseThrow();
        HtmlPage marked = site.mark(v, RealSite.answers(v, slip.theirs()));
        String sentence = RealSite.text((DomElement) marked.getFirstByXPath("//p[@class='consequence']"));
        String short_ = sentence.replaceAll(".* stop (.*) short .*", "$1");
        assertThat(RealSite.plain(((DomElement) marked.getFirstByXPath("//*[@class='wide-drawing']")).getTextContent())).contains(short_ + " short");
    }
}
