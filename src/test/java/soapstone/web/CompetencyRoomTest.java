package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlCheckBoxInput;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlTableRow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.school.Assignment;
import soapstone.school.Audit;
import soapstone.school.Competency;
import soapstone.school.Signoff;
import soapstone.school.TradeCode;

/** Competencies through the pages: gathered, signed, withdrawn, read. */
class CompetencyRoomTest {

    private RecordedClass c;
    private WebClient wren;

    @BeforeEach
    void start() throws Exception {
        c = new RecordedClass();
        wren = c.site.browser(c.wren);
    }

    @AfterEach
    void stop() {
        wren.close();
        c.close();
    }

    private String record() {
        return c.path("/competencies/" + c.ada.id());
    }

    private HtmlPage signing() throws Exception {
        HtmlPage record = c.site.open(wren, record());
        return record.getAnchors().stream().filter(a -> a.getHrefAttribute().contains("/sign?") && a.getHrefAttribute().contains("B-6.01")).findFirst().orElseThrow().click();
    }

    private HtmlPage send(String text) throws Exception {
        HtmlForm form = RecordedClass.form(signing(), record() + "/sign");
        form.getTextAreaByName("conditions").setText(text);
        return RecordedClass.send(form);
    }

    @Test
    void theGridSaysInWordsWhoHasEvidenceAndWhoIsSigned() throws Exception {
        HtmlPage before = c.site.open(wren, c.path("/competencies"));
        List<String> rows = before.<HtmlTableRow>getByXPath("//table[@class='competencies']/tbody/tr").stream().map(r -> r.getVisibleText().replaceAll("\\s+", " ")).toList();
        assertThat(rows).containsExactly("7 Ada Q. Evidence complete No skills named", "8 Bram O. No evidence yet No skills named");
        assertThat(before.getVisibleText()).contains("B-6.01").contains("current web edition");
        send("alone, book closed");
        assertThat(c.site.open(wren, c.path("/competencies")).getVisibleText().replaceAll("\\s+", " ")).contains("7 Ada Q. Signed Evidence complete");
    }

    @Test
    void theRecordShowsEachDayWithItsExerciseItsNumbersAndItsPoints() throws Exception {
        String text = c.site.open(wren, record()).getVisibleText().replaceAll("\\s+", " ");
        assertThat(text).contains("B-6.01 Simple and straight line layout").contains("Sheet Metal Worker (Red Seal), current web edition")
                .contains("2027-03-07 spacing/bolt-holes 41 1 2.5 of 2.5").contains("2027-03-08 spacing/bolt-holes 42 1 2.5 of 2.5").contains("S1 Sets up the brake");
    }

    @Test
    void aSignatureKeepsNameTimeConditionsAndTheEvidenceOfThatMoment() throws Exception {
        HtmlPage after = send("alone, own tools,\nbook closed <b>");
        assertThat(after.getUrl().getPath()).isEqualTo(record());
        assertThat(after.getVisibleText()).contains("Signed by Wren K.").contains("Conditions: alone, own tools,").contains("book closed <b>");
        Signoff kept = c.school.signoffs().of(c.ada.id()).get(0);
        assertThat(kept.by()).isEqualTo(c.wren.id());
        assertThat(kept.at()).isEqualTo(c.site.now());
        assertThat(kept.code()).isEqualTo(RecordedClass.LAYOUT);
        assertThat(kept.evidence()).isEqualTo("Equal spacing: 2027-03-07, spacing/bolt-holes, numbers 41, try 1, 2.5 of 2.5 points\n"
                + "Equal spacing: 2027-03-08, spacing/bolt-holes, numbers 42, try 1, 2.5 of 2.5 points");
        assertThat(c.school.audit().about(c.ada.id())).extracting(Audit.Entry::act).contains("competency.signed");
    }

    @Test
    void aWithdrawalIsAFurtherEntryWithItsReason() throws Exception {
        send("alone");
        HtmlPage page = signing();
        assertThat(page.getVisibleText()).contains("Behind it will stand that it was withdrawn");
        HtmlPage after = send("was helped after all");
        assertThat(after.getVisibleText()).contains("Signed by Wren K.").contains("Withdrawn by Wren K.").contains("Reason: was helped after all");
        assertThat(c.school.signoffs().of(c.ada.id())).extracting(Signoff::act).containsExactly(Signoff.Act.SIGNED, Signoff.Act.WITHDRAWN);
        assertThat(send("again, alone").getVisibleText()).contains("again, alone");
        assertThat(c.school.signoffs().of(c.ada.id())).hasSize(3);
    }

    @Test
    void aFormThatIsSentTwiceIsOneEntry() throws Exception {
        HtmlForm first = RecordedClass.form(signing(), record() + "/sign");
        HtmlForm second = RecordedClass.form(signing(), record() + "/sign");
        first.getTextAreaByName("conditions").setText("alone");
        second.getTextAreaByName("conditions").setText("alone");
        RecordedClass.send(first);
        assertThat(RecordedClass.send(second).getWebResponse().getStatusCode()).isEqualTo(200);
        assertThat(c.school.signoffs().of(c.ada.id())).hasSize(1);
        assertThat(c.school.audit().about(c.ada.id())).hasSize(1);
    }

