package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.source.Issues;
import soapstone.source.Source;
import soapstone.source.Yaml;
import soapstone.web.MarkupChecker;

/** The pages for authors about kinds of drawing: every kind, with all that it takes, as the bank writes it, and how it looks. */
class FigurePagesTest {

    private static RealSite site;

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static List<Exercise> users(FigureKind kind) {
        return RealSite.library().bank().exercises().values().stream().filter(e -> e.us().figure().map(Model.FigurePlan::kind).equals(Optional.of(kind.name()))).toList();
    }

    private static List<String> texts(HtmlPage page, String xpath) {
        return page.<DomElement>getByXPath(xpath).stream().map(RealSite::text).toList();
    }

    @Test
    void everyKindIsInTheListThatTheFootOfEachPageLinksTo() throws Exception {
        HtmlPage list = site.open("/tables").<org.htmlunit.html.HtmlAnchor>getFirstByXPath("//footer//a[@href='/figures']").click();
        assertThat(texts(list, "//tbody/tr/th")).containsExactlyElementsOf(FigureKinds.kinds().stream().map(FigureKind::name).toList());
        assertThat(texts(list, "//tbody/tr[th='hole-row']/td")).containsExactly("Row of holes", "Yes", String.valueOf(users(FigureKinds.kind("hole-row").orElseThrow()).size()));
    }

    @Test
    void aKindsPageSaysAllThatItTakes() throws Exception {
        for (FigureKind kind : FigureKinds.kinds()) {
            HtmlPage page = site.open("/figures/" + kind.name());
            assertThat(texts(page, "//tbody/tr/th")).as(kind.name()).containsExactlyElementsOf(kind.arguments().stream().map(a -> a.name()).toList());
            assertThat(texts(page, "//tbody/tr/td[2]")).as(kind.name()).containsExactlyElementsOf(kind.arguments().stream().map(a -> a.optional() ? "No" : "Yes").toList());
            assertThat(RealSite.text(page)).as(kind.name()).contains(kind.asCut() ? "is laid over the right one" : "has no drawing of its own");
        }
        HtmlPage strip = site.open("/figures/flat-strip");
        assertThat(texts(strip, "//tr[th='bends']/td[1]")).containsExactly("a list; each value is a length");
    }

    /** What the page shows of a file can be put into one: read again, it says the same. */
    @Test
    void theLineIsOneThatABankFileCanHold() throws Exception {
        for (FigureKind kind : FigureKinds.kinds()) {
            HtmlPage page = site.open("/figures/" + kind.name());
            List<String> lines = texts(page, "//div[@class='part']/p/code");
            List<Exercise> users = users(kind);
            assertThat(lines).as(kind.name()).hasSameSizeAs(users);
            for (int i = 0; i < users.size(); i++) {
                Model.FigurePlan plan = users.get(i).us().figure().orElseThrow();
                assertThat(read(lines.get(i))).as(lines.get(i)).isEqualTo(plan.texts());
            }
        }
    }

    private static Map<String, String> read(String line) {
        Issues issues = new Issues();
        Yaml.Entries figure = Yaml.read(new Source("line.yaml", line), issues).flatMap(m -> m.map("figure")).orElseThrow();
        assertThat(issues.all()).as(line).isEmpty();
        return figure.keys().stream().filter(k -> !k.equals("kind")).collect(Collectors.toMap(k -> k, k -> figure.text(k).orElseThrow().value()));
    }

    @Test
    void samplesAreOfBothSystemsAndOneIsCutWithASlip() throws Exception {
        HtmlPage page = site.open("/figures/hole-row");
        assertThat(texts(page, "//div[contains(@class, 'sheet-drawing')]/h2")).containsExactly("Bolt holes along an angle, Inch, US: the smallest of 200 draws",
                "Bolt holes along an angle, Inch, US: the largest of 200 draws", "Bolt holes along an angle, Metric: the smallest of 200 draws",
                "Bolt holes along an angle, Metric: the largest of 200 draws", "Bolt holes along an angle, Inch, US: cut by the slip shared-over-holes");
        List<Double> lengths = page.<DomElement>getByXPath("//div[@class='wide-drawing']//*[local-name()='desc']").stream().limit(2)
                .map(d -> inches(d.getTextContent())).toList();
        assertThat(lengths.get(0)).isLessThan(45);
        assertThat(lengths.get(1)).isGreaterThan(100);
    }

    private static double inches(String desc) {
        var m = Pattern.compile("Length: (\\d+)").matcher(desc);
        assertThat(m.find()).as(desc).isTrue();
        return Double.parseDouble(m.group(1));
    }

    /** A drawing as it is asked has the letter of what is asked, never its number. */
    @Test
    void samplesTellNoAnswer() throws Exception {
        HtmlPage page = site.open("/figures/hole-row");
        for (DomElement desc : page.<DomElement>getByXPath("//div[@class='wide-drawing']//*[local-name()='desc']").subList(0, 4)) {
            assertThat(desc.getTextContent()).contains("Center to center: asked, letter a.");
        }
    }

    @Test
    void everyKindThatTheBankUsesHasSamples() throws Exception {
        for (FigureKind kind : FigureKinds.kinds()) {
            HtmlPage page = site.open("/figures/" + kind.name());
            int samples = page.getByXPath("//figure").size();
            if (users(kind).isEmpty()) {
                assertThat(RealSite.text(page)).as(kind.name()).contains("No exercise of this bank has such a drawing yet.");
                assertThat(samples).as(kind.name()).isZero();
            } else {
                assertThat(samples).as(kind.name()).isBetween(4, 5);
            }
        }
    }

    @Test
    void anUnknownKindIsNotFound() throws Exception {
        assertThat(RealSite.text(site.open("/figures/hole-rows"))).contains("Row of holes");
        assertThat(site.open("/figures/hole-rows").getWebResponse().getStatusCode()).isEqualTo(404);
    }

    @Test
    void theMarkupIsClean() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        checker.check("/figures", site.open("/figures"));
        for (FigureKind kind : FigureKinds.kinds()) {
            checker.check(kind.name(), site.open("/es/figures/" + kind.name()));
        }
        for (var v : RealSite.variants().stream().filter(v -> v.model().figure().isPresent()).limit(20).toList()) {
            checker.check(RealSite.name(v), site.mark(v, RealSite.key(v)).getWebResponse().getContentAsString(StandardCharsets.UTF_8));
        }
        assertThat(checker.faults()).isEmpty();
    }
}
