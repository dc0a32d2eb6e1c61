package soapstone.school;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;
import soapstone.exercise.Given;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.quantity.Show;
import soapstone.source.Message;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * Marks again what was handed in, after an exercise was mended. The old marks stay; what comes out is the remarks that are
 * new. An attempt is marked again with the numbers that the student had, taken from the exercise that it was dealt from, put
 * into the mended working. What a person said of a mark (overruled, excused, corrected) is left alone.
 */
public final class Regrading {

    /** Points closer than this are the same: what is between them is rounding noise. */
    private static final double SAME_POINTS = 1e-9;

    private final Bank bank;
    private final Shelf kept;
    private final Marking marking;
    private final Function<Message, String> words;

    /**
     * @param bank  the mended one
     * @param kept  exercises as they were dealt
     * @param words prints a reason in the language of the class
     */
    public Regrading(Bank bank, Shelf kept, Function<Message, String> words) {
        this.bank = bank;
        this.kept = Shelf.of(bank).or(kept);
        this.marking = new Marking(bank, kept, words);
        this.words = words;
    }

    /**
     * What came of it.
     *
     * @param remarks   that are new, not kept yet: their ids are 0
     * @param unsettled attempts of mended exercises that could not be marked again, because what they were dealt from was not
     *                  kept, or the mended exercise takes other numbers or asks for something else: a person has to look
     */
    public record Result(List<Remark> remarks, List<Attempt> unsettled) {

        public Result {
            remarks = List.copyOf(remarks);
            unsettled = List.copyOf(unsettled);
        }
    }

    public Result look(List<Work> works, ClassSettings settings, Instant at) {
        List<Remark> remarks = new ArrayList<>();
        List<Attempt> unsettled = new ArrayList<>();
        for (Work work : works) {
            for (Attempt attempt : work.attempts()) {
                if (!isMarkedWithThis(work.problem(), attempt)) {
                    Optional<List<AnswerMark>> fresh = again(work.problem(), attempt, settings);
                    fresh.ifPresentOrElse(marks -> remarks.addAll(remarks(work, attempt, marks, at)), () -> unsettled.add(attempt));
                }
            }
        }
        return new Result(remarks, unsettled);
    }

    private boolean isMarkedWithThis(Problem problem, Attempt attempt) {
        return bank.exercise(problem.exercise()).filter(e -> e.fingerprint().equals(attempt.fingerprint())).isPresent();
    }

    private Optional<List<AnswerMark>> again(Problem problem, Attempt attempt, ClassSettings settings) {
        Optional<Variant> variant = mended(problem);
        if (variant.isEmpty() || !asksTheSame(variant.get(), attempt)) {
            return Optional.empty();
        }
        Map<String, String> texts = new HashMap<>();
        attempt.marks().forEach(m -> texts.put(m.letter(), m.typed()));
        List<Typed> typed = Marking.read(variant.get().model(), texts, settings);
        List<AnswerMark> marks = marking.marks(variant.get(), typed, problem.points(), settings);
        return Optional.of(marks).filter(all -> all.stream().noneMatch(m -> m.verdict() == Verdict.ASK_AGAIN));
    }

    /** The mended exercise with the numbers that the student had. */
    private Optional<Variant> mended(Problem problem) {
        Optional<Exercise> old = kept.exercise(problem.exercise(), problem.fingerprint());
        Optional<Exercise> fresh = bank.exercise(problem.exercise());
        if (old.isEmpty() || fresh.isEmpty()) {
            return Optional.empty();
        }
        Optional<Variant> before = problem.drawn(old.get());
        Optional<Variant> after = before.flatMap(b -> new Drawer(fresh.get(), problem.units(), problem.conventions()).at(problem.seed(), b.attempt()));
        return after.filter(a -> told(a).equals(told(before.get())));
    }

    /** What the student read, by name: a label's number means nothing in another program. */
    private static Map<String, String> told(Variant variant) {
        Map<String, String> told = new HashMap<>();
        for (Given given : variant.model().givens()) {
            if (!given.hidden()) {
                told.put(given.name(), Shown.value(variant.model().program(), variant.right(), given.slot(), Show.AUTO));
            }
        }
        return told;
    }

    private static boolean asksTheSame(Variant variant, Attempt attempt) {
        List<String> now = variant.model().asks().stream().map(a -> a.name() + " " + a.letter()).toList();
        return now.equals(attempt.marks().stream().map(m -> m.ask() + " " + m.letter()).toList());
    }

    private List<Remark> remarks(Work work, Attempt attempt, List<AnswerMark> fresh, Instant at) {
        List<Remark> remarks = new ArrayList<>();
        for (Counted counted : work.marks(attempt)) {
            AnswerMark before = counted.mark();
            AnswerMark after = fresh.get(before.place());
            boolean aPersonsWord = counted.remark().filter(r -> r.cause() != Remark.Cause.REGRADED).isPresent();
            boolean same = before.verdict() == after.verdict() && Math.abs(before.points() - after.points()) < SAME_POINTS;
            if (!aPersonsWord && !same) {
                remarks.add(new Remark(0, attempt.id(), before.place(), at, Optional.empty(), Remark.Cause.REGRADED, after.verdict(), after.points(),
                        reason(before, after)).with(after));
            }
        }
        return remarks;
    }

    private String reason(AnswerMark before, AnswerMark after) {
        return words.apply(Message.of("school.regraded", Printed.verdict(before.verdict()), Printed.points(before.points()),
                Printed.verdict(after.verdict()), Printed.points(after.points()), Printed.points(after.possible())));
    }
}
