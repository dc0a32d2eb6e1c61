package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.Chromium;
import soapstone.web.Hand;
import soapstone.web.InChromium;
import soapstone.web.MarkupChecker;

/** The pages about paper with a class of 24: their markup, on a phone, without a mouse. */
class PaperPagesTest {

    private static final String FLAT = "ratio/right-size";

    private static List<String> pages(WorkingClass room, Assignment a) {
        Sheet sheet = room.site.school.sheets().of(a.id(), room.person(1)).orElseThrow();
        long print = room.site.school.prints().ask(a.id(), room.instructor.id(), "packet", "size=letter form=whole names=yes formulas=no spares=0 strips=4 reader=en", 24, room.site.now()).id();
        room.site.school.prints().goOn(print, 7, room.site.now());
        return List.of("/assignments/" + a.id() + "/print", "/assignments/" + a.id() + "/print/" + print, "/typing", "/typing?number=KKKKKK2", "/assignments/" + a.id() + "/typing",
                "/typing/" + sheet.id(), "/assignments/" + a.id() + "/typing/1", "/assignments/" + a.id() + "/typing/2", "/assignments/" + a.id() + "/typing/file");
    }

    @Test
    void theMarkupOfEveryPage() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        try (WorkingClass room = new WorkingClass(24); WebClient browser = room.site.browser(room.instructor)) {
            Assignment a = room.give("Holes <and> \"trays\"", WorkingClass.HOLES, FLAT, "circles/bolt-circle-points");
            for (String path : pages(room, a)) {
                checker.check(path, room.site.open(browser, path));
            }
            Sheet sheet = room.site.school.sheets().of(a.id(), room.person(1)).orElseThrow();
            Hand hand = new Hand(room.site, browser).open("/typing/" + sheet.id());
            hand.answer(named(room.problem(a, 1, 1), RealSchool.slip(room.problem(a, 1, 1)))).answer(Map.of("3a", "31/2")).press("Look at the verdicts");
            checker.check("looked at", hand.page());
            hand.open("/assignments/" + a.id() + "/typing/1").type("box-" + sheet.id() + "a", "31/2").press("Look at the verdicts");
            checker.check("grid with a fault", hand.page());
        }
        assertThat(checker.faults()).isEmpty();
    }

    private static Map<String, String> named(Problem p, Map<String, String> texts) {
        Map<String, String> named = new LinkedHashMap<>();
        texts.forEach((letter, text) -> named.put(p.place() + letter, text));
        return named;
    }

    /** Numbers, answers, Tab and Enter: no other key and no mouse, with the site's scripts on. */
    @InChromium
    @Test
    void aPileOfSheetsIsTypedInWithTheKeyboardAlone(@TempDir Path profile) throws Exception {
        try (WorkingClass room = new WorkingClass(24)) {
            Assignment a = room.give("Holes", WorkingClass.HOLES, "brake/die-opening");
            ChromeDriver browser = Chromium.start(profile);
            try {
                Chromium.signIn(browser, room.site, room.instructor);
                for (String path : pages(room, a)) {
                    Chromium.wide(browser, 390);
                    browser.get(room.site.address(path));
                    assertThat(Chromium.axe(browser)).as(path).isEmpty();
                    assertThat(Chromium.sideways(browser)).as(path).isEmpty();
                }
                browser.get(room.site.address("/typing"));
                int keys = 0;
                for (int seat = 1; seat <= 4; seat++) {
                    keys += type(browser, sheet(room, a, seat).number(), Keys.ENTER);
                    for (Problem p : sheet(room, a, seat).problems()) {
                        for (String text : RealSchool.right(p).values()) {
                            standsIn(browser, "box-" + p.place());
                            keys += type(browser, text, Keys.TAB);
                        }
                    }
                    keys += type(browser, "", Keys.ENTER);
                    standsIn(browser, "next");
                    assertThat(browser.findElement(By.tagName("main")).getText()).contains("Nothing is kept yet");
                }
                type(browser, "", Keys.ENTER);
                standsIn(browser, "number");
                for (int seat = 1; seat <= 4; seat++) {
                    for (Problem p : sheet(room, a, seat).problems()) {
                        assertThat(room.site.school.attempts().of(p.id())).as("seat " + seat).hasSize(1).allMatch(t -> t.way() == Attempt.Way.PAPER);
                    }
                }
                // 24 sheets of five answers in ten minutes are 25 seconds for each; at two keys a second that is 50 keys.
                assertThat(keys / 4).as("keys for a sheet of three answers").isLessThan(50);
            } finally {
                browser.quit();
            }
        }
    }

    /** Waits until one would type there: the page may still be on its way. */
    private static void standsIn(ChromeDriver browser, String beginning) throws InterruptedException {
        String name = "";
        for (int i = 0; i < 200 && !name.startsWith(beginning); i++) {
            try {
                Thread.sleep(100);
                name = String.valueOf(browser.switchTo().activeElement().getAttribute("name"));
            } catch (StaleElementReferenceException e) {
                name = "";
            }
        }
        assertThat(name).as("where one types on " + browser.getCurrentUrl()).startsWith(beginning);
    }

    private static int type(ChromeDriver browser, String text, Keys end) {
        WebElement field = browser.switchTo().activeElement();
        String plain = text.replace('\u00A0', ' ');
        field.sendKeys(plain);
        field.sendKeys(end);
        return plain.length() + 1;
    }

    private static Sheet sheet(WorkingClass room, Assignment a, int seat) {
        return room.site.school.sheets().of(a.id(), room.person(seat)).orElseThrow();
    }
}
