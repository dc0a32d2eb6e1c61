package soapstone.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soapstone.page.BlockCell;
import soapstone.page.PlainTimes;
import soapstone.page.SchoolTimes;
import soapstone.page.SheetView;
import soapstone.page.Words;
import soapstone.page.WorkHead;
import soapstone.page.WorkPlace;
import soapstone.page.WorkSheetView;
import soapstone.page.WorkTryView;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Counted;
import soapstone.school.Problem;
import soapstone.school.Scores;
import soapstone.school.Terms;
import soapstone.school.Work;
import soapstone.source.Message;

/**
 * Makes the view models of a student's pages.
 *
 * @param desk  for titles
 * @param words in which the student reads
 */
record WorkPages(WorkDesk desk, Words words, Instant now) {

    WorkHead head(Terms terms, String number, String path) {
        Assignment a = terms.assignment();
        return new WorkHead(terms.schoolClass().name(), a.title(), number, due(terms),
                terms.due().map(d -> Message.of("work.late-" + Words.key(a.late()))), tries(a.tries()), terms.schoolClass().settings().conventions(),
                a.formulas(), path);
    }

    private static Message tries(int tries) {
        return tries == 1 ? Message.of("work.tries-one") : Message.of("work.tries", String.valueOf(tries));
    }

    Message due(Terms terms) {
        return PlainTimes.due(terms.due(), now, words.language());
    }

    WorkHead head(OwnSheet own) {
        return head(own.terms(), own.sheet().number(), "/sheets/" + own.sheet().id());
    }

    /** Why nothing is taken; empty when something is. */
    Optional<Message> refusal(Terms terms) {
        Terms.Door door = terms.door(now);
        return door.takes() ? Optional.empty() : Optional.of(switch (door) {
            case NOT_YET -> Message.of("work.not-yet", SchoolTimes.moment(terms.assignment().opens(), words.language()));
            case OVER -> Message.of("work.over", SchoolTimes.moment(terms.due().orElseThrow(), words.language()));
            default -> Message.of("work." + Words.key(door).replace('_', '-'));
        });
    }

    Optional<Message> refusal(OwnProblem at) {
        Optional<Message> door = refusal(at.own().terms());
        return door.isPresent() || at.own().triesLeft(at.place()) > 0 ? door : Optional.of(noTries(at.own().terms()));
    }

    static Message noTries(Terms terms) {
        int tries = terms.assignment().tries();
        return tries == 1 ? Message.of("work.no-tries-one") : Message.of("work.no-tries", String.valueOf(tries));
    }

    WorkSheetView sheet(OwnSheet own) {
        List<WorkSheetView.Row> rows = own.sheet().problems().stream().map(p -> row(own, p)).toList();
        Optional<Message> says = refusal(own.terms());
        return new WorkSheetView(head(own), own.terms().isExcused() && says.isEmpty() ? Optional.of(Message.of("work.excused-says")) : says, points(own), rows);
    }

    private WorkSheetView.Row row(OwnSheet own, Problem problem) {
        Optional<Message> points = own.isTried(problem.place()) ? points(own, problem.place()) : Optional.empty();
        return new WorkSheetView.Row(problem.place(), desk.exercise(problem.exercise()).title(), "/sheets/" + own.sheet().id() + "/" + problem.place(),
                own.isTried(problem.place()) ? left(own, problem.place(), "work.handed-left") : Message.of("work.not-handed"), points);
    }

    /** How many tries are left. */
    private static Message left(OwnSheet own, int place, String key) {
        int left = own.triesLeft(place);
        return left == 1 ? Message.of(key + "-one") : Message.of(left == 0 ? key + "-none" : key, String.valueOf(left));
    }

    /** Points of a sheet; empty before anything is handed in, and while those of one problem are not shown. */
    Optional<Message> points(OwnSheet own) {
        boolean all = own.sheet().problems().stream().allMatch(p -> own.showsPoints(p.place(), now));
        Scores.Score score = own.sheet().problems().stream().map(p -> own.score(p.place())).reduce(Scores.Score.NONE, Scores.Score::plus);
        return all && !own.attempts().isEmpty() ? Optional.of(points(score)) : Optional.empty();
    }

