package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;

class MarksPagesTest {

    private WorkingClass room;
    private WebClient browser;

    @BeforeEach
    void start() throws Exception {
        room = new WorkingClass(14);
        browser = room.site.browser(room.instructor);
    }

    @AfterEach
    void stop() {
        browser.close();
        room.close();
    }

    private HtmlPage open(String path) throws Exception {
        HtmlPage page = room.site.open(browser, path);
        assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
        return page;
    }

    @Test
    void look() throws Exception {
        Assignment a = room.morning();
        for (String path : java.util.List.of("/assignments/" + a.id() + "/marks", "/classes/" + room.in.id() + "/marks", "/assignments/" + a.id() + "/live",
                "/assignments/" + a.id() + "/live/now", "/assignments/" + a.id() + "/mistakes", "/classes/" + room.in.id() + "/mistakes",
                "/classes/" + room.in.id() + "/regrade", "/classes/" + room.in.id() + "/students/" + room.person(1), "/assignments/" + a.id() + "/morning")) {
            System.out.println("=== " + path + "\n" + RealSite.text(open(path).getBody()));
        }
    }
}
