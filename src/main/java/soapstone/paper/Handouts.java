package soapstone.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soapstone.page.CompetencyRecordView;
import soapstone.page.Figure;
import soapstone.page.Fractions;
import soapstone.page.Html;
import soapstone.page.LessonView;
import soapstone.page.SlipsView;
import soapstone.page.Words;

/** Makes what else a class has on paper: lessons, bench tasks, slips to sign in with, competency records. Each is the markup of one file. */
public final class Handouts {

    private static final String MARGINS = "10mm 14mm 12mm 14mm";
    /** The part of a lesson that is done with the hands, up to its next heading. */
    private static final Pattern BENCH = Pattern.compile("<h2[^>]*>At the bench</h2>(.*?)(?=<h2|$)", Pattern.DOTALL);
    private static final Pattern LAST_HEADING = Pattern.compile("<h2[^>]*>[^<]*</h2>\\s*$");
    private static final int SLIPS_AT_ONCE = 40;

    private final Printing printing;
    private final PaperSize size;

    public Handouts(Words words, PaperSize size) {
        this.printing = new Printing(words);
        this.size = size;
    }

    record Lesson(Leaf leaf, LessonView lesson, List<Piece> pieces) {}

    /** A part with its drawing for paper. */
    record Piece(LessonView.Part part, Optional<Html> text, Optional<Html> figure) {}

    record Bench(Leaf leaf, LessonView lesson, Html task) {}

    record Record(Leaf leaf, CompetencyRecordView view) {}

    record Slips(Leaf leaf, SlipsView view) {}

    private Leaf leaf(String title, String kinds) {
        return Leaf.of(size, false, MARGINS, title, kinds);
    }

    /** A lesson with its worked examples; their numbers are those on screen. */
    public String lesson(LessonView lesson) {
        List<Piece> pieces = new ArrayList<>();
        for (LessonView.Part part : lesson.parts()) {
            Optional<Figure> told = part.example().flatMap(LessonView.Example::told);
            pieces.add(new Piece(part, part.text().map(Fractions::inMarkup), told.map(Drawn::narrow)));
        }
        return printing.markup("paper-lesson", new Lesson(leaf(lesson.title(), "handout"), lesson, pieces));
    }

    /** The task at the bench of a lesson, with room for what was measured; empty where a lesson has none. */
    public Optional<String> bench(LessonView lesson) {
        for (LessonView.Part part : lesson.parts()) {
            Matcher task = BENCH.matcher(part.text().map(Html::markup).orElse(""));
            if (task.find()) {
                Html own = Fractions.inMarkup(new Html(LAST_HEADING.matcher(task.group(1)).replaceFirst("")));
                return Optional.of(printing.markup("paper-bench", new Bench(leaf(lesson.title(), "handout"), lesson, own)));
            }
        }
        return Optional.empty();
    }

    /** One student's competency record. */
    public String competency(CompetencyRecordView view) {
        String title = printing.words().say("competency.record-of", List.of(view.record().shown()));
        return printing.markup("paper-competency", new Record(leaf(title, "handout"), view));
    }

    /** Slips to sign in with, to be cut. */
    public List<String> slips(SlipsView view) {
        List<String> all = new ArrayList<>();
        for (int from = 0; from < view.slips().size(); from += SLIPS_AT_ONCE) {
            List<SlipsView.Slip> some = view.slips().subList(from, Math.min(view.slips().size(), from + SLIPS_AT_ONCE));
            all.add(printing.markup("paper-slips", new Slips(leaf(printing.words().say("class-slips.title", List.of()), "handout"),
                    new SlipsView(view.inClass(), view.className(), view.address(), some))));
        }
        return all;
    }
}
