package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.files.Folder;
import soapstone.record.Databases;
import soapstone.school.Audit;
import soapstone.school.FrameReader;
import soapstone.school.Note;
import soapstone.school.Notes;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.school.Signoff;
import soapstone.school.Signoffs;

/**
 * The pages about competencies and about people's data in Chromium, with a class of 40 with long names: axe-core finds nothing, a
 * phone does not scroll sideways, targets are large enough; and the HTML checker finds no fault.
 */
class RecordsBrowserTest {

    private static final String SMALL = "return [...document.querySelectorAll('main a[href], main button, main input:not([type=hidden]):not([type=radio]):not([type=checkbox]), main select,"
            + " main textarea, main summary, main .pick label')].filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5)"
            + ".map(e => e.outerHTML.slice(0, 90)).join('; ')";

    @TempDir
    private static Path profile;
    private static RecordedClass c;

    @BeforeAll
    static void start() throws Exception {
        Library library = Library.read(null, null).library().orElseThrow();
        c = new RecordedClass(new EngineDesk(() -> library), Databases.h2());
        for (int seat = 9; seat <= 46; seat++) {
            c.enrol("Bartholomew-Montgomery van den Appletreewick the " + seat + "th", "student-with-a-long-login-" + seat, String.valueOf(seat));
        }
        List<Signoffs.NewCompetency> all = new ArrayList<>();
        FrameReader.read(Folder.builtIn("soapstone/frames", ".yaml")).frames().get(3).codes().forEach(f -> all.add(new Signoffs.NewCompetency(f.name(), f.skills())));
        all.add(new Signoffs.NewCompetency(RecordedClass.LAYOUT, List.of("equal-spacing")));
        c.school.signoffs().list(c.in.id(), all);
        for (Signoff.Act act : List.of(Signoff.Act.SIGNED, Signoff.Act.WITHDRAWN, Signoff.Act.SIGNED)) {
            c.school.signoffs().append(new Signoff(0, c.ada.id(), c.in.id(), RecordedClass.LAYOUT, act, "Alone, own tools, 16 gauge, book closed; checked with the square afterwards.",
                    "Equal spacing: 2027-03-07, Bolt holes along an angle, numbers 41, try 1, 2.5 of 2.5 points", c.wren.id(), "Wren K.", c.site.now()));
        }
        c.school.notes().ask(c.ada.id(), c.in.id(), "On the sheet of 7 March I typed 8 1/16 and it read 81/16.", c.site.now());
        c.school.notes().answer(c.school.notes().of(c.ada.id()).get(0).id(), new Notes.Answer(Note.Outcome.MENDED, "So it was. The mark is changed.", c.wren.id(), "Wren K.", c.site.now()));
        c.school.notes().ask(c.ada.id(), c.in.id(), "My name is written Ada, not Aida.", c.site.now());
        for (String act : List.of("mark.overruled", "student.exported", "competency.signed")) {
            c.school.audit().note(new Audit.Entry(c.site.now(), Optional.of(c.wren.id()), act, Optional.of(c.ada.id()), Optional.of(c.in.id()), "slip 0 to near 1.25", act.contains("exported")));
        }
        SchoolClass old = c.site.addClass("Last year", c.rook);
        for (int seat = 1; seat <= 5; seat++) {
            c.site.enrol(old, "Long gone " + seat, "gone-" + seat, String.valueOf(seat));
        }
        c.school.classes().setArchived(old.id(), Optional.of(c.site.now()));
        c.site.wait(Duration.ofDays(600));
    }

    @AfterAll
    static void stop() {
        c.close();
    }

    private static Map<Person, List<String>> pages() {
        Map<Person, List<String>> pages = new LinkedHashMap<>();
        String sign = "/sign?frame=Sheet+Metal+Worker+%28Red+Seal%29&edition=current+web+edition&code=B-6.01";
        pages.put(c.wren, List.of(c.path("/competencies"), c.path("/competencies/list"), c.path("/competencies/" + c.ada.id()), c.path("/competencies/" + c.ada.id() + sign),
                c.path("/competencies/" + c.bram.id() + sign), c.data(c.ada), c.data(c.ada) + "/erase", c.path("/audit"), "/privacy"));
        pages.put(c.ada, List.of("/sheets/record"));
        pages.put(c.keeper, List.of("/retention"));
        return pages;
    }

    @Test
    @InChromium
    void everyPageOnPhoneAndDesk() throws Exception {
        ChromeDriver browser = Chromium.start(profile);
        List<String> faults = new ArrayList<>();
        try {
            for (Map.Entry<Person, List<String>> of : pages().entrySet()) {
                Chromium.signIn(browser, c.site, of.getKey());
                for (int width : Chromium.WIDTHS) {
                    Chromium.wide(browser, width);
                    for (String path : of.getValue()) {
                        browser.get(c.site.address(path));
                        browser.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
                        note(faults, path + " " + width + " axe", Chromium.axe(browser));
                        note(faults, path + " " + width + " small", String.valueOf(browser.executeScript(SMALL)));
                        note(faults, path + " " + width + " sideways", Chromium.sideways(browser));
                    }
                }
            }
        } finally {
            browser.quit();
        }
        assertThat(faults).isEmpty();
    }

    private static void note(List<String> faults, String where, String found) {
        if (!found.isEmpty()) {
            faults.add(where + ": " + found);
        }
    }

    @Test
    void theMarkupOfEveryPageOfTheFormsWithFaultsAndOfTheRecordThatGoesOut() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        for (Map.Entry<Person, List<String>> of : pages().entrySet()) {
            try (WebClient browser = c.site.browser(of.getKey())) {
                for (String path : of.getValue()) {
                    checker.check(path, c.site.open(browser, path));
                }
            }
        }
        try (WebClient wren = c.site.browser(c.wren)) {
            HtmlPage wrong = (HtmlPage) c.post(wren, c.path("/competencies/own"), Map.of());
            checker.check("own code with faults", wrong);
            HtmlPage seat = (HtmlPage) c.post(wren, c.data(c.ada) + "/erase", Map.of("confirm", "x"));
            checker.check("erase with faults", seat);
            checker.check("record.html", RecordedClass.unzip(c.post(wren, c.data(c.ada) + "/export", Map.of())).get("record.html"));
        }
        assertThat(checker.faults()).isEmpty();
    }
}
