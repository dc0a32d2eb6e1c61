package soapstone.speed;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import soapstone.demo.DemoSchool;
import soapstone.mark.Verdict;
import soapstone.record.BulkSchool;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Charter;
import soapstone.school.Member;
import soapstone.school.PasswordHash;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.SheetNumbers;

/**
 * Fills an empty school with a year's work of many classes. Each class is at work in the same period every week, eight
 * periods on five days; so what a class hands in lies in the tables mixed with what the others of its period hand in, and
 * a year's work of one class lies all over them. The same plan, seed and moment make the same school; a class does the same work
 * whichever others are beside it.
 */
final class GrownSchool {

    private static final long SEED = 7;
    private static final String PROGRAM = "speed";
    private static final int CLASSES_OF_AN_INSTRUCTOR = 5;
    private static final int DAYS = 5;
    private static final int PERIODS = 8;
    private static final int RECEIPT = 64;
    private static final int FIRST_HOUR = 13;
    private static final int WEEKS_OF_MARKS_OUT = 4;
    private static final Duration FOR_A_SHEET = Duration.ofDays(6);
    private static final double ABSENT = 0.05;
    private static final double EXCUSED = 0.01;
    private static final double STAYS_TO_TRY_AGAIN = 0.6;
    private static final double OVERRULED = 0.003;

    private final ModelClass model;
    private final Plan plan;
    private final Instant now;
    private final Instant begins;
    private final BulkSchool bulk;
    private final SplittableRandom chance = new SplittableRandom(SEED);
    private final String password = PasswordHash.hash(DemoSchool.PASSPHRASE);
    private final Set<String> numbers = new HashSet<>();
    private final List<Room> rooms = new ArrayList<>();
    private long people;
    private long assignments;
    private long tasks;
    private long sheets;
    private long problems;
    private long attempts;
    private long remarks;
    private long answers;

    /**
     * How big a school is.
     *
     * @param students of all classes together
     */
    record Plan(int students) {

        private static final int IN_THREE_CLASSES = 100;

        /** About 33 students sit in each. */
        int classes() {
            return Math.max(1, Math.round(students * 3f / IN_THREE_CLASSES));
        }

        /** Students of the class with that number, counted from 0. */
        int seats(int number) {
            return (int) ((long) students * (number + 1) / classes() - (long) students * number / classes());
        }

        /** The class that is looked at. */
        int middle() {
            return classes() / 2;
        }
    }

    /**
     * A class in a school that was made.
     *
     * @param assignment one from the middle of the year
     * @param instructor the login; the passphrase is that of the invented school
     * @param student    with the first seat
     * @param cells      answers that count for the assignment: of each problem handed in, those of one try
     * @param answers    of the class over the year
     */
    record Looked(long id, int seats, long assignment, String instructor, long student, long cells, long answers) {}

    /** @param answers marks in the whole school */
    record Filled(int classes, int students, long answers, Looked looked) {}

    /** A class while it is filled. */
    private static final class Room {

        private final SchoolClass in;
        private final int number;
        private final Person instructor;
        private final List<Person> students;
        private final SplittableRandom chance;
        private long assignment;
        private long cells;
        private long answers;

        Room(SchoolClass in, int number, Person instructor, List<Person> students) {
            this.in = in;
            this.number = number;
            this.instructor = instructor;
            this.students = students;
            this.chance = new SplittableRandom(SEED + number);
        }

        Duration period() {
            return Duration.ofDays(number % DAYS).plusHours(FIRST_HOUR + number / DAYS % PERIODS);
        }

        /** Which of the model students one is copied from. */
        int model(int seat) {
            return (seat + number * PERIODS) % ModelClass.STUDENTS;
        }
    }

    private GrownSchool(Database database, ModelClass model, Plan plan, Instant now) {
        this.model = model;
        this.plan = plan;
        this.now = now;
        this.begins = now.truncatedTo(ChronoUnit.DAYS).minus(Duration.ofDays(7L * (ModelClass.ASSIGNMENTS + 1)));
        this.bulk = new BulkSchool(database);
        SqlSchool.of(database).charters().write(new Charter("A school to measure (invented)", false, begins));
    }

    /** The whole school of a plan. */
    static Filled fill(Database database, ModelClass model, Plan plan, Instant now) {
        return new GrownSchool(database, model, plan, now).fill(IntStream.range(0, plan.classes()).toArray());
    }

    /** A school of nothing but the middle class of a plan, with the same work. */
    static Filled fillMiddle(Database database, ModelClass model, Plan plan, Instant now) {
        return new GrownSchool(database, model, plan, now).fill(plan.middle());
    }

