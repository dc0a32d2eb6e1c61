package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.record.Databases;
import soapstone.record.OldSchools;
import soapstone.school.Person;
import soapstone.web.SchoolUnderTest;

/** Pages of a school whose data folder an older program kept. */
class OldSchoolPagesTest {

    @TempDir
    private Path folder;

    private static void shows(SchoolUnderTest site, String login, List<String> paths, String... texts) throws Exception {
        Person person = site.school.people().byLogin(login).orElseThrow();
        StringBuilder all = new StringBuilder();
        try (var browser = site.browser(person)) {
            for (String path : paths) {
                HtmlPage page = site.open(browser, path);
                assertThat(page.getWebResponse().getStatusCode()).as(login + " at " + path).isEqualTo(200);
                all.append(page.asNormalizedText());
            }
        }
        assertThat(all.toString()).as(login).contains(texts);
    }

    @Test
    void everybodySignsInAndReadsWhatWasKept() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new EngineDesk(RealSite::library), Databases.h2(OldSchools.unpack(1, folder)), false)) {
            shows(site, "wren", List.of("/classes", "/classes/1", "/classes/1/marks", "/classes/1/students/3", "/classes/1/students/3/data", "/classes/1/competencies",
                    "/classes/1/competencies/3", "/classes/1/audit", "/assignments/1", "/assignments/1/morning", "/attempts/1/marks/1"),
                    "Sheet metal 1", "Ada Q.", "Bo T.", "Holes", "7 5/16", "My second try is missing", "Lays out holes", "Read the rule");
            shows(site, "alder-ada", List.of("/work", "/sheets/1", "/sheets/1/1/tries/1", "/sheets/history", "/sheets/record", "/account"), "Holes", "7 5/16", "Ada Q.", "Lays out holes");
            shows(site, "alder-bo", List.of("/work", "/sheets/2", "/sheets/2/1"), "Holes", "Bolt holes along an angle");
            shows(site, "alder-keeper", List.of("/accounts"), "Wren K.");
        }
    }
}
