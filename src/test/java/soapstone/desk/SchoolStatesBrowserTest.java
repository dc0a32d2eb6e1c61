package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.school.Assignment;
import soapstone.school.SchoolClass;
import soapstone.web.Chromium;
import soapstone.web.Hand;
import soapstone.web.InChromium;
import soapstone.web.MarkupChecker;

/** The instructor's pages of a class in the states that a year brings: empty, marked again, without an erased student, put away. */
@InChromium
class SchoolStatesBrowserTest {

    @TempDir
    private static Path profile;
    private static WorkingClass room;
    private static Assignment given;
    private static ChromeDriver browser;

    private final List<String> faults = new ArrayList<>();

    @BeforeAll
    static void start() throws Exception {
        room = new WorkingClass(40);
        given = room.morning();
        browser = Chromium.start(profile);
        Chromium.signIn(browser, room.site, room.instructor);
    }

    @AfterAll
    static void stop() {
        browser.quit();
        room.close();
    }

    private static List<String> pages(SchoolClass in) {
        List<String> pages = new ArrayList<>();
        for (String page : List.of("", "/marks", "/mistakes", "/regrade", "/settings", "/competencies", "/audit", "/marks/one-roster")) {
            pages.add("/classes/" + in.id() + page);
        }
        return pages;
    }

    private static List<String> withWork() {
        List<String> pages = pages(room.in);
        for (String page : List.of("", "/marks", "/mistakes", "/morning", "/live")) {
            pages.add("/assignments/" + given.id() + page);
        }
        pages.add("/classes/" + room.in.id() + "/students/" + room.person(1));
        pages.add("/classes/" + room.in.id() + "/students/" + room.person(4));
        return pages;
    }

    /** The HTML checker and axe-core find nothing, and nothing scrolls sideways, on a phone and at a desk. */
    private void look(String state, List<String> paths) throws Exception {
        MarkupChecker checker = new MarkupChecker();
        try (WebClient plain = room.site.browser(room.instructor)) {
            for (String path : paths) {
                Hand hand = new Hand(room.site, plain).open(path);
                assertThat(hand.status()).as(state + " " + path).isEqualTo(200);
                checker.check(state + " " + path, hand.html());
                inChromium(state + " " + path, path);
            }
        }
        faults.addAll(checker.faults());
    }

    private void inChromium(String where, String path) {
        browser.get(room.site.address(path));
        for (int width : Chromium.WIDTHS) {
            Chromium.wide(browser, width);
            for (String found : List.of(Chromium.axe(browser), Chromium.sideways(browser))) {
                if (!found.isEmpty()) {
                    faults.add(where + " at " + width + ": " + found);
                }
            }
        }
    }

    @Test
    void everyStateOfAClass() throws Exception {
        look("empty", pages(room.site.addClass("Nobody yet", room.instructor)));
        room.mend("spacing/bolt-holes.yaml", "name: shared-over-holes\n    family: fence-post\n    swap: spaces = holes\n",
                "name: shared-over-two-more\n    family: fence-post\n    swap: spaces = holes + 2\n");
        String regrade = "/classes/" + room.in.id() + "/regrade";
        look("to be marked again", List.of(regrade));
        try (WebClient plain = room.site.browser(room.instructor)) {
            assertThat(new Hand(room.site, plain).open(regrade).press("Add the new marks").text()).contains("No mark would change.");
        }
        look("marked again", withWork());
        room.site.school.privacy().erase(room.person(4), Optional.of(room.instructor.id()), room.site.now());
        look("one erased", withWork());
        room.site.school.classes().setArchived(room.in.id(), Optional.of(room.site.now()));
        look("put away", withWork());
        assertThat(faults).isEmpty();
    }
}
