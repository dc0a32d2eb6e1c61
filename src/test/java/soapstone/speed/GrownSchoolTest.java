package soapstone.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomNode;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.demo.DemoSchool;
import soapstone.desk.EngineDesk;
import soapstone.desk.Library;
import soapstone.page.Words;
import soapstone.record.Database;
import soapstone.record.Databases;
import soapstone.record.Doctor;
import soapstone.record.SqlSchool;
import soapstone.school.Attempt;
import soapstone.school.School;
import soapstone.school.Work;
import soapstone.source.Message;
import soapstone.web.SchoolUnderTest;

/** The school that pages are measured on is one that could have come about: whole, and with the pages of the class that was put in. */
class GrownSchoolTest {

    private static final GrownSchool.Plan PLAN = new GrownSchool.Plan(60);
    private static final Instant NOW = Instant.parse("2027-03-16T06:00:00Z");

    private static Library library;
    private static ModelClass model;

    @BeforeAll
    static void read() throws IOException {
        library = Library.read(null, null).library().orElseThrow();
        model = new ModelClass(library.bank(), 1);
    }

    @Test
    void classesAreOfTheSizeThatClassesAre() {
        assertThat(new GrownSchool.Plan(10_000).classes()).isEqualTo(300);
        for (int students : new int[] {1, 20, 60, 100, 1000, 9999, 10_000}) {
            GrownSchool.Plan plan = new GrownSchool.Plan(students);
            int all = 0;
            for (int number = 0; number < plan.classes(); number++) {
                assertThat(plan.seats(number)).isBetween(1, ModelClass.STUDENTS);
                all += plan.seats(number);
            }
            assertThat(all).isEqualTo(students);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theDoctorFindsItWhole(String kind, Database database) {
        try (database) {
            GrownSchool.Filled filled = GrownSchool.fill(database, model, PLAN, NOW);
            Doctor.Findings found = Doctor.look(database);
            assertThat(found.faults()).isEmpty();
            assertThat(found.holds()).containsEntry("class", (long) PLAN.classes()).containsEntry("member", 60L).containsEntry("mark", filled.answers())
                    .containsEntry("assignment", (long) PLAN.classes() * ModelClass.ASSIGNMENTS).containsEntry("sheet", 60L * ModelClass.ASSIGNMENTS);
            assertThat(filled.answers()).isGreaterThan(60 * 300);
            assertThat(found.holds().get("remark")).isPositive();
            assertThat(found.holds().get("given_to")).isPositive();
            assertThat(database.bytes()).isGreaterThan(filled.answers());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void aClassHoldsWhatWasPutInAndWorkGoesOn(String kind, Database database) {
        try (database) {
            GrownSchool.Looked at = GrownSchool.fill(database, model, PLAN, NOW).looked();
            School school = SqlSchool.of(database);
            List<Work> works = school.book().ofClass(at.id()).values().stream().flatMap(List::stream).toList();
            assertThat(works.stream().flatMap(w -> w.attempts().stream()).mapToLong(a -> a.marks().size()).sum()).isEqualTo(at.answers());
            for (Work work : works) {
                assertThat(work.attempts()).isSortedAccordingTo((a, b) -> a.handedIn().compareTo(b.handedIn()));
                assertThat(work.attempts()).extracting(Attempt::number).isSorted();
            }
            assertThat(school.classes().add("One more", "", "MORE", ModelClass.SETTINGS, 1, NOW).id()).isEqualTo(PLAN.classes() + 1L);
        }
    }

    @Test
    void theSameClassHasTheSamePagesInAnySchool() throws Exception {
        try (Seen large = new Seen(GrownSchool::fill); Seen small = new Seen(GrownSchool::fillMiddle)) {
            assertThat(large.filled.classes()).isGreaterThan(small.filled.classes());
            Map<String, String> inSmall = SizeSpeed.paths(small.at());
            SizeSpeed.paths(large.at()).forEach((name, path) -> {
                String text = large.text(path);
                assertThat(text).as(name).isEqualTo(small.text(inSmall.get(name))).hasSizeGreaterThan(400);
            });
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void theGridShowsEveryAnswerThatCounts(String kind, Database database) throws Exception {
        try (Seen seen = new Seen(database, GrownSchool::fill)) {
            HtmlPage grid = seen.page("/assignments/" + seen.at().assignment() + "/marks");
            String none = Words.of("en").say(Message.of("marks.sign-none"));
            List<String> signs = grid.querySelectorAll("td.sign .unseen").stream().map(DomNode::getTextContent).toList();
            assertThat(signs.stream().filter(s -> !s.equals(none))).hasSize((int) seen.at().cells());
            assertThat(grid.querySelectorAll("table.grid tbody tr")).hasSize(seen.at().seats());
            assertThat(seen.page("/classes/" + seen.at().id() + "/marks").querySelectorAll("table.grid thead th")).hasSize(3 + ModelClass.ASSIGNMENTS);
        }
    }

    private interface Fills {
        GrownSchool.Filled fill(Database database, ModelClass model, GrownSchool.Plan plan, Instant now);
    }

    /** A site on such a school, and the instructor of the class that is looked at. */
    private static final class Seen implements AutoCloseable {

        private final GrownSchool.Filled filled;
        private final SchoolUnderTest site;
        private final WebClient browser;

        Seen(Fills fills) throws IOException {
            this(Databases.h2(), fills);
        }

        Seen(Database database, Fills fills) throws IOException {
            this.filled = fills.fill(database, model, PLAN, NOW);
            this.site = SchoolUnderTest.start(new EngineDesk(() -> library), database, false);
            this.browser = site.browser();
            assertThat(Duration.between(NOW, site.now())).isLessThan(Duration.ofDays(1));
            site.signIn(browser, at().instructor(), DemoSchool.PASSPHRASE);
        }

        GrownSchool.Looked at() {
            return filled.looked();
        }

        HtmlPage page(String path) {
            try {
                HtmlPage page = site.open(browser, path);
                assertThat(page.getWebResponse().getStatusCode()).as(path).isEqualTo(200);
                return page;
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }

        /** Without the address of the site and the numbers of sheets, which are drawn for the school as a whole. */
        String text(String path) {
            return page(path).asNormalizedText().replace(site.address(""), "SITE").replaceAll("\\b[2-9B-X]{3}-[2-9B-X]{4}\\b", "NUMBER");
        }

        @Override
        public void close() {
            browser.close();
            site.close();
        }
    }
}
