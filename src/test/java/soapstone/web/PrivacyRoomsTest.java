package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.htmlunit.html.HtmlForm;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import soapstone.page.SchoolTimes;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Note;
import soapstone.school.Person;
import soapstone.school.Retention;
import soapstone.school.Retentions;
import soapstone.school.SchoolClass;

/** A student's data out, away and mended; what is over; what was changed. */
class PrivacyRoomsTest {

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

    private Page export(Person student) throws Exception {
        return RecordedClass.form(c.site.open(wren, c.data(student)), c.data(student) + "/export").getElementsByTagName("button").get(0).click();
    }

    /** A second class, of another instructor, with that student in it. */
    private SchoolClass alsoWithRook(Person student) {
        SchoolClass other = c.site.addClass("Welding 1", c.rook);
        c.school.classes().seat(other.id(), student.id(), "3", Member.State.IN, 0, c.site.now());
        return other;
    }

    @Test
    @DisplayName("Rule 5: one click, a zip with a page and JSON: account, places, every answer with question, mark and later words")
    void theWholeRecordGoesOut() throws Exception {
        c.overrule("Looked at the sketch & agreed");
        Page zip = export(c.bram);
        assertThat(zip.getWebResponse().getContentType()).isEqualTo("application/zip");
        assertThat(zip.getWebResponse().getResponseHeaderValue("Content-Disposition")).isEqualTo("attachment; filename=\"student-record.zip\"");
        Map<String, String> files = RecordedClass.unzip(zip);
        assertThat(files).containsOnlyKeys("record.html", "record.json", "rows.json");
        JsonNode json = new ObjectMapper().readTree(files.get("record.json"));
        assertThat(json.at("/account/shown").asText()).isEqualTo("Bram O.");
        assertThat(json.at("/places/0/seat").asText()).isEqualTo("8");
        assertThat(json.get("sheets")).hasSize(2);
        JsonNode problem = json.at("/sheets/0/problems/0");
        assertThat(problem.get("question").asText()).isEqualTo("Holes on a line, numbers 62.");
        JsonNode answer = problem.at("/attempts/0/answers/0");
        assertThat(answer.get("prompt").asText()).isEqualTo("Centre-to-centre spacing");
        assertThat(answer.get("typed").asText()).isEqualTo(RecordedClass.WRONG);
        assertThat(answer.get("verdict").asText()).isEqualTo("not right, a known mistake fits");
        assertThat(answer.at("/remarks/0/reason").asText()).isEqualTo("Looked at the sketch & agreed");
        assertThat(answer.at("/remarks/0/by").asText()).isEqualTo("Wren K.");
        assertThat(files.get("record.html")).contains("Bram O.").contains("7-5/16&quot; &lt;b&gt;").contains("Looked at the sketch &amp; agreed").doesNotContain("src=").doesNotContain("href=");
        assertThat(String.join("", files.values())).as("another student, or a secret").doesNotContain("Ada").doesNotContain("password").doesNotContain("argon2");
    }

    @Test
    @DisplayName("Rule 9: a record that left is on the list of what went out")
    void anExportIsNoted() throws Exception {
        export(c.ada);
        List<Audit.Entry> entries = c.school.audit().about(c.ada.id());
        assertThat(entries).hasSize(1);
        assertThat(entries.get(0)).isEqualTo(new Audit.Entry(c.site.now(), Optional.of(c.wren.id()), "student.exported", Optional.of(c.ada.id()), Optional.of(c.in.id()), "", true));
        assertThat(c.site.open(wren, c.path("/audit?only=left")).getVisibleText()).contains("Student's record taken out (went out)").contains("Ada Q.").contains("Wren K.");
        assertThat(c.site.open(wren, c.path("/audit?only=marks")).getVisibleText()).contains("Nothing of this kind yet.");
    }

    @Test
    void anExportIsNotedInEveryClassThatItHolds() throws Exception {
        SchoolClass second = c.school.classes().add("Sheet metal 2", "Spring", "SECOND2", c.in.settings(), c.wren.id(), c.site.now());
        c.school.classes().seat(second.id(), c.ada.id(), "4", soapstone.school.Member.State.IN, 0, c.site.now());
        SchoolClass other = alsoWithRook(c.ada);
        export(c.ada);
        assertThat(c.school.audit().about(c.ada.id()).stream().filter(e -> e.act().equals("student.exported"))).allMatch(Audit.Entry::leftSchool)
                .extracting(e -> e.aboutClass().orElseThrow()).containsExactlyInAnyOrder(c.in.id(), second.id()).doesNotContain(other.id());
        assertThat(c.site.open(wren, "/classes/" + second.id() + "/audit?only=left").getVisibleText()).contains("Student's record taken out (went out)").contains("Ada Q.");
    }

