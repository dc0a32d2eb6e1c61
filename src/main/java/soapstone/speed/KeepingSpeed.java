package soapstone.speed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.record.Database;
import soapstone.record.RawInserts;
import soapstone.record.SqlSchool;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.ClassSettings;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheets;

/**
 * Handing in, with its receipt, against keeping the same bytes as one raw row; each commit is durable before the next.
 * Both by turns, on a fresh database.
 *
 * @param alone   one writer
 * @param crowd   sixteen writers at once
 * @param bytes   of the texts of one attempt
 */
public record KeepingSpeed(String database, int bytes, Turns alone, Turns crowd) {

    private static final int WRITERS = 16;
    private static final int IN_A_TURN = 320;
    private static final int LEAST_TURNS = 5;
    /** So many that each is handed in a few times only, as in a class. */
    private static final int STUDENTS = 500;
    private static final int PROBLEMS_EACH = 40;
    private static final String PRINT = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

    /**
     * @param handed how many attempts were kept in a second
     * @param raw    how many raw rows
     * @param ratio  attempts for each raw row, turn by turn
     */
    public record Turns(Spread handed, Spread raw, Spread ratio) {}

    /** @param database fresh; its tables are filled */
    static KeepingSpeed measure(String name, Database database, double seconds) throws Exception {
        School school = SqlSchool.of(database);
        List<Long> problems = problems(school);
        RawInserts raw = new RawInserts(database);
        Writing writing = new Writing(school, problems, raw);
        writing.turns(1, seconds / 4);
        Turns alone = writing.turns(1, seconds / 4);
        Turns crowd = writing.turns(WRITERS, seconds / 2);
        raw.drop();
        return new KeepingSpeed(name, writing.content.length(), alone, crowd);
    }

    private static List<Long> problems(School school) {
        Instant now = Instant.now();
        Person instructor = school.people().add(new People.NewPerson(Person.Kind.INSTRUCTOR, "Measure", "measure", "-", false, "en"), now);
        SchoolClass in = school.classes().add("Measure", "", "MEASURE", ClassSettings.USUAL, instructor.id(), now);
        Assignment given = school.assignments().add(new Assignment(0, in.id(), "Measure", Assignment.State.GIVEN, now, Optional.empty(), Assignment.Late.TAKEN,
                Integer.MAX_VALUE, Assignment.Shows.NOTHING, true, instructor.id(), now, Optional.empty(),
                IntStream.range(0, PROBLEMS_EACH).mapToObj(i -> new Assignment.Task(0, i + 1, List.of("spacing/bolt-holes"), 1, 1)).toList()), List.of());
        List<Long> problems = new ArrayList<>();
        for (int i = 0; i < STUDENTS; i++) {
            Person student = school.people().add(new People.NewPerson(Person.Kind.STUDENT, "Seat " + i, "seat" + i, "-", false, "en"), now);
            List<Sheets.Dealt> dealt = given.tasks().stream().map(t -> new Sheets.Dealt(t.id(), t.place(), "spacing/bolt-holes", t.place(), UnitSystem.US, PRINT, 1)).toList();
            school.sheets().deal(given.id(), student.id(), "M" + i, dealt, now).problems().forEach(p -> problems.add(p.id()));
        }
        Collections.shuffle(problems, new Random(1));
        return problems;
    }

    private static final class Writing {
        private final School school;
        private final List<Long> problems;
        private final RawInserts raw;
        private final AtomicInteger count = new AtomicInteger();
        private final AnswerMark mark = new AnswerMark(0, "pitch", "a", "8-5/16\"", "8 5/16 in", Verdict.SLIP, "shared-over-holes", List.of("fence-post"),
                "This answer fits sharing the span out over the 12 holes; between 12 holes there are 11 spaces.", 0, 1, 0.02);
        /** What an attempt holds, as one text. */
        private final String content = String.join("|", "receipt-000000000", PRINT, "SCREEN", "0.2.0", mark.ask(), mark.letter(), mark.typed(), mark.readAs(), mark.slip(),
                mark.verdict().name(), mark.families().get(0), mark.says(), "0.0|1.0|0.02", Instant.EPOCH.toString());

        Writing(School school, List<Long> problems, RawInserts raw) {
            this.school = school;
            this.problems = problems;
            this.raw = raw;
        }

        private void hand() {
            int number = count.incrementAndGet();
            Attempts.Handed handed = new Attempts.Handed(problems.get(number % problems.size()), "receipt-" + number, Instant.now(), false, Attempt.Way.SCREEN, "0.2.0",
                    PRINT, List.of(mark));
            if (!(school.attempts().hand(handed, Integer.MAX_VALUE) instanceof Attempts.Kept.Counted)) {
                throw new IllegalStateException("an attempt was not counted");
            }
        }

        Turns turns(int writers, double seconds) throws Exception {
            ExecutorService many = Executors.newFixedThreadPool(writers);
            try {
                List<double[]> turns = new ArrayList<>();
                long end = System.nanoTime() + (long) (seconds * 1e9);
                while (System.nanoTime() < end || turns.size() < LEAST_TURNS) {
                    double handed = perSecond(many, writers, this::hand);
                    double rows = perSecond(many, writers, () -> raw.insert(content));
                    turns.add(new double[] {handed, rows});
                }
                return new Turns(Spread.of(turns.stream().mapToDouble(t -> t[0]).toArray()), Spread.of(turns.stream().mapToDouble(t -> t[1]).toArray()),
                        Spread.of(turns.stream().mapToDouble(t -> t[0] / t[1]).toArray()));
            } finally {
                many.shutdown();
            }
        }

        private static double perSecond(ExecutorService many, int writers, Runnable work) throws Exception {
            List<Callable<Object>> parts = new ArrayList<>();
            for (int w = 0; w < writers; w++) {
                parts.add(Executors.callable(() -> {
                    for (int i = 0; i < IN_A_TURN / writers; i++) {
                        work.run();
                    }
                }));
            }
            long start = System.nanoTime();
            for (Future<Object> part : many.invokeAll(parts)) {
                part.get();
            }
            return IN_A_TURN / writers * writers * 1e9 / (System.nanoTime() - start);
        }
    }
}
