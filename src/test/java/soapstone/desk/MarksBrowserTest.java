package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import soapstone.school.Assignment;
import soapstone.school.Problem;
import soapstone.web.SchoolUnderTest;

/**
 * The pages about marks in Chromium, with a class of 40 and long names: axe-core finds nothing, a phone does not scroll
 * sideways, targets are large enough; and the live page looks again by itself.
 */
@Tag("browser")
@EnabledIf(value = "isHere", disabledReason = "Chromium and its driver are not installed (Debian: chromium, chromium-driver)")
class MarksBrowserTest {

    // Kept here, or the logger would be collected and forget its level.
    private static final Logger NOISE = Logger.getLogger("org.openqa.selenium");
    private static final String AXE = "const done = arguments[arguments.length - 1];"
            + "axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']},"
            + " resultTypes: ['violations'], preload: false}).then(r => done(r.violations.map(v => v.id + ' ' + v.nodes.map(n => n.target).join(' | ')).join('; ')),"
            + " e => done('axe failed: ' + e))";
    private static final String SMALL = "return [...document.querySelectorAll('main a[href], main button, main input:not([type=hidden]):not([type=radio]), main select, main textarea,"
            + " main summary, main .option')].filter(e => !e.matches('p:not(.where):not(.buttons) a, dd a, .count a, .plain li a'))"
            + ".filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";

    @TempDir
    private static Path profile;
    private static WorkingClass room;
    private static Assignment assignment;
    private static ChromeDriver browser;

    static boolean isHere() {
        return new File("/usr/bin/chromium").canExecute() && new File("/usr/bin/chromedriver").canExecute();
    }

    @BeforeAll
    static void start() throws Exception {
        NOISE.setLevel(Level.SEVERE);
        room = new WorkingClass(40);
        assignment = room.morning();
        room.give("Pickets", "spacing/max-gap");
        ChromeDriverService driver = new ChromeDriverService.Builder().usingDriverExecutable(new File("/usr/bin/chromedriver")).build();
        ChromeOptions options = new ChromeOptions().setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--user-data-dir=" + profile);
        browser = new ChromeDriver(driver, options);
        try (InputStream axe = MarksBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
        open("/sign-in");
        browser.findElement(By.name("login")).sendKeys(room.instructor.login());
        browser.findElement(By.name("password")).sendKeys(SchoolUnderTest.PASSWORD);
        browser.findElement(By.cssSelector("main button.filled")).click();
        browser.manage().logs().get(LogType.BROWSER);
    }

    @AfterAll
    static void stop() {
        browser.quit();
        room.close();
    }

    private static void open(String path) {
        browser.get(room.site.address(path));
    }

    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        for (String page : List.of("marks", "mistakes", "morning", "live")) {
            pages.put(page, "/assignments/" + assignment.id() + "/" + page);
        }
        for (String page : List.of("marks", "mistakes", "regrade")) {
            pages.put("class-" + page, "/classes/" + room.in.id() + "/" + page);
        }
        pages.put("student", "/classes/" + room.in.id() + "/students/" + room.person(4) + "?assignment=" + assignment.id());
        long attempt = room.site.school.attempts().of(room.problem(assignment, 4, 1).id()).get(0).id();
        pages.put("remark", "/attempts/" + attempt + "/marks/1");
        return pages;
    }

    @Test
    void everyPageOnPhoneAndDesk() throws Exception {
        List<String> faults = new ArrayList<>();
        for (int width : List.of(390, 1280)) {
            browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
            for (Map.Entry<String, String> page : pages().entrySet()) {
                open(page.getValue());
                shoot(page.getKey() + "-" + width);
                note(faults, page.getKey() + " " + width + " axe", String.valueOf(browser.executeAsyncScript(AXE)));
                note(faults, page.getKey() + " " + width + " small", String.valueOf(browser.executeScript(SMALL)));
                note(faults, page.getKey() + " " + width + " sideways", String.valueOf(browser.executeScript(
                        "const over = document.documentElement.scrollWidth - innerWidth; return over > 0 ? over : ''")));
            }
        }
        browser.manage().logs().get(LogType.BROWSER).forEach(line -> faults.add("console: " + line.getMessage()));
        assertThat(faults).isEmpty();
    }

    private static void note(List<String> faults, String where, String found) {
        if (!found.isEmpty()) {
            faults.add(where + ": " + found);
        }
    }

    //SHOOT
    private static void shoot(String name) throws Exception {
        Path out = Path.of("/tmp/k6shots");
        Files.createDirectories(out);
        Map<String, Object> shot = browser.executeCdpCommand("Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        Files.write(out.resolve(name + ".png"), Base64.getDecoder().decode((String) shot.get("data")));
        if (name.endsWith("1280")) {
            Map<String, Object> pdf = browser.executeCdpCommand("Page.printToPDF", Map.of("printBackground", true, "preferCSSPageSize", false));
            Files.write(out.resolve(name + ".pdf"), Base64.getDecoder().decode((String) pdf.get("data")));
        }
    }
    //END

    @Test
    void theLivePageLooksAgainByItself() {
        open("/assignments/" + assignment.id() + "/live");
        String before = browser.findElement(By.cssSelector("#live .count")).getText();
        assertThat(before).contains("3 not begun");
        Problem first = room.problem(assignment, 40, 1);
        room.right(first);
        Object after = browser.executeAsyncScript("const done = arguments[arguments.length - 1], live = document.getElementById('live');"
                + "const look = () => live.querySelector('.count').textContent.includes('2 not begun') && done(live.querySelector('.count').textContent);"
                + "new MutationObserver(look).observe(live, {childList: true}); look();");
        assertThat(String.valueOf(after)).contains("2 not begun");
        assertThat(browser.findElements(By.cssSelector("#live tbody tr"))).hasSize(40);
    }
}
