package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import soapstone.school.Person;

/** Chromium as the tests use it: looked for on the PATH, without a window, with axe-core in every page. */
public final class Chromium {

    /** A phone and a desk, in pixels. */
    public static final List<Integer> WIDTHS = List.of(390, 1280);

    // Kept here, or the logger would be collected and forget its level.
    private static final Logger NOISE = Logger.getLogger("org.openqa.selenium");
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** What of the levels A and AA, of all versions, a program can judge, and what axe-core itself thinks good. */
    private static final String AXE = "const done = arguments[arguments.length - 1];"
            + "axe.run(document, {runOnly: {type: 'tag', values: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']},"
            + " resultTypes: ['violations'], preload: false}).then(r => done(r.violations.map(v => v.id + ' ' + v.nodes.map(n => n.target).join(' | ')).join('; ')),"
            + " e => done('axe failed: ' + e))";

    private Chromium() {}

    public static boolean isHere() {
        return onPath("chromium").isPresent() && onPath("chromedriver").isPresent();
    }

    private static Optional<File> onPath(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(Pattern.quote(File.pathSeparator))).map(folder -> new File(folder, program))
                .filter(File::canExecute).findFirst();
    }

    /** A browser of its own, which keeps what it has to keep in that folder; whoever starts it quits it. */
    public static ChromeDriver start(Path profile) throws IOException {
        NOISE.setLevel(Level.SEVERE);
        ChromeDriverService driver = new ChromeDriverService.Builder().usingDriverExecutable(onPath("chromedriver").orElseThrow()).build();
        ChromeOptions options = new ChromeOptions().setBinary(onPath("chromium").orElseThrow());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--user-data-dir=" + profile);
        ChromeDriver browser = new ChromeDriver(driver, options);
        axeInEveryPage(browser);
        return browser;
    }

    /** In the tab at hand; a tab that is opened later needs it again. */
    public static void axeInEveryPage(ChromeDriver browser) throws IOException {
        try (InputStream axe = Chromium.class.getResourceAsStream("/axe.min.js")) {
            browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", new String(axe.readAllBytes(), StandardCharsets.UTF_8)));
        }
    }

    /** As wide as a phone, or as whatever has so many pixels. */
    public static void wide(ChromeDriver browser, int width) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    }

    /** As wide as its window again. */
    public static void wideAsItIs(ChromeDriver browser) {
        browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    }

    /** What axe-core finds wrong with the page at hand; empty where it finds nothing. */
    public static String axe(ChromeDriver browser) {
        return String.valueOf(browser.executeAsyncScript(AXE));
    }

    /** By how many pixels the page at hand scrolls sideways; empty where it does not. */
    public static String sideways(ChromeDriver browser) {
        return String.valueOf(browser.executeScript("const over = document.documentElement.scrollWidth - innerWidth; return over > 0 ? over + ' pixels' : ''"));
    }

    /** Whether there is a network at all. */
    public static void connection(ChromeDriver browser, boolean there) {
        browser.executeCdpCommand("Network.enable", Map.of());
        browser.executeCdpCommand("Network.emulateNetworkConditions", Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    /** Signs somebody in who has the usual password; who was in before is out. */
    public static void signIn(ChromeDriver browser, SchoolUnderTest site, Person person) {
        browser.manage().deleteAllCookies();
        browser.get(site.address("/sign-in"));
        browser.findElement(By.name("login")).sendKeys(person.login());
        browser.findElement(By.name("password")).sendKeys(SchoolUnderTest.PASSWORD);
        browser.findElement(By.cssSelector("main button.filled")).click();
        until("signed in", () -> !browser.getCurrentUrl().contains("/sign-in") && Boolean.TRUE.equals(browser.executeScript("return document.readyState === 'complete'")));
    }

    /** Looks again and again, also while a page is just being changed for the next. */
    public static void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!holdsNow(holds)) {
            assertThat(System.nanoTime()).as(what).isLessThan(end);
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError("stopped while waiting for: " + what, e);
            }
        }
    }

    private static boolean holdsNow(BooleanSupplier holds) {
        try {
            return holds.getAsBoolean();
        } catch (WebDriverException e) {
            return false;
        }
    }
}
