package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.web.Hand;

/** Somebody stands in for a day: everything in that class, nothing of the others, and the name on what was done. */
class SubstitutesDayTest {

    private WorkingClass room;
    private Assignment given;
    private SchoolClass other;
    private WebClient hers;
    private WebClient his;
    private Hand instructor;
    private Hand substitute;

    @BeforeEach
    void start() throws Exception {
        room = new WorkingClass(14);
        given = room.morning();
        other = room.site.addClass("Welding 2", room.instructor);
        Person moss = room.site.add(Person.Kind.INSTRUCTOR, "Moss T.", "moss");
        hers = room.site.browser(room.instructor);
        his = room.site.browser(moss);
        instructor = new Hand(room.site, hers);
        substitute = new Hand(room.site, his);
    }

    @AfterEach
    void stop() {
        hers.close();
        his.close();
        room.close();
    }

    private String inClass() {
        return "/classes/" + room.in.id();
    }

    @Test
    void theDay() throws Exception {
        beforeTheDayNothingIsToBeSeen();
        theInstructorAddsTheSubstituteByLogin();
        theMorningPageAndTheLivePageAreThere();
        aSlipThatWasLostIsPrintedAnew();
        aMarkIsOverruledUnderTheSubstitutesName();
        theOtherClassStaysClosed();
        afterTheDayTheSubstituteIsTakenOut();
    }

    private void beforeTheDayNothingIsToBeSeen() throws Exception {
        assertThat(substitute.open("/classes").text()).contains("No class yet.").doesNotContain("Sheet metal 1");
        assertThat(substitute.open(inClass()).status()).isEqualTo(404);
    }

    private void theInstructorAddsTheSubstituteByLogin() throws Exception {
        instructor.open("/classes").follow("Sheet metal 1").follow("Settings").type("login", "moss").press("Add this instructor");
        assertThat(instructor.text()).contains("Moss T.", "Odile F.");
    }

    private void theMorningPageAndTheLivePageAreThere() throws Exception {
        substitute.open("/classes").follow("Sheet metal 1").follow("Morning");
        assertThat(substitute.text()).contains("14 on the roll", "10 handed in", "1 still open: Student 11", "1 Spaces counted like holes", "Names: Student 1, Student 2, Student 3");
        substitute.follow("Live");
        assertThat(substitute.text()).contains("10 handed in, 1 still open, 3 not begun");
        assertThat(substitute.row("Student 1")).contains("a known mistake fits").endsWith("2/4");
    }

    private void aSlipThatWasLostIsPrintedAnew() throws Exception {
        substitute.open(inClass() + "/roster/" + room.person(3)).press("Make a new slip");
        AtWork student = new AtWork(room.site, AtWork.cut(substitute.page()).get(0));
        student.comes(theirs -> assertThat(theirs.text()).contains("Student 3", "Holes and a tray"));
    }

    private void aMarkIsOverruledUnderTheSubstitutesName() throws Exception {
        Attempt attempt = room.site.school.attempts().of(room.problem(given, 10, 1).id()).get(0);
        substitute.open("/attempts/" + attempt.id() + "/marks/1").choose("choice", "near").type("points", "1").type("reason", "The sketch was right.").press("Say it");
        assertThat(substitute.heading()).isEqualTo("Student 10");
        assertThat(instructor.open(inClass() + "/students/" + room.person(10) + "?assignment=" + given.id()).text()).contains("Overruled", "Moss T.", "The sketch was right.");
        assertThat(instructor.open(inClass() + "/audit").row("Mark overruled")).contains("Moss T.", "Student 10");
    }

    private void theOtherClassStaysClosed() throws Exception {
        assertThat(substitute.open("/classes").text()).doesNotContain("Welding 2");
        for (String page : new String[] {"", "/marks", "/roster", "/settings", "/audit", "/competencies"}) {
            assertThat(substitute.open("/classes/" + other.id() + page).status()).as(page).isEqualTo(404);
        }
    }

    private void afterTheDayTheSubstituteIsTakenOut() throws Exception {
        instructor.open(inClass() + "/settings").press("Take Moss T. out");
        assertThat(instructor.text()).doesNotContain("Moss T.");
        assertThat(substitute.open(inClass()).status()).isEqualTo(404);
        assertThat(substitute.open("/assignments/" + given.id() + "/morning").status()).isEqualTo(404);
        assertThat(substitute.open("/classes").text()).doesNotContain("Sheet metal 1");
    }
}
