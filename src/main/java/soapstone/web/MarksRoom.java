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
import soapstone.page.LiveView;
import soapstone.page.MarksView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Member;
import soapstone.school.Printed;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Scores;
import soapstone.school.Standing;
import soapstone.school.Work;

/** The marks of a class: for one assignment, for the term, and while the class is at work. */
final class MarksRoom implements SchoolSite.Room {

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    MarksRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/assignments/{assignment}/marks", this::grid)
                .get(Who.INSTRUCTOR, "/classes/{class}/marks", this::gradebook)
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/live", v -> live(v, "live"))
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/live/now", v -> live(v, "live-now"));
    }

    /** How everybody stands with an assignment. */
    static List<Standing> standings(School school, Taught.Given given, List<Member> members, List<Work> works) {
        long id = given.assignment().id();
        return Standing.of(given.assignment(), members, school.assignments().givenTo(id), works, school.book().typing(id));
    }

    private List<Standing> standings(Taught.Given given) {
        return standings(taught.school(), given, taught.members(given.in()), taught.school().book().ofAssignment(given.assignment().id()));
    }

    private Reply grid(Visit v) {
        Taught.Given given = taught.assignment(v);
        MarkRows rows = new MarkRows(given.assignment(), standings(given), desk);
        String possible = Printed.points(Standing.possible(given.assignment()));
        return Reply.page(pages.show(v.reader(), "marks", new MarksView(taught.head(given, v), possible, rows.columns(), rows.rows())));
    }

    private Reply live(Visit v, String template) {
        Taught.Given given = taught.assignment(v);
        List<Standing> standings = standings(given).stream().filter(s -> s.state() != Standing.State.EXCUSED).toList();
        MarkRows rows = new MarkRows(given.assignment(), standings, desk);
        String at = SchoolTimes.clock(office.clock().instant(), v.reader().words().language());
        return Reply.page(pages.show(v.reader(), template, new LiveView(taught.head(given, v), at, count(standings, Standing.State.HANDED_IN),
                count(standings, Standing.State.OPEN), count(standings, Standing.State.NOT_BEGUN), rows.columns(), rows.rows())));
    }

    private static int count(List<Standing> standings, Standing.State state) {
        return (int) standings.stream().filter(s -> s.state() == state).count();
    }

    private Reply gradebook(Visit v) {
        SchoolClass in = taught.schoolClass(v);
        return Reply.page(pages.show(v.reader(), "gradebook", new Term(taught.school(), in, taught.members(in)).view(v, office.clock().instant())));
    }

    /** A class's term: who stands how with which assignment. */
    static final class Term {

        private final SchoolClass in;
        private final List<Member> members;
        private final List<Assignment> assignments;
        private final Map<Long, Map<Long, Standing>> byAssignment = new HashMap<>();

        Term(School school, SchoolClass in, List<Member> members) {
            this.in = in;
            this.members = members;
            this.assignments = school.assignments().of(in.id()).stream().filter(a -> a.state() != Assignment.State.DRAFT)
                    .sorted(Comparator.comparing(Assignment::opens).thenComparingLong(Assignment::id)).toList();
            Map<Long, List<Work>> works = school.book().points(in.id());
            Map<Long, List<Assignments.GivenTo>> given = school.book().given(in.id());
            for (Assignment a : assignments) {
                Map<Long, Standing> standings = new HashMap<>();
                Standing.of(a, members, given.getOrDefault(a.id(), List.of()), works.getOrDefault(a.id(), List.of()), Set.of())
                        .forEach(s -> standings.put(s.member().person().id(), s));
                byAssignment.put(a.id(), standings);
            }
        }

        List<Assignment> assignments() {
            return assignments;
        }

        Optional<Standing> standing(Assignment assignment, long person) {
            return Optional.ofNullable(byAssignment.get(assignment.id()).get(person));
        }

        GradebookView view(Visit v, Instant now) {
            List<GradebookView.Column> columns = assignments.stream().map(a -> new GradebookView.Column(a.id(), a.title(),
                    a.due().map(d -> SchoolTimes.day(d, v.reader().words().language())).orElse(""), Printed.points(Standing.possible(a)))).toList();
            List<GradebookView.Row> rows = new ArrayList<>();
            List<Scores.Entry> all = new ArrayList<>();
            for (Member m : members) {
                List<Scores.Entry> entries = entries(m.person().id());
                boolean left = m.state() == Member.State.LEFT;
                if (!left || !entries.isEmpty()) {
                    all.addAll(entries);
                    rows.add(new GradebookView.Row(m.person().id(), m.seat(), m.person().shown(), left,
                            assignments.stream().map(a -> cell(standing(a, m.person().id()))).toList(), average(Scores.average(entries, now))));
                }
            }
            return new GradebookView(Taught.head(in), columns, rows, average(Scores.average(all, now)));
        }

        private List<Scores.Entry> entries(long person) {
            return assignments.stream().flatMap(a -> standing(a, person).map(s -> s.entry(a.late())).stream()).toList();
        }
    }

    static GradebookView.Average average(Scores.Average average) {
        return new GradebookView.Average(average.score().share().map(s -> Printed.percent(s) + " %").orElse(""), average.how());
    }

    static GradebookView.Cell cell(Optional<Standing> standing) {
        return standing.map(s -> new GradebookView.Cell(MarkRows.state(s),
                s.state() == Standing.State.EXCUSED || s.state() == Standing.State.NOT_BEGUN ? "" : Printed.points(s.score().points()), s.late()))
                .orElse(new GradebookView.Cell("not-for", "", false));
    }
}