    @Test
    void withoutConditionsNothingIsSignedAndThePageSaysWhatIsMissing() throws Exception {
        HtmlPage again = send(" ");
        assertThat(again.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(again.<Object>getByXPath("//textarea[@aria-invalid='true' and contains(@aria-describedby, 'fault-conditions')]")).hasSize(1);
        assertThat(again.getVisibleText()).contains("Write under which conditions the work was done.");
        HtmlForm form = RecordedClass.form(again, record() + "/sign");
        form.getTextAreaByName("conditions").setText("x".repeat(401));
        HtmlPage tooLong = RecordedClass.send(form);
        assertThat(tooLong.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(tooLong.getVisibleText()).contains("Up to 400 characters");
        assertThat(RecordedClass.form(tooLong, record() + "/sign").getTextAreaByName("conditions").getText()).hasSize(401);
        assertThat(c.school.signoffs().of(c.ada.id())).isEmpty();
    }

    @Test
    void aCodeThatIsNotOnTheRecordCannotBeSigned() throws Exception {
        Map<String, String> fields = Map.of("frame", "", "edition", "", "code", "S9", "act", "SIGNED", "conditions", "x");
        assertThat(c.post(wren, record() + "/sign", fields).getWebResponse().getStatusCode()).isEqualTo(404);
        assertThat(c.site.open(wren, record() + "/sign").getWebResponse().getStatusCode()).isEqualTo(404);
        Map<String, String> act = Map.of("frame", "", "edition", "", "code", "S1", "act", "FORGED", "conditions", "x");
        assertThat(c.post(wren, record() + "/sign", act).getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(c.school.signoffs().of(c.ada.id())).isEmpty();
    }

    @Test
    void theListTakesCodesOfFramesAndOwnOnesAndKeepsWhatWasSigned() throws Exception {
        send("alone");
        HtmlPage list = c.site.open(wren, c.path("/competencies/list"));
        assertThat(list.getBody().getTextContent()).contains("From memory").contains("2017/18");
        HtmlForm own = RecordedClass.form(list, c.path("/competencies/own"));
        own.getInputByName("code").setValue("S2");
        own.getInputByName("title").setValue("Lays out a flange");
        own.getInputByName("skill-equal-spacing").setChecked(true);
        HtmlPage added = RecordedClass.send(own);
        assertThat(c.school.signoffs().listed(c.in.id())).extracting(l -> l.code().code()).containsExactly("B-6.01", "S1", "S2");
        HtmlForm frames = RecordedClass.form(added, c.path("/competencies/list"));
        frames.<HtmlCheckBoxInput>getByXPath(".//input[@checked]").forEach(i -> i.setChecked(false));
        RecordedClass.send(frames);
        assertThat(c.school.signoffs().listed(c.in.id())).extracting(Competency::code).extracting(TradeCode::code).containsExactly("S1", "S2");
        assertThat(c.site.open(wren, record()).getVisibleText()).as("signed, so it stays").contains("B-6.01").contains("Signed by Wren K.");
        RecordedClass.send(RecordedClass.form(c.site.open(wren, c.path("/competencies/list")), c.path("/competencies/own/" + c.school.signoffs().listed(c.in.id()).get(0).id() + "/remove")));
        assertThat(c.school.signoffs().listed(c.in.id())).extracting(l -> l.code().code()).containsExactly("S2");
    }

    @Test
    void anOwnCodeTwiceOrWithoutATitleComesBackAsTyped() throws Exception {
        HtmlForm own = RecordedClass.form(c.site.open(wren, c.path("/competencies/list")), c.path("/competencies/own"));
        own.getInputByName("code").setValue("S1");
        own.getInputByName("title").setValue("Another");
        own.getInputByName("skill-equal-spacing").setChecked(true);
        HtmlPage again = RecordedClass.send(own);
        assertThat(again.getWebResponse().getStatusCode()).isEqualTo(422);
        assertThat(again.getVisibleText()).contains("This class has a code S1 already.");
        HtmlForm back = RecordedClass.form(again, c.path("/competencies/own"));
        assertThat(back.getInputByName("title").getValue()).isEqualTo("Another");
        assertThat(back.getInputByName("skill-equal-spacing").isChecked()).isTrue();
    }

    @Test
    void aClassThatIsPutAwayIsReadAndNotSigned() throws Exception {
        HtmlForm form = RecordedClass.form(signing(), record() + "/sign");
        form.getTextAreaByName("conditions").setText("alone");
        c.school.classes().setArchived(c.in.id(), Optional.of(c.site.now()));
        assertThat(RecordedClass.send(form).getWebResponse().getStatusCode()).isEqualTo(409);
        assertThat(c.site.open(wren, record()).getWebResponse().getStatusCode()).isEqualTo(200);
        assertThat(c.school.signoffs().of(c.ada.id())).isEmpty();
    }

    @Test
    void theStudentReadsTheOwnRecordAndCanChangeNothingInIt() throws Exception {
        send("alone, book closed");
        try (WebClient ada = c.site.browser(c.ada)) {
            HtmlPage own = c.site.open(ada, "/sheets/record");
            assertThat(own.getVisibleText()).contains("Signed by Wren K.").contains("alone, book closed").contains("B-6.01").doesNotContain("Bram");
            assertThat(own.getForms()).extracting(HtmlForm::getActionAttribute).containsExactlyInAnyOrder("/sign-out", "/sheets/record");
        }
    }

    /** Right or not right is not told before the sheet says so itself. */
    @Test
    void theOwnRecordDoesNotTellWhatAnOpenSheetHolds() throws Exception {
        c.day(3, Verdict.RIGHT, Assignment.Shows.NOTHING);
        assertThat(c.site.open(wren, record()).getVisibleText()).contains("2027-03-09");
        try (WebClient ada = c.site.browser(c.ada)) {
            assertThat(c.site.open(ada, "/sheets/record").getVisibleText()).contains("2027-03-08").doesNotContain("2027-03-09");
        }
    }
}