    @Test
    void whatBelongsToAnotherInstructorsClassStaysThere() throws Exception {
        SchoolClass other = alsoWithRook(c.ada);
        c.school.notes().ask(c.ada.id(), other.id(), "a word for Rook", c.site.now());
        c.school.audit().note(new Audit.Entry(c.site.now(), Optional.of(c.rook.id()), "member.changed", Optional.of(c.ada.id()), Optional.of(other.id()), "extra time for Rook", false));
        assertThat(c.site.open(wren, c.data(c.ada)).getVisibleText()).contains("a class that you do not teach").doesNotContain("a word for Rook");
        Map<String, String> files = RecordedClass.unzip(export(c.ada));
        assertThat(files).containsOnlyKeys("record.html", "record.json");
        assertThat(String.join("", files.values())).contains("Sheet metal 1").contains("a class that you do not teach")
                .doesNotContain("Welding 1").doesNotContain("a word for Rook").doesNotContain("extra time for Rook");
    }

    private HtmlPage erase(Person student, String typed) throws Exception {
        HtmlForm form = RecordedClass.form(c.site.open(wren, c.data(student) + "/erase"), c.data(student) + "/erase");
        form.getInputByName("confirm").setValue(typed);
        return RecordedClass.send(form);
    }

    @Test
    @DisplayName("Rule 6: erasing takes two steps, shows what goes, ends sessions, and is written down without a name")
    void erasedIsGone() throws Exception {
        try (WebClient ada = c.site.browser(c.ada)) {
            HtmlPage shows = c.site.open(wren, c.data(c.ada) + "/erase");
            assertThat(shows.getVisibleText().replaceAll("\\s+", " ")).contains("Account 1").contains("Answers with their marks 2").contains("Type 7 or Ada Q. to confirm");
            HtmlPage refused = erase(c.ada, "8");
            assertThat(refused.getWebResponse().getStatusCode()).isEqualTo(422);
            assertThat(refused.getVisibleText()).contains("neither the seat nor the name");
            assertThat(RecordedClass.form(refused, c.data(c.ada) + "/erase").getInputByName("confirm").getValue()).isEqualTo("8");
            assertThat(c.school.people().byLogin("ada")).isPresent();

            HtmlPage after = erase(c.ada, " ada q. ");
            assertThat(after.getUrl().getPath()).isEqualTo(c.path(""));
            assertThat(after.getVisibleText()).doesNotContain("Ada Q.");
            assertThat(c.school.people().byLogin("ada")).isEmpty();
            assertThat(c.school.privacy().erased()).extracting(e -> e.person()).containsExactly(c.ada.id());
            assertThat(c.site.open(ada, "/sheets/record").getVisibleText()).as("signed out").contains("Sign in");
            Audit.Entry entry = c.school.audit().aboutClass(c.in.id()).stream().filter(e -> e.act().equals("student.erased")).findFirst().orElseThrow();
            assertThat(entry.aboutPerson()).isEmpty();
            assertThat(entry.detail()).isEmpty();
            assertThat(entry.by()).contains(c.wren.id());
            assertThat(c.site.open(wren, c.data(c.ada)).getWebResponse().getStatusCode()).isEqualTo(404);
            assertThat(c.school.attempts().ofAssignment(c.school.assignments().of(c.in.id()).get(0).id())).as("the figures of the class stay").hasSize(2);
        }
    }

    @Test
    void theSeatConfirmsAsWell() throws Exception {
        erase(c.bram, "8");
        assertThat(c.school.people().byLogin("bram")).isEmpty();
        assertThat(c.school.people().byLogin("ada")).isPresent();
    }

    @Test
    void whoAlsoSitsWithAnotherInstructorIsNotErasedByOneAlone() throws Exception {
        alsoWithRook(c.ada);
        HtmlPage page = c.site.open(wren, c.data(c.ada) + "/erase");
        assertThat(page.getVisibleText()).contains("cannot be erased here");
        assertThat(page.getForms()).extracting(HtmlForm::getActionAttribute).containsExactly("/sign-out");
        assertThat(c.post(wren, c.data(c.ada) + "/erase", Map.of("confirm", "7")).getWebResponse().getStatusCode()).isEqualTo(409);
        assertThat(c.school.people().byLogin("ada")).isPresent();
    }

