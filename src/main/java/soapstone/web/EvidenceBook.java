package soapstone.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import soapstone.page.ClassHead;
import soapstone.page.CompetencyRecord;
import soapstone.page.SchoolTimes;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Competency;
import soapstone.school.CompetencyStanding;
import soapstone.school.Counted;
import soapstone.school.Evidence;
import soapstone.school.Evidence.HandedIn;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Signoff;
import soapstone.school.Terms;
import soapstone.school.TradeCode;
import soapstone.school.Work;

/** Puts a class's work and its signatures together into what its competency pages show. */
final class EvidenceBook {

    private final School school;
    private final MarksDesk desk;
    private final Words words;

    EvidenceBook(School school, MarksDesk desk, Words words) {
        this.school = school;
        this.desk = desk;
        this.words = words;
    }

    /** How everybody who sits in a class stands with each competency on its list. */
    Map<Long, List<CompetencyStanding>> ofClass(SchoolClass in, List<Competency> listed, List<Member> members) {
        Map<Long, List<HandedIn>> works = handedIn(in, school.book().points(in.id()));
        Map<Long, List<Signoff>> entries = school.signoffs().ofClass(in.id()).stream().collect(Collectors.groupingBy(Signoff::person));
        return members.stream().map(m -> m.person().id()).collect(Collectors.toMap(Function.identity(), p -> CompetencyStanding.of(listed,
                entries.getOrDefault(p, List.of()), works.getOrDefault(p, List.of()), SchoolTimes.zone())));
    }

    private Map<Long, List<HandedIn>> handedIn(SchoolClass in, Map<Long, List<Work>> byAssignment) {
        Map<Long, Assignment> assignments = school.assignments().of(in.id()).stream().collect(Collectors.toMap(Assignment::id, Function.identity()));
        Map<Long, List<HandedIn>> works = new HashMap<>();
        byAssignment.forEach((id, all) -> all.forEach(work -> works.computeIfAbsent(work.person(), p -> new ArrayList<>())
                .addAll(HandedIn.of(work, assignments.get(id), desk.exercise(work.problem().exercise()).skill()))));
        return works;
    }

    /** One student's record in one class, with its evidence, as the class's instructors see it. */
    CompetencyRecord ofStudent(SchoolClass in, Member member) {
        return ofStudent(in, member, school.book().ofStudent(in.id(), member.person().id()));
    }

    /** The same as the student may see it: evidence would say what a sheet that is still open does not. */
    CompetencyRecord forStudent(SchoolClass in, Member member, Instant now) {
        Map<Long, List<Work>> shown = new HashMap<>();
        school.book().ofStudent(in.id(), member.person().id()).forEach((id, works) -> {
            Optional<Terms> terms = OwnSheet.terms(school, id, member.person().id());
            shown.put(id, works.stream().filter(w -> terms.filter(t -> t.shows(now, triesLeft(t, works, w)) != Assignment.Shows.NOTHING).isPresent()).toList());
        });
        return ofStudent(in, member, shown);
    }

    private static int triesLeft(Terms terms, List<Work> works, Work one) {
        List<Work> rounds = works.stream().filter(w -> w.problem().sheet() == one.problem().sheet() && w.problem().place() == one.problem().place()).toList();
        return terms.triesLeft(rounds.get(rounds.size() - 1).attempts().size(), rounds.stream().mapToInt(w -> w.attempts().size()).sum());
    }

    private CompetencyRecord ofStudent(SchoolClass in, Member member, Map<Long, List<Work>> byAssignment) {
        long person = member.person().id();
        List<Signoff> entries = school.signoffs().of(person).stream().filter(s -> s.schoolClass() == in.id()).toList();
        List<HandedIn> works = new ArrayList<>(handedIn(in, byAssignment).getOrDefault(person, List.of()));
        school.practices().of(person).forEach(p -> works.add(HandedIn.of(p, desk.exercise(p.exercise()).skill())));
        Map<Long, String> points = points(byAssignment);
        List<CompetencyRecord.Code> codes = CompetencyStanding.of(school.signoffs().listed(in.id()), entries, works, SchoolTimes.zone()).stream()
                .map(s -> code(s, points)).toList();
        String instructors = school.classes().instructors(in.id()).stream().map(Person::shown).collect(Collectors.joining(", "));
        return new CompetencyRecord(head(in), instructors, person, member.seat(), member.person().shown(), codes);
    }

