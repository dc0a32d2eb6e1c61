package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import soapstone.web.Chromium;
import soapstone.web.InChromium;

/**
 * Every page of the real site in Chromium, and every state of exercises of each kind: accessibility by axe-core, no
 * sideways scroll on a phone, targets for gloved fingers, no request to anywhere else, nothing in the console.
 */
@InChromium
class RealBrowserTest {

    private static final int PHONE = 390;
    private static final int DESK = 1280;
    private static final int NARROWEST = 320;

    /** What of the levels A and AA, of all versions, a program can judge, and what axe-core itself thinks good. */

    /** Everything to be touched, but links inside of running text, that is lower than 44. */
    private static final String SMALL = "return [...document.querySelectorAll('a[href], button, input:not([type=hidden]):not([type=radio]), select, textarea, summary, .option')]"
            + ".filter(e => !e.matches('.skip, p:not(.where):not(.buttons):not(.example-title) a, .says a, .lesson li a, dd a'))"
            + ".filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5)"
            + ".map(e => e.outerHTML.slice(0, 90) + ' ' + e.getBoundingClientRect().height).join('; ')";

    private static final String ELSEWHERE = "return performance.getEntriesByType('resource').map(e => e.name).filter(n => !n.startsWith(location.origin + '/')).join()";

    @TempDir
    private static Path profile;
    private static RealSite site;
    private static ChromeDriver browser;
    private static int width;

    /** What was found, each with the pages that have it. */
    private final Map<String, List<String>> faults = new TreeMap<>();

    @BeforeAll
    static void start() throws Exception {
        site = new RealSite();
        browser = Chromium.start(profile);
    }

    @AfterAll
    static void stop() {
        browser.quit();
        site.close();
    }

    private static void wide(int wanted) {
        if (width != wanted) {
            Chromium.wide(browser, wanted);
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

    private static String axe() {
        return Chromium.axe(browser);
    }

    private void sideways(String what) {
        note(what, "sideways", Chromium.sideways(browser));
    }

    private void note(String what, String kind, Object found) {
        if (!String.valueOf(found).isEmpty()) {
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
                "/cautions", "/answers", "/about", "/figures", "/figures/folded-and-flat")) {
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
        assertThat(axe()).contains("image-alt", "label", "color-contrast");
        browser.manage().logs().get(LogType.BROWSER);
    }
}
