package soapstone.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Dealing;
import soapstone.school.Marking;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Problem;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Sheets;
import soapstone.school.Shelf;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;
import soapstone.web.SchoolUnderTest;

/** An invented class with sheets dealt and marked by the rules that the site has; answers are those that slips would give. */
final class WorkingClass implements AutoCloseable {

    static final String HOLES = "spacing/bolt-holes";
    static final String TRAY = "bends/hose-tray";

    final SchoolUnderTest site;
    final Person instructor;
    final SchoolClass in;
    final List<Member> students = new ArrayList<>();
    private final Random chance = new Random(7);
    private final MendableBank bank = new MendableBank();
    private int made;

    WorkingClass(int many) throws Exception {
        site = SchoolUnderTest.start(new EngineDesk(bank));
        instructor = site.add(Person.Kind.INSTRUCTOR, "Odile F.", "odile");
        in = site.addClass("Sheet metal 1", instructor);
        for (int i = 1; i <= many; i++) {
            String name = i % 4 == 0 ? "Maximiliane-Konstantina von Oberhollabrunn-Weidenfels " + i : "Student " + i;
            students.add(site.enrol(in, name, "seat" + i, String.valueOf(i)));
        }
    }

    /** The bank is mended while the site runs: in one of its files, a text is put in the place of another. */
    void mend(String file, String text, String by) throws Exception {
        bank.mend(file, text, by);
    }

    long person(int seat) {
        return students.get(seat - 1).person().id();
    }

    /** An assignment that is given to everybody, and due in a day. */
    Assignment give(String title, String... exercises) {
        return give(title, List.of(), exercises);
    }

    Assignment give(String title, List<Assignments.GivenTo> given, String... exercises) {
        List<Assignment.Task> tasks = new ArrayList<>();
        for (String exercise : exercises) {
            tasks.add(new Assignment.Task(0, tasks.size() + 1, List.of(exercise), 1, 2));
        }
        Instant now = site.now();
        Assignment assignment = site.school.assignments().add(new Assignment(0, in.id(), title, Assignment.State.GIVEN, now, Optional.of(now.plus(Duration.ofDays(1))),
                Assignment.Late.HALF, 3, Assignment.Shows.MISTAKE, true, instructor.id(), now, Optional.empty(), tasks), given);
        deal(assignment);
        for (String exercise : exercises) {
            site.school.sheets().keepWhole(RealSite.library().bank().exercise(exercise).orElseThrow().fingerprint(), RealSite.library().bank().wholes().get(exercise), now);
        }
        return assignment;
    }

    /** Sheets for everybody for whom the assignment is. */
    void deal(Assignment assignment) {
        List<Long> only = site.school.assignments().givenTo(assignment.id()).stream().filter(Assignments.GivenTo::onlyThese).map(Assignments.GivenTo::person).toList();
        List<Long> persons = only.isEmpty() ? students.stream().map(m -> m.person().id()).toList() : only;
        Map<Long, List<Sheets.Dealt>> dealt = new Dealing(RealSite.library().bank(), in.settings(), chance).deal(assignment, persons, List.of());
        dealt.forEach((person, problems) -> site.school.sheets().deal(assignment.id(), person, "S" + ++made, problems, site.now()));
    }

    Problem problem(Assignment assignment, int seat, int place) {
        Sheet sheet = site.school.sheets().of(assignment.id(), person(seat)).orElseThrow();
        return sheet.problems().get(place - 1);
    }

    private static Variant variant(Problem problem) {
        return Drawer.draw(RealSite.library().bank().exercise(problem.exercise()).orElseThrow(), problem.units(), problem.seed()).orElseThrow();
    }

    Attempt right(Problem problem) {
        return hand(problem, RealSite.key(variant(problem)));
    }

    /** What the slip gives with this student's numbers; the right answers where it has no effect in them. */
    Attempt slip(Problem problem, String slip) {
        Variant v = variant(problem);
        return hand(problem, v.outcomes().stream().filter(o -> o.slip().name().equals(slip) && o.effect() == Effect.SEEN).findFirst()
                .map(o -> RealSite.answers(v, o.theirs())).orElse(RealSite.key(v)));
    }

    Attempt typed(Problem problem, String text) {
        Map<String, String> all = new LinkedHashMap<>(RealSite.key(variant(problem)));
        all.put("a", text);
        return hand(problem, all);
    }

    Attempt hand(Problem problem, Map<String, String> texts) {
        Marking marking = new Marking(RealSite.library().bank(), Shelf.of(RealSite.library().bank()), Words.of("en")::say);
        Marking.Outcome.Done done = (Marking.Outcome.Done) marking.mark(problem, texts, in.settings());
        Attempts.Kept kept = site.school.attempts().hand(new Attempts.Handed(problem.id(), "receipt" + ++made, site.now(), false, Attempt.Way.SCREEN, "0.2.0", done.fingerprint(),
                done.marks()), 9);
        return ((Attempts.Kept.Counted) kept).attempt();
    }

    /** A morning: seats 1 to 6 shared over the holes, 7 to 9 left the inside radius, one nobody explains, some open, the last three not begun. */
    Assignment morning() {
        Assignment assignment = give("Holes and a tray", HOLES, TRAY);
        for (int seat = 1; seat <= students.size() - 3; seat++) {
            Problem holes = problem(assignment, seat, 1);
            if (seat <= 6) {
                slip(holes, "shared-over-holes");
            } else if (seat == 10) {
                typed(holes, "47 in");
            } else {
                right(holes);
            }
            Problem tray = problem(assignment, seat, 2);
            if (seat >= 7 && seat <= 9) {
                slip(tray, "inside-arc");
            } else if (seat != 11) {
                right(tray);
            }
        }
        return assignment;
    }

    @Override
    public void close() {
        site.close();
    }
}
