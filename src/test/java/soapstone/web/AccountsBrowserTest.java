package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import soapstone.school.Codes;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.school.SecretCodes;

/**
 * The pages about accounts in Chromium, empty, with faults and with long names: axe-core and the HTML checker find nothing, a
 * phone does not scroll sideways, targets are large enough; and a page says before one is signed out.
 */
@InChromium
class AccountsBrowserTest {

    private static final String SMALL = "return [...document.querySelectorAll('a[href], button, input:not([type=hidden]):not([type=checkbox]), select, .line-check label')]"
            + ".filter(e => !e.matches('.skip')).filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";
    private static final String LONG = "Maximiliana Featherstonehaugh-Cholmondeley von Tamarack und Larch, evenings";

    @TempDir
    private static Path profile;
    private static SchoolUnderTest empty;
    private static SchoolUnderTest site;
    private static Person wren;
    private static Person heron;
    private static ChromeDriver browser;
    private static MarkupChecker checker;
    private static final List<String> FAULTS = new ArrayList<>();

    @BeforeAll
    static void start() throws Exception {
        empty = SchoolUnderTest.start(new SampleDesk());
        site = SchoolUnderTest.start(new SampleDesk());
        wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        SchoolClass in = site.addClass("Period 2", wren);
        heron = site.enrol(in, LONG, "maximiliana-featherstonehaugh-cholmondeley-of-tamarack", "1").person();
        for (int seat = 2; seat <= 40; seat++) {
            site.enrol(in, "Student " + seat, "seat" + seat, String.valueOf(seat));
        }
        checker = new MarkupChecker();
        browser = Chromium.start(profile);
        browser.manage().timeouts().implicitlyWait(Duration.ofSeconds(10));
    }

    @AfterAll
    static void stop() {
        browser.quit();
        site.close();
        empty.close();
    }

    @BeforeEach
    void signedOut() {
        browser.manage().deleteAllCookies();
        FAULTS.clear();
    }

    private static void open(String path) {
        browser.get(site.address(path));
    }

    private static void type(String name, String text) {
        browser.findElement(By.name(name)).clear();
        browser.findElement(By.name(name)).sendKeys(text);
    }

    private static void press() {
        browser.findElement(By.cssSelector("main button.filled")).click();
    }

    /** As a form goes out whose fields the browser itself would not let pass. */
    private static void pressUnchecked() {
        browser.executeScript("document.querySelector('main form:has(button.filled)').noValidate = true");
        press();
    }

    private static void signIn(Person person, boolean tablet) {
        open("/sign-in?then=/account");
        type("login", person.login());
        type("password", SchoolUnderTest.PASSWORD);
        if (tablet) {
            browser.findElement(By.name("tablet")).click();
        }
        press();
        assertThat(browser.findElement(By.cssSelector("#stay, #code"))).isNotNull();
    }

    /** Looks at the page that is open, on a phone and at a desk. */
    private static void look(String name) throws Exception {
        checker.check(name, "<!DOCTYPE html>" + browser.executeScript("return document.documentElement.outerHTML"));
        for (int width : Chromium.WIDTHS) {
            Chromium.wide(browser, width);
            note(name + " " + width + " axe", Chromium.axe(browser));
            note(name + " " + width + " small", browser.executeScript(SMALL));
            note(name + " " + width + " sideways", Chromium.sideways(browser));
        }
    }

    private static void note(String where, Object found) {
        if (!String.valueOf(found).isEmpty()) {
            FAULTS.add(where + ": " + found);
        }
    }

    private static void nothingWasFound() {
        browser.manage().logs().get(LogType.BROWSER).forEach(line -> {
            if (!line.getMessage().contains("responded with a status of 4")) {
                FAULTS.add("console: " + line.getMessage());
            }
        });
        FAULTS.addAll(checker.faults());
        assertThat(FAULTS).isEmpty();
    }

