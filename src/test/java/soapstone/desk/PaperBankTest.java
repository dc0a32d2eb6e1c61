package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import soapstone.page.Words;
import soapstone.paper.Handouts;
import soapstone.paper.KeySheet;
import soapstone.paper.Packet;
import soapstone.paper.PacketChoices;
import soapstone.paper.PacketChoices.Form;
import soapstone.paper.PacketSheet;
import soapstone.paper.PaperSize;
import soapstone.paper.Press;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/** Every exercise of the bank and every lesson, on paper. */
class PaperBankTest {

    private static final double POINTS_A_MILLIMETER = 72 / 25.4;

    private static PacketSheet sheet(String number, Variant v) {
        return new PacketSheet(number, "1 Łucja Núñez", "Week 9", "Sheet metal 1", "Mar 16, 2027", "", List.of(new PacketSheet.Problem(1, "2", PaperSamples.asked(v), List.of())));
    }

    /** A sheet for each exercise; each is laid out by itself, so that it is known which pages are whose. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everySheetTellsItsGivensAndNoAnswer(UnitSystem system) throws Exception {
        Packet packet = new Packet(Words.of("en"), PacketChoices.USUAL);
        List<Variant> all = RealSite.variants().stream().filter(v -> v.system() == system).toList();
        List<Integer> pages = new ArrayList<>();
        byte[] file;
        try (Press press = new Press("All", PaperSamples.DAY)) {
            all.forEach(v -> pages.add(packet.add(press, sheet("K7M-42PX", v))));
            file = press.bytes();
        }
        try (Pdf pdf = new Pdf(file)) {
            assertThat(pdf.fonts(true)).as("fonts that are not in the file").isEmpty();
            int from = 1;
            for (int i = 0; i < all.size(); i++) {
                String text = pdf.text(from, from + pages.get(i) - 1);
                PaperChecks.holdsGivens(text, all.get(i));
                PaperChecks.holdsNoAnswers(text, List.of(all.get(i)));
                assertThat(text).as(RealSite.name(all.get(i))).contains("Łucja Núñez").doesNotContain("#");
                assertThat(pages.get(i)).as(RealSite.name(all.get(i))).isLessThanOrEqualTo(2);
                from += pages.get(i);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"LETTER,WHOLE", "LETTER,CLOSE", "LETTER,HALF", "LETTER,LARGE", "A4,WHOLE", "A4,CLOSE", "A4,HALF", "A4,LARGE"})
    void thePaperHasItsSizeAndNothingStandsOutsideOfIt(PaperSize size, Form form) throws Exception {
        List<String> ids = PaperSamples.ids();
        List<PacketSheet> sheets = new ArrayList<>();
        for (int i = 0; i < ids.size(); i += 7) {
            sheets.add(sheet("K7M-42PX", PaperSamples.variant(ids.get(i), 7)));
        }
        try (Pdf pdf = new Pdf(PaperSamples.packet(new PacketChoices(size, form, true, true, false), sheets))) {
            for (int page = 0; page < pdf.pages(); page++) {
                assertThat(pdf.document.getPage(page).getMediaBox().getWidth() / POINTS_A_MILLIMETER).isCloseTo(size.width(), org.assertj.core.data.Offset.offset(0.5));
                assertThat(pdf.document.getPage(page).getMediaBox().getHeight() / POINTS_A_MILLIMETER).isCloseTo(size.height(), org.assertj.core.data.Offset.offset(0.5));
                assertThat(pdf.outside(page + 1)).as("signs outside of page " + (page + 1)).isEmpty();
                assertThat(pdf.codes(page + 1)).as("code on page " + (page + 1)).contains("K7M-42PX");
            }
            float least = pdf.leastLettering();
            assertThat(least).as("the smallest lettering in points").isGreaterThanOrEqualTo(form == Form.LARGE ? 9f : 5.4f);
        }
    }

    @Test
    void aCautionStandsOnPaperAsOnThePage() throws Exception {
        Variant v = PaperSamples.variant("brake/bend-tons", 7);
        assertThat(PaperSamples.asked(v).cautions()).isNotEmpty();
        for (Form form : Form.values()) {
            try (Pdf pdf = new Pdf(PaperSamples.packet(new PacketChoices(PaperSize.LETTER, form, true, false, false), List.of(sheet("K7M-42PX", v))))) {
                String text = Pdf.dense(pdf.text());
                PaperSamples.asked(v).cautions().forEach(c -> assertThat(text).contains(Pdf.dense(c.title())));
            }
        }
    }

    /** Whoever does not see a drawing hears of it what a page would say. */
    @Test
    void aDrawingHasItsWordsInTheTags() throws Exception {
        Variant v = PaperSamples.variant("spacing/bolt-holes", 7);
        try (Pdf pdf = new Pdf(PaperSamples.packet(PacketChoices.USUAL, List.of(sheet("K7M-42PX", v))))) {
            List<String> alternates = pdf.alternates();
            assertThat(alternates).anyMatch(a -> a.contains("hole"));
            assertThat(pdf.tags()).contains("H1", "H2", "P", "Figure");
            assertThat(pdf.document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.document.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
        }
    }

    /** Five problems as an assignment of a week has them. */
    private static PacketSheet week(String number) {
        List<PacketSheet.Problem> problems = new ArrayList<>();
        for (String id : List.of("spacing/bolt-holes", "bends/flat-channel", "tanks/full-weight", "pressure/lid-force", "baffles/compartment-gallons")) {
            problems.add(new PacketSheet.Problem(problems.size() + 1, "", PaperSamples.asked(PaperSamples.variant(id, 3)), List.of()));
        }
        return new PacketSheet(number, "", "Week 9", "Sheet metal 1", "", "", problems);
    }

    /** As the key prints it and somebody types it off a sheet. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatAKeySaysThatAMistakeGivesIsNamedAsThatMistake(UnitSystem system) {
        EnginePaperDesk desk = new EnginePaperDesk(RealSite::library, "en");
        int named = 0;
        for (Variant v : RealSite.variants()) {
            if (v.system() == system) {
                for (KeySheet.Answer answer : desk.key(v, 1).answers()) {
                    named += PaperChecks.areNamed(v, answer);
                }
            }
        }
        assertThat(named).as("mistakes on keys").isGreaterThan(200);
    }

    @Test
    void aWeekOfFiveProblemsFitsOnTwoPagesWithoutRoomForTheWork() throws Exception {
        PacketChoices close = new PacketChoices(PaperSize.LETTER, Form.CLOSE, true, false, false);
        try (Pdf pdf = new Pdf(PaperSamples.packet(close, List.of(week("K7M-42PX")))); Pdf roomy = new Pdf(PaperSamples.packet(PacketChoices.USUAL, List.of(week("K7M-42PX"))))) {
            assertThat(pdf.pages()).isEqualTo(2).isLessThan(roomy.pages());
        }
    }

    /** Else the second student's first page would stand on the back of the first one's last. */
    @Test
    void onBothSidesEverySheetBeginsOnFreshPaper() throws Exception {
        PacketChoices both = new PacketChoices(PaperSize.LETTER, Form.WHOLE, true, false, true);
        try (Pdf pdf = new Pdf(PaperSamples.packet(both, List.of(week("K7M-42PX"), week("M8N-53QX"))))) {
            assertThat(pdf.pages()).isEqualTo(8);
            assertThat(pdf.text(4, 4)).contains("Room for work", "K7M-42PX");
            assertThat(pdf.text(5, 5)).contains("Week 9", "M8N-53QX", "Bolt holes");
        }
        try (Pdf pdf = new Pdf(PaperSamples.packet(new PacketChoices(PaperSize.LETTER, Form.CLOSE, true, false, true), List.of(week("K7M-42PX"))))) {
            assertThat(pdf.pages()).as("nothing is added to whole paper").isEqualTo(2);
        }
    }

    @Test
    void everyLessonAndItsTaskGoOnPaper() throws Exception {
        EngineDesk desk = new EngineDesk(RealSite::library);
        Handouts handouts = new Handouts(Words.of("es"), PaperSize.A4);
        for (String id : RealSite.library().course().inOrder().stream().map(soapstone.lesson.Lesson::id).toList()) {
            var lesson = desk.lesson(id).orElseThrow();
            try (Press press = new Press(lesson.title(), PaperSamples.DAY)) {
                press.add(handouts.lesson(lesson));
                int whole = press.pages();
                press.add(handouts.bench(lesson).orElseThrow(() -> new AssertionError(id + " has no task at the bench")));
                try (Pdf pdf = new Pdf(press.bytes())) {
                    assertThat(Pdf.dense(pdf.text(1, whole))).as(id).contains(Pdf.dense(lesson.title()));
                    assertThat(pdf.text(whole + 1, pdf.pages())).as(id).contains("En el banco", "Pass:", "Visto por").doesNotContain("#");
                    assertThat(pdf.fonts(true)).isEmpty();
                }
            }
        }
    }
}
