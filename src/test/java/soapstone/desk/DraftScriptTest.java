package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import soapstone.school.Assignment;
import soapstone.school.Sheet;
import soapstone.web.SchoolUnderTest;

/** What is typed is kept by itself: in Chromium, over a lost connection, two tabs, a session that is over, a shared tablet. */
@Tag("browser")
@EnabledIf(value = "soapstone.desk.RealBrowserTest#isHere", disabledReason = "Chromium and its driver are not installed (Debian: chromium, chromium-driver)")
class DraftScriptTest {

    private static final String AXE = "const done = arguments[arguments.length - 1]; axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a','wcag2aa','wcag21a',"
            + "'wcag21aa','wcag22aa','best-practice']}, resultTypes: ['violations'], preload: false}).then("
            + "r => done(r.violations.map(v => v.id + ' ' + v.nodes.map(n => n.target).join(' | ')).join('; ')), e => done('axe failed: ' + e))";
    private static final String LOW = "return [...document.querySelectorAll('main button, main a.button, main input:not([type=hidden]):not([type=radio]), main textarea, main td a, main th a,"
            + " main dd a, main .links a')].filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Logger NOISE = Logger.getLogger("org.openqa.selenium");

    @TempDir
    private static Path profile;
    private static SchoolUnderTest site;
    private static ChromeDriver browser;

    private RealSchool s;
    private Sheet sheet;

