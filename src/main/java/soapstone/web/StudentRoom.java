package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.page.GradebookView;
import soapstone.page.MarkSign;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.page.StudentView;
import soapstone.page.Words;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.Printed;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Scores;
import soapstone.school.Sheet;
import soapstone.school.Standing;
import soapstone.school.Work;

/** One student of a class: every try with what was typed, how it was read, and why it was marked as it was. */
final class StudentRoom implements SchoolSite.Room {

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    StudentRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/students/{person}", this::student)
                .post(Who.INSTRUCTOR, "/classes/{class}/students/{person}/excuse", this::excuse);
    }

    static String address(long schoolClass, long person, long assignment) {
        return "/classes/" + schoolClass + "/students/" + person + "?assignment=" + assignment;
    }

    private Reply student(Visit v) {
        SchoolClass in = taught.schoolClass(v);
        Member member = taught.member(in, v.id("person"));
        School school = taught.school();
        Map<Long, List<Work>> works = school.book().ofStudent(in.id(), member.person().id());
        Map<Long, List<Assignments.GivenTo>> given = school.book().given(in.id());
        List<Assignment> assignments = school.assignments().of(in.id()).stream().filter(a -> a.state() != Assignment.State.DRAFT).toList();
        Map<Long, Standing> standings = new HashMap<>();
        for (Assignment a : assignments) {
            Standing.of(a, List.of(member), given.getOrDefault(a.id(), List.of()), works.getOrDefault(a.id(), List.of()), Set.of())
                    .forEach(s -> standings.put(a.id(), s));
        }
        List<Assignment> own = assignments.stream().filter(a -> standings.containsKey(a.id())).toList();
        Optional<Assignment> open = chosen(v, own);
        List<Scores.Entry> entries = own.stream().map(a -> standings.get(a.id()).entry(a.late())).toList();
        GradebookView.Average average = MarksRoom.average(Scores.average(entries, office.clock().instant()));
        StudentView view = new StudentView(Taught.head(in), member.person().id(), member.seat(), member.person().shown(), isErased(member.person()), average,
                own.stream().map(a -> sheet(v, a, standings.get(a.id()), open)).toList(),
                open.map(a -> open(v, a, standings.get(a.id()), works.getOrDefault(a.id(), List.of()))),
                PracticeRows.of(school.practices().of(member.person().id()), id -> desk.exercise(id).title(), v.reader().words()));
        return Reply.page(pages.show(v.reader(), "student", view));
    }

    private boolean isErased(Person person) {
        return taught.school().privacy().erased().stream().anyMatch(e -> e.person() == person.id());
    }

    /** The one that the address names, else the newest. */
    private static Optional<Assignment> chosen(Visit v, List<Assignment> own) {
        if (v.query().get("assignment").isEmpty()) {
            return own.stream().findFirst();
        }
        String wanted = v.query().text("assignment");
        return Optional.of(own.stream().filter(a -> String.valueOf(a.id()).equals(wanted)).findFirst().orElseThrow(() -> Trouble.of(404)));
    }

    private static StudentView.Sheet sheet(Visit v, Assignment a, Standing standing, Optional<Assignment> open) {
        return new StudentView.Sheet(a.id(), a.title(), Taught.due(standing.due(), v), MarksRoom.cell(Optional.of(standing)),
                Printed.points(standing.score().possible()), open.filter(o -> o.id() == a.id()).isPresent());
    }

    private StudentView.Open open(Visit v, Assignment a, Standing standing, List<Work> works) {
        Marked marked = new Marked(taught.school(), v.reader().words());
        Map<Long, Standing.Place> counts = new HashMap<>();
        standing.places().forEach(p -> counts.put(p.work().problem().id(), p));
        List<StudentView.Problem> problems = new ArrayList<>();
        for (Work work : works) {
            Optional<Standing.Place> place = Optional.ofNullable(counts.get(work.problem().id()));
            List<StudentView.Attempt> attempts = work.attempts().stream().map(t -> marked.attempt(work, t,
                    place.flatMap(Standing.Place::best).filter(b -> b.id() == t.id()).isPresent())).toList();
            problems.add(new StudentView.Problem(work.problem().place(), work.problem().round(), desk.exercise(work.problem().exercise()).title(),
                    place.isPresent(), MarkRows.points(Scores.of(work, a.late())), attempts));
        }
        String number = taught.school().sheets().of(a.id(), standing.member().person().id()).map(Sheet::number).orElse("");
        return new StudentView.Open(a.id(), a.title(), number, standing.state() == Standing.State.EXCUSED, problems);
    }

    /** Tries and marks as a page shows them; looks up each name once. */
    static final class Marked {

        private final School school;
        private final Words words;
        private final Map<Long, String> names = new HashMap<>();

        Marked(School school, Words words) {
            this.school = school;
            this.words = words;
        }

        StudentView.Attempt attempt(Work work, Attempt t, boolean counts) {
            return new StudentView.Attempt(t.id(), t.number(), time(t.handedIn()), t.late(), t.way() == Attempt.Way.PAPER, counts,
                    t.marks().stream().map(m -> mark(t, m, work.remarks())).toList());
        }

        StudentView.Mark mark(Attempt attempt, AnswerMark m, List<Remark> remarks) {
            List<StudentView.Remark> own = remarks.stream().filter(r -> r.attempt() == attempt.id() && r.place() == m.place())
                    .sorted(Comparator.comparing(Remark::at).thenComparingLong(Remark::id)).map(r -> remark(r, m)).toList();
            return new StudentView.Mark(m.place(), m.letter(), m.typed(), m.readAs(), MarkSign.Cell.of(Optional.of(MarkSign.of(m.verdict())), false), m.says(),
                    of(m.points(), m.possible()), own);
        }

        private StudentView.Remark remark(Remark r, AnswerMark m) {
            MarkSign sign = r.cause() == Remark.Cause.EXCUSED ? MarkSign.EXCUSED : MarkSign.of(r.verdict());
            return new StudentView.Remark(time(r.at()), r.by().map(this::name).orElse(""), Words.key(r.cause()), MarkSign.Cell.of(Optional.of(sign), false),
                    of(r.points(), m.possible()), r.reason());
        }

        private String name(long person) {
            return names.computeIfAbsent(person, p -> school.people().find(p).map(Person::shown).orElse(""));
        }

        private String time(Instant at) {
            return SchoolTimes.moment(at, words.language());
        }

        private static String of(double points, double possible) {
            return Printed.points(points) + "/" + Printed.points(possible);
        }
    }

    /** Excuses a student from a whole assignment, or takes that back. Their own due time stays. */
    private Reply excuse(Visit v) {
        SchoolClass in = taught.open(taught.schoolClass(v));
        Member member = taught.member(in, v.id("person"));
        Assignment assignment = taught.school().assignments().of(in.id()).stream().filter(a -> String.valueOf(a.id()).equals(v.form().text("assignment")))
                .findFirst().orElseThrow(() -> Trouble.of(404));
        boolean excused = v.form().text("excused").equals("yes");
        long person = member.person().id();
        Assignments.GivenTo before = taught.school().assignments().givenTo(assignment.id()).stream().filter(g -> g.person() == person).findFirst()
                .orElse(new Assignments.GivenTo(person, Optional.empty(), false, false));
        if (before.excused() != excused) {
            taught.school().assignments().give(assignment.id(), new Assignments.GivenTo(person, before.due(), excused, before.onlyThese()));
            taught.school().audit().note(new Audit.Entry(office.clock().instant(), Optional.of(v.person().id()), excused ? "assignment.excused" : "assignment.not-excused",
                    Optional.of(person), Optional.of(in.id()), "Assignment " + assignment.id(), false));
        }
        return Reply.goTo(address(in.id(), person, assignment.id()));
    }
}
