package soapstone.school;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.mark.AnswerReader;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.quantity.Reading;
import soapstone.source.Message;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * Marks what a student hands in for a problem, as it is kept.
 *
 * <p>A problem is marked with the exercise that it was dealt from. When the bank's own has another fingerprint by now, the one
 * kept on the {@link Shelf} marks it: page, paper and mark speak of the same numbers, and what the mend changes is said
 * afterwards by {@link Regrading}. When it was not kept, nothing is marked, since the numbers of the new exercise need not
 * be those on the student's paper; the answer is a sentence, no try is used, and other numbers can be taken.
 */
public final class Marking {

    private final Shelf shelf;
    private final Function<Message, String> words;

    /**
     * @param words prints a sentence in the language of the class, since a mark keeps what was said
     */
    public Marking(Bank bank, Shelf kept, Function<Message, String> words) {
        this.shelf = Shelf.of(bank).or(kept);
        this.words = words;
    }

    /** What became of answers that were handed in. */
    public sealed interface Outcome {

        /**
         * Marked: a try.
         *
         * @param fingerprint of the exercise that marked it
         * @param marks       one for each ask, in order
         */
        record Done(String fingerprint, List<AnswerMark> marks) implements Outcome {

            public Done {
                marks = List.copyOf(marks);
            }
        }

        /** Some of it could not be read, or could be read in two ways: no try. */
        record AskedAgain(List<Again> boxes) implements Outcome {

            public AskedAgain {
                boxes = List.copyOf(boxes);
            }
        }

        /** The exercise was mended, and the earlier one was not kept: no try. */
        record Stale(Message why) implements Outcome {}
    }

    /** A box to be filled in again, and why. */
    public record Again(String letter, String typed, Message why) {}

    /** The exercise that marks a problem, if there is one. */
    public Optional<Exercise> exercise(Problem problem) {
        return shelf.exercise(problem.exercise(), problem.fingerprint());
    }

    /** Whether a problem can no longer be marked with the numbers that the student has. */
    public boolean isStale(Problem problem) {
        return exercise(problem).isEmpty();
    }

    /**
     * Marks texts as they were typed.
     *
     * @param texts by the letters of the boxes; a missing one is blank, which is no fault and earns nothing
     */
    public Outcome mark(Problem problem, Map<String, String> texts, ClassSettings settings) {
        Optional<Variant> variant = exercise(problem).flatMap(problem::drawn);
        if (variant.isEmpty()) {
            return new Outcome.Stale(Message.of("school.stale", problem.exercise()));
        }
        List<Typed> typed = read(variant.get().model(), texts, settings);
        List<Again> again = again(variant.get().model(), typed, settings);
        return again.isEmpty() ? new Outcome.Done(problem.fingerprint(), marks(variant.get(), typed, problem.points(), settings))
                : new Outcome.AskedAgain(again);
    }

    static List<Typed> read(Model model, Map<String, String> texts, ClassSettings settings) {
        return model.asks().stream().map(a -> AnswerReader.read(model, a, texts.getOrDefault(a.letter(), ""), settings.decimalMark())).toList();
    }

    private static List<Again> again(Model model, List<Typed> typed, ClassSettings settings) {
        List<Again> again = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Ask ask = model.asks().get(i);
            Typed answer = typed.get(i);
            if (answer.reading() instanceof Reading.Again reading) {
                again.add(new Again(ask.letter(), answer.text(), reading.why()));
            } else if (!settings.bareAllowed() && lacksUnit(ask, answer.reading())) {
                again.add(new Again(ask.letter(), answer.text(), Message.of("school.unit-needed", answer.text().strip())));
            }
        }
        return again;
    }

    /** A bare 0 is 0 in any unit; of several numbers, one unit is enough for those that are read with it. */
    private static boolean lacksUnit(Ask ask, Reading reading) {
        if (ask.kind() == Ask.Kind.COUNT || ask.unit().symbol().isEmpty()) {
            return false;
        }
        List<Reading.One> items = items(reading);
        return !items.isEmpty() && items.stream().allMatch(Reading.One::bare) && items.stream().anyMatch(i -> i.base() != 0);
    }

    private static List<Reading.One> items(Reading reading) {
        if (reading instanceof Reading.One one) {
            return List.of(one);
        } else if (reading instanceof Reading.Many many) {
            return many.items();
        } else if (reading instanceof Reading.Points points) {
            List<Reading.One> all = new ArrayList<>(points.x());
            all.addAll(points.y());
            return all;
        }
        return List.of();
    }

    /** The marks of answers that were read, with the problem's points shared over its asks. */
    List<AnswerMark> marks(Variant variant, List<Typed> typed, double points, ClassSettings settings) {
        MarkRules rules = new MarkRules(settings.carriedEarns(), settings.nearEarns(), settings.coarseEarns());
        Marked marked = new Marker(variant, rules).mark(typed);
        double scale = points / marked.possible();
        List<AnswerMark> marks = new ArrayList<>();
        for (AskMark mark : marked.asks()) {
            Ask ask = mark.ask();
            String slip = mark.fits().isEmpty() ? "" : mark.fits().get(0).name();
            marks.add(new AnswerMark(marks.size(), ask.name(), ask.letter(), mark.typed().text(), understood(variant, mark), mark.verdict(), slip,
                    mark.families(), said(marked, mark), mark.points() * scale, ask.points() * scale, Chance.ofBeingNamed(variant, ask)));
        }
        return marks;
    }

    private static String understood(Variant variant, AskMark mark) {
        boolean choice = mark.ask().kind() == Ask.Kind.CHOICE && mark.verdict().isMarked();
        return !choice ? mark.typed().reading().text() : mark.ask().options().stream().filter(o -> o.label() == mark.typed().value(0)).findFirst()
                .map(o -> Shown.text(variant.model(), o.text(), variant.right(), variant.right())).orElse("");
    }

    /** The verdict, and what the bank says of each slip that fits, with this student's numbers. */
    private String said(Marked marked, AskMark mark) {
        List<String> says = new ArrayList<>(List.of(words.apply(mark.say())));
        List<Fit> fits = mark.verdict() == Verdict.SLIP ? mark.fits() : List.of();
        for (Fit fit : fits) {
            // On carried values the numbers are the student's own, as they stand on the paper.
            Frame theirs = marked.run(fit.carried() ? fit.change().over(marked.typed()) : fit.change());
            for (Slip slip : fit.slips()) {
                says.add(Shown.text(marked.variant().model(), slip.say(), marked.variant().right(), theirs));
            }
        }
        return String.join(" ", says);
    }
}
