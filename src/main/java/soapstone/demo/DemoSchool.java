package soapstone.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import soapstone.bank.Bank;
import soapstone.exercise.Conventions;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Dealing;
import soapstone.school.Marking;
import soapstone.school.Member;
import soapstone.school.PasswordHash;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Shelf;

/** Makes the invented school: two classes of 24 and four weeks of work. The same seed and the same moment make the same school. */
public final class DemoSchool {

    /** Everybody in the invented school signs in with it; the page that says so says that it is a demo. */
    public static final String PASSPHRASE = "maple grove sap tank";
    public static final String NAME = "Tamarack Valley Technical Center (invented)";

    private static final int SEATS = 24;
    private static final int WEEKS = 4;
    private static final int TRIES = 2;
    private static final int DAYS_FOR_A_SHEET = 9;
    private static final String PROGRAM = "demo";
    private static final double ABSENT = 0.08;
    private static final double TRIES_AGAIN = 0.5;

    private static final List<String> FIRST = List.of("Ada", "Bram", "Celia", "Dov", "Esme", "Fitz", "Greta", "Hollis", "Ines", "Jory", "Kaya", "Lucho", "Mirela", "Nils",
            "Odile", "Pell", "Quill", "Rosa", "Sami", "Tove", "Uma", "Vidal", "Wren", "Yara", "Anouk", "Basil", "Cleo", "Darya", "Emil", "Farah", "Gus", "Hana", "Ivo",
            "Juno", "Kit", "Leda", "Milo", "Nora", "Orrin", "Petra", "Remy", "Sable", "Timo", "Una", "Vesna", "Wim", "Xenia", "Zeke");
    private static final String LAST = "QOGTVKSBLMRDNPWFHCAEYUJI";

    private static final List<List<String>> FIRST_CLASS = List.of(
            List.of("measuring/rule-reading", "units/feet-and-inches", "measuring/nearest-sixteenth", "measuring/stack-up"),
            List.of("spacing/bolt-holes", "spacing/pickets", "spacing/hole-marks", "spacing/max-gap"),
            List.of("bends/setback", "bends/bend-allowance", "bends/bend-deduction", "bends/flat-angle"),
            List.of("spacing/bolt-holes", "bends/flat-channel", "boxes/pan-blank", "sheet/plate-by-density"));
    private static final List<List<String>> SECOND_CLASS = List.of(
            List.of("units/cubic-inches-to-gallons", "tanks/box-gallons", "tanks/outside-to-inside"),
            List.of("tanks/drum-gallons", "tanks/lying-drum", "tanks/full-weight", "tanks/depth-for-gallons"),
            List.of("baffles/baffle-count", "baffles/clear-spaces", "baffles/baffle-marks", "baffles/compartment-gallons"),
            List.of("pressure/depth-pressure", "pressure/side-panel", "pressure/cover-bolts", "jobs/sap-hauling-tank"));

    private final School school;
    private final Bank bank;
    private final SplittableRandom chance;
    private final Instant now;
    private final Marking marking;
    private final String encoded;

    private DemoSchool(School school, Bank bank, Instant now, long seed) {
        this.school = school;
        this.bank = bank;
        this.now = now;
        this.chance = new SplittableRandom(seed);
        Words words = Words.of("en");
        this.marking = new Marking(bank, Shelf.of(bank), words::say);
        this.encoded = PasswordHash.hash(PASSPHRASE);
    }

    /**
     * Fills an empty school.
     *
     * @param now the moment after the last week: the last assignment is due today
     */
    public static void fill(School school, Bank bank, Instant now, long seed) {
        new DemoSchool(school, bank, now, seed).fill();
    }

    private void fill() {
        add(Person.Kind.KEEPER, "Keeper", "keeper");
        Person first = add(Person.Kind.INSTRUCTOR, "W. Sorrel", "sorrel");
        Person second = add(Person.Kind.INSTRUCTOR, "J. Tansy", "tansy");
        Instant term = now.truncatedTo(ChronoUnit.HOURS).minus(Duration.ofDays(7L * (WEEKS - 1) + DAYS_FOR_A_SHEET)).plus(Duration.ofHours(6));
        ClassSettings metric = new ClassSettings(UnitSystem.METRIC, "en", '.', true, true, 0, true, "Inside sizes in mm.")
                .with(Conventions.parse("k_factor=0.44"));
        ClassSettings inches = new ClassSettings(UnitSystem.US, "en", '.', true, true, 0, true, "Chart B hangs by the brake.")
                .with(Conventions.parse("edge_distance=2.0; k_factor=0.44"));
        schoolClass(first, "Sheet metal 1, period 2", "MAPLE2", inches, term, 0, FIRST_CLASS);
        schoolClass(second, "Tanks and vessels, evening", "TANKS5", metric, term, SEATS, SECOND_CLASS);
    }

