package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soapstone.command.Soapstone;
import soapstone.record.Databases;
import soapstone.record.SqlSchool;
import soapstone.school.Audit;

/** The week of whoever keeps the accounts and the machine, and never sees an answer. */
class KeepersWeekTest {

    private static final String FRESH = "copper lanterns drift north";

    @TempDir
    private Path folder;
    private RecordedClass c;
    private WebClient browser;
    private Hand keeper;

    @BeforeEach
    void start() throws Exception {
        c = new RecordedClass(new SampleDesk(), Databases.h2(folder.resolve("data")));
        c.school.sheets().keepWhole("print1", "the exercise as it was", c.site.now());
        browser = c.site.browser(c.keeper);
        keeper = new Hand(c.site, browser);
    }

    @Test
    void theWeek() throws Exception {
        try (RecordedClass school = c; WebClient open = browser) {
            anAccountIsMadeForAnInstructor();
            aForgottenPasswordIsReset();
            anAccountIsDisabled();
            aStudentIsFoundByNameAndNoAnswerIsSeen();
            theInstructorTakesARecordOutAndErasesItOnRequest();
            theRetentionListIsLookedAtAndErasesNobody();
        }
        aBackupIsMadeAndTheDoctorFindsAllWell();
        whatWasErasedIsNotInTheSchoolAndTheAuditSaysWho();
    }

    private String codeFor(String login) {
        assertThat(keeper.text()).contains(login, "It works once and for half an hour.");
        return keeper.page().querySelector("dd.secret-code").getTextContent();
    }

    private void setsAPassword(String login, String code) throws Exception {
        try (WebClient theirs = c.site.browser()) {
            Hand hand = new Hand(c.site, theirs).open("/new-password").type("login", login).type("code", code).type("fresh", FRESH).type("again", FRESH)
                    .press("Set the password and sign in");
            assertThat(hand.heading()).isEqualTo("Classes");
        }
    }

    private void anAccountIsMadeForAnInstructor() throws Exception {
        keeper.open("/accounts").follow("Add an account").type("shown", "T. Larch").type("login", "larch").press("Add the account");
        setsAPassword("larch", codeFor("larch"));
        assertThat(keeper.follow("Done").row("T. Larch")).contains("larch", "Instructor", "Open");
    }

    private void aForgottenPasswordIsReset() throws Exception {
        keeper.open("/accounts").follow("Rook T.").press("Make a new code");
        String code = codeFor("rook");
        try (WebClient old = c.site.browser()) {
            assertThat(c.site.signIn(old, "rook", SchoolUnderTest.PASSWORD).getWebResponse().getStatusCode()).isEqualTo(403);
        }
        setsAPassword("rook", code);
    }

    private void anAccountIsDisabled() throws Exception {
        keeper.open("/accounts").follow("T. Larch").press("Disable");
        assertThat(keeper.open("/accounts").row("T. Larch")).contains("Disabled");
        try (WebClient theirs = c.site.browser()) {
            assertThat(c.site.signIn(theirs, "larch", FRESH).getWebResponse().getStatusCode()).isEqualTo(403);
        }
    }

    private void aStudentIsFoundByNameAndNoAnswerIsSeen() throws Exception {
        keeper.open("/accounts").follow("Students").type("find", "bram").press("Find").follow("Bram O.");
        assertThat(keeper.text()).contains("bram", "Student").doesNotContain(RecordedClass.WRONG).doesNotContain("Sheet metal 1");
        for (String page : new String[] {c.path(""), c.path("/marks"), c.path("/students/" + c.bram.id()), c.data(c.bram), c.path("/audit")}) {
            assertThat(keeper.open(page).status()).as(page).isEqualTo(404);
        }
    }

    /** Taking out and erasing is the matter of the class's instructor. */
    private void theInstructorTakesARecordOutAndErasesItOnRequest() throws Exception {
        try (WebClient hers = c.site.browser(c.wren)) {
            Hand wren = new Hand(c.site, hers).open(c.path("/students/" + c.bram.id())).follow("Data of Bram O.");
            assertThat(RecordedClass.unzip(wren.take("Take the record out")).get("record.html")).contains("Bram O.", "7-5/16");
            wren.follow("See what would go").type("confirm", "Bram O.").press("Erase this student");
            assertThat(wren.open(c.path("")).text()).doesNotContain("Bram O.").contains("Ada Q.");
            assertThat(wren.open(c.path("/students/" + c.bram.id())).text()).doesNotContain("Bram O.").doesNotContain("Data of");
        }
        assertThat(keeper.open("/accounts/students").text()).contains("Ada Q.").doesNotContain("Bram O.");
    }

    private void theRetentionListIsLookedAtAndErasesNobody() throws Exception {
        assertThat(keeper.follow("Keeping").text()).contains("Nobody's time is over today.");
        c.school.classes().setArchived(c.in.id(), Optional.of(c.site.now()));
        c.site.wait(Duration.ofDays(600));
        c.site.signIn(browser, "kestrel", SchoolUnderTest.PASSWORD);
        assertThat(keeper.open("/retention").row("Ada Q.")).contains("ada");
        assertThat(keeper.text()).contains("Type 1 to confirm. Nothing has been erased yet.");
        assertThat(c.school.people().byLogin("ada")).isPresent();
    }

    private String run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertThat(Soapstone.run(print, print, args)).as(out.toString(StandardCharsets.UTF_8)).isZero();
        return out.toString(StandardCharsets.UTF_8);
    }

    private void aBackupIsMadeAndTheDoctorFindsAllWell() {
        String data = folder.resolve("data").toString();
        assertThat(run("doctor", "--data", data)).contains("4  attempt", "All is well.");
        assertThat(run("backup", "--data", data, "--to", folder.resolve("friday.zip").toString())).startsWith("Backed up 6 people, 1 classes and 4 attempts");
        run("restore", "--data", folder.resolve("again").toString(), "--from", folder.resolve("friday.zip").toString());
        assertThat(run("doctor", "--data", folder.resolve("again").toString())).contains("4  attempt", "All is well.");
    }

    private void whatWasErasedIsNotInTheSchoolAndTheAuditSaysWho() {
        try (var database = Databases.h2(folder.resolve("again"))) {
            var school = SqlSchool.of(database);
            assertThat(school.people().byLogin("bram")).isEmpty();
            assertThat(school.people().byLogin("ada")).isPresent();
            assertThat(school.audit().aboutClass(1)).filteredOn(e -> e.act().equals("student.erased")).hasSize(1).extracting(Audit.Entry::by).containsExactly(Optional.of(c.wren.id()));
        }
    }
}
