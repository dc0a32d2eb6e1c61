package soapstone.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soapstone.page.MarkSign;
import soapstone.page.Pages;
import soapstone.page.RegradeView;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Audit;
import soapstone.school.Counted;
import soapstone.school.MarkBook;
import soapstone.school.Printed;
import soapstone.school.Regrading;
import soapstone.school.Remark;
import soapstone.school.SchoolClass;
import soapstone.school.Work;

/** Marks again after the bank was mended: first what would change, then, when it is asked for, the new marks beside the old. */
final class RegradeRoom implements SchoolSite.Room {

    private final SchoolOffice office;
    private final MarksDesk desk;
    private final Pages pages;
    private final Taught taught;

    RegradeRoom(SchoolOffice office, MarksDesk desk, Pages pages) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.taught = new Taught(office, desk);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/classes/{class}/regrade", v -> {
            SchoolClass in = taught.schoolClass(v);
            return Reply.page(pages.show(v.reader(), "regrade", new Look(in).view(v.query().text("kept"))));
        }).post(Who.INSTRUCTOR, "/classes/{class}/regrade", this::keep);
    }

    private Reply keep(Visit v) {
        SchoolClass in = taught.open(taught.schoolClass(v));
        Look look = new Look(in);
        List<Remark> remarks = look.result.remarks();
        if (!remarks.isEmpty()) {
            taught.school().attempts().remark(remarks);
            taught.school().audit().note(new Audit.Entry(office.clock().instant(), Optional.of(v.person().id()), "mark.regraded", Optional.empty(), Optional.of(in.id()),
                    "Marks changed after the bank was mended: " + remarks.size(), false));
        }
        return Reply.goTo("/classes/" + in.id() + "/regrade?kept=" + remarks.size());
    }

    /** One look at a class: what was mended, and what would become of its marks. */
    private final class Look {

        private final SchoolClass in;
        private final List<MarkBook.MarkedWith> mended;
        private final Map<Long, Work> byAttempt = new HashMap<>();
        private final Map<Long, Long> assignmentOf = new HashMap<>();
        private final Map<Long, String> titles;
        private final Map<Long, String> names = new HashMap<>();
        private final Regrading.Result result;

        Look(SchoolClass in) {
            this.in = in;
            this.mended = taught.school().book().markedWith(in.id()).stream().filter(m -> desk.isMended(m.exercise(), m.fingerprint())).toList();
            Set<Long> assignments = mended.stream().map(MarkBook.MarkedWith::assignment).collect(Collectors.toSet());
            Set<String> exercises = mended.stream().map(MarkBook.MarkedWith::exercise).collect(Collectors.toCollection(LinkedHashSet::new));
            List<Work> works = new ArrayList<>();
            taught.school().book().ofAssignments(assignments, exercises).forEach((assignment, all) -> all.forEach(w -> {
                works.add(w);
                w.attempts().forEach(a -> byAttempt.put(a.id(), w));
                assignmentOf.put(w.problem().id(), assignment);
            }));
            this.titles = taught.school().assignments().of(in.id()).stream().collect(Collectors.toMap(Assignment::id, Assignment::title));
            taught.members(in).forEach(m -> names.put(m.person().id(), m.person().shown()));
            this.result = works.isEmpty() ? new Regrading.Result(List.of(), List.of()) : desk.regrade(taught.school(), works, in.settings(), office.clock().instant());
        }

        RegradeView view(String kept) {
            List<RegradeView.Mended> files = mended.stream().map(m -> new RegradeView.Mended(m.assignment(), titles.get(m.assignment()),
                    desk.exercise(m.exercise()).title(), m.attempts())).toList();
            int done = kept.matches("[0-9]{1,6}") ? Integer.parseInt(kept) : -1;
            return new RegradeView(Taught.head(in), files, result.remarks().stream().map(this::change).toList(),
                    result.unsettled().stream().map(this::unsettled).toList(), done);
        }

        private RegradeView.Change change(Remark r) {
            Work work = byAttempt.get(r.attempt());
            Attempt attempt = work.attempts().stream().filter(a -> a.id() == r.attempt()).findFirst().orElseThrow();
            Counted before = work.marks(attempt).stream().filter(c -> c.mark().place() == r.place()).findFirst().orElseThrow();
            long assignment = assignmentOf.get(work.problem().id());
            return new RegradeView.Change(work.person(), names.getOrDefault(work.person(), ""), assignment, titles.get(assignment),
                    desk.exercise(work.problem().exercise()).title(), attempt.number(), before.mark().letter(), MarkRows.cell(before),
                    MarkSign.Cell.of(Optional.of(MarkSign.of(r.verdict())), false), Printed.points(before.mark().points()), Printed.points(r.points()));
        }

        private RegradeView.Unsettled unsettled(Attempt attempt) {
            Work work = byAttempt.get(attempt.id());
            long assignment = assignmentOf.get(work.problem().id());
            return new RegradeView.Unsettled(work.person(), names.getOrDefault(work.person(), ""), assignment, titles.get(assignment),
                    desk.exercise(work.problem().exercise()).title(), attempt.number());
        }
    }
}
