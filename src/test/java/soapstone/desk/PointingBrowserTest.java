package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;
import soapstone.web.Chromium;
import soapstone.web.InChromium;

/** What a worked line points at stands out in the drawing, by pointer, by keyboard and after a jump, and never on paper. */
@InChromium
class PointingBrowserTest {

    /** Width of the thin lines and weight of the lettering of a size, and whether its flag is filled: by more than color. */
    private static final String LOOK = "const flagged = (layer) => getComputedStyle([...document.querySelectorAll('.' + arguments[1] + '-drawing .pen-' + layer + ' [data-flag]')]"
            + ".find(e => e.dataset.size === arguments[0]));"
            + "return flagged('thin').strokeWidth + ' ' + flagged('text').fontWeight + ' ' + (flagged('flag').fill === 'rgb(255, 255, 255)' ? 'open' : 'filled')";
    private static final String PLAIN = "1px 400 open";
    private static final String POINTED = "2.25px 700 filled";

    @TempDir
    private static Path profile;
    private static RealSite site;
    private static ChromeDriver browser;

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

    private static String look(String size, String layout) {
        return (String) browser.executeScript(LOOK, size, layout);
    }

    private static void marked(int width) {
        Variant v = RealSite.variant("spacing/bolt-holes", UnitSystem.US);
        Chromium.wide(browser, width);
        browser.get(site.site().address(RealSite.path(v)));
        browser.findElement(By.id("answer-a")).sendKeys("8 5/16");
        for (String action : List.of("read", "mark")) {
            browser.executeScript("document.querySelector(\"button[value='\" + arguments[0] + \"']\").click()", action);
        }
    }

    private static WebElement line(int number) {
        return browser.findElements(By.cssSelector(".working > li")).get(number - 1);
    }

    @Test
    void underThePointer() {
        marked(1280);
        assertThat(look("pitch", "wide")).isEqualTo(PLAIN);
        browser.executeScript("arguments[0].scrollIntoView()", line(3));
        new Actions(browser).moveToElement(line(3).findElement(By.cssSelector(".line"))).perform();
        assertThat(look("pitch", "wide")).isEqualTo(POINTED);
        assertThat(look("length", "wide")).isEqualTo(PLAIN);
        new Actions(browser).moveToElement(line(1).findElement(By.cssSelector(".line"))).perform();
        assertThat(look("pitch", "wide")).isEqualTo(PLAIN);
        assertThat(look("length", "wide")).isEqualTo(POINTED);
        assertThat(look("first", "wide")).isEqualTo(POINTED);
    }

    @Test
    void withTheKeyboardOneSizeAtATime() {
        marked(390);
        browser.executeScript("document.querySelector('.worked').setAttribute('tabindex', '-1'); document.querySelector('.worked').focus()");
        browser.switchTo().activeElement().sendKeys(Keys.TAB);
        assertThat(RealSite.plain(browser.switchTo().activeElement().getAttribute("aria-label"))).isEqualTo("Flag 1 in the drawing");
        assertThat(look("length", "narrow")).isEqualTo(POINTED);
        assertThat(look("first", "narrow")).isEqualTo(PLAIN);
        browser.switchTo().activeElement().sendKeys(Keys.TAB);
        assertThat(look("length", "narrow")).isEqualTo(PLAIN);
        assertThat(look("first", "narrow")).isEqualTo(POINTED);
    }

    @Test
    void theLinkGoesToTheDrawing() {
        marked(390);
        browser.executeScript("arguments[0].click()", line(3).findElement(By.cssSelector("a[data-flag='4']")));
        assertThat((Boolean) browser.executeScript("const r = document.querySelector('.narrow-drawing svg').getBoundingClientRect(); return r.top >= 0 && r.top < innerHeight / 2"))
                .isTrue();
        assertThat(look("pitch", "narrow")).isEqualTo(POINTED);
    }

    @Test
    void onPaperOnlyTheNumbersSayIt() {
        marked(1280);
        browser.executeScript("arguments[0].click()", line(3).findElement(By.cssSelector("a[data-flag='4']")));
        browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        try {
            assertThat(look("pitch", "wide")).endsWith(" 400 open");
            assertThat(line(3).findElement(By.cssSelector(".flag-sign")).isDisplayed()).isTrue();
        } finally {
            browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        }
    }

    @Test
    void axeFindsNothingOnAMarkedPageOrOnThePagesOfKinds() {
        for (int width : Chromium.WIDTHS) {
            marked(width);
            assertThat(Chromium.axe(browser)).isEmpty();
            for (String path : List.of("/figures", "/figures/hole-row", "/es/figures/mark-row")) {
                browser.get(site.site().address(path));
                assertThat(Chromium.axe(browser)).as(path).isEmpty();
                assertThat(Chromium.sideways(browser)).as(path).asString().isEmpty();
            }
        }
    }
}
