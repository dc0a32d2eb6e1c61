package soapstone.school;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import soapstone.bank.Bank;
import soapstone.bank.SmallBank;
import soapstone.mark.Verdict;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** A class at its desks, for the tests of what happens to its sheets. */
final class Desks {

    static final Instant MONDAY = Instant.parse("2031-03-03T14:00:00Z");
    static final Function<Message, String> WORDS = Words.of("en")::say;
    static final Shelf NOTHING_KEPT = (id, fingerprint) -> Optional.empty();
    static final String HOLES = "spacing/bolt-holes";
    static final String CIRCLE = "circles/bolt-circle";
    static final String BEND = "bends/one-bend";
    static final String DRUM = "tanks/drum";
    static final String RULE = "measuring/rule";

    private Desks() {}

    static List<Long> students(int many) {
        return LongStream.rangeClosed(101, 100 + many).boxed().toList();
    }

    static RandomGenerator chance(long seed) {
        return new SplittableRandom(seed);
    }

    static ClassSettings settings(UnitSystem units) {
        return new ClassSettings(units, "en", '.', true, true, 0, true, "");
    }

    static Assignment.Task task(int place, int many, String... exercises) {
        return new Assignment.Task(10 + place, place, List.of(exercises), many, 4);
    }

    static Assignment assignment(Assignment.Task... tasks) {
        return assignment(1, tasks);
    }

    static Assignment assignment(long id, Assignment.Task... tasks) {
        return new Assignment(id, 1, "Week 3", Assignment.State.GIVEN, MONDAY, Optional.empty(), Assignment.Late.TAKEN, 3, Assignment.Shows.MISTAKE, true, 7,
                MONDAY, Optional.empty(), List.of(tasks));
    }

    /** The sheets as they would be kept. */
    static List<Sheet> kept(Map<Long, List<Sheets.Dealt>> dealt) {
        List<Sheet> sheets = new ArrayList<>();
        dealt.forEach((student, problems) -> sheets.add(kept(student, problems)));
        return sheets;
    }

    static Sheet kept(long student, List<Sheets.Dealt> problems) {
        return new Sheet(student, 1, student, "S" + student, MONDAY, problems.stream().map(d -> problem(student * 100 + d.place(), student, d)).toList());
    }

    private static Problem problem(long id, long sheet, Sheets.Dealt d) {
        return new Problem(id, sheet, d.task(), d.place(), 1, d.exercise(), d.seed(), d.units(), d.fingerprint(), d.points(), d.conventions());
    }

    static Problem problem(Bank bank, String exercise, long seed, double points) {
        return new Problem(1, 1, 11, 1, 1, exercise, seed, UnitSystem.US, bank.exercise(exercise).orElseThrow().fingerprint(), points);
    }

    /** The right answers, by the letters of the boxes. */
    static Map<String, String> right(Variant variant) {
        Map<String, String> texts = new HashMap<>();
        variant.model().asks().forEach(a -> texts.put(a.letter(), Shown.answer(variant.model(), variant.right(), a)));
        return texts;
    }

    static Map<String, String> right(Problem problem) {
        return right(SmallBank.draw(problem.exercise(), problem.units(), problem.seed()));
    }

    /** What a slip gives everywhere. */
    static Map<String, String> slip(Variant variant, String name) {
        Map<String, String> texts = new HashMap<>();
        variant.outcomes().stream().filter(o -> o.slip().name().equals(name))
                .forEach(o -> texts.put(o.ask().letter(), Shown.answer(variant.model(), o.theirs(), o.ask())));
        return texts;
    }

    static AnswerMark mark(int place, Verdict verdict, String slip, double points, double possible, double odds, String... families) {
        return new AnswerMark(place, "ask" + place, String.valueOf((char) ('a' + place)), "12", "12 in", verdict, slip, List.of(families), "", points, possible, odds);
    }

    static Attempt attempt(long id, int number, boolean late, AnswerMark... marks) {
        return new Attempt(id, 1, number, "r" + id, MONDAY.plusSeconds(60L * number), late, Attempt.Way.SCREEN, "test", "f", List.of(marks));
    }
}