    @Test
    @DisplayName("Rule 7: a student asks for a correction, the instructor answers, and a refused request stays beside the record")
    void aRequestStaysWithItsAnswer() throws Exception {
        try (WebClient ada = c.site.browser(c.ada)) {
            HtmlForm ask = RecordedClass.form(c.site.open(ada, "/sheets/record"), "/sheets/record");
            HtmlPage empty = RecordedClass.send(ask);
            assertThat(empty.getWebResponse().getStatusCode()).isEqualTo(422);
            HtmlForm again = RecordedClass.form(empty, "/sheets/record");
            again.getTextAreaByName("asks").setText("I typed 8 1/16 <i>");
            HtmlPage asked = RecordedClass.send(again);
            assertThat(asked.getWebResponse().getStatusCode()).isEqualTo(200);
            assertThat(asked.getVisibleText()).contains("I typed 8 1/16 <i>").contains("Not answered yet");

            Note note = c.school.notes().of(c.ada.id()).get(0);
            String path = c.data(c.ada) + "/corrections/" + note.id();
            HtmlForm answer = RecordedClass.form(c.site.open(wren, c.data(c.ada)), path);
            answer.getSelectByName("outcome-" + note.id()).setSelectedAttribute("REFUSED", true);
            HtmlPage missing = RecordedClass.send(answer);
            assertThat(missing.getWebResponse().getStatusCode()).isEqualTo(422);
            HtmlForm filled = RecordedClass.form(missing, path);
            assertThat(filled.getSelectByName("outcome-" + note.id()).getSelectedOptions().get(0).getValueAttribute()).isEqualTo("REFUSED");
            filled.getTextAreaByName("answer-" + note.id()).setText("The scan says 8 1/4.");
            RecordedClass.send(filled);
            assertThat(c.site.open(ada, "/sheets/record").getVisibleText()).contains("Left as it was").contains("The scan says 8 1/4.").contains("by Wren K.");
            assertThat(RecordedClass.unzip(export(c.ada)).get("record.json")).contains("I typed 8 1/16 <i>").contains("The scan says 8 1/4.");
            assertThat(c.post(wren, path, Map.of("outcome-" + note.id(), "MENDED", "answer-" + note.id(), "x")).getWebResponse().getStatusCode()).isEqualTo(200);
            assertThat(c.school.notes().of(c.ada.id()).get(0).answer()).as("answered once").isEqualTo("The scan says 8 1/4.");
        }
    }

    @Test
    void aRequestForAClassThatIsNotTheirsIsNotTaken() throws Exception {
        SchoolClass other = c.site.addClass("Welding 1", c.rook);
        try (WebClient ada = c.site.browser(c.ada)) {
            assertThat(c.post(ada, "/sheets/record", Map.of("class", String.valueOf(other.id()), "asks", "x")).getWebResponse().getStatusCode()).isEqualTo(422);
        }
        assertThat(c.school.notes().ofClass(other.id())).isEmpty();
        c.school.notes().ask(c.bram.id(), c.in.id(), "about Bram", c.site.now());
        long note = c.school.notes().of(c.bram.id()).get(0).id();
        assertThat(c.post(wren, c.data(c.ada) + "/corrections/" + note, Map.of()).getWebResponse().getStatusCode()).as("another student's").isEqualTo(404);
    }

    @Test
    @DisplayName("Rule 8: the keeper sees whose time is over, and exactly these are erased")
    void theRetentionRuleIsTriedBeforeItIsDone() throws Exception {
        try (WebClient keeper = c.site.browser(c.keeper)) {
            assertThat(c.site.open(keeper, "/retention").getVisibleText()).contains("one year more").contains("Nobody's time is over today.");
            c.school.classes().setArchived(c.in.id(), Optional.of(c.site.now()));
            c.site.wait(Duration.ofDays(600));
            c.site.signIn(keeper, "kestrel", SchoolUnderTest.PASSWORD);
            HtmlPage list = c.site.open(keeper, "/retention");
            assertThat(list.getVisibleText()).contains("July 31, 2027").contains("Ada Q.").contains("Bram O.").doesNotContain(RecordedClass.WRONG);
            HtmlForm form = RecordedClass.form(list, "/retention");
            form.getInputByName("confirm").setValue("1");
            HtmlPage refused = RecordedClass.send(form);
            assertThat(refused.getWebResponse().getStatusCode()).isEqualTo(422);
            assertThat(c.school.privacy().erased()).isEmpty();
            HtmlForm right = RecordedClass.form(refused, "/retention");
            right.getInputByName("confirm").setValue("2");
            HtmlPage done = RecordedClass.send(right);
            assertThat(done.getVisibleText()).contains("Erased: 2.").contains("Nobody's time is over today.");
            assertThat(c.school.privacy().erased()).hasSize(2);
            Audit.Entry entry = c.school.audit().latest(1).get(0);
            assertThat(entry.act()).isEqualTo("retention.erased");
            assertThat(entry.aboutPerson()).isEmpty();
        }
    }

