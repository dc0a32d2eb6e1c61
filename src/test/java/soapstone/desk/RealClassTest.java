package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.Test;
import soapstone.school.Assignment;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.SchoolClass;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** An instructor's first five minutes with the bank that comes with the program. */
class RealClassTest {

    /** A class of 24 and six exercises: the hand types five fields, ticks six boxes and presses a dozen times. */
    @Test
    void aClassOf24AndSixExercisesTakeFewSteps() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new EngineDesk(RealSite::library))) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            try (WebClient browser = site.browser(wren)) {
                Hand hand = new Hand(site, browser).open("/classes");
                hand.follow("New class").type("name", "Sheet metal 1, period 2").press("Make the class");
                String roster = IntStream.rangeClosed(1, 24).mapToObj(i -> i + ", Student " + i).collect(Collectors.joining("\n"));
                hand.type("roster", roster).press("Look at the list").press("Make these 24 accounts").follow("Printed: back to the class");
                hand.follow("New assignment").type("title", "Spacing, week 3");
                six().forEach(id -> hand.tick("use-" + id));
                hand.press("Give it out");

                assertThat(hand.heading()).isEqualTo("Spacing, week 3");
                assertThat(hand.presses()).as("links and buttons").isLessThanOrEqualTo(8);
                assertThat(hand.fields()).as("fields typed").isLessThanOrEqualTo(3);
                assertThat(hand.ticks()).as("boxes ticked").isEqualTo(6);

                SchoolClass in = site.school.classes().taughtBy(wren.id()).get(0);
                assertThat(site.school.classes().members(in.id())).hasSize(24).allMatch(m -> m.state() == Member.State.IN);
                Assignment given = site.school.assignments().of(in.id()).get(0);
                assertThat(given.state()).isEqualTo(Assignment.State.GIVEN);
                assertThat(given.tasks()).hasSize(6);
                assertThat(given.due()).isPresent();
            }
        }
    }

    private static List<String> six() {
        return RealSite.library().bank().exercises().keySet().stream().sorted().limit(6).toList();
    }

    @Test
    void eachProblemIsSeenAsAStudentSeesItWithNumbersThatNobodyGets() throws Exception {
        try (SchoolUnderTest site = SchoolUnderTest.start(new EngineDesk(RealSite::library))) {
            Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
            SchoolClass in = site.addClass("Sheet metal 1", wren);
            try (WebClient browser = site.browser(wren)) {
                Hand hand = new Hand(site, browser).open("/classes/" + in.id() + "/assignments/new").type("title", "Preview");
                six().forEach(id -> hand.tick("use-" + id));
                hand.press("Save as a draft").follow("See it as a student does");
                for (int i = 1; i < 6; i++) {
                    assertThat(hand.status()).isEqualTo(200);
                    assertThat(hand.text()).contains("Nobody gets these numbers").contains("Your answers");
                    hand.follow("Next problem");
                }
                assertThat(hand.path()).endsWith("/preview/6");
                long assignment = site.school.assignments().of(in.id()).get(0).id();
                assertThat(site.school.sheets().all(assignment)).isEmpty();
            }
        }
    }
}
