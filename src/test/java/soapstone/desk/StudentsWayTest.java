package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.SchoolClass;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** A student's way from the slip to the own record, at a tablet that goes from hand to hand. */
class StudentsWayTest {

    private SchoolUnderTest site;
    private SchoolClass in;
    private List<AtWork.Slip> slips;
    private AtWork heron;
    private WebClient tablet;
    private Hand hand;
    private WebClient desk;
    private Hand instructor;

    @BeforeEach
    void start() throws Exception {
        site = SchoolUnderTest.start(new EngineDesk(RealSite::library));
        Person wren = site.add(Person.Kind.INSTRUCTOR, "Wren K.", "wren");
        in = site.addClass("Sheet metal 1", wren);
        desk = site.browser(wren);
        instructor = new Hand(site, desk).open("/classes/" + in.id() + "/roster").type("roster", "7, Heron\n8, Plover").press("Look at the list").press("Make these 2 accounts");
        slips = AtWork.cut(instructor.page());
        heron = new AtWork(site, slips.get(0));
        instructor.open("/classes/" + in.id() + "/assignments/new").type("title", "Week 12").tick("use-spacing/bolt-holes").press("Give it out");
        tablet = site.browser();
        hand = new Hand(site, tablet);
    }

    @AfterEach
    void stop() {
        desk.close();
        tablet.close();
        site.close();
    }

    @Test
    void theWay() throws Exception {
        theSlipIsEnoughAndThePageSaysWhatIsDue();
        whatIsTypedStaysOverSigningOutAndIsNobodyElses();
        whatCannotBeReadIsAskedAgainAndCostsNoTry();
        theMistakeIsNamedBesideTheReceipt();
        onceMoreWithOtherNumbers();
        everythingHandedInStandsInTheHistory();
        theOwnRecordTakesARequestAndItsAnswer();
    }

    private void signIn(AtWork.Slip slip) throws Exception {
        hand.open("/sign-in").type("login", slip.login()).type("password", slip.passphrase()).tick("tablet").press("Sign in");
    }

    private Problem problem() {
        long week = site.school.assignments().of(in.id()).get(0).id();
        return site.school.sheets().of(week, heron.person().id()).orElseThrow().problems().get(0);
    }

    private String page() {
        return "/sheets/" + problem().sheet() + "/1";
    }

    private void theSlipIsEnoughAndThePageSaysWhatIsDue() throws Exception {
        signIn(slips.get(0));
        assertThat(hand.heading()).isEqualTo("My work");
        assertThat(hand.row("Week 12")).contains("Due ").contains("Not opened yet");
        hand.follow("Week 12").press("Open my sheet");
        assertThat(hand.row("1. Bolt holes along an angle")).contains("Not handed in");
    }

    private void whatIsTypedStaysOverSigningOutAndIsNobodyElses() throws Exception {
        hand.follow("1. Bolt holes along an angle").answer(Map.of("a", "7 5/16")).press("Keep for later");
        assertThat(hand.text()).contains("Kept ");
        hand.press("Sign out");
        signIn(slips.get(1));
        assertThat(hand.text()).contains("Plover").doesNotContain("Heron");
        assertThat(hand.open(page()).status()).isEqualTo(404);
        hand.open("/work").press("Sign out");
        signIn(slips.get(0));
        assertThat(hand.open(page()).typed("box-a")).isEqualTo("7 5/16");
    }

    private void whatCannotBeReadIsAskedAgainAndCostsNoTry() throws Exception {
        String before = tries();
        hand.answer(Map.of("a", "31/2")).press("Read my answers");
        assertThat(hand.text()).contains("Please write it again.", "No try used.");
        assertThat(hand.canPress("Hand in")).isFalse();
        hand.open(page());
        assertThat(tries()).isEqualTo(before);
    }

    private String tries() {
        return hand.text().replaceAll(".*?(\\w+ (tries|try) left).*", "$1");
    }

    private void theMistakeIsNamedBesideTheReceipt() throws Exception {
        hand.answer(AtWork.slip(problem(), "shared-over-holes").orElseThrow()).press("Read my answers");
        assertThat(hand.text()).contains("Reads as ");
        hand.press("Hand in");
        assertThat(hand.text()).contains("Receipt ", "0 of 1 points", "This answer fits: spaces counted like holes.");
    }

    private void onceMoreWithOtherNumbers() throws Exception {
        long before = problem().seed();
        hand.press("Take other numbers");
        assertThat(problem().seed()).isNotEqualTo(before);
        hand.open(page());
        assertThat(hand.text()).contains("Numbers no. 2");
        hand.answer(AtWork.right(problem())).press("Read my answers").press("Hand in");
        assertThat(hand.text()).contains("Right.", "1 of 1 points");
    }

    private void everythingHandedInStandsInTheHistory() throws Exception {
        hand.open("/work").follow("Everything I handed in");
        assertThat(hand.page().<Object>getByXPath("//tbody/tr")).hasSize(2);
        assertThat(hand.text()).contains("0 of 1 points", "1 of 1 points", "Week 12", "Sheet metal 1");
    }

    private void theOwnRecordTakesARequestAndItsAnswer() throws Exception {
        hand.follow("My record").type("asks", "My name is written Heron, not Herron.").press("Ask for it");
        assertThat(hand.text()).contains("My name is written Heron, not Herron.", "Not answered yet");
        long note = site.school.notes().of(heron.person().id()).get(0).id();
        instructor.open("/classes/" + in.id() + "/students/" + heron.person().id()).follow("Data of Heron").type("answer-" + note, "It is Heron here.").press("Answer");
        site.wait(Duration.ofMinutes(1));
        assertThat(hand.open("/sheets/record").text()).contains("Corrected", "It is Heron here.");
    }
}
