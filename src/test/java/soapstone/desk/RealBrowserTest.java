package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;

/**
 * Every page of the real site in Chromium, and every state of exercises of each kind: accessibility by axe-core, no
 * sideways scroll on a phone, targets for gloved fingers, no request to anywhere else, nothing in the console. Needs
 * Chromium and its driver (Debian: chromium, chromium-driver); where these are missing the tests are skipped and say so.
 */
@Tag("browser")
@EnabledIf(value = "isHere", disabledReason = "Chromium and its driver are not installed (Debian: chromium, chromium-driver)")
class RealBrowserTest {

    private static final int PHONE = 390;
    private static final int DESK = 1280;
    private static final int NARROWEST = 320;
    // Kept here, or the logger would be collected and forget its level.
    private static final Logger NOISE = Logger.getLogger("org.openqa.selenium");

    /** What of the levels A and AA, of all versions, a program can judge, and what axe-core itself thinks good. */
    private static final String AXE = "axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']},"
            + " resultTypes: ['violations'], preload: false}).then(r => done(r.violations.map(v => v.id + ' ' + v.nodes.map(n => n.target).join(' | ')).join('; ')),"
            + " e => done('axe failed: ' + e))";

    /** Everything to be touched, but links inside of running text, that is lower than 44. */
    private static final String SMALL = "return [...document.querySelectorAll('a[href], button, input:not([type=hidden]):not([type=radio]), select, textarea, summary, .option')]"
            + ".filter(e => !e.matches('.skip, p:not(.where):not(.buttons):not(.example-title) a, .says a, .lesson li a, dd a'))"
            + ".filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5)"
            + ".map(e => e.outerHTML.slice(0, 90) + ' ' + e.getBoundingClientRect().height).join('; ')";

    private static final String SIDEWAYS = "return Math.max(0, document.documentElement.scrollWidth - innerWidth)";

    private static final String ELSEWHERE = "return performance.getEntriesByType('resource').map(e => e.name).filter(n => !n.startsWith(location.origin + '/')).join()";

    @TempDir
    private static Path profile;
    private static RealSite site;
    private static ChromeDriver browser;
    private static int width;

    /** What was found, each with the pages that have it. */
    private final Map<String, List<String>> faults = new TreeMap<>();

    static boolean isHere() {
        return new File("/usr/bin/chromium").canExecute() && new File("/usr/bin/chromedriver").canExecute();
    }

    @BeforeAll
    static void start() throws Exception {
        NOISE.setLevel(Level.SEVERE);
        site = new RealSite();
        ChromeDriverService driver = new ChromeDriverService.Builder().usingDriverExecutable(new File("/usr/bin/chromedriver")).build();
        ChromeOptions options = new ChromeOptions().setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--user-data-dir=" + profile);
        browser = new ChromeDriver(driver, options);
        try (InputStream axe = RealBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
    }

    @AfterAll
    static void stop() {
        browser.quit();
        site.close();
    }

    private static void wide(int wanted) {
        if (width != wanted) {
            browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", wanted, "height", 800, "deviceScaleFactor", 1, "mobile", false));
            width = wanted;
        }
    }

    private static void open(String path) {
        browser.get(site.site().address(path));
    }

    /** Fills the boxes in and presses the button, as often as it takes. */
    private static void reach(RealPages.State state) {
        open(state.path());
        state.typed().forEach((letter, text) -> browser.executeScript(
                "for (const e of document.getElementsByName('box-' + arguments[0])) { if (e.type === 'radio') e.checked = e.value === arguments[1]; else e.value = arguments[1]; }",
                letter, text));
        press(state.action().equals("mark") ? "read" : state.action());
        if (state.action().equals("mark")) {
            press("mark");
        }
    }

    private static void press(String action) {
        browser.executeScript("document.querySelector(\"button[value='\" + arguments[0] + \"']\").click()", action);
    }

    private void look(String what) {
        note(what, "low", browser.executeScript(SMALL));
        note(what, "elsewhere", browser.executeScript(ELSEWHERE));
    }

    private static Object axe() {
        return browser.executeAsyncScript("const done = arguments[arguments.length - 1]; " + AXE);
    }

    private void sideways(String what) {
        note(what, "sideways", browser.executeScript(SIDEWAYS));
    }

    private void note(String what, String kind, Object found) {
        if (!String.valueOf(found).isEmpty() && !"0".equals(String.valueOf(found))) {
            for (String one : String.valueOf(found).split("; ")) {
                faults.computeIfAbsent(kind + " at " + width + ": " + one, f -> new ArrayList<>()).add(what);
            }
        }
    }

    /** The first page of each fault says enough. */
    private void hasNoFault() {
        List<String> all = new ArrayList<>();
        faults.forEach((fault, pages) -> all.add(fault + ": " + pages.size() + " pages, such as " + pages.get(0)));
        assertThat(all).isEmpty();
    }

    private void console(String what) {
        browser.manage().logs().get(LogType.BROWSER).getAll().forEach(e -> note(what, "console", e.getMessage()));
    }

    @Test
    void everyPageOnAPhone() {
        for (String path : RealPages.all()) {
            wide(PHONE);
            open(path);
            look(path);
            if (isForAxe(path)) {
                note(path, "axe", axe());
            }
            wide(NARROWEST);
            sideways(path);
        }
        console("all pages");
        hasNoFault();
    }

    /** Benches and formulas are made alike, each from the same few parts: some are enough for the slow look. */
    private static boolean isForAxe(String path) {
        return !path.startsWith("/bench/") && !path.startsWith("/formulas/") || path.length() % 4 == 0;
    }

    @Test
    void onePageOfEachKindOnADesk() {
        wide(DESK);
        for (String path : List.of("/", "/units", "/units/bends", "/lessons", "/lessons/holes-and-spaces", "/formulas", "/formulas/bend_allowance",
                "/bench/formula/bend_allowance", "/bench/bends/hose-tray", "/exercises/bends/hose-tray?seed=7&units=metric", "/tables", "/tables/gauge",
                "/cautions", "/answers", "/about")) {
            open(path);
            look(path);
            note(path, "axe", axe());
            sideways(path);
        }
        console("pages");
        for (String path : List.of("/nowhere", "/exercises/spacing/bolt-hole", "/units?x=1&x=2")) {
            for (int wanted : List.of(DESK, PHONE)) {
                wide(wanted);
                open(path);
                look(path);
                note(path, "axe", axe());
            }
        }
        browser.manage().logs().get(LogType.BROWSER);
        hasNoFault();
    }

    @Test
    void everyStateOnPhoneAndDesk() {
        for (int wanted : List.of(PHONE, DESK)) {
            for (RealPages.State state : RealPages.states()) {
                wide(wanted);
                reach(state);
                if (!state.shows().isEmpty()) {
                    assertThat(browser.executeScript("return document.querySelectorAll('.is-" + state.shows() + "').length")).as(state.toString()).isNotEqualTo(0L);
                }
                look(state.toString());
                note(state.toString(), "axe", axe());
                wide(wanted == PHONE ? NARROWEST : wanted);
                sideways(state.toString());
            }
        }
        console("states");
        hasNoFault();
    }

    @Test
    void axeFindsFaults() {
        open("/");
        browser.executeScript("document.querySelector('main').innerHTML = '<img src=\"/x\"><input><p>pale</p>'; document.querySelector('main p').style.color = '#aaa'");
        assertThat(String.valueOf(axe())).contains("image-alt", "label", "color-contrast");
        browser.manage().logs().get(LogType.BROWSER);
    }
}
