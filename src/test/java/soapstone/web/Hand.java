package soapstone.web;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.DomNode;
import org.htmlunit.html.HtmlAnchor;
import org.htmlunit.html.HtmlButton;
import org.htmlunit.html.HtmlCheckBoxInput;
import org.htmlunit.html.HtmlFileInput;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlRadioButtonInput;
import org.htmlunit.html.HtmlSelect;
import org.htmlunit.html.HtmlTextArea;

/** Somebody's hand at a browser: it types, ticks and presses, and counts what it did. */
public final class Hand {

    private final SchoolUnderTest site;
    private final WebClient browser;
    private HtmlPage page;
    private int presses;
    private int ticks;
    private int fields;

    public Hand(SchoolUnderTest site, WebClient browser) {
        this.site = site;
        this.browser = browser;
    }

    public Hand open(String path) throws IOException {
        page = site.open(browser, path);
        return this;
    }

    /** Follows a link by its words. */
    public Hand follow(String words) throws IOException {
        presses++;
        HtmlAnchor link = page.getAnchors().stream().filter(a -> plain(a.getTextContent()).equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no link \"" + words + "\" on " + page.getUrl() + ":\n" + text()));
        page = link.click();
        return this;
    }

    /** Presses a button by its words. */
    public Hand press(String words) throws IOException {
        presses++;
        page = button(words).click();
        return this;
    }

    private HtmlButton button(String words) {
        return page.<HtmlButton>getByXPath("//button").stream().filter(b -> plain(b.getTextContent()).equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no button \"" + words + "\" on " + page.getUrl() + ":\n" + text()));
    }

    /** Whether there is a button of those words. */
    public boolean canPress(String words) {
        return page.<HtmlButton>getByXPath("//button").stream().anyMatch(b -> plain(b.getTextContent()).equals(words));
    }

    /** Presses a button that brings a file and leaves the page as it is. */
    public Page take(String words) throws IOException {
        presses++;
        return button(words).click();
    }

    /** Writes into the field of that name. */
    public Hand type(String name, String text) {
        fields++;
        DomElement field = field(name);
        if (field instanceof HtmlTextArea area) {
            area.setText(text);
        } else if (field instanceof HtmlSelect select) {
            select.setSelectedAttribute(text, true);
        } else {
            ((HtmlInput) field).setValue(text);
        }
        return this;
    }

    /** Ticks a box, or takes the tick away. */
    public Hand tick(String name) {
        ticks++;
        HtmlCheckBoxInput box = (HtmlCheckBoxInput) field(name);
        box.setChecked(!box.isChecked());
        return this;
    }

    /** Takes one of several. */
    public Hand choose(String name, String value) {
        ticks++;
        HtmlRadioButtonInput radio = page.getFirstByXPath("//input[@type='radio' and @name='" + name + "' and @value='" + value + "']");
        radio.setChecked(true);
        return this;
    }

    /** Writes answers into the boxes of a problem, by their letters. */
    public Hand answer(Map<String, String> typed) {
        typed.forEach((letter, text) -> {
            if (page.getFirstByXPath("//input[@type='radio' and @name='box-" + letter + "']") == null) {
                type("box-" + letter, text);
            } else {
                choose("box-" + letter, text);
            }
        });
        return this;
    }

    /** Chooses a file to be sent with the form. */
    public Hand attach(String name, Path file) {
        fields++;
        ((HtmlFileInput) field(name)).setFiles(file.toFile());
        return this;
    }

    private DomElement field(String name) {
        DomElement field = page.getFirstByXPath("//*[@name='" + name + "' and not(@hidden) and not(@type='hidden')]");
        if (field == null) {
            throw new AssertionError("no field \"" + name + "\" on " + page.getUrl() + ":\n" + text());
        }
        return field;
    }

    /** What stands in a field. */
    public String typed(String name) {
        DomElement field = field(name);
        return field instanceof HtmlTextArea area ? area.getText() : field instanceof HtmlSelect select ? select.getSelectedOptions().get(0).getValueAttribute()
                : ((HtmlInput) field).getValue();
    }

    /** What is said beside a field, which has to point there. */
    public String fault(String name) {
        DomElement says = page.getElementById("fault-" + name);
        return says == null ? "" : plain(says.getTextContent());
    }

    public HtmlPage page() {
        return page;
    }

    public String text() {
        return plain(page.getBody().getVisibleText());
    }

    public String html() {
        return page.getWebResponse().getContentAsString(java.nio.charset.StandardCharsets.UTF_8);
    }

    public int status() {
        return page.getWebResponse().getStatusCode();
    }

    public String path() {
        return URI.create(page.getUrl().toString()).getPath();
    }

    public String heading() {
        DomNode heading = page.getFirstByXPath("//h1");
        return plain(heading.getTextContent());
    }

    /** The first row of a table that begins with a cell, or has a head, of those words. */
    public String row(String words) {
        return page.<DomNode>getByXPath("//tr").stream().filter(r -> r.<DomNode>getByXPath("th | td[1]").stream().anyMatch(c -> plain(c.getTextContent()).equals(words)))
                .map(r -> plain(r.asNormalizedText())).findFirst().orElseThrow(() -> new AssertionError("no row \"" + words + "\" on " + page.getUrl() + ":\n" + text()));
    }

    public int presses() {
        return presses;
    }

    public int ticks() {
        return ticks;
    }

    public int fields() {
        return fields;
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
    }
}
