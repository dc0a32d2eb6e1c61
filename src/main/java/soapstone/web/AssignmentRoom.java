package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import soapstone.page.AssignmentFormView;
import soapstone.page.AssignmentPreview;
import soapstone.page.AssignmentView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.page.SheetView;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Member;
import soapstone.school.SchoolClass;
import soapstone.school.SessionRule;
import soapstone.source.Message;

/** Assignments: written, looked at as a student sees them, given out, taken back, copied, made up for. */
final class AssignmentRoom implements SchoolSite.Room {

    /** Sheets have seeds of nine figures at most: from here on nobody gets the numbers. */
    private static final long PREVIEW_FROM = 1_000_000_000L;
    private static final long PREVIEW_TO = 1_000_000_000_000L;
    private static final int PREVIEW_TRIES = 200;

    private final OwnClasses own;
    private final Desk desk;
    private final Pages pages;
    private final RandomGenerator random;

    AssignmentRoom(SchoolOffice office, Desk desk, Pages pages, RandomGenerator random) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
        this.random = random;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/assignments/new", v -> form(v, fresh(own.open(v)), AssignmentForm.fresh(own.now())))
                .post(Who.INSTRUCTOR, "/classes/{class}/assignments/new", Fields.Limit.CHOICE, this::make)
                .get(Who.INSTRUCTOR, "/assignments/{assignment}", v -> show(v, own.work(v), UnaryOperator.identity()))
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/edit", this::edit)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/edit", Fields.Limit.CHOICE, this::change)
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/preview", v -> Reply.goTo(path(own.work(v).assignment().id()) + "/preview/1"))
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/preview/{place}", this::preview)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/give", this::give)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/take", this::take)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/due", this::setDue)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/own-due", this::setOwnDue)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/make-up", this::makeUp)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/copy", this::copy);
    }

    private static String path(long assignment) {
        return "/assignments/" + assignment;
    }

    private Assignments assignments() {
        return own.school().assignments();
    }

    // Writing

    private static OwnClasses.Place fresh(SchoolClass in) {
        return new OwnClasses.Place(in, "/classes/" + in.id() + "/assignments/new", true);
    }

    private static OwnClasses.Place draft(OwnClasses.Work work) {
        return new OwnClasses.Place(work.in(), path(work.assignment().id()) + "/edit", false);
    }

    private Reply form(Visit v, OwnClasses.Place place, FormView view) {
        AssignmentFormView page = AssignmentForm.page(place, view, Choosing.of(desk), own.sitting(place.in()));
        return Reply.page(pages.show(v.reader(), "assignment-form", page));
    }

    private Reply make(Visit v) {
        SchoolClass in = own.open(v);
        return filled(v, fresh(in), f -> {
            Instant now = own.now();
            Assignment draft = new Assignment(0, in.id(), f.title(), state(v), f.opens().orElse(now), f.due(), f.late(), f.tries(), f.shows(), f.formulas(),
                    v.person().id(), now, Optional.empty(), f.tasks());
            Assignment made = assignments().add(draft, onlyThese(f.only()));
            own.note(v, made.state() == Assignment.State.GIVEN ? "assignment.given" : "assignment.made", Optional.empty(), in, made.title());
            return Reply.goTo(path(made.id()));
        });
    }

    private static Assignment.State state(Visit v) {
        return v.form().text("action").equals("give") ? Assignment.State.GIVEN : Assignment.State.DRAFT;
    }

    private static List<GivenTo> onlyThese(List<Long> only) {
        return only.stream().map(id -> new GivenTo(id, Optional.empty(), false, true)).toList();
    }

    /** What is done with a form that is right. */
    private interface Done {
        Reply with(AssignmentForm.Filled filled);
    }

    private Reply filled(Visit v, OwnClasses.Place place, Done done) {
        AssignmentForm form = new AssignmentForm(v.form(), Choosing.of(desk));
        if (v.form().text("action").equals("look")) {
            form.look();
            return form(v, place, form.form().view()).as(form.form().isGood() ? 200 : 422);
        }
        Optional<AssignmentForm.Filled> filled = form.read(own.sitting(place.in()));
        if (state(v) == Assignment.State.GIVEN && filled.isPresent() && isPast(filled.get().due())) {
            form.form().fault("due-date", Message.of("class-work.due-past"));
        }
        if (state(v) == Assignment.State.GIVEN && filled.isPresent()) {
            refusal(filled.get().tasks(), place.in()).ifPresent(why -> form.form().fault("exercises", why));
        }
        return form.form().isGood() ? done.with(filled.orElseThrow()) : form(v, place, form.form().view()).as(422);
    }

    private boolean isPast(Optional<Instant> due) {
        return due.filter(d -> !d.isAfter(own.now())).isPresent();
    }

    /** Only what nobody has begun changes as a whole. */
    private OwnClasses.Work draftOf(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        if (work.assignment().state() != Assignment.State.DRAFT || !own.school().sheets().all(work.assignment().id()).isEmpty()) {
            throw Trouble.of(409);
        }
        return work;
    }

    private Reply edit(Visit v) {
        OwnClasses.Work work = draftOf(v);
        return form(v, draft(work), AssignmentForm.of(work.assignment(), assignments().givenTo(work.assignment().id()), own.now()));
    }

    private Reply change(Visit v) {
        OwnClasses.Work work = draftOf(v);
        Assignment a = work.assignment();
        return filled(v, draft(work), f -> {
            Assignment changed = new Assignment(a.id(), a.schoolClass(), f.title(), state(v), f.opens().orElse(own.now()), f.due(), f.late(), f.tries(), f.shows(),
                    f.formulas(), a.madeBy(), a.made(), a.after(), f.tasks());
            if (!assignments().change(changed, merged(f.only(), assignments().givenTo(a.id())))) {
                throw Trouble.of(409);
            }
            own.note(v, changed.state() == Assignment.State.GIVEN ? "assignment.given" : "assignment.changed", Optional.empty(), work.in(), f.title());
            return Reply.goTo(path(a.id()));
        });
    }

    /** Whom it is for now; what was set for single students before stays with them. */
    private static List<GivenTo> merged(List<Long> only, List<GivenTo> before) {
        Map<Long, GivenTo> all = new HashMap<>();
        before.stream().filter(g -> g.due().isPresent() || g.excused()).forEach(g -> all.put(g.person(), new GivenTo(g.person(), g.due(), g.excused(), false)));
        for (long id : only) {
            GivenTo was = all.getOrDefault(id, new GivenTo(id, Optional.empty(), false, true));
            all.put(id, new GivenTo(id, was.due(), was.excused(), true));
        }
        return List.copyOf(all.values());
    }

    // Looking

    private Reply show(Visit v, OwnClasses.Work work, UnaryOperator<AssignmentView.Forms> forms) {
        Assignment a = work.assignment();
        List<GivenTo> given = assignments().givenTo(a.id());
        List<Member> doing = doing(work, given);
        Choosing.Shelf shelf = Choosing.of(desk);
        List<AssignmentView.Task> tasks = a.tasks().stream().map(t -> new AssignmentView.Task(t.exercises().stream().map(shelf::title).toList(), t.many(),
                AssignmentForm.points(t.points()))).toList();
        double points = a.tasks().stream().mapToDouble(t -> t.many() * t.points()).sum();
        AssignmentView view = new AssignmentView(a.id(), a.title(), work.in().id(), work.in().name(), work.in().archived().isEmpty(), Standing.of(a, own.now()),
                moment(v, a.opens()), a.due().map(d -> moment(v, d)).orElse(""), Words.key(a.late()), a.tries(), Words.key(a.shows()), a.formulas(), tasks, problems(a),
                AssignmentForm.points(points), before(a), given.stream().anyMatch(GivenTo::onlyThese) ? doing.stream().map(m -> m.person().shown()).toList() : List.of(),
                ownDues(v, given, doing), doing.stream().map(m -> new AssignmentFormView.Student(m.person().id(), m.seat(), m.person().shown())).toList(),
                others(v, work.in()), refused(work), newestAfter(a), forms.apply(forms(a)));
        return Reply.page(pages.show(v.reader(), "assignment", view));
    }

    private static String moment(Visit v, Instant time) {
        return SchoolTimes.moment(time, v.reader().words().language());
    }

    private static int problems(Assignment a) {
        return a.tasks().stream().mapToInt(Assignment.Task::many).sum();
    }

    private List<Member> doing(OwnClasses.Work work, List<GivenTo> given) {
        return own.sitting(work.in()).stream().filter(m -> work.isFor(m, given)).toList();
    }

    /** Exercises that nobody gets, with what the class has set. */
    private List<Message> refused(OwnClasses.Work work) {
        List<String> exercises = work.assignment().tasks().stream().flatMap(t -> t.exercises().stream()).toList();
        return desk.shop().refused(exercises, work.in().settings()).stream().map(ClassRoom::notDealt).toList();
    }

    private Optional<AssignmentView.Before> before(Assignment a) {
        return a.after().flatMap(assignments()::find).map(b -> new AssignmentView.Before(b.id(), b.title()));
    }

    /** The newest that comes after it; 0 when there is none yet. */
    private long newestAfter(Assignment a) {
        return assignments().of(a.schoolClass()).stream().filter(b -> b.after().equals(Optional.of(a.id()))).mapToLong(Assignment::id).max().orElse(0);
    }

    private static List<AssignmentView.OwnDue> ownDues(Visit v, List<GivenTo> given, List<Member> doing) {
        List<AssignmentView.OwnDue> dues = new ArrayList<>();
        for (Member member : doing) {
            given.stream().filter(g -> g.person() == member.person().id()).flatMap(g -> g.due().stream())
                    .forEach(due -> dues.add(new AssignmentView.OwnDue(member.person().shown(), moment(v, due))));
        }
        return dues;
    }

    private List<AssignmentView.Choice> others(Visit v, SchoolClass in) {
        return own.school().classes().taughtBy(v.person().id()).stream().filter(c -> c.archived().isEmpty())
                .map(c -> new AssignmentView.Choice(c.id(), c.id() == in.id() ? c.name() : c.term().isEmpty() ? c.name() : c.name() + ", " + c.term())).toList();
    }

    private AssignmentView.Forms forms(Assignment a) {
        Map<String, String> due = new HashMap<>();
        a.due().ifPresent(d -> due.putAll(Map.of("new-date", TypedTimes.date(d), "new-time", TypedTimes.clock(d))));
        Map<String, String> later = AssignmentForm.fresh(own.now()).typed();
        FormView makeUp = FormView.of(Map.of("up-date", later.get("due-date"), "up-time", later.get("due-time")));
        FormView none = FormView.of(Map.of());
        return new AssignmentView.Forms(none, FormView.of(due), none, makeUp, none);
    }

    private Reply preview(Visit v) {
        OwnClasses.Work work = own.work(v);
        long place = v.id("place");
        Assignment a = work.assignment();
        long before = 0;
        for (Assignment.Task task : a.tasks()) {
            if (place <= before + task.many()) {
                List<String> fair = fair(task, work.in());
                if (fair.isEmpty()) {
                    return show(v, work, UnaryOperator.identity()).as(422);
                }
                SheetView sheet = drawn(desk.in(v.reader().words().language()).shop(), work.in(), fair);
                return Reply.page(pages.show(v.reader(), "assignment-preview", new AssignmentPreview(a.id(), a.title(), (int) place, problems(a),
                        task.exercises().size() > task.many(), a.due().map(d -> moment(v, d)).orElse(""), a.tries(), AssignmentForm.points(task.points()),
                        work.in().settings().conventions(), sheet)));
            }
            before += task.many();
        }
        throw Trouble.of(404);
    }

    /** The exercises of a task that can be dealt with what the class has set. */
    private List<String> fair(Assignment.Task task, SchoolClass in) {
        List<String> refused = desk.shop().refused(task.exercises(), in.settings()).stream().map(ShopDesk.Refused::exercise).toList();
        return task.exercises().stream().filter(e -> !refused.contains(e)).toList();
    }

    /** Why a task has not enough exercises for this class; empty when it has. */
    private Optional<Message> refusal(List<Assignment.Task> tasks, SchoolClass in) {
        return tasks.stream().filter(t -> fair(t, in).size() < t.many()).flatMap(t -> desk.shop().refused(t.exercises(), in.settings()).stream())
                .map(ClassRoom::notDealt).findFirst();
    }

    /** One of these exercises with numbers outside of what sheets are dealt. */
    private SheetView drawn(ShopDesk shop, SchoolClass in, List<String> exercises) {
        String exercise = exercises.get(random.nextInt(exercises.size()));
        for (int i = 0; i < PREVIEW_TRIES; i++) {
            try {
                return shop.trial(exercise, in.settings(), random.nextLong(PREVIEW_FROM, PREVIEW_TO)).orElseThrow(() -> Trouble.of(404));
            } catch (Desk.NoDraw refused) {
                // Another seed may do.
            }
        }
        throw Trouble.of(404);
    }

    // Giving

    private Reply give(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        Assignment a = work.assignment();
        Choosing.Shelf shelf = Choosing.of(desk);
        Optional<String> gone = a.tasks().stream().flatMap(t -> t.exercises().stream()).filter(e -> !shelf.has(e)).findFirst();
        Optional<Message> fault = a.tasks().isEmpty() ? Optional.of(Message.of("class-work.no-exercise"))
                : gone.isPresent() ? Optional.of(Message.of("class-work.exercise-gone", gone.get()))
                : isPast(a.due()) ? Optional.of(Message.of("class-work.give-past")) : refusal(a.tasks(), work.in());
        if (fault.isPresent()) {
            FormView view = new FormView(Map.of(), Map.of("give", fault.get()));
            return show(v, work, f -> new AssignmentView.Forms(view, f.due(), f.own(), f.makeUp(), f.copy())).as(422);
        }
        assignments().setState(a.id(), Assignment.State.GIVEN);
        own.note(v, "assignment.given", Optional.empty(), work.in(), a.title());
        return Reply.goTo(path(a.id()));
    }

    /** What nobody has begun becomes a draft again. */
    private Reply take(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        Assignment a = work.assignment();
        if (a.state() != Assignment.State.GIVEN) {
            throw Trouble.of(409);
        }
        boolean begun = !own.school().sheets().all(a.id()).isEmpty();
        assignments().setState(a.id(), begun ? Assignment.State.TAKEN : Assignment.State.DRAFT);
        own.note(v, "assignment.taken-back", Optional.empty(), work.in(), a.title());
        return Reply.goTo(path(a.id()));
    }

    private Reply setDue(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        FilledForm form = new FilledForm(v.form());
        Optional<Instant> due = form.moment("new-date", "new-time");
        if (due.isPresent() && !due.get().isAfter(work.assignment().opens())) {
            form.fault("new-date", Message.of("class-work.due-before"));
        }
        if (!form.isGood()) {
            return show(v, work, f -> new AssignmentView.Forms(f.give(), form.view(), f.own(), f.makeUp(), f.copy())).as(422);
        }
        assignments().setDue(work.assignment().id(), due);
        own.note(v, "assignment.due-changed", Optional.empty(), work.in(), work.assignment().title() + ": " + due.map(Instant::toString).orElse("no end"));
        return Reply.goTo(path(work.assignment().id()));
    }

    private Reply setOwnDue(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        long id = work.assignment().id();
        List<GivenTo> given = assignments().givenTo(id);
        FilledForm form = new FilledForm(v.form());
        Optional<Member> student = doing(work, given).stream().filter(m -> String.valueOf(m.person().id()).equals(v.form().text("student"))).findFirst();
        if (student.isEmpty()) {
            form.fault("student", Message.of("filled.choice"));
        }
        Optional<Instant> due = form.moment("own-date", "own-time");
        if (due.isPresent() && !due.get().isAfter(work.assignment().opens())) {
            form.fault("own-date", Message.of("class-work.due-before"));
        }
        if (!form.isGood()) {
            return show(v, work, f -> new AssignmentView.Forms(f.give(), f.due(), form.view(), f.makeUp(), f.copy())).as(422);
        }
        long person = student.orElseThrow().person().id();
        GivenTo was = given.stream().filter(g -> g.person() == person).findFirst().orElse(new GivenTo(person, Optional.empty(), false, false));
        assignments().give(id, new GivenTo(person, due, was.excused(), was.onlyThese()));
        own.note(v, "assignment.own-due", Optional.of(person), work.in(), work.assignment().title() + ": " + due.map(Instant::toString).orElse("as for all"));
        return Reply.goTo(path(id));
    }

    /** The same tasks once more for single students, given out at once; the sheets are then dealt to be as hard as the first. */
    private Reply makeUp(Visit v) {
        OwnClasses.Work work = own.openWork(v);
        Assignment a = work.assignment();
        FilledForm form = new FilledForm(v.form());
        List<Long> only = doing(work, assignments().givenTo(a.id())).stream().map(m -> m.person().id()).filter(id -> form.ticked("up-" + id)).toList();
        Optional<Instant> due = form.moment("up-date", "up-time");
        if (only.isEmpty()) {
            form.fault("up", Message.of("class-work.nobody"));
        }
        if (isPast(due)) {
            form.fault("up-date", Message.of("class-work.due-past"));
        }
        if (a.state() == Assignment.State.DRAFT) {
            throw Trouble.of(409);
        }
        if (!form.isGood()) {
            return show(v, work, f -> new AssignmentView.Forms(f.give(), f.due(), f.own(), form.view(), f.copy())).as(422);
        }
        String title = v.reader().words().say("class-work.make-up-title", List.of(a.title()));
        Assignment again = new Assignment(0, a.schoolClass(), cut(title), Assignment.State.GIVEN,
                own.now(), due, a.late(), a.tries(), a.shows(), a.formulas(), v.person().id(), own.now(), Optional.of(a.id()), a.tasks());
        // What the page showed when it was asked for: so the same form twice is one, and so are two who looked at the same.
        String once = SessionRule.hash("make-up " + a.id() + " " + v.form().text("seen") + " " + new TreeSet<>(only));
        Assignments.Made made = assignments().addOnce(again, onlyThese(only), once);
        if (made.fresh()) {
            own.note(v, "assignment.make-up", Optional.empty(), work.in(), a.title() + " for " + only.size());
        }
        return Reply.goTo(path(made.assignment().id()));
    }

    /** As much of a title as there is room for, and no half sign. */
    private static String cut(String title) {
        int end = Math.min(title.length(), AssignmentForm.LONGEST_TITLE);
        return title.substring(0, end < title.length() && Character.isHighSurrogate(title.charAt(end - 1)) ? end - 1 : end);
    }

    private Reply copy(Visit v) {
        OwnClasses.Work work = own.work(v);
        FilledForm form = new FilledForm(v.form());
        Optional<SchoolClass> to = own.school().classes().taughtBy(v.person().id()).stream()
                .filter(c -> c.archived().isEmpty() && String.valueOf(c.id()).equals(v.form().text("to"))).findFirst();
        if (to.isEmpty()) {
            form.fault("to", Message.of("filled.choice"));
            return show(v, work, f -> new AssignmentView.Forms(f.give(), f.due(), f.own(), f.makeUp(), form.view())).as(422);
        }
        Assignment made = assignments().add(Drafts.copy(work.assignment(), to.get().id(), v.person().id(), own.now()), List.of());
        own.note(v, "assignment.made", Optional.empty(), to.get(), made.title());
        return Reply.goTo(path(made.id()));
    }
}
