package soapstone.web;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.AssignmentFormView;
import soapstone.page.FormView;
import soapstone.school.Assignment;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Member;
import soapstone.source.Message;

/**
 * The form of an assignment. What an instructor ticks is enough; pools, points and order are asked for in a second look at
 * the same page, for the exercises that are ticked.
 */
final class AssignmentForm {

    static final int LONGEST_TITLE = 120;
    static final int MOST_TRIES = 20;
    private static final int USUAL_TRIES = 3;
    private static final int USUAL_DAYS = 7;
    private static final LocalTime USUAL_TIME = LocalTime.of(8, 0);
    private static final double LEAST_POINTS = 0.5;
    private static final int MOST_POINTS = 100;
    private static final int MOST_PLACE = 99;
    private static final int MOST_PROBLEMS = 40;
    private static final String USE = "use-";
    private static final String ONLY = "only-";

    private final FilledForm form;
    private final Fields fields;
    private final Choosing.Shelf shelf;

    AssignmentForm(Fields fields, Choosing.Shelf shelf) {
        this.form = new FilledForm(fields);
        this.fields = fields;
        this.shelf = shelf;
    }

    FilledForm form() {
        return form;
    }

    /** What was filled in. */
    record Filled(String title, Optional<Instant> opens, Optional<Instant> due, Assignment.Late late, int tries, Assignment.Shows shows, boolean formulas,
            List<Assignment.Task> tasks, List<Long> only) {}

    /** An exercise that is ticked, and where it goes. */
    private record Chosen(String id, String pool, double points, int place) {}

    static FormView fresh(Instant now) {
        Instant due = TypedTimes.daysLater(now, USUAL_DAYS, USUAL_TIME);
        return FormView.of(Map.of("due-date", TypedTimes.date(due), "due-time", TypedTimes.clock(due), "tries", String.valueOf(USUAL_TRIES),
                "late", Assignment.Late.TAKEN.name(), "shows", Assignment.Shows.MISTAKE.name(), "formulas", "yes", "for", "ALL"));
    }

    /** A draft as it stands. */
    static FormView of(Assignment a, List<GivenTo> given, Instant now) {
        Map<String, String> typed = new HashMap<>(Map.of("title", a.title(), "tries", String.valueOf(a.tries()), "late", a.late().name(), "shows", a.shows().name(),
                "for", given.stream().anyMatch(GivenTo::onlyThese) ? "SOME" : "ALL"));
        if (a.formulas()) {
            typed.put("formulas", "yes");
        }
        a.due().ifPresent(due -> putMoment(typed, "due", due));
        if (a.opens().isAfter(now)) {
            putMoment(typed, "opens", a.opens());
        }
        given.stream().filter(GivenTo::onlyThese).forEach(g -> typed.put(ONLY + g.person(), "yes"));
        putTasks(typed, a.tasks());
        return FormView.of(typed);
    }

    private static void putMoment(Map<String, String> typed, String name, Instant moment) {
        typed.put(name + "-date", TypedTimes.date(moment));
        typed.put(name + "-time", TypedTimes.clock(moment));
    }

    private static void putTasks(Map<String, String> typed, List<Assignment.Task> tasks) {
        int pools = 0;
        int place = 1;
        for (Assignment.Task task : tasks) {
            String pool = task.exercises().size() > 1 && pools < AssignmentFormView.LETTERS.size() ? AssignmentFormView.LETTERS.get(pools++) : "";
            if (!pool.isEmpty()) {
                typed.put("many-" + pool, String.valueOf(task.many()));
            }
            for (String id : task.exercises()) {
                typed.put(USE + id, "yes");
                typed.put("pool-" + id, pool);
                typed.put("points-" + id, points(task.points()));
                typed.put("place-" + id, String.valueOf(place++));
            }
        }
    }

    /** Points without an empty decimal. */
    static String points(double points) {
        return points == Math.rint(points) ? String.valueOf((long) points) : String.valueOf(points);
    }

    /** What was typed, or empty when something of it does not fit. */
    Optional<Filled> read(List<Member> sitting) {
        String title = form.wanted("title", LONGEST_TITLE);
        List<Assignment.Task> tasks = tasks();
        Optional<Instant> opens = form.moment("opens-date", "opens-time");
        Optional<Instant> due = form.moment("due-date", "due-time");
        if (opens.isPresent() && due.isPresent() && !due.get().isAfter(opens.get())) {
            form.fault("due-date", Message.of("class-work.due-before"));
        }
        Assignment.Late late = form.choice("late", Assignment.Late.class);
        int tries = form.whole("tries", 1, MOST_TRIES);
        Assignment.Shows shows = form.choice("shows", Assignment.Shows.class);
        List<Long> only = only(sitting);
        return form.isGood() ? Optional.of(new Filled(title, opens, due, late, tries, shows, form.ticked("formulas"), tasks, only)) : Optional.empty();
    }

