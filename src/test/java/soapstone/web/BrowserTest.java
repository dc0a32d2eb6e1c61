package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;

/**
 * What only a real browser shows: the script, the layout, the keyboard.
 */
@InChromium
class BrowserTest {

    private static final String SHEET = "/exercises/spacing/bolt-holes?seed=48213&units=us";
    private static final List<String> PAGES = List.of("/", "/units", "/units/spacing", "/units/pressure", SHEET, "/exercises/pressure/pump-lid?seed=7&units=us",
            "/exercises/spacing/every-state?seed=7&units=us", "/lessons", "/lessons/holes-and-spaces", "/formulas", "/formulas/bend_allowance",
            "/bench/spacing/bolt-holes", "/tables", "/tables/gauge", "/cautions", "/answers", "/about", "/nowhere");


    @TempDir
    private static Path profile;
    private static SiteUnderTest site;
    private static ChromeDriver browser;

    @BeforeAll
    static void start() throws Exception {
        site = SiteUnderTest.start();
        browser = Chromium.start(profile);
    }

    @AfterAll
    static void stop() throws Exception {
        browser.quit();
        site.close();
    }

    private static void open(String path, int width) {
        browser.manage().window().setSize(new Dimension(width, 900));
        browser.get(site.address(path));
    }

    private static void waitFor(String id, String text) {
        Chromium.until(text, () -> browser.findElement(By.id(id)).getText().replace('\u00A0', ' ').contains(text));
    }

    private static Object run(String script) {
        return ((JavascriptExecutor) browser).executeScript(script);
    }

    @Test
    void theReadingAppearsWhileOneTypes() {
        open(SHEET, 1280);
        WebElement field = browser.findElement(By.id("answer-a"));
        field.sendKeys("4 1/4");
        waitFor("says-a", "reads as 4 1/4 in. Not marked yet.");
        assertThat(browser.findElement(By.id("box-a")).getAttribute("class")).isEqualTo("box is-read");
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "3 15");
        waitFor("says-a", "Please write it again. There are two ways to read 3 15");
        assertThat(field.getAttribute("aria-invalid")).isEqualTo("true");
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        Chromium.until("nothing is said", () -> browser.findElement(By.id("says-a")).getText().isEmpty());
        assertThat(field.getAttribute("aria-invalid")).isNull();
    }

    @Test
    void anAnswerIsTriedOutInTheWayChosen() {
        open("/answers", 390);
        browser.findElement(By.id("answer-a")).sendKeys("4 1/4");
        waitFor("says-a", "reads as 4 1/4 in.");
        assertThat(browser.findElement(By.id("says-a")).getText()).doesNotContain("Not marked");
    }

    @Test
    void aSheetIsWorkedByKeyboardAlone() {
        open(SHEET, 1280);
        browser.findElement(By.id("answer-a")).sendKeys("3-3/4\"", Keys.TAB, "20", Keys.ENTER);
        Chromium.until("read back", () -> browser.getTitle().startsWith("Read back"));
        browser.findElement(By.id("answer-b")).sendKeys(Keys.ENTER);
        Chromium.until("marked", () -> browser.getTitle().startsWith("Marked"));
        assertThat(browser.findElement(By.id("box-a")).getText()).contains("This answer fits: holes counted as spaces.");
    }

    @Test
    void theFocusGoesToWhatMustBeWrittenAgain() {
        open(SHEET, 1280);
        browser.findElement(By.id("answer-a")).sendKeys("3 15", Keys.ENTER);
        Chromium.until("read back", () -> browser.getTitle().startsWith("Read back"));
        assertThat(browser.switchTo().activeElement().getText()).startsWith("Write these again");
        assertThat(run("return getComputedStyle(document.getElementById('answer-a')).borderTopStyle")).isEqualTo("dashed");
    }

    @Test
    void noPageScrollsSidewaysOnAnyScreen() {
        for (String path : PAGES) {
            for (int width : List.of(500, 800, 816, 1136, 1280)) {
                open(path, width);
                assertThat(run("return Math.max(0, document.documentElement.scrollWidth - innerWidth)")).as(path + " at " + width).isEqualTo(0L);
            }
        }
    }

    /** The narrowest window of a browser is 500 wide; a frame stands in for the phone. */
    @Test
    void noPageScrollsSidewaysOnAPhoneEvenWithWideSpacing() {
        for (String path : PAGES) {
            open(path, 1280);
            for (int width : List.of(320, 390)) {
                Chromium.wide(browser, width);
                assertThat(run("return Math.max(0, document.documentElement.scrollWidth - innerWidth)")).as(path + " at " + width).isEqualTo(0L);
                run("for (const e of document.querySelectorAll('body *:not(svg *)')) {e.style.lineHeight='1.5';e.style.letterSpacing='0.12em';e.style.wordSpacing='0.16em';}");
                assertThat(run("return Math.max(0, document.documentElement.scrollWidth - innerWidth)")).as(path + " spaced at " + width).isEqualTo(0L);
            }
            Chromium.wideAsItIs(browser);
        }
    }

    @Test
    void oneDrawingOfTheTwoIsShownAtItsOwnSize() {
        for (int width : List.of(360, 500, 800, 815, 816, 1135, 1136, 1280)) {
            browser.manage().window().setSize(new Dimension(width, 900));
            Chromium.wide(browser, width);
            browser.get(site.address(SHEET));
            Object shown = run("return [...document.querySelectorAll('.figure svg')].filter(s => s.getBoundingClientRect().width > 0)"
                    + ".map(s => s.getBoundingClientRect().width + ' of ' + s.viewBox.baseVal.width).join()");
            assertThat(shown).as("at " + width).isEqualTo(width >= 816 ? "720 of 720" : "340 of 340");
        }
        Chromium.wideAsItIs(browser);
    }

    @Test
    void targetsAreLargeEnoughForGloves() {
        for (String path : PAGES) {
            open(path, 500);
            assertThat(run("return [...document.querySelectorAll('button, .button, input:not([type=hidden]):not([type=radio]), select, textarea, .option, nav a')]"
                    + ".filter(e => e.getBoundingClientRect().height < 44).map(e => e.outerHTML).join()")).as(path).isEqualTo("");
        }
    }

    @Test
    void everyStopOfTheKeyboardShowsItsFocus() {
        open(SHEET, 1280);
        for (int i = 0; i < 25; i++) {
            browser.switchTo().activeElement().sendKeys(Keys.TAB);
            Object outline = run("const e = document.activeElement; return e === document.body ? '3px' : getComputedStyle(e).outlineWidth");
            assertThat(outline).as("stop " + i + ": " + run("return document.activeElement.outerHTML.slice(0, 80)")).isEqualTo("3px");
        }
    }

    @Test
    void theBrowserHasNothingToComplainOf() {
        browser.manage().logs().get(LogType.BROWSER);
        for (String path : PAGES.subList(0, PAGES.size() - 1)) {
            open(path, 1280);
        }
        assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }
}
