package soapstone.web;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import soapstone.page.MorningView;
import soapstone.page.Pages;
import soapstone.page.SchoolTimes;
import soapstone.school.Assignment;
import soapstone.school.Assignments;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Morning;
import soapstone.school.Problem;
import soapstone.school.RoomAnswer;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.school.SlipMap;
import soapstone.school.Standing;
import soapstone.school.Work;

/** What to know before the class comes in, and a drill for those who made a mistake, given in one action. */
final class MorningRoom implements SchoolSite.Room {

    /** So long afterwards it is looked how it went with other numbers: the page's work does not grow with the term. */
    private static final Duration AFTERWARDS = Duration.ofDays(42);
    private static final int DRILL_TRIES = 3;
    private static final int LONGEST_TITLE = 120;

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    MorningRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/assignments/{assignment}/morning",
                v -> Reply.page(pages.show(v.reader(), "morning", new Look(taught.assignment(v)).view(v))))
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/drill", this::drill);
    }

    /** One look at a class on the morning after. */
    private final class Look {

        private final Taught.Given given;
        private final List<Standing> standings;
        private final Map<Long, Problem> problems = new HashMap<>();
        private final List<Assignment> all;
        private final Morning morning;

        Look(Taught.Given given) {
            this.given = given;
            School school = taught.school();
            long id = given.assignment().id();
            List<Work> works = school.book().ofAssignment(id);
            works.forEach(w -> problems.put(w.problem().id(), w.problem()));
            Set<Long> typing = school.book().typing(id);
            this.standings = Standing.of(given.assignment(), taught.members(given.in()), school.assignments().givenTo(id), works, typing).stream()
                    .filter(s -> s.member().state() == Member.State.IN).toList();
            this.all = school.assignments().of(given.in().id());
            List<RoomAnswer> answers = RoomAnswers.of(together(works), desk);
            this.morning = Morning.of(standings.stream().map(s -> s.progress(typing.contains(s.member().person().id()))).toList(), answers, id);
        }

        /** This assignment's works, and those that came after on the same skills. */
        private Map<Long, List<Work>> together(List<Work> works) {
            Assignment looked = given.assignment();
            Set<Long> later = all.stream().filter(a -> a.id() != looked.id() && !a.opens().isBefore(looked.opens()) && a.opens().isBefore(looked.opens().plus(AFTERWARDS)))
                    .map(Assignment::id).collect(Collectors.toSet());
            Set<String> exercises = new HashSet<>();
            works.stream().filter(w -> w.attempts().stream().anyMatch(a -> a.marks().stream().anyMatch(m -> !m.slip().isEmpty())))
                    .map(w -> desk.exercise(w.problem().exercise()).skill()).distinct().forEach(skill -> exercises.addAll(desk.ofSkill(skill)));
            Map<Long, List<Work>> together = new LinkedHashMap<>(taught.school().book().ofAssignments(later, exercises));
            together.put(looked.id(), works);
            return together;
        }

        Optional<Morning.Mistake> mistake(String family) {
            return morning.commonest().stream().filter(m -> m.row().name().equals(family)).findFirst();
        }

        MorningView view(Visit v) {
            List<MorningView.Mistake> mistakes = new ArrayList<>();
            for (Morning.Mistake mistake : morning.commonest()) {
                mistakes.add(shown(mistake, desk.in(v.reader().words().language()), "cut" + (mistakes.size() + 1)));
            }
            int roll = (int) standings.stream().filter(s -> s.state() != Standing.State.EXCUSED).count();
            return new MorningView(taught.head(given, v), SchoolTimes.moment(office.clock().instant(), v.reader().words().language()), roll, names(morning.handedIn()),
                    names(morning.stillOpen()), names(morning.notBegun()), mistakes);
        }

        /** On the board stand the numbers of the first who made it in the way that most made it. */
        private MorningView.Mistake shown(Morning.Mistake mistake, MarksDesk drawing, String name) {
            SlipMap.Row row = mistake.row();
            MarksDesk.Family family = desk.family(row.name());
            RoomAnswer example = example(row);
            Optional<MarksDesk.Board> board = drawing.board(problems.get(example.problem()), example.mark().ask(), example.mark().slip(), name);
            String whose = row.students().stream().filter(s -> s.person() == example.person()).map(SlipMap.Student::name).findFirst().orElse("");
            // Who has not tried is whoever is left of the names above.
            List<MorningView.Again> again = Arrays.stream(Morning.Afterwards.values()).filter(how -> !mistake.who(how).isEmpty())
                    .map(how -> new MorningView.Again(how.word(), mistake.who(how).size(), how == Morning.Afterwards.NOT_TRIED ? List.of() : names(mistake.who(how)))).toList();
            List<String> drill = desk.drill(example.exercise(), row.name()).stream().map(e -> desk.exercise(e).title()).distinct().toList();
            return new MorningView.Mistake(row.name(), family.title(), family.says(), row.says(), row.against(),
                    row.students().stream().map(s -> new MorningView.Name(s.person(), s.name())).toList(), whose, desk.exercise(example.exercise()).title(),
                    example.mark().letter(), example.mark().typed(), board.map(MarksDesk.Board::lines).orElse(List.of()), board.flatMap(MarksDesk.Board::figure),
                    family.lesson(), again, drill, drillGiven(mistake).map(Assignment::id).orElse(0L));
        }

        /** The drill that these students have already for this mistake. */
        Optional<Assignment> drillGiven(Morning.Mistake mistake) {
            Set<Long> those = people(mistake);
            String title = title(mistake);
            return all.stream().filter(a -> a.after().equals(Optional.of(given.assignment().id())) && a.state() == Assignment.State.GIVEN)
                    .filter(a -> a.title().equals(title)).filter(a -> taught.school().assignments().givenTo(a.id()).stream()
                            .filter(Assignments.GivenTo::onlyThese).map(Assignments.GivenTo::person).collect(Collectors.toSet()).equals(those)).findFirst();
        }

        /**
         * Says what is the same drill, for two who ask for it at the same moment: for the same students, after the same drills
         * before, of which each may have been taken back.
         */
        String once(Morning.Mistake mistake) {
            String title = title(mistake);
            long before = all.stream().filter(a -> a.after().equals(Optional.of(given.assignment().id())) && a.title().equals(title)).mapToLong(Assignment::id).max().orElse(0);
            return SessionRule.hash("drill " + given.assignment().id() + " " + mistake.row().name() + " " + before + " " + new TreeSet<>(people(mistake)));
        }

        /** In the language of the class, since students read it. */
        String title(Morning.Mistake mistake) {
            String title = taught.words(given.in()).say("marks.drill-title", List.of(desk.family(mistake.row().name()).title()));
            return title.substring(0, Math.min(LONGEST_TITLE, title.length()));
        }
    }

    private static Set<Long> people(Morning.Mistake mistake) {
        return mistake.row().students().stream().map(SlipMap.Student::person).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<MorningView.Name> names(List<Morning.Name> names) {
        return names.stream().map(n -> new MorningView.Name(n.person(), n.shown())).toList();
    }

    private static RoomAnswer example(SlipMap.Row row) {
        Map<String, List<RoomAnswer>> ways = new LinkedHashMap<>();
        row.students().forEach(s -> s.answers().forEach(a -> ways.computeIfAbsent(a.exercise() + " " + a.mark().slip(), k -> new ArrayList<>()).add(a)));
        return ways.values().stream().max(Comparator.comparingLong(w -> w.stream().map(RoomAnswer::person).distinct().count())).orElseThrow().get(0);
    }

    /** The same drill asked for twice is given once. */
    private Reply drill(Visit v) {
        Taught.Given given = taught.assignment(v);
        taught.open(given.in());
        Look look = new Look(given);
        Morning.Mistake mistake = look.mistake(v.form().text("family")).orElseThrow(() -> Trouble.of(404));
        if (look.drillGiven(mistake).isEmpty()) {
            give(v, given, look.title(mistake), look.once(mistake), desk.drill(example(mistake.row()).exercise(), mistake.row().name()), List.copyOf(people(mistake)));
        }
        return Reply.goTo("/assignments/" + given.assignment().id() + "/morning");
    }

    /** Sheets are dealt when the first of them opens it. */
    private void give(Visit v, Taught.Given given, String title, String once, List<String> exercises, List<Long> students) {
        Instant now = office.clock().instant();
        List<Assignment.Task> tasks = new ArrayList<>();
        exercises.forEach(e -> tasks.add(new Assignment.Task(0, tasks.size() + 1, List.of(e), 1, 1)));
        Assignments.Made drill = taught.school().assignments().addOnce(new Assignment(0, given.in().id(), title, Assignment.State.GIVEN, now, Optional.empty(),
                Assignment.Late.TAKEN, DRILL_TRIES, Assignment.Shows.LINES, given.assignment().formulas(), v.person().id(), now,
                Optional.of(given.assignment().id()), tasks), students.stream().map(s -> new Assignments.GivenTo(s, Optional.empty(), false, true)).toList(), once);
        if (drill.fresh()) {
            taught.school().audit().note(new Audit.Entry(now, Optional.of(v.person().id()), "assignment.drill", Optional.empty(), Optional.of(given.in().id()),
                    "Assignment " + drill.assignment().id() + " after " + given.assignment().id() + ", students: " + students.size(), false));
        }
    }
}
