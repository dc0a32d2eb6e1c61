package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Member;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Scores;
import soapstone.school.Sheet;
import soapstone.school.Terms;
import soapstone.school.Work;

/**
 * A student's own sheet with all that was done on it.
 *
 * @param rounds   every round of every place
 * @param attempts at any of them
 * @param remarks  on any of these
 */
record OwnSheet(Sheet sheet, Terms terms, List<Problem> rounds, List<Attempt> attempts, List<Remark> remarks) {

    /**
     * The sheet with that number in the address.
     *
     * @throws Trouble 404 when there is none, or when it is somebody else's
     */
    static OwnSheet of(School school, Visit v) {
        long person = v.person().id();
        Sheet sheet = school.sheets().find(v.id("sheet")).filter(s -> s.person() == person).orElseThrow(() -> Trouble.of(404));
        return of(school, sheet, terms(school, sheet.assignment(), person).orElseThrow(() -> Trouble.of(404)));
    }

    static OwnSheet of(School school, Sheet sheet, Terms terms) {
        return new OwnSheet(sheet, terms, school.sheets().allRounds(sheet.id()), school.attempts().ofSheet(sheet.id()), school.attempts().remarksOfSheet(sheet.id()));
    }

    /** On what terms somebody works on an assignment; empty for somebody who was never in the class. */
    static Optional<Terms> terms(School school, long assignment, long person) {
        Optional<Assignment> found = school.assignments().find(assignment);
        Optional<SchoolClass> in = found.flatMap(a -> school.classes().find(a.schoolClass()));
        Optional<Member> member = in.flatMap(c -> school.classes().member(c.id(), person));
        return member.map(m -> Terms.of(found.orElseThrow(), in.orElseThrow(), m, school.assignments().givenTo(assignment)));
    }

    /** Every round of a place, in order. */
    List<Problem> rounds(int place) {
        return rounds.stream().filter(p -> p.place() == place).toList();
    }

    Work work(Problem problem) {
        return new Work(sheet.person(), problem, attempts.stream().filter(a -> a.problem() == problem.id()).toList(), remarks);
    }

    private List<Work> works(int place) {
        return rounds(place).stream().map(this::work).toList();
    }

    /** How many tries are left at a place, with its newest numbers. */
    int triesLeft(int place) {
        List<Work> works = works(place);
        int all = works.stream().mapToInt(w -> w.attempts().size()).sum();
        return terms.triesLeft(works.get(works.size() - 1).attempts().size(), all);
    }

    /** How many attempts at one round are taken at most, so that all rounds together keep to the tries. */
    int mostAttempts(Problem problem) {
        int others = (int) works(problem.place()).stream().filter(w -> w.problem().id() != problem.id()).mapToLong(w -> w.attempts().size()).sum();
        return terms.isPractice() ? terms.assignment().tries() : terms.assignment().tries() - others;
    }

    boolean isTried(int place) {
        return works(place).stream().anyMatch(w -> !w.attempts().isEmpty());
    }

    /** Of several rounds, the one with the most points counts. */
    Scores.Score score(int place) {
        return works(place).stream().map(w -> Scores.of(w, terms.assignment().late()))
                .reduce((one, other) -> other.points() > one.points() ? other : one).orElse(Scores.Score.NONE);
    }

    Assignment.Shows shows(int place, Instant now) {
        return terms.shows(now, triesLeft(place));
    }

    boolean showsPoints(int place, Instant now) {
        return shows(place, now) != Assignment.Shows.NOTHING;
    }

    /** Other numbers are there to practise with, where a try is left for them. */
    boolean canTakeOthers(int place, Instant now) {
        List<Work> works = works(place);
        boolean tried = !works.get(works.size() - 1).attempts().isEmpty();
        return terms.door(now).takes() && tried && (terms.isPractice() || triesLeft(place) > 0);
    }
}
