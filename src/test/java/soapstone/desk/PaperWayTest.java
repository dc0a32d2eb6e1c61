package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.htmlunit.Page;
import org.htmlunit.WebClient;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import soapstone.mark.Verdict;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Counted;
import soapstone.school.Member;
import soapstone.school.Print;
import soapstone.school.Problem;
import soapstone.school.Sheet;
import soapstone.web.Hand;
import soapstone.web.SchoolUnderTest;

/** The whole way on paper: printed, worked, typed in, marked, given back. */
class PaperWayTest {

    private static final String TRAY = "bends/hose-tray";
    private static final String DIE = "brake/die-opening";

    private static SchoolUnderTest site;
    private RealSchool room;
    private Assignment work;
    private WebClient browser;
    private Hand hand;

    @BeforeAll
    static void open() throws Exception {
        site = RealSchool.open();
    }

    @AfterAll
    static void close() {
        site.close();
    }

    @BeforeEach
    void begin() throws IOException {
        room = new RealSchool(site);
        work = room.give(Assignment.Shows.MISTAKE, Assignment.Late.HALF, 1, Optional.of(site.now().plus(Duration.ofDays(2))), RealSchool.HOLES_TASK,
                new Assignment.Task(0, 2, List.of(TRAY), 1, 3), new Assignment.Task(0, 3, List.of(DIE), 1, 2));
        browser = site.browser(room.instructor);
        hand = new Hand(site, browser);
    }

    private Hand choose(String kind) throws IOException {
        return hand.open("/assignments/" + work.id()).follow("On paper").choose("kind", kind);
    }

    /** Presses the button and waits until the file is there. */
    private byte[] made() throws Exception {
        hand.press("Make it");
        String path = hand.path();
        for (int i = 0; i < 600 && !hand.text().contains("Done:"); i++) {
            assertThat(hand.text()).doesNotContain("could not be made");
            Thread.sleep(100);
            hand.open(path);
        }
        return taken();
    }

    private byte[] taken() throws IOException {
        Page page = hand.page().getAnchorByText("Take the PDF").click();
        assertThat(page.getWebResponse().getContentType()).isEqualTo("application/pdf");
        return page.getWebResponse().getContentAsStream().readAllBytes();
    }

    private byte[] print(String kind) throws Exception {
        choose(kind);
        return made();
    }

    private Sheet sheet(Member of) {
        return room.sheet(work, of);
    }

    private List<AnswerMark> marks(Member of, int place) {
        Problem p = sheet(of).problems().get(place - 1);
        List<Attempt> attempts = site.school.attempts().of(p.id());
        assertThat(attempts).as("attempts of " + of.person().shown() + " at " + place).hasSize(1);
        return attempts.get(0).marks();
    }

    // Printing

