package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** What else an instructor takes to the printer. */
class HandoutsTest {

    private static SchoolUnderTest site;
    private static RealSchool room;
    private static Hand hand;

    @BeforeAll
    static void open() throws Exception {
        site = RealSchool.open();
        room = new RealSchool(site);
        hand = new Hand(site, site.browser(room.instructor));
    }

    @AfterAll
    static void close() {
        site.close();
    }

    private static String text(Page page) throws Exception {
        assertThat(page.getWebResponse().getContentType()).isEqualTo("application/pdf");
        try (Pdf pdf = new Pdf(page.getWebResponse().getContentAsStream().readAllBytes())) {
            assertThat(pdf.fonts(true)).isEmpty();
            return pdf.text();
        }
    }

    private static Page link(String words) throws Exception {
        return hand.page().getAnchorByText(words).click();
    }

    @Test
    void aLessonWithItsWorkedExampleAndItsTask() throws Exception {
        hand.open("/lessons/holes-and-spaces");
        assertThat(text(link("Print this lesson"))).contains("Holes and spaces", "Count the spaces between the holes", "What often goes wrong");
        hand.open("/lessons/holes-and-spaces");
        assertThat(text(link("Print the task at the bench"))).contains("At the bench", "Mark nine holes", "Pass: within 1/32 in of one inch", "Seen by").doesNotContain("What often goes wrong");
        WebClient guest = site.browser();
        assertThat(site.open(guest, "/lessons/holes-and-spaces").asNormalizedText()).doesNotContain("Print this lesson");
    }

    @Test
    void slipsToSignInWithAsTheyStandOnThePage() throws Exception {
        hand.open("/classes/" + room.in.id() + "/roster").type("roster", "7,Cleo\n8,Dan").press("Look at the list");
        hand.press("Make these 2 accounts");
        String login = hand.page().<org.htmlunit.html.HtmlInput>getFirstByXPath("//input[@name='login-1']").getValue();
        String passphrase = hand.page().<org.htmlunit.html.HtmlInput>getFirstByXPath("//input[@name='passphrase-1']").getValue();
        String text = text(hand.take("The slips as a PDF"));
        assertThat(text).contains("7 Cleo", "8 Dan", login, passphrase, site.address(""));
    }

    @Test
    void aCompetencyRecordIsNotedWhenItIsPrinted() throws Exception {
        hand.open("/classes/" + room.in.id() + "/competencies/" + room.ada.person().id());
        assertThat(text(hand.take("Print this record"))).contains("Ada", room.in.name());
        assertThat(site.school.audit().about(room.ada.person().id()).stream().map(soapstone.school.Audit.Entry::act)).contains("competency.printed");
    }

    @Test
    void paperThatThereIsNotIsRefused() throws Exception {
        assertThat(hand.open("/lessons/holes-and-spaces/handout?paper=papyrus").status()).isEqualTo(400);
        assertThat(hand.open("/lessons/no-such-lesson/handout").status()).isEqualTo(404);
    }
}
