package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soapstone.page.ExerciseLink;
import soapstone.page.Pages;
import soapstone.page.WorkHistoryView;
import soapstone.page.WorkOpeningView;
import soapstone.page.WorkRefusedView;
import soapstone.page.WorkView;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.CannotDeal;
import soapstone.school.Member;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.Terms;
import soapstone.source.Message;

/** A student's pages: what is due, the sheets, and everything that was handed in. */
final class WorkRoom implements SchoolSite.Room {

    private static final int MOST_PRACTICE = 6;
    private static final int CONFLICT = 409;

    private final SchoolOffice office;
    private final WorkDesk desk;
    private final Pages pages;
    private final SheetDealer dealer;
    private final ProblemRoom problems;

    WorkRoom(SchoolOffice office, WorkDesk desk, Pages pages, SheetDealer dealer) {
        this.office = office;
        this.desk = desk;
        this.pages = pages;
        this.dealer = dealer;
        this.problems = new ProblemRoom(office, desk, pages);
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.STUDENT, "/work", this::list)
                .get(Who.STUDENT, "/sheets/history", this::history)
                .get(Who.STUDENT, "/sheets/open/{assignment}", this::opening)
                .post(Who.STUDENT, "/sheets/open/{assignment}", this::open)
                .get(Who.STUDENT, "/sheets/{sheet}", this::sheet);
        problems.addTo(routes);
    }

    private School school() {
        return office.school().get();
    }

    private WorkPages views(Visit v) {
        return new WorkPages(desk, v.reader().words(), office.clock().instant());
    }

    private Reply list(Visit v) {
        School school = school();
        WorkPages views = views(v);
        OwnSheets sheets = OwnSheets.of(school, v.person().id());
        Set<String> practice = new LinkedHashSet<>();
        List<WorkView.ClassWork> classes = new ArrayList<>();
        for (SchoolClass in : school.classes().of(v.person().id())) {
            Member member = school.classes().member(in.id(), v.person().id()).orElseThrow();
            if (member.state() == Member.State.LEFT) {
                continue;
            }
            List<Terms> all = in.archived().isPresent() ? List.of() : terms(school, in, member);
            all.stream().filter(t -> t.door(views.now()) != Terms.Door.NOT_YET)
                    .forEach(t -> t.assignment().tasks().forEach(task -> practice.addAll(task.exercises())));
            List<WorkView.Item> items = all.stream().map(t -> item(views, t, sheets)).toList();
            classes.add(new WorkView.ClassWork(in.name(), in.term(), says(in, member), items));
        }
        List<ExerciseLink> links = practice.stream().map(desk::exercise).filter(e -> e.level() > 0).limit(MOST_PRACTICE).toList();
        return Reply.page(pages.show(v.reader(), "work", new WorkView(classes, links)));
    }

    private static Optional<Message> says(SchoolClass in, Member member) {
        if (in.archived().isPresent()) {
            return Optional.of(Message.of("work.archived"));
        }
        return member.state() == Member.State.ASKED ? Optional.of(Message.of("work.asked")) : Optional.empty();
    }

    /** What is meant for one student: what is due first comes first, practice without an end last. */
    private static List<Terms> terms(School school, SchoolClass in, Member member) {
        return school.assignments().of(in.id()).stream().map(a -> Terms.of(a, in, member, school.assignments().givenTo(a.id()))).filter(Terms::isFor)
                .sorted(Comparator.comparing((Terms t) -> t.due().orElse(Instant.MAX))).toList();
    }

    private static WorkView.Item item(WorkPages views, Terms terms, OwnSheets sheets) {
        Optional<Sheet> sheet = sheets.of(terms.assignment().id());
        String title = terms.assignment().title();
        boolean begins = terms.door(views.now()) == Terms.Door.NOT_YET;
        if (sheet.isEmpty()) {
            String path = begins ? "" : "/sheets/open/" + terms.assignment().id();
            Message state = views.refusal(terms).orElse(Message.of(terms.isExcused() ? "work.excused" : "work.not-begun"));
            return new WorkView.Item(title, path, views.due(terms), state, Optional.empty());
        }
        OwnSheet own = sheets.own(sheet.get(), terms);
        int of = own.sheet().problems().size();
        long done = own.sheet().problems().stream().filter(p -> own.isTried(p.place())).count();
        return new WorkView.Item(title, "/sheets/" + sheet.get().id(), views.due(terms), state(terms, done, of), views.points(own));
    }

    private static Message state(Terms terms, long done, int of) {
        if (done == of) {
            return Message.of("work.all-handed");
        } else if (terms.isExcused()) {
            return Message.of("work.excused");
        }
        return done == 0 ? Message.of("work.none-handed", String.valueOf(of)) : Message.of("work.some-handed", String.valueOf(done), String.valueOf(of));
    }

    /** The assignment of the address, where it is meant for the visitor. */
    private Terms terms(School school, Visit v) {
        return OwnSheet.terms(school, v.id("assignment"), v.person().id()).filter(Terms::isFor).orElseThrow(() -> Trouble.of(404));
    }

    private Reply opening(Visit v) {
        Terms terms = terms(school(), v);
        Optional<Sheet> dealt = school().sheets().of(terms.assignment().id(), v.person().id());
        return dealt.map(s -> Reply.goTo("/sheets/" + s.id())).orElseGet(() -> Reply.page(pages.show(v.reader(), "work-opening", opening(v, terms))));
    }

    private WorkOpeningView opening(Visit v, Terms terms) {
        String path = "/sheets/open/" + terms.assignment().id();
        return new WorkOpeningView(views(v).head(terms, "", path), path, views(v).refusal(terms));
    }

    private Reply open(Visit v) {
        Terms terms = terms(school(), v);
        if (!terms.door(office.clock().instant()).takes()) {
            return Reply.page(pages.show(v.reader(), "work-opening", opening(v, terms))).as(CONFLICT);
        }
        try {
            return Reply.goTo("/sheets/" + dealer.open(school(), terms, office.clock().instant()).id());
        } catch (CannotDeal e) {
            WorkRefusedView view = new WorkRefusedView(views(v).head(terms, "", "/work"), Message.of("work.cannot-deal"), "/work");
            return Reply.page(pages.show(v.reader(), "work-refused", view)).as(CONFLICT);
        }
    }

    private Reply sheet(Visit v) {
        return Reply.page(pages.show(v.reader(), "work-sheet", views(v).sheet(OwnSheet.of(school(), v))));
    }

    private Reply history(Visit v) {
        School school = school();
        WorkPages views = views(v);
        List<Past> all = new ArrayList<>();
        OwnSheets sheets = OwnSheets.of(school, v.person().id());
        for (Sheet sheet : sheets.all()) {
            OwnSheet.terms(school, sheet.assignment(), v.person().id()).ifPresent(t -> all.addAll(past(sheets.own(sheet, t), views)));
        }
        all.sort(Comparator.comparing((Past p) -> p.at).reversed());
        return Reply.page(pages.show(v.reader(), "work-history", new WorkHistoryView(all.stream().map(Past::shown).toList(),
                PracticeRows.of(school.practices().of(v.person().id()), id -> desk.exercise(id).title(), v.reader().words()))));
    }

    private record Past(Instant at, WorkHistoryView.Past shown) {}

    private List<Past> past(OwnSheet own, WorkPages views) {
        Map<Long, Problem> rounds = own.rounds().stream().collect(Collectors.toMap(Problem::id, p -> p, (one, other) -> one, LinkedHashMap::new));
        List<Past> all = new ArrayList<>();
        Assignment assignment = own.terms().assignment();
        for (Attempt a : own.attempts()) {
            Problem p = rounds.get(a.problem());
            all.add(new Past(a.handedIn(), new WorkHistoryView.Past(views.moment(a.handedIn()), own.terms().schoolClass().name(), assignment.title(), p.place(),
                    desk.exercise(p.exercise()).title(), a.number(), String.valueOf(a.id()), a.late(), views.points(own, p, a),
                    WorkPages.path(new OwnProblem(own, p), a))));
        }
        return all;
    }
}
