package soapstone.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soapstone.mark.Verdict;
import soapstone.page.AssignmentHead;
import soapstone.page.MistakesView;
import soapstone.page.Pages;
import soapstone.page.Reference;
import soapstone.school.Assignment;
import soapstone.school.RoomAnswer;
import soapstone.school.SchoolClass;
import soapstone.school.SlipMap;
import soapstone.school.Work;

/** Which mistakes a class made: in one assignment, in one skill, or over its term. */
final class MistakesRoom implements SchoolSite.Room {

    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    MistakesRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/assignments/{assignment}/mistakes", this::ofAssignment).get(Who.INSTRUCTOR, "/classes/{class}/mistakes", this::ofClass);
    }

    private Reply ofAssignment(Visit v) {
        Taught.Given given = taught.assignment(v);
        Map<Long, List<Work>> works = Map.of(given.assignment().id(), taught.school().book().ofAssignment(given.assignment().id()));
        return page(v, given.in(), Optional.of(taught.head(given, v)), "", works);
    }

    /** Of a skill, only the work on its exercises is read. */
    private Reply ofClass(Visit v) {
        SchoolClass in = taught.schoolClass(v);
        String skill = v.query().text("skill");
        Set<String> exercises = desk.ofSkill(skill);
        if (!skill.isEmpty() && exercises.isEmpty()) {
            throw Trouble.of(404);
        }
        Set<Long> assignments = taught.school().assignments().of(in.id()).stream().map(Assignment::id).collect(Collectors.toSet());
        Map<Long, List<Work>> works = skill.isEmpty() ? taught.school().book().ofClass(in.id()) : taught.school().book().ofAssignments(assignments, exercises);
        return page(v, in, Optional.empty(), skill, works);
    }

    private Reply page(Visit v, SchoolClass in, Optional<AssignmentHead> head, String skill, Map<Long, List<Work>> works) {
        List<RoomAnswer> answers = RoomAnswers.of(works, desk);
        Map<Long, String> names = RoomAnswers.names(taught.members(in));
        SlipMap map = SlipMap.of(answers, names, SlipMap.term());
        List<MistakesView.Answer> unexplained = answers.stream().filter(a -> a.mark().verdict() == Verdict.UNEXPLAINED && names.containsKey(a.person()))
                .sorted(Comparator.comparing(RoomAnswer::exercise).thenComparing(a -> a.mark().letter()).thenComparing(RoomAnswer::at))
                .map(a -> answer(a, names.get(a.person()))).distinct().toList();
        List<MistakesView.Skill> skills = head.isPresent() ? List.of() : desk.skills().stream().map(s -> new MistakesView.Skill(s.name(), s.title())).toList();
        return Reply.page(pages.show(v.reader(), "mistakes", new MistakesView(Taught.head(in), head, skills, skill, map.room(),
                map.families().stream().map(this::family).toList(), map.slips().stream().map(this::slip).toList(), unexplained)));
    }

    private MistakesView.Mistake family(SlipMap.Row row) {
        MarksDesk.Family family = desk.family(row.name());
        return mistake(row, family.title(), family.says(), "", family.lesson());
    }

    private MistakesView.Mistake slip(SlipMap.Row row) {
        String families = String.join(", ", row.families().stream().map(f -> desk.family(f).title()).toList());
        return mistake(row, row.name().replace('-', ' '), families, desk.exercise(row.exercise()).title(), Optional.empty());
    }

    private MistakesView.Mistake mistake(SlipMap.Row row, String title, String about, String exercise, Optional<Reference> lesson) {
        return new MistakesView.Mistake(title, about, exercise, row.says(), row.against(),
                row.students().stream().map(s -> new MistakesView.Student(s.person(), s.name(), once(s))).toList(), lesson);
    }

    /** The same answer handed in again is told once. */
    private List<MistakesView.Answer> once(SlipMap.Student student) {
        Map<String, MistakesView.Answer> once = new LinkedHashMap<>();
        student.answers().forEach(a -> once.putIfAbsent(a.problem() + " " + a.mark().letter() + " " + a.mark().typed(), answer(a, student.name())));
        return new ArrayList<>(once.values());
    }

    private MistakesView.Answer answer(RoomAnswer a, String name) {
        return new MistakesView.Answer(a.person(), name, a.assignment(), desk.exercise(a.exercise()).title(), a.mark().letter(), a.mark().typed(), a.mark().readAs());
    }
}