    @Test
    void everyonesSheetHasTheirNumbersAndNobodysAnswers() throws Exception {
        byte[] file = print("packet");
        try (Pdf pdf = new Pdf(file)) {
            assertThat(pdf.document.getDocumentInformation().getTitle()).isEqualTo("Week 9, " + room.in.name());
            assertThat(pdf.document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.document.getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
            assertThat(pdf.fonts(false)).isNotEmpty();
            assertThat(pdf.fonts(true)).as("fonts that are not in the file").isEmpty();
            int from = 1;
            for (Member member : List.of(room.ada, room.bo)) {
                Sheet sheet = sheet(member);
                int to = from;
                while (to < pdf.pages() && pdf.codes(to + 1).contains(sheet.number())) {
                    to++;
                }
                String text = pdf.text(from, to);
                assertThat(text).contains(sheet.number(), member.person().shown(), "Week 9");
                for (int page = from; page <= to; page++) {
                    assertThat(pdf.codes(page)).as("page " + page).containsExactly(sheet.number());
                }
                for (Problem p : sheet.problems()) {
                    PaperChecks.holdsGivens(text, RealSchool.variant(p));
                }
                PaperChecks.holdsNoAnswers(text, sheet.problems().stream().map(RealSchool::variant).toList());
                from = to + 1;
            }
            assertThat(from).isEqualTo(pdf.pages() + 1);
            assertThat(pdf.pages()).as("one or two pages a student").isLessThanOrEqualTo(4);
        }
    }

    @Test
    void askedForTwiceItIsTheSameFile() throws Exception {
        byte[] first = print("packet");
        site.wait(Duration.ofMinutes(3));
        assertThat(print("packet")).isEqualTo(first);
    }

    @Test
    void whoeverWalksInGetsASpareSheetAndItBecomesTheirs() throws Exception {
        choose("packet").type("spares", "1");
        byte[] file = made();
        String number = site.school.spares().all(work.id()).get(0).number();
        try (Pdf pdf = new Pdf(file)) {
            assertThat(pdf.codes(pdf.pages())).containsExactly(number);
        }
        Member late = site.enrol(room.in, "Cy", "cy" + work.id(), "3");
        hand.open("/typing").type("number", number.toLowerCase(java.util.Locale.ROOT).replace("-", "")).press("Open the sheet");
        assertThat(hand.heading()).isEqualTo("Spare sheet " + number);
        hand.type("student", String.valueOf(late.person().id())).press("It is theirs");
        assertThat(sheet(late).number()).isEqualTo(number);
        assertThat(site.school.spares().all(work.id())).isEmpty();
        type(RealSchool.right(sheet(late).problems().get(0)), 1).press("Look at the verdicts").press("Keep and go on");
        assertThat(marks(late, 1)).extracting(AnswerMark::verdict).containsOnly(Verdict.RIGHT);
    }

    @Test
    void theKeyAgreesWithTheMarker() throws Exception {
        byte[] file = print("key");
        try (Pdf pdf = new Pdf(file)) {
            String text = Pdf.dense(pdf.text());
            assertThat(pdf.fonts(true)).isEmpty();
            for (Member member : List.of(room.ada, room.bo)) {
                assertThat(text).contains(Pdf.dense(sheet(member).number()));
                for (Problem p : sheet(member).problems()) {
                    PaperChecks.keyAgrees(p, room.in.settings(), text);
                }
            }
            assertThat(pdf.text()).contains("How equally hard");
        }
    }

    @Test
    void aFoldedKeyIsOneASheet() throws Exception {
        byte[] file = print("folded");
        try (Pdf pdf = new Pdf(file)) {
            assertThat(pdf.text()).contains("Key for sheet " + sheet(room.ada).number(), "Key for sheet " + sheet(room.bo).number(), "Fold back along the dashed line");
            assertThat(Pdf.dense(pdf.text())).contains(Pdf.dense(RealSchool.right(sheet(room.ada).problems().get(0)).get("a")));
        }
    }

    @Test
    void whatIsBeingPrintedCanBeEnded() throws Exception {
        Print print = site.school.prints().ask(work.id(), room.instructor.id(), "packet", "size=letter form=whole names=yes formulas=no spares=0 strips=4 reader=en", 30, site.now());
        site.school.prints().goOn(print.id(), 12, site.now());
        hand.open("/assignments/" + work.id() + "/print/" + print.id());
        assertThat(hand.text()).contains("12 of 30 sheets laid out");
        hand.press("End it");
        assertThat(hand.text()).contains("Ended before it was done");
        assertThat(site.school.prints().goOn(print.id(), 13, site.now())).as("whoever makes it hears of it").isFalse();
        site.school.prints().done(print.id(), new byte[] {1}, 1, site.now());
        assertThat(site.school.prints().file(print.id())).isEmpty();
    }

    @Test
    void onePrintedByAProgramThatIsGoneIsMadeAgain() throws Exception {
        Print print = site.school.prints().ask(work.id(), room.instructor.id(), "packet", "size=letter form=whole names=yes formulas=no spares=0 strips=4 reader=en", 2, site.now());
        site.wait(Duration.ofMinutes(2));
        hand.open("/assignments/" + work.id() + "/print/" + print.id());
        assertThat(hand.text()).contains("The program that made it was ended");
        hand.press("Make it again");
        assertThat(hand.path()).isNotEqualTo("/assignments/" + work.id() + "/print/" + print.id());
    }

    @Test
    void nobodyElseTakesIt() throws Exception {
        print("packet");
        String path = hand.path();
        Hand other = new Hand(site, site.browser(site.add(soapstone.school.Person.Kind.INSTRUCTOR, "Otto", "otto" + work.id())));
        assertThat(other.open(path).status()).isEqualTo(404);
        assertThat(other.open("/assignments/" + work.id() + "/print").status()).isEqualTo(404);
        assertThat(other.open("/typing/" + sheet(room.ada).id()).status()).isEqualTo(404);
        other.open("/typing").type("number", sheet(room.ada).number()).press("Open the sheet");
        assertThat(other.text()).contains("No sheet of yours has that number");
    }

    // Typing in

    private Hand type(Map<String, String> answers, int place) {
        Map<String, String> named = new LinkedHashMap<>();
        answers.forEach((letter, text) -> named.put(place + letter, text));
        return hand.answer(named);
    }

    private Map<String, String> slip(Problem p) {
        return RealSchool.slip(p);
    }

    /** The same answers, Ada's on paper and Bo's on screen: each with their own numbers, and each marked as the other way would. */
    @Test
    void marksFromPaperAreThoseFromTheScreen() throws Exception {
        print("packet");
        Sheet ada = sheet(room.ada);
        WebClient another = site.browser(room.instructor);
        hand = new Hand(site, another);
        hand.open("/typing").type("number", ada.number()).press("Open the sheet");
        Map<Integer, Map<String, String>> answers = new LinkedHashMap<>();
        answers.put(1, slip(ada.problems().get(0)));
        answers.put(2, RealSchool.right(ada.problems().get(1)));
        answers.put(3, slip(ada.problems().get(2)));
        answers.forEach((place, texts) -> type(texts, place));
        hand.press("Look at the verdicts");
        assertThat(hand.text()).contains("Nothing is kept yet", "This answer fits");
        assertThat(site.school.attempts().ofSheet(ada.id())).isEmpty();
        hand.type("next", sheet(room.bo).number()).press("Keep and go on");
        assertThat(hand.heading()).as("the next sheet is open").startsWith(sheet(room.bo).number());
        for (int place = 1; place <= 3; place++) {
            Problem p = ada.problems().get(place - 1);
            List<AnswerMark> onScreen = PaperChecks.marks(p, answers.get(place), room.in.settings());
            assertThat(marks(room.ada, place)).as("problem " + place).isEqualTo(onScreen);
            assertThat(site.school.attempts().of(p.id()).get(0).way()).isEqualTo(Attempt.Way.PAPER);
        }
        hand.open("/assignments/" + work.id() + "/marks");
        assertThat(hand.row("Ada")).isNotEmpty();
        hand.open("/classes/" + room.in.id() + "/students/" + room.ada.person().id());
        assertThat(hand.text()).contains("from paper");
    }

    @Test
    void whatCannotBeReadIsWrittenAgainAndNothingIsKeptUntilThen() throws Exception {
        print("packet");
        Sheet ada = sheet(room.ada);
        hand.open("/typing/" + ada.id());
        type(Map.of("a", "31/2"), 1);
        type(RealSchool.right(ada.problems().get(1)), 2).press("Look at the verdicts");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.text()).contains("Something has to be written again");
        assertThat(hand.typed("box-1a")).isEqualTo("31/2");
        hand.press("Look at the verdicts");
        assertThat(site.school.attempts().ofSheet(ada.id())).isEmpty();
        type(RealSchool.right(ada.problems().get(0)), 1).press("Look at the verdicts").press("Keep and go on");
        assertThat(hand.text()).contains("Kept: 1 Ada, sheet " + ada.number());
        assertThat(site.school.attempts().ofSheet(ada.id())).hasSize(2);
    }