    @Test
    void pagesForThoseWhoAreNotIn() throws Exception {
        browser.get(empty.address("/start"));
        look("start");
        type("code", "AAAA");
        pressUnchecked();
        look("start-faults");
        empty.school.codes().make(SecretCodes.hash("K7CW-34MR-XPN9-THQ6"), Codes.Purpose.FIRST_RUN, Optional.empty(), empty.now().plusSeconds(60));
        type("code", "k7cw 34mr xpn9 thq6");
        type("school", "Tamarack Valley Technical Center");
        type("shown", "W. Kestrel");
        type("login", "kestrel");
        type("fresh", "copper lanterns drift north");
        type("again", "copper lanterns drift north");
        press();
        look("account-keeper");
        pressUnchecked();
        look("account-keeper-faults");
        browser.manage().deleteAllCookies();
        open("/sign-in");
        look("sign-in");
        type("login", "wren");
        type("password", "not this one");
        press();
        look("sign-in-wrong");
        open("/new-password");
        look("new-password");
        type("login", "wren");
        pressUnchecked();
        look("new-password-faults");
        site.school.people().setFactor(wren.id(), "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ");
        signIn(wren, false);
        look("sign-in-code");
        site.school.people().setFactor(wren.id(), "");
        nothingWasFound();
    }

    @Test
    void pagesOfOnesOwnAccount() throws Exception {
        signIn(wren, false);
        for (String page : List.of("/account", "/account/password", "/account/second-factor")) {
            open(page);
            look(page.substring(1).replace('/', '-'));
        }
        for (String page : List.of("/account/password", "/account/second-factor")) {
            open(page);
            pressUnchecked();
            look(page.substring(1).replace('/', '-') + "-faults");
        }
        site.school.people().setFactor(wren.id(), "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ");
        open("/account/second-factor");
        look("account-second-factor-off");
        site.school.people().setFactor(wren.id(), "");
        nothingWasFound();
    }

    @Test
    void pagesOfTheKeeper() throws Exception {
        Person alder = site.add(Person.Kind.KEEPER, "J. Alder", "alder");
        signIn(alder, false);
        for (String page : List.of("/accounts", "/accounts/new", "/accounts/students", "/accounts/" + wren.id(), "/accounts/" + heron.id(), "/accounts/" + alder.id())) {
            open(page);
            look(page.substring(1).replace('/', '-'));
        }
        open("/accounts/new");
        pressUnchecked();
        look("accounts-new-faults");
        type("shown", LONG);
        type("login", "larch");
        press();
        look("account-code");
        nothingWasFound();
    }

    private static void later(Duration time) {
        site.wait(time);
        browser.executeScript("const now = Date.now; Date.now = () => now() + arguments[0]; document.dispatchEvent(new Event('visibilitychange'))", time.toMillis());
    }

    private static String waitFor(String condition) {
        return String.valueOf(browser.executeAsyncScript("const done = arguments[arguments.length - 1], box = document.getElementById('stay');"
                + "const look = () => { if (" + condition + ") { done(box.textContent); return true; } return false; };"
                + "if (!look()) { const o = new MutationObserver(() => look() && o.disconnect()); o.observe(box, {childList: true, subtree: true, attributes: true}); }"));
    }

    @Test
    void aPageSaysBeforeOneIsSignedOutAndAClickKeepsOneIn() throws Exception {
        signIn(wren, false);
        open("/account");
        later(Duration.ofMinutes(28).plusSeconds(1));
        assertThat(waitFor("box.querySelector('button')")).contains("You will be signed out at").contains("Stay signed in");
        look("stay");
        browser.findElement(By.cssSelector("#stay button")).click();
        waitFor("!box.querySelector('button')");
        later(Duration.ofMinutes(29));
        assertThat(waitFor("box.querySelector('button')")).contains("Stay signed in");
        later(Duration.ofMinutes(2));
        assertThat(waitFor("box.querySelector('a')")).contains("You were signed out").contains("Sign in");
        assertThat(browser.getCurrentUrl()).endsWith("/account");
        nothingWasFound();
    }

    @Test
    void aSharedTabletLeavesThePage() {
        signIn(heron, true);
        open("/account");
        later(Duration.ofMinutes(11));
        assertThat(browser.findElement(By.id("password")).isDisplayed()).isTrue();
        assertThat(browser.getCurrentUrl()).endsWith("/sign-in?then=%2Faccount");
    }
}
