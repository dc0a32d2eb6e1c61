package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Remark;
import soapstone.web.MarkupChecker;

/** The HTML of the pages about marks, with 40 students and long names, as the Nu HTML checker sees it: no error and no warning. */
class MarksMarkupTest {

    @Test
    void everyPageAndTheFormsWithFaults() throws Exception {
        MarkupChecker checker = new MarkupChecker();
        try (WorkingClass room = new WorkingClass(40); WebClient browser = room.site.browser(room.instructor)) {
            Assignment a = room.morning();
            Attempt attempt = room.site.school.attempts().of(room.problem(a, 1, 1).id()).get(0);
            room.site.school.attempts().remark(List.of(new Remark(0, attempt.id(), 0, room.site.now(), Optional.of(room.instructor.id()), Remark.Cause.OVERRULED,
                    Verdict.RIGHT, 2, "Seen on <paper> & right")));
            String in = "/classes/" + room.in.id();
            List<String> pages = List.of("/assignments/" + a.id() + "/marks", "/assignments/" + a.id() + "/mistakes", "/assignments/" + a.id() + "/morning",
                    "/assignments/" + a.id() + "/live", in + "/marks", in + "/mistakes", in + "/regrade", in + "/marks/one-roster", in + "/students/" + room.person(1),
                    "/attempts/" + attempt.id() + "/marks/1");
            for (String path : pages) {
                checker.check(path, room.site.open(browser, path));
            }
            for (String path : List.of(in + "/marks/one-roster", "/attempts/" + attempt.id() + "/marks/1")) {
                HtmlForm form = room.site.open(browser, path).getForms().stream().filter(f -> f.getActionAttribute().equals(path)).findFirst().orElseThrow();
                checker.check(path + " with faults", form.getElementsByTagName("button").get(0).<HtmlPage>click());
            }
            room.mend("spacing/bolt-holes.yaml", "swap: spaces = holes\n", "swap: spaces = holes + 2\n");
            checker.check("mended", room.site.open(browser, in + "/regrade"));
        }
        assertThat(checker.faults()).isEmpty();
    }
}