    @Test
    void aListThatChangedMeanwhileErasesNobody() throws Exception {
        c.school.classes().setArchived(c.in.id(), Optional.of(c.site.now()));
        c.site.wait(Duration.ofDays(600));
        try (WebClient keeper = c.site.browser(c.keeper)) {
            HtmlForm form = RecordedClass.form(c.site.open(keeper, "/retention"), "/retention");
            form.getInputByName("confirm").setValue("2");
            c.school.privacy().erase(c.bram.id(), Optional.empty(), c.site.now());
            HtmlPage refused = RecordedClass.send(form);
            assertThat(refused.getWebResponse().getStatusCode()).isEqualTo(422);
            assertThat(refused.getVisibleText()).contains("The list has changed").contains("Ada Q.");
            assertThat(c.school.people().byLogin("ada")).isPresent();
        }
    }

    @Test
    @DisplayName("Rule 8: the keeper says when the school year ends, and whether it goes by itself; the pages say what is due")
    void theKeeperSaysHowLongRecordsAreKept() throws Exception {
        c.school.classes().setArchived(c.in.id(), Optional.of(c.site.now()));
        c.site.wait(Duration.ofDays(600));
        try (WebClient keeper = c.site.browser(c.keeper)) {
            assertThat(c.site.open(keeper, "/accounts").getVisibleText()).contains("Students whose time is over: 2.");
            HtmlPage page = c.site.open(keeper, "/retention");
            assertThat(page.getVisibleText()).contains("nobody is erased until you do it here").contains("Nothing was erased by this rule yet.");
            HtmlForm form = RecordedClass.form(page, "/retention/rule");
            form.getSelectByName("month").setSelectedAttribute("6", true);
            form.getInputByName("day").setValue("31");
            HtmlPage refused = RecordedClass.send(form);
            assertThat(refused.getWebResponse().getStatusCode()).isEqualTo(422);
            assertThat(refused.getVisibleText()).contains("June has days 1 to 30.");
            assertThat(c.school.retentions().rule()).isEqualTo(Retentions.Rule.USUAL);

            HtmlForm right = RecordedClass.form(refused, "/retention/rule");
            assertThat(right.getInputByName("day").getValue()).isEqualTo("31");
            right.getInputByName("day").setValue("15");
            right.getInputByName("by-itself").setChecked(true);
            HtmlPage kept = RecordedClass.send(right);
            assertThat(kept.getVisibleText()).contains("Nothing is erased by itself before tomorrow.").contains("June 15, 2027").contains("once a day").contains("Ada Q.");
            assertThat(c.school.audit().latest(1).get(0).act()).isEqualTo("retention.changed");
            assertThat(Retention.byItself(c.school, c.site.now().plus(Duration.ofHours(23)), SchoolTimes.zone())).isZero();
            assertThat(Retention.byItself(c.school, c.site.now().plus(Duration.ofHours(24)), SchoolTimes.zone())).isEqualTo(2);
            assertThat(c.site.open(keeper, "/retention").getVisibleText()).contains("the program").contains("Nobody's time is over today.");
            assertThat(c.site.open(keeper, "/accounts").getVisibleText()).doesNotContain("Students whose time is over");
            assertThat(c.site.open(keeper, "/privacy").getVisibleText()).contains("15 June");
        }
    }

    @Test
    void aLongAuditComesInPagesTheNewestFirst() throws Exception {
        for (int i = 1; i <= 130; i++) {
            c.school.audit().note(new Audit.Entry(c.site.now().plusSeconds(i), Optional.empty(), i % 2 == 0 ? "mark.regraded" : "some.act", Optional.empty(), Optional.of(c.in.id()),
                    "entry-" + i + "-", false));
        }
        String first = c.site.open(wren, c.path("/audit")).getVisibleText();
        assertThat(first).contains("entry-130-").doesNotContain("entry-30-").contains("1 of 2").contains("the program").contains("some.act");
        assertThat(c.site.open(wren, c.path("/audit?page=2")).getVisibleText()).contains("entry-30-").contains("entry-1-").doesNotContain("entry-31-");
        assertThat(c.site.open(wren, c.path("/audit?page=99&only=marks")).getVisibleText()).contains("entry-2-").doesNotContain("entry-1-").contains("Marked again");
        assertThat(c.site.open(wren, c.path("/audit?page=-1&only=nonsense")).getWebResponse().getStatusCode()).isEqualTo(200);
    }
}
