package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/** Worked lines carry the numbers of the flags in the drawing above them. */
class PointingTest {

    private static RealSite site;

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Variant holes() {
        return RealSite.variant("spacing/bolt-holes", UnitSystem.US);
    }

    private static List<String> flags(HtmlPage page) {
        return page.<DomElement>getByXPath("//ol[@class='working']/li").stream().map(li -> li.getAttribute("data-flags")).toList();
    }

    /** The size that a number stands for, by the lettering of the wide drawing. */
    private static String size(HtmlPage page, int number) {
        return page.<DomElement>getByXPath("//*[@class='wide-drawing']//*[local-name()='text'][@data-flag='" + number + "']").stream()
                .map(t -> t.getAttribute("data-size")).distinct().collect(Collectors.joining(", "));
    }

    @Test
    void aLineSpeaksOfTheSizeThatItGivesAndOfThoseThatItReads() throws Exception {
        HtmlPage marked = site.mark(holes(), RealSite.key(holes()));
        assertThat(flags(marked)).containsExactly("1 2", "3", "4");
        assertThat(size(marked, 1)).isEqualTo("length");
        assertThat(size(marked, 2)).isEqualTo("first");
        assertThat(size(marked, 4)).isEqualTo("pitch");
        assertThat(marked.<DomElement>getByXPath("//ol[@class='working']//a[@href='#told-flag-4']")).allSatisfy(a -> assertThat(RealSite.plain(a.getAttribute("aria-label"))).isEqualTo("Flag 4 in the drawing")).hasSize(1);
    }

    @Test
    void oneValueOfAListHasItsOwnFlag() throws Exception {
        Variant tray = RealSite.variant("bends/hose-tray", UnitSystem.US);
        HtmlPage marked = site.mark(tray, RealSite.key(tray));
        List<String> sizes = List.of(1, 2, 3, 4, 5, 6, 7).stream().map(n -> size(marked, n)).toList();
        assertThat(sizes).contains("legs.1", "legs.2", "legs.3", "legs.4", "width", "bends.1");
        assertThat(flags(marked).get(4)).isEqualTo(String.valueOf(sizes.indexOf("width") + 1));
    }

    @Test
    void everyNumberOfALineStandsInTheDrawingAndTheOtherWayRound() throws Exception {
        for (Variant v : RealSite.variants()) {
            HtmlPage marked = site.mark(v, v.system() == UnitSystem.US ? RealSite.key(v) : RealSite.answers(v, v.outcomes().get(0).theirs()));
            Set<String> said = flags(marked).stream().filter(f -> !f.isEmpty()).flatMap(f -> List.of(f.split(" ")).stream()).collect(Collectors.toSet());
            for (String layout : List.of("wide", "narrow")) {
                Set<String> drawn = marked.<DomElement>getByXPath("//*[@class='" + layout + "-drawing']//*[@class='pen-number']/*[@data-flag]").stream()
                        .map(t -> t.getTextContent()).collect(Collectors.toSet());
                assertThat(said).as(RealSite.name(v) + " " + layout).isEqualTo(drawn);
            }
            for (DomElement link : marked.<DomElement>getByXPath("//ul[@class='flags']//a")) {
                assertThat(marked.getElementById(link.getAttribute("href").substring(1))).as(RealSite.name(v) + " " + link.getAttribute("href")).isNotNull();
            }
        }
    }

    @Test
    void mostExercisesWithADrawingHaveLinesThatPoint() {
        List<Variant> drawn = RealSite.variants().stream().filter(v -> v.model().figure().isPresent()).toList();
        List<Variant> pointing = drawn.stream().filter(v -> Drawings.in("en").told(v.model(), v.right()).filter(f -> !f.flags().isEmpty()).isPresent()).toList();
        assertThat(pointing.size()).isGreaterThan(drawn.size() * 4 / 5);
    }

    @Test
    void whatIsAskedIsDrawnWithoutFlags() throws Exception {
        HtmlPage asked = site.open(RealSite.path(holes()));
        assertThat(asked.<DomElement>getByXPath("//*[@data-flag]")).isEmpty();
    }

    @Test
    void theBenchAndALessonPointToo() throws Exception {
        HtmlPage bench = site.work("/bench/spacing/bolt-holes?units=us", Map.of("a", "48", "b", "7", "c", "1 1/2", "d", "3/8"));
        assertThat(flags(bench)).containsExactly("1 2", "3", "4");
        HtmlPage formula = site.work("/bench/formula/bend_allowance?units=us", Map.of("a", "90", "b", "1/8", "c", "0.0747", "d", "0.44"));
        assertThat(flags(formula)).containsOnly("");
        HtmlPage lesson = site.open("/lessons/holes-and-spaces");
        assertThat(lesson.<DomElement>getByXPath("//*[contains(@class, 'lesson-example')]//ol/li[@data-flags]")).isNotEmpty();
    }

    @Test
    void theDrawingIsInTheLanguageOfThePage() throws Exception {
        String marked = site.mark(holes(), RealSite.key(holes())).getWebResponse().getContentAsString();
        assertThat(marked).contains("Row of holes");
        HtmlPage spanish = site.open("/es" + RealSite.path(holes()));
        assertThat(spanish.getWebResponse().getContentAsString()).contains("Fila de barrenos").doesNotContain("Row of holes");
        assertThat(spanish.<DomElement>getFirstByXPath("//figure").getAttribute("lang")).isEqualTo("es");
        assertThat(site.open(RealSite.path(holes())).getWebResponse().getContentAsString()).contains("Row of holes").doesNotContain("Fila de barrenos");
    }
}
