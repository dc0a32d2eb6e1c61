package soapstone.speed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import soapstone.bank.Bank;
import soapstone.demo.DemoStudent;
import soapstone.page.Words;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.ClassSettings;
import soapstone.school.Dealing;
import soapstone.school.Marking;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Sheets;
import soapstone.school.Shelf;

/**
 * A year's work of some model students on the exercises of the bank: every sheet dealt, answered and marked as on the site.
 * A big school is made of copies of them, so that its pages show what the bank can show, and the bank need not mark
 * millions of answers first. Worked out as it is asked for. Not for several threads.
 */
final class ModelClass {

    /** More than sit in one class, so that no two of a class have the same numbers. */
    static final int STUDENTS = 48;
    static final int ASSIGNMENTS = 30;
    static final int TRIES = 3;
    static final ClassSettings SETTINGS = ClassSettings.USUAL;

    private static final int EXERCISES = 6;
    private static final double POINTS = 4;
    private static final double TRIES_AGAIN = 0.95;
    private static final int MOST_UNREADABLE = 5;

    private final Bank bank;
    private final Marking marking;
    private final SplittableRandom chance;
    private final List<DemoStudent> students;
    private final Map<Integer, Map<Long, List<Sheets.Dealt>>> dealt = new HashMap<>();
    private final Map<Integer, List<Piece>> sheets = new HashMap<>();

    ModelClass(Bank bank, long seed) {
        this.bank = bank;
        this.marking = new Marking(bank, Shelf.of(bank), Words.of("en")::say);
        this.chance = new SplittableRandom(seed);
        this.students = LongStream.range(0, STUDENTS).mapToObj(i -> DemoStudent.of(new Person(i, Person.Kind.STUDENT, "", "", "en", false, false, false, Instant.EPOCH),
                chance.split())).toList();
        IntStream.range(0, ASSIGNMENTS).forEach(number -> dealt.put(number, new Dealing(bank, SETTINGS, chance.split()).deal(assignment(number),
                LongStream.range(0, STUDENTS).boxed().toList(), List.of())));
    }

    /**
     * One problem of a sheet.
     *
     * @param dealt its task is the place of the task in the assignment
     * @param tries the marks of each; the last one is all right, or no other was made
     */
    record Piece(Sheets.Dealt dealt, List<List<AnswerMark>> tries) {}

    /** The tasks of one of the year's assignments, numbered by their places. */
    static List<Assignment.Task> tasks(Bank bank, int number) {
        List<String> all = List.copyOf(bank.exercises().keySet());
        return IntStream.range(0, EXERCISES).mapToObj(i -> new Assignment.Task(i + 1, i + 1, List.of(all.get((number * EXERCISES + i) % all.size())), 1, POINTS)).toList();
    }

    private Assignment assignment(int number) {
        return new Assignment(0, 0, "", Assignment.State.GIVEN, Instant.EPOCH, Optional.empty(), Assignment.Late.HALF, TRIES, Assignment.Shows.LINES, true, 0, Instant.EPOCH,
                Optional.empty(), tasks(bank, number));
    }

    Bank bank() {
        return bank;
    }

    /** What a model student did for an assignment; both are counted from 0. */
    List<Piece> sheet(int assignment, int student) {
        return sheets.computeIfAbsent(assignment * STUDENTS + student,
                k -> dealt.get(assignment).get((long) student).stream().map(d -> new Piece(d, tries(students.get(student), d))).toList());
    }

    private List<List<AnswerMark>> tries(DemoStudent student, Sheets.Dealt d) {
        Problem problem = new Problem(0, 0, 0, d.place(), 1, d.exercise(), d.seed(), d.units(), d.fingerprint(), d.points());
        List<List<AnswerMark>> tries = new ArrayList<>();
        boolean again = true;
        while (again && tries.size() < TRIES) {
            List<AnswerMark> marks = marked(student, problem);
            tries.add(marks);
            again = !marks.stream().allMatch(m -> m.verdict().isRight()) && student.chance().nextDouble() < TRIES_AGAIN;
        }
        return List.copyOf(tries);
    }

    /** What cannot be read is asked for again, and is no try. */
    private List<AnswerMark> marked(DemoStudent student, Problem problem) {
        for (int turn = 0; turn < MOST_UNREADABLE; turn++) {
            Map<String, String> texts = student.answers(bank.exercise(problem.exercise()).orElseThrow(), problem);
            if (marking.mark(problem, texts, SETTINGS) instanceof Marking.Outcome.Done done) {
                return done.marks();
            }
        }
        throw new IllegalStateException("No answers to " + problem.exercise() + " with the number " + problem.seed() + " can be read.");
    }
}
