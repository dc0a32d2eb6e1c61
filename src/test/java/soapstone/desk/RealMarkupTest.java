package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import nu.validator.validation.SimpleDocumentValidator;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/** The HTML of every page, with its drawings, as the Nu HTML checker sees it: no error and no warning. */
class RealMarkupTest {

    private static RealSite site;
    private static final List<String> FAULTS = new ArrayList<>();
    private static SimpleDocumentValidator checker;

    /** Collects what the checker says of the page at hand. */
    private static final class Faults implements ErrorHandler {

        private String page = "";

        @Override
        public void warning(SAXParseException e) {
            FAULTS.add(page + " warning: " + e.getMessage());
        }

        @Override
        public void error(SAXParseException e) {
            FAULTS.add(page + " line " + e.getLineNumber() + ": " + e.getMessage());
        }

        @Override
        public void fatalError(SAXParseException e) {
            error(e);
        }
    }

    private static final Faults HANDLER = new Faults();

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
        checker = new SimpleDocumentValidator(true, false, false);
        checker.setUpMainSchema(EmbeddedValidator.SCHEMA_URL, HANDLER);
        checker.setUpValidatorAndParsers(HANDLER, true, false);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static void check(String name, String html) throws Exception {
        HANDLER.page = name;
        checker.checkHtmlInputSource(new InputSource(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8))));
    }

    private static void hasNoFault() {
        List<String> faults = List.copyOf(FAULTS);
        FAULTS.clear();
        assertThat(faults).isEmpty();
    }

    @Test
    void theCheckerFindsFaults() throws Exception {
        check("a page of faults", "<!DOCTYPE html><html lang=en><title>t</title><p id=a><p id=a><img src=x><table><tr><td colspan=2>1<tr><td>2</table>");
        assertThat(FAULTS).hasSizeGreaterThan(2);
        FAULTS.clear();
    }

    @Test
    void everyPage() throws Exception {
        for (String path : RealPages.all()) {
            check(path, html(site.open(path)));
        }
        for (String path : List.of("/nowhere", "/exercises/spacing/bolt-hole", "/exercises/spacing/bolt-holes?seed=x")) {
            check(path, html(site.open(path)));
        }
        hasNoFault();
    }

    @Test
    void everyStateAndEveryExerciseMarked() throws Exception {
        for (Variant v : RealSite.variants()) {
            if (v.system() == UnitSystem.METRIC) {
                check("right: " + RealSite.name(v), html(site.mark(v, RealSite.key(v))));
            } else {
                check("slip: " + RealSite.name(v), html(site.mark(v, RealSite.answers(v, v.outcomes().get(0).theirs()))));
            }
        }
        for (RealPages.State state : RealPages.states()) {
            HtmlPage page = site.submit(state);
            check(state.toString(), html(page));
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