    private List<Long> only(List<Member> sitting) {
        String whom = fields.text("for");
        if (whom.equals("ALL")) {
            return List.of();
        }
        List<Long> only = sitting.stream().map(m -> m.person().id()).filter(id -> form.ticked(ONLY + id)).toList();
        if (only.isEmpty()) {
            form.fault("for", Message.of("class-work.nobody"));
        }
        return only;
    }

    private List<Assignment.Task> tasks() {
        List<Chosen> chosen = chosen();
        if (chosen.isEmpty()) {
            form.fault("exercises", Message.of("class-work.no-exercise"));
        }
        Map<String, List<Chosen>> groups = new LinkedHashMap<>();
        chosen.forEach(c -> groups.computeIfAbsent(c.pool().isEmpty() ? c.id() : c.pool(), g -> new ArrayList<>()).add(c));
        List<Assignment.Task> tasks = new ArrayList<>();
        for (List<Chosen> group : groups.values()) {
            tasks.add(task(group, tasks.size() + 1));
        }
        if (tasks.stream().mapToInt(Assignment.Task::many).sum() > MOST_PROBLEMS) {
            form.fault("exercises", Message.of("class-work.too-many", String.valueOf(MOST_PROBLEMS)));
        }
        return tasks;
    }

    private Assignment.Task task(List<Chosen> group, int place) {
        Chosen first = group.get(0);
        String name = "many-" + first.pool();
        boolean asked = !first.pool().isEmpty() && fields.get(name).isPresent();
        int many = asked ? form.whole(name, 1, group.size()) : 1;
        for (Chosen other : group) {
            if (other.points() != first.points()) {
                form.fault("points-" + other.id(), Message.of("class-work.pool-points", first.pool(), points(first.points())));
            }
        }
        return new Assignment.Task(0, place, group.stream().map(Chosen::id).toList(), many, first.points());
    }

    /** The ticked exercises in the order in which they will stand; those without a place come last, in teaching order. */
    private List<Chosen> chosen() {
        List<Chosen> chosen = new ArrayList<>();
        for (String id : shelf.exercises().keySet()) {
            if (form.ticked(USE + id)) {
                chosen.add(chosen(id));
            }
        }
        chosen.sort(Comparator.comparingInt(Chosen::place));
        return chosen;
    }

    private Chosen chosen(String id) {
        String pool = fields.text("pool-" + id);
        if (!pool.isEmpty() && !AssignmentFormView.LETTERS.contains(pool)) {
            form.fault("pool-" + id, Message.of("filled.choice"));
        }
        double points = fields.get("points-" + id).isPresent() ? form.number("points-" + id, LEAST_POINTS, MOST_POINTS) : 1;
        int place = fields.text("place-" + id).isBlank() ? MOST_PLACE + 1 : form.whole("place-" + id, 1, MOST_PLACE);
        return new Chosen(id, pool, points, place);
    }

    /** Only the second look at the exercises, nothing else. */
    void look() {
        tasks();
    }

    /** The page with this form on it. */
    static AssignmentFormView page(OwnClasses.Place place, FormView view, Choosing.Shelf shelf, List<Member> sitting) {
        Fields typed = Fields.of(view.typed());
        List<Chosen> chosen = new AssignmentForm(typed, shelf).chosen();
        List<String> ids = chosen.stream().map(Chosen::id).toList();
        List<String> pools = chosen.stream().map(Chosen::pool).filter(AssignmentFormView.LETTERS::contains).distinct().sorted().toList();
        Map<String, String> filled = new HashMap<>(view.typed());
        for (int i = 0; i < ids.size(); i++) {
            filled.putIfAbsent("points-" + ids.get(i), "1");
            filled.putIfAbsent("place-" + ids.get(i), String.valueOf(i + 1));
        }
        pools.forEach(p -> filled.putIfAbsent("many-" + p, "1"));
        return new AssignmentFormView(place.in().id(), place.in().name(), place.path(), place.fresh(), new FormView(filled, view.faults()), shelf.units(ids),
                chosen.stream().map(c -> shelf.exercises().get(c.id())).toList(), pools,
                sitting.stream().map(m -> new AssignmentFormView.Student(m.person().id(), m.seat(), m.person().shown())).toList());
    }
}
