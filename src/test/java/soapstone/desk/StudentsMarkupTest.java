package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;
import soapstone.school.Assignment.Shows;
import soapstone.school.Assignment.Task;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.MarkupChecker;
import soapstone.web.SchoolUnderTest;

/** Every page of a student, in every state, through the HTML checker. */
class StudentsMarkupTest {

    @Test
    void everyStudentsPageIsCleanMarkup() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        try (SchoolUnderTest site = RealSchool.open()) {
            RealSchool s = new RealSchool(site);
            WebClient ada = site.browser(s.ada.person());
            Map<String, HtmlPage> pages = new LinkedHashMap<>();
            pages.put("an empty list", site.open(ada, "/work"));
            pages.put("an empty history", site.open(ada, "/sheets/history"));
            for (Shows shows : Shows.values()) {
                Assignment week = s.give(shows, Assignment.Late.HALF, 1, java.util.Optional.of(site.now().plusSeconds(3600)), RealSchool.HOLES_TASK,
                        new Task(0, 2, List.of("spacing/hole-marks"), 1, 1), new Task(0, 3, List.of("bends/hose-tray"), 1, 1));
                pages.put("opening " + shows, site.open(ada, "/sheets/open/" + week.id()));
                pages.put("a sheet " + shows, s.begin(ada, week));
                Sheet sheet = s.sheet(week, s.ada);
                for (Problem p : sheet.problems()) {
                    HtmlPage problem = site.open(ada, RealSchool.path(sheet, p.place()));
                    pages.put("a problem " + p.exercise(), problem);
                    pages.put("doubtful " + p.exercise(), s.review(ada, sheet, p.place(), Map.of("a", "31/2")));
                    pages.put("newer " + p.exercise(), RealSchool.press(RealSchool.fill(problem, RealSchool.path(sheet, p.place()), Map.of("a", "<b>&\"'")), "keep"));
                    HtmlPage review = s.review(ada, sheet, p.place(), RealSchool.slip(p));
                    pages.put("a review " + p.exercise(), review);
                    pages.put("a try " + shows + " " + p.exercise(), RealSchool.confirm(review, sheet, p.place()));
                    pages.put("no tries left " + p.exercise(), site.open(ada, RealSchool.path(sheet, p.place())));
                    pages.put("refused " + p.exercise(), site.open(ada, RealSchool.path(sheet, p.place()) + "/review"));
                }
            }
            pages.put("a list", site.open(ada, "/work"));
            pages.put("a history", site.open(ada, "/sheets/history"));
            for (Map.Entry<String, HtmlPage> page : pages.entrySet()) {
                checker.check(page.getKey(), page.getValue());
            }
            assertThat(checker.faults()).isEmpty();
            assertThat(pages.get("newer spacing/hole-marks").getWebResponse().getStatusCode()).isEqualTo(409);
        }
    }
}
