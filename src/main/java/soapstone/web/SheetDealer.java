package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import soapstone.school.Assignment;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Member;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.SheetNumbers;
import soapstone.school.Sheets.Dealt;
import soapstone.school.Spare;
import soapstone.school.Terms;

/**
 * Deals an assignment's sheets when the first student opens it: to everybody for whom it is, in the order in which they
 * sit, so that neighbours differ and pools come out even however late the last one comes. Who joins later gets a sheet
 * when they open it.
 */
final class SheetDealer {

    private static final int NUMBERS_TRIED = 5;

    private final WorkDesk desk;
    private final RandomGenerator chance;

    SheetDealer(WorkDesk desk, RandomGenerator chance) {
        this.desk = desk;
        this.chance = chance;
    }

    /**
     * The student's sheet, dealt if it was not. One at a time: the students of a class open it at the same moment.
     *
     * @throws soapstone.school.CannotDeal when there is nothing to deal
     */
    synchronized Sheet open(School school, Terms terms, Instant now) {
        long assignment = terms.assignment().id();
        Optional<Sheet> there = school.sheets().of(assignment, terms.member().person().id());
        return there.orElseGet(() -> {
            deal(school, terms.assignment(), terms.schoolClass(), now);
            return school.sheets().of(assignment, terms.member().person().id()).orElseThrow();
        });
    }

    /** Sheets for everybody for whom an assignment is, who has none yet. */
    synchronized void dealAll(School school, Assignment assignment, SchoolClass in, Instant now) {
        deal(school, assignment, in, now);
    }

    /**
     * Spare sheets, until there are so many. Their numbers are nobody else's.
     *
     * @throws soapstone.school.CannotDeal when there is nothing to deal
     */
    synchronized void spares(School school, Assignment assignment, SchoolClass in, int many, Instant now) {
        List<Spare> there = school.spares().all(assignment.id());
        List<Sheet> already = new ArrayList<>(earlier(school, assignment));
        already.addAll(school.sheets().all(assignment.id()));
        there.forEach(s -> already.add(asSheet(s)));
        List<Long> nobody = LongStream.rangeClosed(1, many - there.size()).map(i -> -i).boxed().toList();
        desk.deal(assignment, nobody, already, in.settings()).values().forEach(problems -> {
            keepWholes(school, problems, now);
            numbered(number -> school.spares().add(assignment.id(), number, problems, now));
        });
    }

    /** A spare as a sheet of nobody's. */
    static Sheet asSheet(Spare spare) {
        return new Sheet(0, spare.assignment(), 0, spare.number(), spare.made(), spare.problems().stream().map(d -> new Problem(0, 0, d.task(), d.place(), 1, d.exercise(), d.seed(),
                d.units(), d.fingerprint(), d.points(), d.conventions())).toList());
    }

    private void keepWholes(School school, List<Dealt> problems, Instant now) {
        Set<String> wholes = new HashSet<>();
        problems.stream().filter(p -> wholes.add(p.fingerprint()))
                .forEach(p -> desk.whole(p.exercise()).ifPresent(whole -> school.sheets().keepWhole(p.fingerprint(), whole, now)));
    }

    private void deal(School school, Assignment assignment, SchoolClass in, Instant now) {
        List<Sheet> dealt = school.sheets().all(assignment.id());
        List<Sheet> already = new ArrayList<>(earlier(school, assignment));
        already.addAll(dealt);
        List<Long> students = new ArrayList<>(students(school, assignment, in));
        dealt.forEach(s -> students.remove(s.person()));
        Map<Long, List<Dealt>> sheets = new LinkedHashMap<>(second(school, assignment, in, students, already));
        students.removeAll(sheets.keySet());
        sheets.putAll(desk.deal(assignment, students, already, in.settings()));
        keepWholes(school, sheets.values().stream().flatMap(List::stream).toList(), now);
        sheets.forEach((student, problems) -> numbered(number -> school.sheets().deal(assignment.id(), student, number, problems, now)));
    }

    /** Everybody for whom the assignment is, by seat. */
    private static List<Long> students(School school, Assignment assignment, SchoolClass in) {
        List<GivenTo> given = school.assignments().givenTo(assignment.id());
        return school.classes().members(in.id()).stream().filter(m -> m.state() == Member.State.IN).sorted(Member.BY_SEAT)
                .filter(m -> Terms.of(assignment, in, m, given).isFor()).map(m -> m.person().id()).toList();
    }

    /** Sheets of the class with one of these exercises on them: their numbers do not come again. */
    private static List<Sheet> earlier(School school, Assignment assignment) {
        Set<String> exercises = exercises(assignment);
        return school.assignments().of(assignment.schoolClass()).stream().filter(a -> a.id() != assignment.id())
                .filter(a -> exercises(a).stream().anyMatch(exercises::contains)).flatMap(a -> school.sheets().all(a.id()).stream()).toList();
    }

    private static Set<String> exercises(Assignment assignment) {
        Set<String> all = new HashSet<>();
        assignment.tasks().forEach(t -> all.addAll(t.exercises()));
        return all;
    }

    /** For a make-up or a retake with the same tasks: sheets as hard as the first ones, where there are such. */
    private Map<Long, List<Dealt>> second(School school, Assignment assignment, SchoolClass in, List<Long> students, List<Sheet> already) {
        Map<Long, List<Dealt>> sheets = new LinkedHashMap<>();
        assignment.after().flatMap(school.assignments()::find).filter(first -> sameTasks(first, assignment)).ifPresent(first -> {
            for (long student : students) {
                school.sheets().of(first.id(), student)
                        .ifPresent(s -> sheets.put(student, desk.makeUp(first, s, assignment, already, in.settings())));
            }
        });
        return sheets;
    }

    private static boolean sameTasks(Assignment first, Assignment second) {
        return first.tasks().stream().map(Assignment.Task::exercises).toList().equals(second.tasks().stream().map(Assignment.Task::exercises).toList());
    }

    /** A number that is given already is seldom met, and another one does. */
    private void numbered(Consumer<String> keep) {
        for (int tried = 1;; tried++) {
            try {
                keep.accept(SheetNumbers.fresh(chance));
                return;
            } catch (IllegalStateException e) {
                if (tried == NUMBERS_TRIED) {
                    throw e;
                }
            }
        }
    }
}
