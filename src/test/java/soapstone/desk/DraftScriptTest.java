package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.school.Assignment;
import soapstone.school.Sheet;
import soapstone.web.Chromium;
import soapstone.web.InChromium;
import soapstone.web.SchoolUnderTest;

/** What is typed is kept by itself: in Chromium, over a lost connection, two tabs, a session that is over, a shared tablet. */
@InChromium
class DraftScriptTest {

    private static final String LOW = "return [...document.querySelectorAll('main button, main a.button, main input:not([type=hidden]):not([type=radio]), main textarea, main td a, main th a,"
            + " main dd a, main .links a')].filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";

    @TempDir
    private static Path profile;
    private static SchoolUnderTest site;
    private static ChromeDriver browser;

    private RealSchool s;
    private Sheet sheet;

    @BeforeAll
    static void start() throws Exception {
        site = RealSchool.open();
        browser = Chromium.start(profile);
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
        Chromium.until("signed in", () -> !browser.getCurrentUrl().contains("/sign-in") && Boolean.TRUE.equals(browser.executeScript("return document.readyState === 'complete'")));
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

    private String kept() {
        return s.school.sheets().draft(sheet.problems().get(0).id()).getOrDefault("a", "");
    }

    private static Object stored() {
        return browser.executeScript("return sessionStorage.length + localStorage.length");
    }

    @Test
    void whatIsTypedIsKeptWithoutAButtonAndBeforeLeaving() {
        openProblem();
        type(" 7 5/16''");
        Chromium.until("kept by itself", () -> text("kept").startsWith("Kept "));
        assertThat(kept()).isEqualTo(" 7 5/16''");
        type("8 in");
        browser.get(site.address("/work"));
        Chromium.until("kept on leaving", () -> kept().equals("8 in"));
        openProblem();
        assertThat(value()).isEqualTo("8 in");
        assertThat(stored()).isEqualTo(0L);
    }

    @Test
    void aTabThatWasHiddenGoesOnWithItsOwnDraft() {
        openProblem();
        type("7 in");
        browser.executeScript("Object.defineProperty(document, 'visibilityState', {value: 'hidden', configurable: true}); document.dispatchEvent(new Event('visibilitychange'))");
        Chromium.until("kept when hidden", () -> kept().equals("7 in"));
        type("9 in");
        Chromium.until("kept afterwards", () -> kept().equals("9 in"));
        assertThat(text("newer")).isEmpty();
        browser.findElement(By.cssSelector("button[value='review']")).click();
        Chromium.until("looked over", () -> browser.getCurrentUrl().endsWith("/review"));
        assertThat(text("main")).contains("9");
    }

    @Test
    void aLostConnectionLosesNothing() {
        openProblem();
        Chromium.connection(browser, false);
        type("5 1/4 in");
        Chromium.until("says so", () -> text("kept").contains("no connection"));
        assertThat(kept()).isEmpty();
        assertThat(value()).isEqualTo("5 1/4 in");
        Chromium.connection(browser, true);
        Chromium.until("kept when it is back", () -> text("kept").startsWith("Kept "));
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
        Chromium.until("the first is kept", () -> text("kept").startsWith("Kept "));
        browser.close();
        browser.switchTo().window(first);
        type("7 in");
        Chromium.until("the later is told", () -> text("newer").contains("Something newer is kept"));
        assertThat(text("newer")).contains("Kept: 6 in");
        assertThat(Chromium.axe(browser)).isEmpty();
        browser.findElements(By.cssSelector("#newer button")).get(1).click();
        Chromium.until("its own is kept", () -> kept().equals("7 in"));
        assertThat(text("newer")).isEmpty();
    }

    @Test
    void aSessionThatIsOverLeadsBackWithWhatWasTyped() {
        openProblem();
        site.wait(Duration.ofHours(1));
        type("4 3/8 in");
        Chromium.until("says so", () -> text("kept").contains("you were signed out"));
        browser.findElement(By.cssSelector("#kept a")).click();
        fillSignIn(false);
        assertThat(browser.getCurrentUrl()).endsWith(RealSchool.path(sheet, 1));
        assertThat(value()).isEqualTo("4 3/8 in");
        Chromium.until("kept", () -> kept().equals("4 3/8 in"));
        Chromium.until("nothing stays", () -> stored().equals(0L));
    }

    @Test
    void onASharedTabletNothingStaysInTheBrowser() {
        browser.manage().deleteAllCookies();
        signIn(true);
        openProblem();
        String page = browser.getWindowHandle();
        site.wait(Duration.ofMinutes(11));
        type("4 3/8 in");
        Chromium.until("says so", () -> text("kept").contains("you were signed out"));
        assertThat(stored()).isEqualTo(0L);
        browser.findElement(By.cssSelector("#kept a")).click();
        Chromium.until("a second window", () -> browser.getWindowHandles().size() == 2);
        Set<String> windows = browser.getWindowHandles();
        windows.remove(page);
        browser.switchTo().window(windows.iterator().next());
        fillSignIn(true);
        Chromium.until("the page sends it after all", () -> kept().equals("4 3/8 in"));
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
        for (int width : Chromium.WIDTHS) {
            Chromium.wide(browser, width);
            for (String path : pages) {
                browser.get(site.address(path));
                String where = path + " at " + width;
                assertThat(Chromium.axe(browser)).as(where).isEmpty();
                assertThat(String.valueOf(browser.executeScript(LOW))).as(where).isEmpty();
                assertThat(Chromium.sideways(browser)).as(where).isEmpty();
            }
        }
        Chromium.wideAsItIs(browser);
    }

    private Sheet handed(org.htmlunit.WebClient ada) throws Exception {
        Assignment week = s.give(Assignment.Shows.LINES);
        s.begin(ada, week);
        Sheet handed = s.sheet(week, s.ada);
        s.handIn(ada, handed, 1, RealSchool.slip(handed.problems().get(0)));
        return handed;
    }
}
