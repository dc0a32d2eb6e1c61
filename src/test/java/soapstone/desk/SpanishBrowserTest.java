package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import soapstone.quantity.UnitSystem;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.variant.Variant;
import soapstone.web.SchoolUnderTest;

/** The main pages in Spanish, whose words are longer, on a phone: nothing sticks out, and axe-core finds nothing. */
@Tag("browser")
@EnabledIf(value = "isHere", disabledReason = "Chromium and its driver are not installed (Debian: chromium, chromium-driver)")
class SpanishBrowserTest {

    private static final String AXE = "const done = arguments[arguments.length - 1]; axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a','wcag2aa','wcag21a',"
            + "'wcag21aa','wcag22aa','best-practice']}, resultTypes: ['violations'], preload: false})"
            + ".then(r => done(r.violations.map(v => v.id + ' ' + v.nodes.map(n => n.target).join(' | ')).join('; ')), e => done('axe failed: ' + e))";
    private static final String SIDEWAYS = "const more = document.documentElement.scrollWidth - innerWidth; return more > 0 ? 'sideways by ' + more : ''";
    /** Words that stick out of a button, a cell of the title block or a heading. */
    private static final String STICKS_OUT = "return [...document.querySelectorAll('button, .button, .block div, .block dd, .block dt, h1, h2, h3, label, summary, .top a, .foot a')]"
            + ".filter(e => e.getClientRects().length && !e.closest('.unseen') && !e.matches('.hidden') && (e.scrollWidth > e.clientWidth + 1 && e.clientWidth"
            + " || e.getBoundingClientRect().right > innerWidth && !e.closest('.scroll'))).map(e => 'sticks out: ' + e.outerHTML.slice(0, 120)).join('; ')";

    @TempDir
    private static Path profile;
    private static SchoolUnderTest site;
    private static ChromeDriver driver;
    private static RealSchool s;
    private static Assignment week;
    private final List<String> faults = new ArrayList<>();

    static boolean isHere() {
        return new File("/usr/bin/chromium").canExecute() && new File("/usr/bin/chromedriver").canExecute();
    }

    @BeforeAll
    static void start() throws Exception {
        site = RealSchool.open();
        s = new RealSchool(site);
        ClassSettings u = RealSchool.units(UnitSystem.US);
        s.settings(new ClassSettings(u.units(), "es", u.decimalMark(), u.carriedEarns(), u.coarseEarns(), u.nearEarns(), u.bareAllowed(), u.conventions()));
        site.school.people().setLanguage(s.instructor.id(), "es");
        week = s.give(Assignment.Shows.LINES, Assignment.Late.HALF, 3, java.util.Optional.of(site.now().plusSeconds(200_000)), RealSchool.HOLES_TASK,
                new Assignment.Task(0, 2, List.of("bends/hose-tray"), 1, 2));
        for (Member student : List.of(s.ada, s.bo)) {
            try (WebClient browser = site.browser(student.person())) {
                s.begin(browser, week);
                Sheet sheet = s.sheet(week, student);
                for (Problem p : sheet.problems()) {
                    s.handIn(browser, sheet, p.place(), RealSchool.slip(p));
                }
            }
        }
        ChromeOptions options = new ChromeOptions().setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--user-data-dir=" + profile);
        driver = new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(new File("/usr/bin/chromedriver")).build(), options);
        try (InputStream axe = SpanishBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            driver.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
    }

    @AfterAll
    static void stop() {
        driver.quit();
        site.close();
    }

    private void signedIn(Person person) throws Exception {
        try (WebClient browser = site.browser(person)) {
            driver.get(site.address("/about"));
            driver.manage().deleteAllCookies();
            driver.manage().addCookie(new Cookie("soapstone", browser.getCookieManager().getCookie("soapstone").getValue(), "/"));
        }
    }

    private void look(String name, String path) {
        driver.get(site.address(path));
        look(name);
    }

    private void look(String name) {
        for (int width : List.of(320, 390)) {
            driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
            assertThat(driver.executeScript("return document.documentElement.lang")).as(name).isEqualTo("es");
            for (Object found : List.of(driver.executeAsyncScript(AXE), driver.executeScript(SIDEWAYS), driver.executeScript(STICKS_OUT))) {
                if (!found.toString().isEmpty()) {
                    faults.add(name + " at " + width + ": " + found);
                }
            }
        }
    }

    private void type(Map<String, String> typed, String... actions) {
        typed.forEach((letter, text) -> driver.executeScript("for (const e of document.getElementsByName('box-' + arguments[0])) { e.value = arguments[1]; }", letter, text));
        for (String action : actions) {
            driver.executeScript("document.querySelector('button[name=action][value=' + arguments[0] + ']').click()", action);
        }
    }

    private void guest() {
        driver.get(site.address("/about"));
        driver.manage().deleteAllCookies();
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("front", "/es");
        for (String page : List.of("units", "units/spacing", "lessons", "formulas", "formulas/bend_allowance", "bench/formula/bend_allowance?units=us", "tables", "cautions", "answers",
                "about", "privacy", "sign-in", "join", "new-password", "nowhere")) {
            pages.put(page.replaceAll("[/?].*", "") + (page.contains("/") ? " one" : ""), "/es/" + page);
        }
        pages.forEach(this::look);
        Variant holes = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        look("sheet", "/es" + RealSite.path(holes));
        type(Map.of("a", "31/2"), "read");
        look("asked again");
        driver.get(site.address("/es" + RealSite.path(holes)));
        type(Map.of("a", "47 in"), "read", "mark");
        look("marked");
    }

    @Test
    void nothingSticksOutAndAxeFindsNoFault() throws Exception {
        guest();
        signedIn(s.ada.person());
        Sheet sheet = s.sheet(week, s.ada);
        Problem holes = sheet.problems().get(0);
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("work", "/work");
        pages.put("own sheet", "/sheets/" + sheet.id());
        pages.put("problem", RealSchool.path(sheet, 1));
        pages.put("try", RealSchool.path(sheet, 1) + "/tries/" + site.school.attempts().of(holes.id()).get(0).id());
        pages.put("history", "/sheets/history");
        pages.put("own record", "/sheets/record");
        pages.put("account", "/account");
        pages.forEach(this::look);
        signedIn(s.instructor);
        String in = "/classes/" + s.in.id();
        String given = "/assignments/" + week.id();
        pages.clear();
        pages.put("classes", "/classes");
        pages.put("class", in);
        pages.put("settings", in + "/settings");
        pages.put("roster", in + "/roster");
        pages.put("new assignment", in + "/assignments/new");
        pages.put("assignment", given);
        pages.put("marks", given + "/marks");
        pages.put("morning", given + "/morning");
        pages.put("mistakes", given + "/mistakes");
        pages.put("live", given + "/live");
        pages.put("gradebook", in + "/marks");
        pages.put("student", in + "/students/" + s.ada.person().id() + "?assignment=" + week.id());
        pages.put("competencies", in + "/competencies");
        pages.put("data", in + "/students/" + s.ada.person().id() + "/data");
        pages.forEach(this::look);
        assertThat(faults).isEmpty();
    }
}