    private Person add(Person.Kind kind, String shown, String login) {
        return school.people().add(new People.NewPerson(kind, shown, login, encoded, false, "en"), now);
    }

    private void schoolClass(Person instructor, String name, String code, ClassSettings settings, Instant term, int firstName, List<List<String>> weeks) {
        SchoolClass made = school.classes().add(name, "Fall", code, settings, instructor.id(), term);
        List<Classes.NewMember> roster = new ArrayList<>();
        for (int seat = 1; seat <= SEATS; seat++) {
            String shown = FIRST.get(firstName + seat - 1) + " " + LAST.charAt((seat * 7 + firstName) % LAST.length()) + ".";
            String login = (code + "-" + seat).toLowerCase(java.util.Locale.ROOT);
            roster.add(new Classes.NewMember(new People.NewPerson(Person.Kind.STUDENT, shown, login, encoded, false, "en"), String.valueOf(seat), seat == 5 ? 50 : 0));
        }
        List<Member> members = school.classes().enrol(made.id(), roster, term);
        List<DemoStudent> students = members.stream().map(m -> DemoStudent.of(m.person(), chance.split())).toList();
        for (int week = 0; week < weeks.size(); week++) {
            week(made, instructor, week, weeks.get(week), students, term.plus(Duration.ofDays(7L * week)));
        }
    }

    private void week(SchoolClass in, Person instructor, int week, List<String> exercises, List<DemoStudent> students, Instant opens) {
        List<Assignment.Task> tasks = new ArrayList<>();
        for (String exercise : exercises) {
            tasks.add(new Assignment.Task(0, tasks.size() + 1, List.of(exercise), 1, 4));
        }
        Instant due = opens.plus(Duration.ofDays(DAYS_FOR_A_SHEET));
        Assignment given = school.assignments().add(new Assignment(0, in.id(), "Sheet " + (week + 1), Assignment.State.GIVEN, opens, Optional.of(due), Assignment.Late.HALF,
                TRIES, Assignment.Shows.LINES, true, instructor.id(), opens, Optional.empty(), tasks), List.of());
        Map<Long, List<soapstone.school.Sheets.Dealt>> dealt = new Dealing(bank, in.settings(), chance.split()).deal(given,
                students.stream().map(s -> s.person().id()).toList(), List.of());
        for (DemoStudent student : students) {
            if (student.chance().nextDouble() >= ABSENT) {
                work(in, given, student, dealt.get(student.person().id()), week);
            }
        }
    }

    private void work(SchoolClass in, Assignment given, DemoStudent student, List<soapstone.school.Sheets.Dealt> dealt, int week) {
        Instant begins = given.opens().plus(Duration.ofMinutes(student.chance().nextInt(1, DAYS_FOR_A_SHEET * 24 * 60)));
        if (begins.isAfter(now)) {
            return;
        }
        String number = "W" + (week + 1) + "-" + in.code() + "-" + student.person().id();
        Sheet sheet = school.sheets().deal(given.id(), student.person().id(), number, dealt, begins);
        Instant at = begins;
        for (Problem problem : sheet.problems()) {
            at = at.plus(Duration.ofMinutes(2 + student.chance().nextInt(7)));
            boolean done = hand(in, given, student, problem, at, 1);
            if (!done && student.chance().nextDouble() < TRIES_AGAIN) {
                hand(in, given, student, problem, at.plus(Duration.ofHours(20)), 2);
            }
        }
    }

    /** @return whether everything was right, or nothing was handed in */
    private boolean hand(SchoolClass in, Assignment given, DemoStudent student, Problem problem, Instant at, int number) {
        if (at.isAfter(now)) {
            return true;
        }
        Map<String, String> texts = new HashMap<>(student.answers(bank.exercise(problem.exercise()).orElseThrow(), problem));
        Marking.Outcome outcome = marking.mark(problem, texts, in.settings());
        if (!(outcome instanceof Marking.Outcome.Done done)) {
            return true;
        }
        boolean late = given.due().map(at::isAfter).orElse(false);
        school.attempts().hand(new Attempts.Handed(problem.id(), "demo-" + problem.id() + "-" + number, at, late, Attempt.Way.SCREEN, PROGRAM, done.fingerprint(), done.marks()),
                TRIES);
        return done.marks().stream().allMatch(m -> m.verdict().isRight());
    }
}
