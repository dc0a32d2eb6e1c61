package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.page.Address;
import soapstone.page.SheetKey;
import soapstone.quantity.UnitSystem;
import soapstone.school.Person;
import soapstone.variant.Variant;
import soapstone.web.Chromium;
import soapstone.web.Hand;
import soapstone.web.InChromium;
import soapstone.web.MarkupChecker;
import soapstone.web.SchoolUnderTest;

/**
 * The pages about kinds of drawing, a student's practice before, while and after it is kept, and the keeper's pages, in both languages:
 * the HTML checker and axe-core find nothing, and nothing scrolls sideways, on a phone and at a desk.
 */
@InChromium
class AuthorsAndPracticeBrowserTest {

    private static final List<String> LANGUAGES = List.of("en", "es");
    private static final Variant HOLES = RealSite.variant(RealSchool.HOLES, UnitSystem.US);
    private static final String RIGHT = RealSite.key(HOLES).get("a");

    @TempDir
    private static Path profile;
    private static SchoolUnderTest site;
    private static RealSchool room;
    private static Person keeper;
    private static ChromeDriver browser;
    private static MarkupChecker checker;

    private final List<String> faults = new ArrayList<>();

    @BeforeAll
    static void start() throws Exception {
        site = RealSchool.open();
        room = new RealSchool(site);
        keeper = site.add(Person.Kind.KEEPER, "Kestrel M.", "kestrel");
        browser = Chromium.start(profile);
        checker = new MarkupChecker();
    }

    @AfterAll
    static void stop() {
        browser.quit();
        site.close();
    }

    @AfterEach
    void noneIsFound() {
        faults.addAll(checker.faults());
        assertThat(faults).isEmpty();
    }

    private static String keep(String typed) {
        String path = Address.practice("spacing", "bolt-holes", new SheetKey(RealSite.SEED, UnitSystem.US, HOLES.exercise().fingerprint()));
        return typed.isEmpty() ? path : path + "&box-a=" + URLEncoder.encode(typed, StandardCharsets.UTF_8);
    }

    /** Pages of one person in both languages. */
    private void look(String state, Person person, int status, String... paths) throws Exception {
        for (String language : LANGUAGES) {
            site.school.people().setLanguage(person.id(), language);
            Chromium.signIn(browser, site, person);
            try (WebClient plain = site.browser(person)) {
                for (String path : paths) {
                    look(state + " " + language, plain, path, status, language);
                }
            }
        }
    }

    private void look(String state, WebClient plain, String path, int status, String language) throws Exception {
        String where = state + " " + path;
        Hand hand = new Hand(site, plain).open(path);
        assertThat(hand.status()).as(where).isEqualTo(status);
        assertThat(hand.page().getDocumentElement().getAttribute("lang")).as(where).isEqualTo(language);
        checker.check(where, hand.html());
        browser.get(site.address(path));
        inChromium(where);
    }

    private void inChromium(String where) {
        for (int width : Chromium.WIDTHS) {
            Chromium.wide(browser, width);
            for (String found : List.of(Chromium.axe(browser), Chromium.sideways(browser))) {
                if (!found.isEmpty()) {
                    faults.add(where + " at " + width + ": " + found);
                }
            }
        }
    }

    /** Kinds by turns in one language and the other. */
    @Test
    void everyKindOfDrawing() throws Exception {
        asGuest(LANGUAGES.get(0), List.of("/figures"));
        asGuest(LANGUAGES.get(1), List.of("/figures"));
        List<FigureKind> kinds = FigureKinds.kinds();
        for (int i = 0; i < kinds.size(); i++) {
            asGuest(LANGUAGES.get(i % 2), List.of("/figures/" + kinds.get(i).name()));
        }
    }

    @Tag("soak")
    @Test
    void everyKindOfDrawingInBothLanguages() throws Exception {
        for (String language : LANGUAGES) {
            asGuest(language, FigureKinds.kinds().stream().map(k -> "/figures/" + k.name()).toList());
        }
    }

