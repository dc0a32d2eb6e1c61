package soapstone.web;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import soapstone.mark.Verdict;
import soapstone.page.Pages;
import soapstone.page.RemarkView;
import soapstone.school.AnswerMark;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Member;
import soapstone.school.Printed;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.source.Message;

/** A later word of an instructor on one mark. The first mark stays; what is said here is appended and told to the student. */
final class RemarkRoom implements SchoolSite.Room {

    private static final String EXCUSED = "excused";
    /** What can be said, in the order of the form. */
    private static final List<String> CHOICES = List.of("right", "right-but", "carried", "near", "unexplained", EXCUSED);
    private static final Pattern POINTS = Pattern.compile("[0-9]{1,4}([.,][0-9]{1,2})?");
    private static final int LONGEST = 400;
    private static final double ROUNDING = 1e-9;

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    RemarkRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/attempts/{attempt}/marks/{place}", v -> {
            Seen seen = seen(v);
            return Reply.page(pages.show(v.reader(), "remark", view(v, seen, "", "", "", Map.of())));
        }).post(Who.INSTRUCTOR, "/attempts/{attempt}/marks/{place}", this::say);
    }

    /** One mark with all that it hangs on. */
    private record Seen(Attempt attempt, AnswerMark mark, Problem problem, Assignment assignment, SchoolClass in, Member member) {}

    /** The place in the address counts from 1, as people do. */
    private Seen seen(Visit v) {
        School school = taught.school();
        Attempt attempt = school.attempts().find(v.id("attempt")).orElseThrow(() -> Trouble.of(404));
        AnswerMark mark = attempt.marks().stream().filter(m -> m.place() + 1 == v.id("place")).findFirst().orElseThrow(() -> Trouble.of(404));
        Problem problem = school.sheets().problem(attempt.problem()).orElseThrow(() -> Trouble.of(404));
        Sheet sheet = school.sheets().find(problem.sheet()).orElseThrow(() -> Trouble.of(404));
        Taught.Given given = taught.assignment(v, sheet.assignment());
        return new Seen(attempt, mark, problem, given.assignment(), given.in(), taught.member(given.in(), sheet.person()));
    }

    private RemarkView view(Visit v, Seen s, String choice, String points, String reason, Map<String, Message> troubles) {
        List<Remark> remarks = taught.school().attempts().remarks(s.attempt().id());
        return new RemarkView(Taught.head(s.in()), s.member().person().id(), s.member().person().shown(), s.assignment().id(), s.assignment().title(),
                desk.exercise(s.problem().exercise()).title(), s.attempt().id(),
                new StudentRoom.Marked(taught.school(), v.reader().words()).mark(s.attempt(), s.mark(), remarks), Printed.points(s.mark().possible()), CHOICES, choice,
                points, reason, troubles);
    }

    private Reply say(Visit v) {
        Seen s = seen(v);
        taught.open(s.in());
        String choice = v.form().text("choice");
        String points = v.form().text("points").strip();
        String reason = v.form().text("reason").strip();
        double possible = s.mark().possible();
        OptionalDouble earned = earned(choice, points, possible);
        Map<String, Message> troubles = troubles(choice, reason, earned, possible);
        if (!troubles.isEmpty()) {
            return Reply.page(pages.show(v.reader(), "remark", view(v, s, choice, points, reason, troubles))).as(422);
        }
        boolean excused = choice.equals(EXCUSED);
        Verdict verdict = excused ? s.mark().verdict() : Verdict.valueOf(choice.toUpperCase(Locale.ROOT).replace('-', '_'));
        Remark remark = new Remark(0, s.attempt().id(), s.mark().place(), office.clock().instant(), Optional.of(v.person().id()),
                excused ? Remark.Cause.EXCUSED : Remark.Cause.OVERRULED, verdict, earned.getAsDouble(), reason);
        if (!isSaidAlready(remark)) {
            taught.school().attempts().remark(List.of(remark));
            String detail = "Attempt " + remark.attempt() + ", answer " + s.mark().letter() + ": " + verdict.word() + ", " + Printed.points(remark.points()) + " of "
                    + Printed.points(possible) + " points";
            taught.school().audit().note(new Audit.Entry(remark.at(), remark.by(), excused ? "mark.excused" : "mark.overruled",
                    Optional.of(s.member().person().id()), Optional.of(s.in().id()), detail, false));
        }
        return Reply.goTo(StudentRoom.address(s.in().id(), s.member().person().id(), s.assignment().id()));
    }

    /** Left empty, the points follow from what was said: all of them for a right answer, else none. */
    private static OptionalDouble earned(String choice, String points, double possible) {
        if (points.isEmpty() || choice.equals(EXCUSED)) {
            return OptionalDouble.of(List.of("right", "right-but", "carried").contains(choice) ? possible : 0);
        }
        return POINTS.matcher(points).matches() ? OptionalDouble.of(Double.parseDouble(points.replace(',', '.'))) : OptionalDouble.empty();
    }

    private static Map<String, Message> troubles(String choice, String reason, OptionalDouble earned, double possible) {
        Map<String, Message> troubles = new HashMap<>();
        if (!CHOICES.contains(choice)) {
            troubles.put("choice", Message.of("marks.choice-missing"));
        }
        if (earned.isEmpty() || earned.getAsDouble() > possible + ROUNDING) {
            troubles.put("points", Message.of("marks.points-wrong", Printed.points(possible)));
        }
        if (reason.isEmpty() || reason.length() > LONGEST) {
            troubles.put("reason", reason.isEmpty() ? Message.of("marks.reason-missing") : Message.of("marks.reason-long", String.valueOf(LONGEST)));
        }
        return troubles;
    }

    /** A form that is sent twice says it once. */
    private boolean isSaidAlready(Remark r) {
        List<Remark> before = taught.school().attempts().remarks(r.attempt()).stream().filter(b -> b.place() == r.place()).toList();
        return !before.isEmpty() && same(before.get(before.size() - 1), r);
    }

    private static boolean same(Remark a, Remark b) {
        return a.by().equals(b.by()) && a.cause() == b.cause() && a.verdict() == b.verdict() && a.points() == b.points() && a.reason().equals(b.reason());
    }
}
