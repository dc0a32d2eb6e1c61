package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import soapstone.school.Assignment;
import soapstone.school.Problem;
import soapstone.web.Chromium;
import soapstone.web.InChromium;

/**
 * The pages about marks in Chromium, with a class of 40 and long names: axe-core finds nothing, a phone does not scroll
 * sideways, targets are large enough; and the live page looks again by itself.
 */
@InChromium
class MarksBrowserTest {

    private static final String SMALL = "return [...document.querySelectorAll('main a[href], main button, main input:not([type=hidden]):not([type=radio]), main select, main textarea,"
            + " main summary, main .option')].filter(e => !e.matches('p:not(.where):not(.buttons) a, dd a, .count a, .plain li a'))"
            + ".filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 90)).join('; ')";

    @TempDir
    private static Path profile;
    private static WorkingClass room;
    private static Assignment assignment;
    private static ChromeDriver browser;

    @BeforeAll
    static void start() throws Exception {
        room = new WorkingClass(40);
        assignment = room.morning();
        room.give("Pickets", "spacing/max-gap");
        browser = Chromium.start(profile);
        Chromium.signIn(browser, room.site, room.instructor);
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
        pages.put("one-roster", "/classes/" + room.in.id() + "/marks/one-roster");
        pages.put("remark", "/attempts/" + attempt + "/marks/1");
        return pages;
    }

    @Test
    void everyPageOnPhoneAndDesk() {
        List<String> faults = new ArrayList<>();
        for (int width : Chromium.WIDTHS) {
            Chromium.wide(browser, width);
            for (Map.Entry<String, String> page : pages().entrySet()) {
                open(page.getValue());
                note(faults, page.getKey() + " " + width + " axe", Chromium.axe(browser));
                note(faults, page.getKey() + " " + width + " small", String.valueOf(browser.executeScript(SMALL)));
                note(faults, page.getKey() + " " + width + " sideways", Chromium.sideways(browser));
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
