package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import soapstone.school.Assignment;
import soapstone.school.Assignments.GivenTo;
import soapstone.school.Member;
import soapstone.school.School;
import soapstone.school.Sheet;
import soapstone.school.SheetNumbers;
import soapstone.school.Sheets.Dealt;
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
            deal(school, terms, now);
            return school.sheets().of(assignment, terms.member().person().id()).orElseThrow();
        });
    }

    private void deal(School school, Terms terms, Instant now) {
        Assignment assignment = terms.assignment();
        List<Sheet> dealt = school.sheets().all(assignment.id());
        List<Sheet> already = new ArrayList<>(earlier(school, assignment));
        already.addAll(dealt);
        List<Long> students = new ArrayList<>(students(school, terms));
        dealt.forEach(s -> students.remove(s.person()));
        Map<Long, List<Dealt>> sheets = new LinkedHashMap<>(second(school, terms, students, already));
        students.removeAll(sheets.keySet());
        sheets.putAll(desk.deal(assignment, students, already, terms.schoolClass().settings()));
        Set<String> wholes = new HashSet<>();
        sheets.forEach((student, problems) -> {
            problems.stream().filter(p -> wholes.add(p.fingerprint()))
                    .forEach(p -> desk.whole(p.exercise()).ifPresent(whole -> school.sheets().keepWhole(p.fingerprint(), whole, now)));
            keep(school, assignment.id(), student, problems, now);
        });
    }

    /** Everybody for whom the assignment is, by seat. */
    private static List<Long> students(School school, Terms terms) {
        List<GivenTo> given = school.assignments().givenTo(terms.assignment().id());
        return school.classes().members(terms.schoolClass().id()).stream().filter(m -> m.state() == Member.State.IN).sorted(Member.BY_SEAT)
                .filter(m -> Terms.of(terms.assignment(), terms.schoolClass(), m, given).isFor()).map(m -> m.person().id()).toList();
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
    private Map<Long, List<Dealt>> second(School school, Terms terms, List<Long> students, List<Sheet> already) {
        Map<Long, List<Dealt>> sheets = new LinkedHashMap<>();
        terms.assignment().after().flatMap(school.assignments()::find).filter(first -> sameTasks(first, terms.assignment())).ifPresent(first -> {
            for (long student : students) {
                school.sheets().of(first.id(), student)
                        .ifPresent(s -> sheets.put(student, desk.makeUp(first, s, terms.assignment(), already, terms.schoolClass().settings())));
            }
        });
        return sheets;
    }

    private static boolean sameTasks(Assignment first, Assignment second) {
        return first.tasks().stream().map(Assignment.Task::exercises).toList().equals(second.tasks().stream().map(Assignment.Task::exercises).toList());
    }

    /** A number that is given already is seldom met, and another one does. */
    private void keep(School school, long assignment, long student, List<Dealt> problems, Instant now) {
        for (int tried = 1;; tried++) {
            try {
                school.sheets().deal(assignment, student, SheetNumbers.fresh(chance), problems, now);
                return;
            } catch (IllegalStateException e) {
                if (tried == NUMBERS_TRIED) {
                    throw e;
                }
            }
        }
    }
}
