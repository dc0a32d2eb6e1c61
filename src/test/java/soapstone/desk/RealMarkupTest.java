package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;
import soapstone.web.MarkupChecker;

/** The HTML of every page, with its drawings, as the Nu HTML checker sees it: no error and no warning. */
class RealMarkupTest {

    private static RealSite site;
    private static MarkupChecker checker;

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
        checker = new MarkupChecker();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static void hasNoFault() {
        assertThat(checker.faults()).isEmpty();
    }

    @Test
    void theCheckerFindsFaults() throws Exception {
        checker.check("a page of faults", "<!DOCTYPE html><html lang=en><title>t</title><p id=a><p id=a><img src=x><table><tr><td colspan=2>1<tr><td>2</table>");
        assertThat(checker.faults()).hasSizeGreaterThan(2);
    }

    @Test
    void everyPage() throws Exception {
        for (String path : RealPages.all()) {
            checker.check(path, site.open(path));
        }
        for (String path : List.of("/nowhere", "/exercises/spacing/bolt-hole", "/exercises/spacing/bolt-holes?seed=x")) {
            checker.check(path, site.open(path));
        }
        hasNoFault();
    }

    @Test
    void everyStateAndEveryExerciseMarked() throws Exception {
        for (Variant v : RealSite.variants()) {
            if (v.system() == UnitSystem.METRIC) {
                checker.check("right: " + RealSite.name(v), site.mark(v, RealSite.key(v)));
            } else {
                checker.check("slip: " + RealSite.name(v), site.mark(v, RealSite.answers(v, v.outcomes().get(0).theirs())));
            }
        }
        for (RealPages.State state : RealPages.states()) {
            HtmlPage page = site.submit(state);
            checker.check(state.toString(), html(page));
            if (!state.shows().isEmpty()) {
                assertThat(page.<Object>getByXPath("//*[contains(@class, 'is-" + state.shows() + "')]")).as(state.toString()).isNotEmpty();
            }
        }
        hasNoFault();
    }

    private static String html(HtmlPage page) {
        return page.getWebResponse().getContentAsString(StandardCharsets.UTF_8);
    }
}