    private void asGuest(String language, List<String> paths) throws Exception {
        browser.manage().deleteAllCookies();
        try (WebClient plain = site.browser()) {
            for (String path : paths) {
                look("a guest", plain, (language.equals("en") ? "" : "/" + language) + path, 200, language);
            }
        }
    }

    @Test
    void practiceOfAStudent() throws Exception {
        Person ada = room.ada.person();
        String data = "/classes/" + room.in.id() + "/students/" + ada.id();
        look("nothing kept", ada, 200, "/work", "/sheets/history", "/sheets/record");
        look("nothing kept", room.instructor, 200, data, data + "/data");
        look("to be kept", ada, 200, keep(RIGHT), keep("1 in"));
        look("cannot be kept", ada, 422, keep("31/2"), keep(" "), keep(RIGHT).replaceFirst("bank=\\w+", "bank=0123456789abcdef"));
        for (String typed : List.of(RIGHT, "8-5/16\"", "1 in")) {
            try (WebClient plain = site.browser(ada)) {
                RealSchool.form(site.open(plain, keep(typed)), keep("")).getElementsByTagName("button").get(0).click();
            }
        }
        assertThat(site.school.practices().of(ada.id())).hasSize(3);
        look("three kept", ada, 200, "/work", "/sheets/history", "/sheets/record");
        look("three kept", room.instructor, 200, data, data + "/data", data + "/data/erase");
    }

    /** The way of a guest who is a student: marked, and with the door to keeping it. */
    @Test
    void practiceThatIsMarked() throws Exception {
        Person bo = room.bo.person();
        for (String language : LANGUAGES) {
            site.school.people().setLanguage(bo.id(), language);
            Chromium.signIn(browser, site, bo);
            for (String typed : List.of(RIGHT, "1 in")) {
                browser.get(site.address(RealSite.path(HOLES)));
                inChromium("practice " + language);
                for (String action : List.of("read", "mark")) {
                    browser.executeScript("for (const e of document.getElementsByName('box-a')) { e.value = arguments[0]; }", typed);
                    browser.executeScript("document.querySelector('button[name=action][value=' + arguments[0] + ']').click()", action);
                    Chromium.until(action, () -> !browser.findElements(By.cssSelector(action.equals("read") ? "[value=mark]" : "[class*=is-]")).isEmpty());
                    inChromium("practice " + action + " " + typed + " " + language);
                }
                checker.check("practice marked " + typed + " " + language, marked(typed, bo));
            }
        }
    }

    private static HtmlPage marked(String typed, Person person) throws Exception {
        try (WebClient plain = site.browser(person)) {
            HtmlPage page = site.open(plain, RealSite.path(HOLES));
            for (String action : List.of("read", "mark")) {
                HtmlForm form = page.getForms().stream().filter(f -> f.getActionAttribute().startsWith("/exercises/")).findFirst().orElseThrow();
                form.getInputByName("box-a").setValue(typed);
                page = RealSchool.press(form, action);
            }
            return page;
        }
    }

    @Test
    void theKeepersPages() throws Exception {
        Person other = site.add(Person.Kind.INSTRUCTOR, "Bartholomew-Montgomery van den Appletreewick", "bartholomew-montgomery-van-den-appletreewick");
        String one = "/accounts/" + other.id();
        look("as it is", keeper, 200, "/account", "/account/password", "/account/second-factor", "/accounts", "/accounts/new", "/accounts/students", one,
                "/accounts/" + room.ada.person().id(), "/retention");
        try (WebClient plain = site.browser(keeper)) {
            RealSchool.form(site.open(plain, one), one + "/disable").getElementsByTagName("button").get(0).click();
        }
        look("one disabled", keeper, 200, "/accounts", one);
        look("nowhere", keeper, 404, "/accounts/999999", "/classes");
    }
}