    @Test
    void anAnswerThatChangedSinceItWasLookedAtIsLookedAtAgain() throws Exception {
        print("packet");
        Sheet ada = sheet(room.ada);
        hand.open("/typing/" + ada.id());
        type(slip(ada.problems().get(0)), 1).press("Look at the verdicts");
        type(RealSchool.right(ada.problems().get(0)), 1).press("Keep and go on");
        assertThat(hand.text()).contains("Nothing is kept yet");
        hand.press("Keep and go on");
        assertThat(marks(room.ada, 1)).extracting(AnswerMark::verdict).containsOnly(Verdict.RIGHT);
    }

    @Test
    void aMisreadNumberIsToldFromOneThatIsNotThere() throws Exception {
        print("packet");
        String number = sheet(room.ada).number();
        String misread = (number.charAt(0) == 'K' ? "M" : "K") + number.substring(1);
        hand.open("/typing").type("number", misread).press("Open the sheet");
        assertThat(hand.text()).contains("That number was misread");
        assertThat(hand.typed("number")).isEqualTo(misread);
    }

    @Test
    void aMistakeOfTypingIsPutRightAndTheFirstMarkStays() throws Exception {
        print("packet");
        Sheet ada = sheet(room.ada);
        Problem p = ada.problems().get(0);
        hand.open("/typing/" + ada.id());
        type(slip(p), 1).press("Look at the verdicts").press("Keep and go on");
        hand.open("/typing/" + ada.id()).follow("Put right what was typed wrong");
        type(RealSchool.right(p), 1).press("Look at the verdicts").press("Put it right");
        Attempt attempt = site.school.attempts().of(p.id()).get(0);
        assertThat(attempt.marks().get(0).verdict()).isEqualTo(Verdict.SLIP);
        Counted counted = Counted.of(attempt, site.school.attempts().remarks(attempt.id())).get(0);
        assertThat(counted.mark().verdict()).isEqualTo(Verdict.RIGHT);
        assertThat(counted.mark().points()).isEqualTo(4);
        assertThat(counted.remark().orElseThrow().reason()).contains(attempt.marks().get(0).typed().strip(), RealSchool.right(p).get("a").strip());
    }