    static ClassHead head(SchoolClass in) {
        return new ClassHead(in.id(), in.name(), in.term(), in.archived().isPresent());
    }

    private Map<Long, String> points(Map<Long, List<Work>> byAssignment) {
        Map<Long, String> points = new HashMap<>();
        byAssignment.values().forEach(all -> all.forEach(work -> work.attempts().forEach(a -> points.put(a.id(), points(work, a)))));
        return points;
    }

    /** As they count now, remarks included. */
    private String points(Work work, Attempt attempt) {
        List<Counted> counted = work.marks(attempt);
        double earned = counted.stream().mapToDouble(c -> c.mark().points()).sum();
        double possible = counted.stream().mapToDouble(c -> c.mark().possible()).sum();
        return words.say("competency.points", List.of(printed(earned), printed(possible)));
    }

    /** To a hundredth at most. */
    static String printed(double points) {
        return AssignmentForm.points(Math.round(points * 100) / 100.0);
    }

    private CompetencyRecord.Code code(CompetencyStanding s, Map<Long, String> points) {
        TradeCode c = s.code();
        Map<String, String> names = Map.of("frame", c.frame(), "edition", c.edition(), "code", c.code());
        String query = "?frame=" + encoded(c.frame()) + "&edition=" + encoded(c.edition()) + "&code=" + encoded(c.code());
        return new CompetencyRecord.Code(frame(c), c.code(), c.title(), state(s), s.standing(), s.evidence().stream().map(e -> skill(e, points)).toList(),
                s.entries().stream().map(this::entry).toList(), query, names);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** The frame with its edition; empty for a class's own. */
    String frame(TradeCode code) {
        return code.isOwn() ? "" : words.say("competency.frame", List.of(code.frame(), code.edition()));
    }

    static String state(CompetencyStanding s) {
        return s.signature().isPresent() ? "signed" : s.isWithdrawn() ? "withdrawn" : "open";
    }

    private CompetencyRecord.Skill skill(Evidence e, Map<Long, String> points) {
        return new CompetencyRecord.Skill(title(e.skill()), e.stands(), e.proofs().stream().map(p -> line(p, points)).toList(), e.why());
    }

    /** A skill that left the course since keeps its name. */
    String title(String skill) {
        return desk.skills().stream().filter(s -> s.name().equals(skill)).findFirst().map(MarksDesk.Skill::title).orElse(skill);
    }

    private CompetencyRecord.Line line(Evidence.Proof p, Map<Long, String> points) {
        HandedIn work = p.work();
        return new CompetencyRecord.Line(p.day().toString(), desk.exercise(work.exercise()).title(), String.valueOf(work.seed()), work.number(),
                points.getOrDefault(work.attempt(), ""));
    }

    private CompetencyRecord.Entry entry(Signoff s) {
        return new CompetencyRecord.Entry(Words.key(s.act()), SchoolTimes.moment(s.at(), words.language()), s.byName(), s.conditions(),
                s.evidence().isEmpty() ? List.of() : s.evidence().lines().toList());
    }

    /** What stands on the page at the moment of signing, as lines that are kept with the signature. */
    String written(CompetencyRecord.Code code) {
        List<String> lines = new ArrayList<>();
        for (CompetencyRecord.Skill skill : code.skills()) {
            skill.lines().forEach(l -> lines.add(words.say("competency.line", List.of(skill.title(), l.day(), l.exercise(), l.numbers(), String.valueOf(l.tried()), l.points()))));
            if (!skill.stands()) {
                lines.add(words.say("competency.line-missing", List.of(skill.title())));
            }
        }
        return String.join("\n", lines);
    }

    /** The code that a form or an address names. */
    static Optional<CompetencyRecord.Code> find(CompetencyRecord record, Fields fields) {
        return record.codes().stream().filter(c -> c.names().entrySet().stream().allMatch(n -> fields.text(n.getKey()).equals(n.getValue()))).findFirst();
    }
}
