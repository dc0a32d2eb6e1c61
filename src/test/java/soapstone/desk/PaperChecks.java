package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import soapstone.exercise.Ask;
import soapstone.exercise.Given;
import soapstone.mark.AskMark;
import soapstone.mark.MarkRules;
import soapstone.mark.Marker;
import soapstone.mark.Verdict;
import soapstone.page.Words;
import soapstone.paper.Key;
import soapstone.paper.KeySheet;
import soapstone.school.AnswerMark;
import soapstone.school.ClassSettings;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.Shelf;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** What holds of paper, whatever is printed. */
final class PaperChecks {

    private PaperChecks() {}

    /** Every given that is told stands on the page as text, in the story, the notes or the drawing. */
    static void holdsGivens(String text, Variant v) {
        String dense = Pdf.dense(text);
        for (Given given : v.model().givens()) {
            if (!given.hidden()) {
                String value = Shown.value(v.model(), v.right(), given.slot());
                assertThat(dense).as(v.exercise().id() + " " + given.name()).contains(Pdf.dense(value));
            }
        }
    }

    /** No answer with a unit stands on a page, unless it is also one of the numbers that are told. */
    static void holdsNoAnswers(String text, List<Variant> all) {
        Set<String> told = new HashSet<>();
        for (Variant v : all) {
            v.model().givens().forEach(g -> told.add(Pdf.plain(Shown.value(v.model(), v.right(), g.slot()))));
        }
        String plain = Pdf.plain(text);
        for (Variant v : all) {
            for (Ask ask : v.model().asks()) {
                String answer = Pdf.plain(Shown.answer(v.model(), v.right(), ask));
                if (ask.isNumber() && !ask.unit().symbol().isEmpty() && !told.contains(answer) && !plain.contains("holds " + answer)) {
                    boolean there = Pattern.compile("(?<![\\d/ .])" + Pattern.quote(answer) + "(?![\\d/])").matcher(plain).find();
                    assertThat(there).as(v.exercise().id() + " " + ask.name() + " = " + answer).isFalse();
                }
            }
        }
    }

    static List<AnswerMark> marks(Problem problem, Map<String, String> texts, ClassSettings settings) {
        Marking marking = new Marking(RealSite.library().bank(), Shelf.of(RealSite.library().bank()), Words.of("en")::say);
        return ((Marking.Outcome.Done) marking.mark(problem, texts, settings)).marks();
    }

    /** What the key calls right is right, and what it says that a mistake gives is named as that mistake; all of it stands on the page. */
    static void keyAgrees(Problem problem, ClassSettings settings, String denseText) {
        Variant v = RealSchool.variant(problem);
        KeySheet.Problem key = new EnginePaperDesk(RealSite::library, "en").key(v, problem.place());
        Map<String, String> right = RealSchool.right(problem);
        for (KeySheet.Answer answer : key.answers()) {
            Ask ask = v.model().asks().stream().filter(a -> a.letter().equals(answer.letter())).findFirst().orElseThrow();
            assertThat(denseText).as(problem.exercise() + " " + answer.letter()).contains(Pdf.dense(answer.right()));
            if (ask.kind() == Ask.Kind.CHOICE) {
                continue;
            }
            assertThat(mark(problem, Map.of(answer.letter(), answer.right()), settings, answer.letter()).verdict()).as(answer.right()).isEqualTo(Verdict.RIGHT);
            for (KeySheet.Slip slip : answer.slips().stream().limit(Key.SLIPS).toList()) {
                Map<String, String> typed = new java.util.HashMap<>(right);
                typed.put(answer.letter(), slip.gives());
                AnswerMark mark = mark(problem, typed, settings, answer.letter());
                assertThat(mark.verdict()).as(problem.exercise() + " " + slip).isNotIn(Verdict.RIGHT, Verdict.ASK_AGAIN);
            }
        }
    }

    /**
     * Each mistake beside an answer of a key, typed as it stands there, is named as that mistake, or as one that always gives the same.
     *
     * @return how many there are
     */
    static int areNamed(Variant v, KeySheet.Answer answer) {
        List<Ask> asks = v.model().asks();
        int at = asks.indexOf(asks.stream().filter(a -> a.letter().equals(answer.letter())).findFirst().orElseThrow());
        if (asks.get(at).kind() == Ask.Kind.CHOICE) {
            return 0;
        }
        for (KeySheet.Slip slip : answer.slips()) {
            List<String> texts = new ArrayList<>(Collections.nCopies(asks.size(), ""));
            texts.set(at, slip.gives());
            AskMark mark = Marker.mark(v, texts, '.', MarkRules.USUAL).asks().get(at);
            assertThat(mark.verdict()).as(RealSite.name(v) + " " + slip).isEqualTo(Verdict.SLIP);
            assertThat(mark.fits()).as(RealSite.name(v) + " " + slip).anyMatch(f -> f.name().equals(slip.name()) || v.exercise().areTied(f.name(), slip.name()));
        }
        return answer.slips().size();
    }

    private static AnswerMark mark(Problem problem, Map<String, String> typed, ClassSettings settings, String letter) {
        Optional<AnswerMark> mark = marks(problem, typed, settings).stream().filter(m -> m.letter().equals(letter)).findFirst();
        return mark.orElseThrow();
    }
}