    /** What the paper says counts for what the room misses and on the strip, not what was typed by mistake. */
    @Test
    void aMistakeOfTypingPutRightIsExplainedByWhatThePaperSays() throws Exception {
        print("packet");
        Problem p = sheet(room.ada).problems().get(0);
        hand.open("/typing/" + sheet(room.ada).id());
        type(Map.of("a", "77 in"), 1).press("Look at the verdicts").press("Keep and go on");
        hand.open("/typing/" + sheet(room.ada).id()).follow("Put right what was typed wrong");
        type(slip(p), 1).press("Look at the verdicts").press("Put it right");
        Attempt attempt = site.school.attempts().of(p.id()).get(0);
        AnswerMark counted = Counted.of(attempt, site.school.attempts().remarks(attempt.id())).get(0).mark();
        assertThat(counted.verdict()).isEqualTo(Verdict.SLIP);
        assertThat(counted.slip()).isNotEmpty();
        assertThat(counted.typed().strip()).isEqualTo(slip(p).get("a").strip());
        assertThat(attempt.marks().get(0).typed().strip()).isEqualTo("77 in");
        hand.open("/assignments/" + work.id() + "/mistakes");
        assertThat(hand.text()).contains(counted.slip().replace('-', ' '));
        try (Pdf pdf = new Pdf(print("strips"))) {
            assertThat(pdf.text()).contains("This answer fits");
        }
        hand.open("/typing/" + sheet(room.ada).id()).follow("Put right what was typed wrong");
        assertThat(hand.text()).as("the form has what counts").doesNotContain("77 in");
    }

    @Test
    void oneProblemIsTypedInForTheWholeClass() throws Exception {
        print("packet");
        Map<Member, Map<String, String>> answers = Map.of(room.ada, RealSchool.right(sheet(room.ada).problems().get(0)), room.bo, slip(sheet(room.bo).problems().get(0)));
        hand.open("/assignments/" + work.id()).follow("Type in from paper").follow("Problem 1 for everybody");
        answers.forEach((member, texts) -> texts.forEach((letter, text) -> hand.type("box-" + sheet(member).id() + letter, text)));
        hand.press("Look at the verdicts");
        assertThat(hand.text()).contains("Nothing is kept yet", "This answer fits");
        hand.press("Keep all of it");
        assertThat(hand.text()).contains("Kept already");
        answers.forEach((member, texts) -> assertThat(marks(member, 1)).isEqualTo(PaperChecks.marks(sheet(member).problems().get(0), texts, room.in.settings())));
    }

    // A spreadsheet