    private Filled fill(int... classes) {
        try (bulk) {
            person(Person.Kind.KEEPER, "Keeper", "keeper");
            for (int number : classes) {
                rooms.add(room(number));
            }
            rooms.sort(Comparator.comparing(Room::period));
            IntStream.range(0, ModelClass.ASSIGNMENTS).forEach(this::week);
        }
        Room middle = rooms.stream().filter(r -> r.number == plan.middle()).findFirst().orElseThrow();
        int students = rooms.stream().mapToInt(r -> r.students.size()).sum();
        return new Filled(rooms.size(), students, answers, new Looked(middle.in.id(), middle.students.size(), middle.assignment, middle.instructor.login(),
                middle.students.get(0).id(), middle.cells, middle.answers));
    }

    // Who is there

    private Person person(Person.Kind kind, String shown, String login) {
        Person person = new Person(++people, kind, shown, login, "en", false, false, false, begins);
        bulk.add(person, password);
        if (kind != Person.Kind.STUDENT) {
            note(begins, "account.added", Optional.empty(), Optional.of(person.id()), Optional.empty(), "", false);
        }
        return person;
    }

    private Room room(int number) {
        String login = "instructor" + number / CLASSES_OF_AN_INSTRUCTOR;
        Person instructor = rooms.stream().map(r -> r.instructor).filter(p -> p.login().equals(login)).findFirst()
                .orElseGet(() -> person(Person.Kind.INSTRUCTOR, "Instructor " + number / CLASSES_OF_AN_INSTRUCTOR, login));
        SchoolClass in = new SchoolClass(number + 1, "Sheet metal " + number, "Year", "CLASS" + number, ModelClass.SETTINGS, begins, Optional.empty());
        bulk.add(in, instructor.id());
        List<Person> students = new ArrayList<>();
        for (int seat = 1; seat <= plan.seats(number); seat++) {
            Person student = person(Person.Kind.STUDENT, "Seat " + seat, "class" + number + "-" + seat);
            bulk.add(new Member(in.id(), student, String.valueOf(seat), Member.State.IN, 0, begins));
            students.add(student);
        }
        Room room = new Room(in, number, instructor, students);
        note(room, begins, "class.made", Optional.empty(), in.name(), false);
        note(room, begins, "member.enrolled", Optional.empty(), String.valueOf(students.size()), false);
        return room;
    }

    private void note(Room room, Instant at, String act, Optional<Long> person, String detail, boolean left) {
        note(at, act, Optional.of(room.instructor.id()), person, Optional.of(room.in.id()), detail, left);
    }

    private void note(Instant at, String act, Optional<Long> by, Optional<Long> person, Optional<Long> in, String detail, boolean left) {
        bulk.add(new Audit.Entry(at, by, act, person, in, detail, left));
    }

    // What they do

    /** All hand in in the course of a week; what comes first is put down first. */
    private void week(int week) {
        List<HandedIn> handed = new ArrayList<>();
        rooms.forEach(room -> assign(room, week, handed));
        handed.sort(Comparator.comparing(HandedIn::at).thenComparingLong(HandedIn::problem).thenComparingInt(HandedIn::number));
        handed.forEach(this::hand);
        if (week % WEEKS_OF_MARKS_OUT == 0) {
            rooms.forEach(room -> marksOut(room, begins.plus(Duration.ofDays(7L * (week + 1)))));
        }
    }

    private record HandedIn(Room room, Person by, long problem, int number, Instant at, boolean late, String fingerprint, List<AnswerMark> marks) {}

