package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.web.Chromium;
import soapstone.web.Hand;
import soapstone.web.InChromium;
import soapstone.web.MarkupChecker;
import soapstone.web.SchoolUnderTest;

/** The instructor's pages with 40 students with long names: their HTML, and how they stand on a phone and on a desk. */
class RealClassPagesTest {

    private static final String LONG = "Maximiliana-Theodora van der Hollenberg-Oyelaran no. ";
    /** Boxes to tick count with their labels. */
    private static final String SMALL = "return [...document.querySelectorAll('a[href], button, input:not([type=hidden]):not([type=radio]):not([type=checkbox]), select, textarea,"
            + " summary, label:has([type=checkbox], [type=radio])')].filter(e => !e.matches('.skip, p:not(.where):not(.buttons) a'))"
            + ".filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";

    private static SchoolUnderTest site;
    private static WebClient browser;
    private static Hand hand;
    private static String inClass;
    private static String given;
    private static List<String> six;

    @BeforeAll
    static void start() throws Exception {
        site = SchoolUnderTest.start(new EngineDesk(RealSite::library));
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        SchoolClass in = site.addClass("Sheet metal fabrication 1 with blueprint reading, period 2", wren);
        inClass = "/classes/" + in.id();
        for (int i = 1; i <= 40; i++) {
            site.enrol(in, LONG + i, "student" + i, String.valueOf(i));
        }
        browser = site.browser(wren);
        hand = new Hand(site, browser);
        six = RealSite.library().bank().exercises().keySet().stream().sorted().limit(6).toList();
        hand.open(inClass + "/assignments/new").type("title", "Spacing, week 3: bolt holes, pickets and balusters on stair rails");
        six.forEach(id -> hand.tick("use-" + id));
        hand.press("Give it out");
        given = hand.path();
    }

    @AfterAll
    static void stop() {
        browser.close();
        site.close();
    }

    private static List<String> paths() {
        return List.of("/classes", "/classes/new", inClass, inClass + "/settings", inClass + "/roster", inClass + "/roster/2", inClass + "/assignments/new", given,
                given + "/preview/1", given + "/preview/2");
    }

    /** Pages that come back from a form. */
    private static Map<String, String> states() throws Exception {
        Map<String, String> states = new LinkedHashMap<>();
        states.put("settings with faults", hand.open("/classes/new").type("near", "x").press("Make the class").html());
        states.put("roster with faults", hand.open(inClass + "/roster").type("roster", "77, Bo R.\n77, Cy\n1, Di\n" + LONG + "7, x, y, z").press("Look at the list").html());
        states.put("roster", hand.open(inClass + "/roster").type("roster", IntStream.rangeClosed(50, 59).mapToObj(i -> i + ", Nan " + i)
                .collect(Collectors.joining("\n"))).press("Look at the list").html());
        states.put("slips", hand.press("Make these 10 accounts").html());
        hand.open(inClass + "/assignments/new").type("title", "").type("tries", "0");
        six.forEach(id -> hand.tick("use-" + id));
        hand.press("Order, pools and points").type("pool-" + six.get(0), "A").type("pool-" + six.get(1), "A").type("points-" + six.get(2), "x");
        states.put("assignment with faults", hand.press("Save as a draft").html());
        states.put("make-up with faults", hand.open(given).press("Give the make-up").html());
        try (WebClient guest = site.browser()) {
            Hand theirs = new Hand(site, guest);
            states.put("join", theirs.open("/join").html());
            states.put("join with faults", theirs.type("code", "AAAA").press("Ask for a place").html());
            SchoolClass in = site.school.classes().find(Long.parseLong(inClass.substring("/classes/".length()))).orElseThrow();
            states.put("joined", theirs.type("code", in.code()).type("name", "Zoë P.").press("Ask for a place").html());
        }
        states.put("class with somebody asking", hand.open(inClass).html());
        return states;
    }

    @Test
    void theCheckerFindsNoFault() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        Map<String, String> all = new LinkedHashMap<>(states());
        for (String path : paths()) {
            all.put(path, hand.open(path).html());
        }
        for (Map.Entry<String, String> one : all.entrySet()) {
            checker.check(one.getKey(), one.getValue());
        }
        assertThat(checker.faults()).isEmpty();
    }

    @Test
    @InChromium
    void axeFindsNoFaultOnPhoneAndDesk(@TempDir Path profile) throws Exception {
        ChromeDriver driver = Chromium.start(profile);
        List<String> faults = new ArrayList<>();
        try {
            driver.get(site.address("/about"));
            driver.manage().addCookie(new Cookie("soapstone", browser.getCookieManager().getCookie("soapstone").getValue(), "/"));
            for (int width : Chromium.WIDTHS) {
                Chromium.wide(driver, width);
                for (String path : paths()) {
                    driver.get(site.address(path));
                    driver.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
                    for (Object found : List.of(Chromium.axe(driver), driver.executeScript(SMALL), Chromium.sideways(driver))) {
                        if (!found.toString().isEmpty()) {
                            faults.add(path + " at " + width + ": " + found);
                        }
                    }
                }
            }
        } finally {
            driver.quit();
        }
        assertThat(faults).isEmpty();
    }
}