    private String form() throws IOException {
        hand.open("/assignments/" + work.id() + "/typing/file");
        return hand.take("Take the form").getWebResponse().getContentAsString();
    }

    private static String filled(String form, Map<String, Map<String, String>> answers) {
        List<String> lines = new ArrayList<>();
        for (String line : form.split("\r\n")) {
            String[] cells = line.split(",", -1);
            String answer = answers.getOrDefault(cells[0] + " " + cells[3], Map.of()).getOrDefault(cells[4], "");
            lines.add(line.startsWith("sheet") || line.startsWith("\uFEFF") ? line : line + (answer.isEmpty() ? "" : "\"" + answer.replace("\"", "\"\"") + "\""));
        }
        return String.join("\n", lines);
    }

    private Hand bring(String text) throws IOException {
        java.nio.file.Path file = java.nio.file.Files.createTempFile("answers", ".csv");
        java.nio.file.Files.writeString(file, text);
        return hand.open("/assignments/" + work.id() + "/typing/file").attach("list", file).press("Look at it");
    }

    @Test
    void aFilledInFormIsShownAndThenKeptAsAWhole() throws Exception {
        print("packet");
        Map<String, Map<String, String>> answers = new LinkedHashMap<>();
        for (Member member : List.of(room.ada, room.bo)) {
            for (Problem p : sheet(member).problems()) {
                answers.put(sheet(member).number() + " " + p.place(), member == room.ada ? RealSchool.right(p) : slip(p));
            }
        }
        bring(filled(form(), answers));
        assertThat(hand.text()).contains("What it says", "a known mistake fits");
        assertThat(site.school.attempts().ofAssignment(work.id())).isEmpty();
        hand.press("Keep all of it");
        assertThat(hand.text()).contains("Kept: 6 problems");
        for (Member member : List.of(room.ada, room.bo)) {
            for (Problem p : sheet(member).problems()) {
                assertThat(marks(member, p.place())).isEqualTo(PaperChecks.marks(p, answers.get(sheet(member).number() + " " + p.place()), room.in.settings()));
            }
        }
        bring(filled(form(), answers));
        assertThat(site.school.attempts().ofAssignment(work.id())).as("nothing counts twice").hasSize(6);
    }

    @Test
    void eachFaultOfARowIsNamedAndNothingIsKept() throws Exception {
        print("packet");
        String number = sheet(room.ada).number();
        String good = RealSchool.right(sheet(room.ada).problems().get(0)).get("a");
        bring("sheet,problem,letter,answer\n" + number + ",1,a,\"" + good.replace("\"", "\"\"") + "\"\n" + number + ",9,a,3\n" + number + ",1,q,3\nKKK-KKK3,1,a,3\n" + number
                + ",2,a,31/2\n" + number + ",1,a,7\n");
        assertThat(hand.status()).isEqualTo(422);
        assertThat(hand.text()).contains("There is no such problem: the sheet has 3", "There is no such box", "misread", "This box comes twice", "31/2 can be 3 1/2 or 15 1/2");
        assertThat(site.school.attempts().ofAssignment(work.id())).isEmpty();
        bring("number,answer\n1,2\n");
        assertThat(hand.text()).contains("The first line has to name the columns. Missing: sheet, problem, letter");
    }

    // Back to paper

    @Test
    void aStripSaysWhatBecameOfTheAnswersWithTheirOwnNumbers() throws Exception {
        print("packet");
        Sheet ada = sheet(room.ada);
        hand.open("/typing/" + ada.id());
        type(slip(ada.problems().get(0)), 1);
        type(RealSchool.right(ada.problems().get(1)), 2).press("Look at the verdicts").press("Keep and go on");
        byte[] file = print("strips");
        try (Pdf pdf = new Pdf(file)) {
            String text = pdf.text();
            assertThat(pdf.fonts(true)).isEmpty();
            assertThat(text).contains("1 Ada", ada.number(), "This answer fits", "Right.", "Read now:").doesNotContain("2 Bo");
            String says = marks(room.ada, 1).get(0).says();
            assertThat(Pdf.dense(text)).contains(Pdf.dense(says.substring(says.indexOf(". ") + 2)).substring(0, 40));
        }
    }
}