    private void assign(Room room, int week, List<HandedIn> handed) {
        Instant opens = begins.plus(Duration.ofDays(7L * week)).plus(room.period());
        List<Assignment.Task> own = ModelClass.tasks(model.bank(), week).stream().map(t -> new Assignment.Task(++tasks, t.place(), t.exercises(), t.many(), t.points())).toList();
        Assignment given = new Assignment(++assignments, room.in.id(), "Sheet " + (week + 1), Assignment.State.GIVEN, opens, Optional.of(opens.plus(FOR_A_SHEET)),
                Assignment.Late.HALF, ModelClass.TRIES, Assignment.Shows.LINES, true, room.instructor.id(), opens, Optional.empty(), own);
        List<Person> excused = room.students.stream().filter(s -> room.chance.nextDouble() < EXCUSED).toList();
        bulk.add(given, excused.stream().map(s -> new Assignments.GivenTo(s.id(), Optional.empty(), true, false)).toList());
        note(room, opens, "assignment.given", Optional.empty(), given.title(), false);
        excused.forEach(s -> note(room, opens, "assignment.excused", Optional.of(s.id()), "Assignment " + given.id(), false));
        boolean looked = week == ModelClass.ASSIGNMENTS / 2;
        room.assignment = looked ? given.id() : room.assignment;
        for (int seat = 0; seat < room.students.size(); seat++) {
            List<ModelClass.Piece> pieces = model.sheet(week, room.model(seat));
            Sheet sheet = sheet(given, room.students.get(seat), pieces);
            if (!excused.contains(room.students.get(seat)) && room.chance.nextDouble() >= ABSENT) {
                work(room, given, sheet, room.students.get(seat), pieces, handed);
                room.cells += looked ? pieces.stream().mapToInt(p -> p.tries().get(0).size()).sum() : 0;
            }
        }
    }

    /** Everybody has a sheet from the moment on at which the first one opens theirs. */
    private Sheet sheet(Assignment given, Person student, List<ModelClass.Piece> pieces) {
        String number = SheetNumbers.fresh(chance);
        while (!numbers.add(number)) {
            number = SheetNumbers.fresh(chance);
        }
        long id = ++sheets;
        List<Problem> dealt = pieces.stream().map(ModelClass.Piece::dealt).map(d -> {
            if (numbers.add(d.fingerprint())) {
                bulk.addWhole(d.fingerprint(), model.bank().wholes().get(d.exercise()), given.opens());
            }
            long task = given.tasks().get((int) d.task() - 1).id();
            return new Problem(++problems, id, task, d.place(), 1, d.exercise(), d.seed(), d.units(), d.fingerprint(), d.points());
        }).toList();
        Sheet sheet = new Sheet(id, given.id(), student.id(), number, given.opens().plus(Duration.ofMinutes(1)), dealt);
        bulk.add(sheet);
        return sheet;
    }

    private void work(Room room, Assignment given, Sheet sheet, Person student, List<ModelClass.Piece> pieces, List<HandedIn> handed) {
        Instant at = given.opens().plusSeconds(room.chance.nextInt(60, 600));
        for (int i = 0; i < pieces.size(); i++) {
            at = at.plusSeconds(room.chance.nextInt(120, 480));
            Instant tried = at;
            for (int number = 1; number <= pieces.get(i).tries().size(); number++) {
                handed.add(new HandedIn(room, student, sheet.problems().get(i).id(), number, tried, given.due().orElseThrow().isBefore(tried),
                        sheet.problems().get(i).fingerprint(), pieces.get(i).tries().get(number - 1)));
                boolean stays = room.chance.nextDouble() < STAYS_TO_TRY_AGAIN;
                tried = tried.plusSeconds(stays ? room.chance.nextInt(60, 240) : room.chance.nextInt(20 * 3600, 4 * 24 * 3600));
                at = stays && number < pieces.get(i).tries().size() ? tried : at;
            }
        }
    }

    private void hand(HandedIn h) {
        bulk.add(new Attempt(++attempts, h.problem(), h.number(), receipt(), h.at(), h.late(), Attempt.Way.SCREEN, PROGRAM, h.fingerprint(), h.marks()));
        answers += h.marks().size();
        h.room().answers += h.marks().size();
        if (h.room().chance.nextDouble() < OVERRULED) {
            Instant later = h.at().plus(FOR_A_SHEET);
            AnswerMark mark = h.marks().get(0);
            bulk.add(new Remark(++remarks, attempts, mark.place(), later, Optional.of(h.room().instructor.id()), Remark.Cause.OVERRULED, Verdict.RIGHT, mark.possible(),
                    "Shown at the bench"));
            note(h.room(), later, "mark.overruled", Optional.of(h.by().id()), "Attempt " + attempts + ", answer " + mark.letter() + ": right", false);
        }
    }

    /** As long as real ones, but in order: at random they would be put down all over their index, and the fill would take hours. No page looks for them. */
    private String receipt() {
        String digits = Long.toHexString(attempts);
        return "0".repeat(RECEIPT - digits.length()) + digits;
    }

    /** A class's marks go out: told for the class and for each student. */
    private void marksOut(Room room, Instant at) {
        note(room, at, "marks.plain", Optional.empty(), "Students: " + room.students.size(), true);
        room.students.forEach(s -> note(room, at, "marks.plain", Optional.of(s.id()), "Marks of the class", true));
    }
}
