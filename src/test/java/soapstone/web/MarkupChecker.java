package soapstone.web;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import nu.validator.validation.SimpleDocumentValidator;
import org.htmlunit.html.HtmlPage;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** The Nu HTML checker, and what it found in the pages that it was shown: errors and warnings alike. */
public final class MarkupChecker {

    private final List<String> faults = new ArrayList<>();
    private final SimpleDocumentValidator checker = new SimpleDocumentValidator(true, false, false);
    private String page = "";

    private final class Faults implements ErrorHandler {

        @Override
        public void warning(SAXParseException e) {
            faults.add(page + " warning: " + e.getMessage());
        }

        @Override
        public void error(SAXParseException e) {
            faults.add(page + " line " + e.getLineNumber() + ": " + e.getMessage());
        }

        @Override
        public void fatalError(SAXParseException e) {
            error(e);
        }
    }

    public MarkupChecker() throws Exception {
        Faults handler = new Faults();
        checker.setUpMainSchema(EmbeddedValidator.SCHEMA_URL, handler);
        checker.setUpValidatorAndParsers(handler, true, false);
    }

    /** Looks at a page, which has a name for those who read the faults. */
    public void check(String name, String html) throws Exception {
        page = name;
        checker.checkHtmlInputSource(new InputSource(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8))));
    }

    public void check(String name, HtmlPage shown) throws Exception {
        check(name, shown.getWebResponse().getContentAsString(StandardCharsets.UTF_8));
    }

    /** What was found until now, each with the page and the line; the list is empty afterwards. */
    public List<String> faults() {
        List<String> found = List.copyOf(faults);
        faults.clear();
        return found;
    }
}
