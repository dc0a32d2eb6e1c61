package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import soapstone.school.Assignment;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.Chromium;
import soapstone.web.InChromium;
import soapstone.web.SchoolUnderTest;

/** What happens at real screens: fingers that tap twice, two tabs, a network that comes and goes, and a room that is watched. */
@InChromium
class TabletsAndTabsTest {

    @TempDir
    private static Path profile;
    private static SchoolUnderTest site;
    private static ChromeDriver browser;

    private RealSchool s;
    private Assignment week;
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
        week = s.give(Assignment.Shows.LINES);
        try (WebClient ada = site.browser(s.ada.person())) {
            s.begin(ada, week);
        }
        sheet = s.sheet(week, s.ada);
        Chromium.signIn(browser, site, s.ada.person());
    }

    private Problem problem() {
        return sheet.problems().get(0);
    }

    private void openProblem() {
        browser.get(site.address(RealSchool.path(sheet, 1)));
    }

    private static void type(String text) {
        browser.findElement(By.id("answer-a")).clear();
        browser.findElement(By.id("answer-a")).sendKeys(text);
    }

    private static void look() {
        browser.findElement(By.cssSelector("button[value='review']")).click();
        Chromium.until("looked over", () -> browser.getCurrentUrl().endsWith("/review") && text().contains("Reads as"));
    }

    private static String text() {
        return String.valueOf(browser.executeScript("return document.getElementById('main').innerText")).replace('\u00a0', ' ');
    }

    private static By handIn() {
        return By.cssSelector("form[action$='/review'] button.filled");
    }

    private int tries() {
        return s.school.attempts().of(problem().id()).size();
    }

    @Test
    void twoTapsOnHandInCountOnce() {
        openProblem();
        type(RealSchool.right(problem()).get("a"));
        look();
        new Actions(browser).doubleClick(browser.findElement(handIn())).perform();
        Chromium.until("the receipt", () -> text().contains("Receipt "));
        assertThat(text()).contains("Right.", "One try left.");
        assertThat(tries()).isEqualTo(1);
    }

    @Test
    void theSameReviewInTwoTabsIsHandedInOnceAndBothShowTheReceipt() {
        openProblem();
        type(RealSchool.right(problem()).get("a"));
        look();
        String first = browser.getWindowHandle();
        browser.switchTo().newWindow(WindowType.TAB);
        browser.get(site.address(RealSchool.path(sheet, 1) + "/review"));
        browser.findElement(handIn()).click();
        Chromium.until("the receipt", () -> text().contains("Receipt "));
        browser.close();
        browser.switchTo().window(first);
        browser.findElement(handIn()).click();
        Chromium.until("the receipt", () -> text().contains("Receipt "));
        assertThat(tries()).isEqualTo(1);
    }

    @Test
    void whatIsTypedWithoutANetworkIsHandedInWhenItIsBack() {
        String right = RealSchool.right(problem()).get("a");
        openProblem();
        Chromium.connection(browser, false);
        type(right);
        Chromium.until("says so", () -> text().contains("Not kept yet: no connection."));
        Chromium.connection(browser, true);
        Chromium.until("kept", () -> s.school.sheets().draft(problem().id()).getOrDefault("a", "").equals(right));
        look();
        browser.findElement(handIn()).click();
        Chromium.until("the receipt", () -> text().contains("Receipt "));
        assertThat(s.school.attempts().of(problem().id()).get(0).marks().get(0).typed()).isEqualTo(right);
    }

    @Test
    void theInstructorsLivePageShowsAStudentWhoHandsInAtAnotherDevice() throws Exception {
        Chromium.signIn(browser, site, s.instructor);
        browser.get(site.address("/assignments/" + week.id() + "/live"));
        assertThat(text()).contains("0 handed in");
        try (WebClient ada = site.browser(s.ada.person())) {
            s.handIn(ada, sheet, 1, Map.of("a", RealSchool.slip(problem()).get("a")));
        }
        Chromium.until("the page looks again", () -> text().contains("1 handed in"));
        assertThat(browser.findElement(By.cssSelector("#live tbody tr")).getText()).contains("Ada");
    }
}