    @BeforeAll
    static void start() throws Exception {
        NOISE.setLevel(Level.SEVERE);
        site = RealSchool.open();
        ChromeDriverService driver = new ChromeDriverService.Builder().usingDriverExecutable(new File("/usr/bin/chromedriver")).build();
        ChromeOptions options = new ChromeOptions().setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--user-data-dir=" + profile);
        browser = new ChromeDriver(driver, options);
        try (InputStream axe = DraftScriptTest.class.getResourceAsStream("/axe.min.js")) {
            browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
    }

    @AfterAll
    static void stop() {
        browser.quit();
        site.close();
    }

    @BeforeEach
    void begin() throws Exception {
        s = new RealSchool(site);
        Assignment week = s.give(Assignment.Shows.LINES);
        s.begin(site.browser(s.ada.person()), week);
        sheet = s.sheet(week, s.ada);
        browser.manage().deleteAllCookies();
        signIn(false);
    }

    private void signIn(boolean tablet) {
        browser.get(site.address("/sign-in"));
        fillSignIn(tablet);
    }

    private void fillSignIn(boolean tablet) {
        browser.findElement(By.id("login")).sendKeys(s.ada.person().login());
        browser.findElement(By.id("password")).sendKeys(SchoolUnderTest.PASSWORD);
        if (tablet) {
            browser.findElement(By.name("tablet")).click();
        }
        browser.findElement(By.cssSelector("form[action='/sign-in'] button")).click();
        until("signed in", () -> !browser.getCurrentUrl().contains("/sign-in") && Boolean.TRUE.equals(browser.executeScript("return document.readyState === 'complete'")));
    }

    private void openProblem() {
        browser.get(site.address(RealSchool.path(sheet, 1)));
    }

    private static void type(String text) {
        browser.findElement(By.id("answer-a")).clear();
        browser.findElement(By.id("answer-a")).sendKeys(text);
    }

    private static String text(String id) {
        return String.valueOf(browser.executeScript("return document.getElementById(arguments[0]).textContent", id));
    }

    private static String value() {
        return String.valueOf(browser.executeScript("return document.getElementById('answer-a').value"));
    }

    private static void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!holds.getAsBoolean()) {
            assertThat(System.nanoTime()).as(what).isLessThan(end);
            browser.executeAsyncScript("setTimeout(arguments[0], 50)");
        }
    }

    private String kept() {
        return s.school.sheets().draft(sheet.problems().get(0).id()).getOrDefault("a", "");
    }

    private static void connection(boolean there) {
        browser.executeCdpCommand("Network.enable", Map.of());
        browser.executeCdpCommand("Network.emulateNetworkConditions", Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    private static Object stored() {
        return browser.executeScript("return sessionStorage.length + localStorage.length");
    }

    @Test
    void whatIsTypedIsKeptWithoutAButtonAndBeforeLeaving() {
        openProblem();
        type(" 7 5/16''");
        until("kept by itself", () -> text("kept").startsWith("Kept "));
        assertThat(kept()).isEqualTo(" 7 5/16''");
        type("8 in");
        browser.get(site.address("/work"));
        until("kept on leaving", () -> kept().equals("8 in"));
        openProblem();
        assertThat(value()).isEqualTo("8 in");
        assertThat(stored()).isEqualTo(0L);
    }

    @Test
    void aTabThatWasHiddenGoesOnWithItsOwnDraft() {
        openProblem();
        type("7 in");
        browser.executeScript("Object.defineProperty(document, 'visibilityState', {value: 'hidden', configurable: true}); document.dispatchEvent(new Event('visibilitychange'))");
        until("kept when hidden", () -> kept().equals("7 in"));
        type("9 in");
        until("kept afterwards", () -> kept().equals("9 in"));
        assertThat(text("newer")).isEmpty();
        browser.findElement(By.cssSelector("button[value='review']")).click();
        until("looked over", () -> browser.getCurrentUrl().endsWith("/review"));
        assertThat(text("main")).contains("9");
    }

    @Test
    void aLostConnectionLosesNothing() {
        openProblem();
        connection(false);
        type("5 1/4 in");
        until("says so", () -> text("kept").contains("no connection"));
        assertThat(kept()).isEmpty();
        assertThat(value()).isEqualTo("5 1/4 in");
        connection(true);
        until("kept when it is back", () -> text("kept").startsWith("Kept "));
        assertThat(kept()).isEqualTo("5 1/4 in");
        assertThat(stored()).isEqualTo(0L);
    }

    @Test
    void ofTwoTabsTheLaterOneIsOfferedBoth() {
        openProblem();
        String first = browser.getWindowHandle();
        browser.switchTo().newWindow(WindowType.TAB);
        openProblem();
        type("6 in");
        until("the first is kept", () -> text("kept").startsWith("Kept "));
        browser.close();
        browser.switchTo().window(first);
        type("7 in");
        until("the later is told", () -> text("newer").contains("Something newer is kept"));
        assertThat(text("newer")).contains("Kept: 6 in");
        assertThat(String.valueOf(browser.executeAsyncScript(AXE))).isEmpty();
        browser.findElements(By.cssSelector("#newer button")).get(1).click();
        until("its own is kept", () -> kept().equals("7 in"));
        assertThat(text("newer")).isEmpty();
    }

    @Test
    void aSessionThatIsOverLeadsBackWithWhatWasTyped() {
        openProblem();
        site.wait(Duration.ofHours(1));
        type("4 3/8 in");
        until("says so", () -> text("kept").contains("you were signed out"));
        browser.findElement(By.cssSelector("#kept a")).click();
        fillSignIn(false);
        assertThat(browser.getCurrentUrl()).endsWith(RealSchool.path(sheet, 1));
        assertThat(value()).isEqualTo("4 3/8 in");
        until("kept", () -> kept().equals("4 3/8 in"));
        until("nothing stays", () -> stored().equals(0L));
    }

    @Test
    void onASharedTabletNothingStaysInTheBrowser() {
        browser.manage().deleteAllCookies();
        signIn(true);
        openProblem();
        String page = browser.getWindowHandle();
        site.wait(Duration.ofMinutes(11));
        type("4 3/8 in");
        until("says so", () -> text("kept").contains("you were signed out"));
        assertThat(stored()).isEqualTo(0L);
        browser.findElement(By.cssSelector("#kept a")).click();
        until("a second window", () -> browser.getWindowHandles().size() == 2);
        Set<String> windows = browser.getWindowHandles();
        windows.remove(page);
        browser.switchTo().window(windows.iterator().next());
        fillSignIn(true);
        until("the page sends it after all", () -> kept().equals("4 3/8 in"));
        browser.close();
        browser.switchTo().window(page);
        assertThat(stored()).isEqualTo(0L);
    }

    @Test
    void everyPageOnAPhoneAndOnADesk() throws Exception {
        org.htmlunit.WebClient ada = site.browser(s.ada.person());
        s.review(ada, sheet, 1, Map.of("a", "31/2"));
        String open = "/sheets/open/" + s.give(Assignment.Shows.NOTHING).id();
        Sheet handed = handed(ada);
        String tries = RealSchool.path(handed, 1) + "/tries/" + s.school.attempts().ofSheet(handed.id()).get(0).id();
        List<String> pages = List.of("/work", "/sheets/history", open, "/sheets/" + sheet.id(), RealSchool.path(sheet, 1), RealSchool.path(sheet, 1) + "/review",
                RealSchool.path(handed, 1), tries);
        for (int width : List.of(390, 1280)) {
            browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
            for (String path : pages) {
                browser.get(site.address(path));
                String where = path + " at " + width;
                assertThat(String.valueOf(browser.executeAsyncScript(AXE))).as(where).isEmpty();
                assertThat(String.valueOf(browser.executeScript(LOW))).as(where).isEmpty();
                assertThat(browser.executeScript("return Math.max(0, document.documentElement.scrollWidth - innerWidth)")).as(where).isEqualTo(0L);
            }
        }
        browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    }

    private Sheet handed(org.htmlunit.WebClient ada) throws Exception {
        Assignment week = s.give(Assignment.Shows.LINES);
        s.begin(ada, week);
        Sheet handed = s.sheet(week, s.ada);
        s.handIn(ada, handed, 1, RealSchool.slip(handed.problems().get(0)));
        return handed;
    }
}