    private Optional<Message> points(OwnSheet own, int place) {
        return own.showsPoints(place, now) ? Optional.of(points(own.score(place))) : Optional.empty();
    }

    private static Message points(Scores.Score score) {
        return Message.of("work.points-of", printed(score.points()), printed(score.possible()));
    }

    /** Points of one try, late or not as it is. */
    Optional<Message> points(OwnSheet own, Problem problem, Attempt attempt) {
        Work all = own.work(problem);
        Work one = new Work(all.person(), problem, List.of(attempt), all.remarks());
        return own.showsPoints(problem.place(), now) ? Optional.of(points(Scores.of(one, own.terms().assignment().late()))) : Optional.empty();
    }

    private static String printed(double points) {
        BigDecimal number = BigDecimal.valueOf(points).setScale(2, RoundingMode.HALF_UP);
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** @param sheet the problem as it is shown; empty when it cannot be drawn any more */
    WorkPlace place(OwnProblem at, Optional<SheetView> sheet, boolean stale) {
        OwnSheet own = at.own();
        int of = own.sheet().problems().size();
        String next = at.place() < of ? "/sheets/" + own.sheet().id() + "/" + (at.place() + 1) : "/sheets/" + own.sheet().id();
        String number = words.say("work.place-of", List.of(String.valueOf(at.place()), String.valueOf(of)));
        List<BlockCell> cells = sheet.map(s -> BlockCell.of(words, s, head(own), number)).orElse(List.of());
        boolean again = own.canTakeOthers(at.place(), now) || stale && own.terms().door(now).takes();
        return new WorkPlace(head(own), at.place(), of, at.problem().round(), desk.exercise(at.problem().exercise()).title(), at.path(),
                left(own, at.place(), "work.tries-left"), next, cells, tries(at), again);
    }

    private List<WorkPlace.PastTry> tries(OwnProblem at) {
        List<WorkPlace.PastTry> tries = new ArrayList<>();
        for (Problem round : at.own().rounds(at.place())) {
            for (Attempt a : at.own().work(round).attempts()) {
                tries.add(0, new WorkPlace.PastTry(a.number(), round.round(), moment(a.handedIn()), a.late(), points(at.own(), round, a), path(at, a)));
            }
        }
        return tries;
    }

    static String path(OwnProblem at, Attempt attempt) {
        return at.path() + "/tries/" + attempt.id();
    }

    String moment(Instant time) {
        return SchoolTimes.moment(time, words.language());
    }

    /** Later words on a try's marks, the newest on each. */
    List<WorkTryView.Changed> changed(Work work, Attempt attempt) {
        return work.marks(attempt).stream().filter(c -> c.remark().isPresent()).sorted(Comparator.comparingInt(c -> c.mark().place())).map(this::changed).toList();
    }

    private WorkTryView.Changed changed(Counted counted) {
        String verdict = "@school.verdict-" + Words.key(counted.mark().verdict()).replace('_', '-');
        Message says = counted.excused() ? Message.of("work.changed-excused")
                : Message.of("work.changed-to", verdict, printed(counted.mark().points()), printed(counted.mark().possible()));
        return new WorkTryView.Changed(counted.mark().letter(), says, moment(counted.remark().orElseThrow().at()), counted.remark().orElseThrow().reason());
    }

    /** Answers as the record has them, with what was said of them where that may be shown. */
    static List<WorkTryView.KeptAnswer> answers(Attempt attempt, Assignment.Shows shows) {
        boolean told = shows == Assignment.Shows.MISTAKE || shows == Assignment.Shows.LINES;
        return attempt.marks().stream().map(m -> new WorkTryView.KeptAnswer(m.letter(), m.typed(), m.readAs(), told ? m.says() : "")).toList();
    }
}
