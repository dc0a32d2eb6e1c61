package soapstone.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.AnswerBox;
import soapstone.page.AssignmentFormView;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SheetView;
import soapstone.page.TypingSheetView;
import soapstone.page.TypingSpareView;
import soapstone.page.TypingView;
import soapstone.page.Words;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Counted;
import soapstone.school.Marking;
import soapstone.school.Member;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Sheet;
import soapstone.school.SheetNumbers;
import soapstone.school.Spare;
import soapstone.source.Message;

/**
 * Answers from paper, typed in sheet by sheet: the number, Enter, the answers with Tab between them, Enter for the verdicts, and the next
 * number with Enter, which keeps what was looked at and goes on. Nothing needs a script or a mouse.
 */
final class TypingRoom implements SchoolSite.Room {

    private static final int WRONG = 422;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_QUOTE = 120;

    private final OwnClasses own;
    private final WorkDesk desk;
    private final Pages pages;

    TypingRoom(SchoolOffice office, WorkDesk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(Who.INSTRUCTOR, "/typing", v -> find(v, Optional.empty()))
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/typing", v -> find(v, Optional.of(own.work(v))))
                .get(Who.INSTRUCTOR, "/typing/spare/{number}", v -> spare(v, FormView.of(Map.of())))
                .post(Who.INSTRUCTOR, "/typing/spare/{number}", this::claim)
                .get(Who.INSTRUCTOR, "/typing/{sheet}", v -> Reply.page(pages.show(v.reader(), "typing-sheet", fresh(v, sheet(v)))))
                .post(Who.INSTRUCTOR, "/typing/{sheet}", Fields.Limit.CHOICE, this::take)
                .get(Who.INSTRUCTOR, "/typing/{sheet}/{place}", v -> fixing(v, paper(v), Map.of(), false, Optional.empty()))
                .post(Who.INSTRUCTOR, "/typing/{sheet}/{place}", this::fix);
    }

    private School school() {
        return own.school();
    }

    private PaperAnswers answers(Visit v) {
        return new PaperAnswers(school(), desk.in(v.reader().words().language()), own.now());
    }

    // Finding

    private Reply find(Visit v, Optional<OwnClasses.Work> of) {
        String typed = v.query().text("number");
        if (typed.isBlank()) {
            return Reply.page(pages.show(v.reader(), "typing", view(v, of, "", Optional.empty())));
        }
        SheetNumbers.Typed number = SheetNumbers.read(typed);
        Optional<Sheet> sheet = school().sheets().byNumber(number.number()).filter(s -> isTheirs(v, s.assignment()));
        if (sheet.isPresent()) {
            return Reply.goTo("/typing/" + sheet.get().id());
        }
        Optional<Spare> spare = school().spares().byNumber(number.number()).filter(s -> isTheirs(v, s.assignment()));
        if (spare.isPresent()) {
            return Reply.goTo("/typing/spare/" + spare.get().number());
        }
        Message fault = Message.of(number.sound() ? "typing.no-sheet" : "typing.misread");
        String shown = typed.strip().substring(0, Math.min(LONGEST_NUMBER, typed.strip().length()));
        return Reply.page(pages.show(v.reader(), "typing", view(v, of, shown, Optional.of(fault)))).as(WRONG);
    }

    private boolean isTheirs(Visit v, long assignment) {
        return school().assignments().find(assignment).filter(a -> school().classes().teaches(a.schoolClass(), v.person().id())).isPresent();
    }

    private TypingView view(Visit v, Optional<OwnClasses.Work> of, String typed, Optional<Message> fault) {
        Optional<TypingView.Kept> kept = v.query().get("kept").filter(k -> k.matches("[1-9][0-9]{0,17}")).map(Long::parseLong).flatMap(school().sheets()::find)
                .filter(s -> isTheirs(v, s.assignment())).map(this::kept);
        return new TypingView(of.map(this::of), typed, fault, kept, of.map(this::rows).orElse(List.of()));
    }

    private TypingView.Of of(OwnClasses.Work work) {
        List<TypingView.Place> places = new ArrayList<>();
        for (Assignment.Task task : work.assignment().tasks()) {
            for (int i = 0; i < task.many(); i++) {
                String title = task.exercises().size() == 1 ? desk.exercise(task.exercises().get(0)).title() : "";
                places.add(new TypingView.Place(places.size() + 1, title));
            }
        }
        boolean open = work.in().archived().isEmpty() && work.assignment().state() != Assignment.State.DRAFT;
        return new TypingView.Of(work.assignment().id(), work.assignment().title(), work.in().id(), work.in().name(), open, places);
    }

    private List<TypingView.Row> rows(OwnClasses.Work work) {
        return PrintWork.sheets(school(), work.in(), work.assignment(), 0).stream().map(o -> {
            OwnSheet sheet = ownSheet(o.sheet(), work);
            long in = sheet.sheet().problems().stream().filter(p -> sheet.isTried(p.place())).count();
            return new TypingView.Row(o.sheet().id(), o.sheet().number(), o.seat(), o.name(),
                    Message.of("typing.of", String.valueOf(in), String.valueOf(sheet.sheet().problems().size())));
        }).toList();
    }

    private OwnSheet ownSheet(Sheet sheet, OwnClasses.Work work) {
        return OwnSheet.of(school(), sheet, OwnSheet.terms(school(), work.assignment().id(), sheet.person()).orElseThrow(() -> Trouble.of(404)));
    }

    private TypingView.Kept kept(Sheet sheet) {
        OwnSheet o = OwnSheet.of(school(), sheet, OwnSheet.terms(school(), sheet.assignment(), sheet.person()).orElseThrow(() -> Trouble.of(404)));
        long asked = 0;
        long right = 0;
        for (Problem p : sheet.problems()) {
            Optional<Attempt> attempt = PaperAnswers.onPaper(o, p);
            List<Counted> marks = attempt.map(a -> o.work(p).marks(a)).orElse(List.of());
            asked += marks.size();
            right += marks.stream().filter(c -> c.mark().verdict().isRight()).count();
        }
        return new TypingView.Kept(who(o), sheet.number(), Message.of("typing.right-of", String.valueOf(right), String.valueOf(asked)));
    }

    private static String who(OwnSheet o) {
        Member member = o.terms().member();
        return (member.seat() + " " + member.person().shown()).strip();
    }

    // A spare sheet

    private record Unclaimed(Spare spare, OwnClasses.Work work, List<Member> students) {}

    private Unclaimed unclaimed(Visit v) {
        Spare spare = school().spares().byNumber(v.part("number")).orElseThrow(() -> Trouble.of(404));
        OwnClasses.Work work = own.work(v, spare.assignment());
        List<Long> have = school().sheets().all(spare.assignment()).stream().map(Sheet::person).toList();
        return new Unclaimed(spare, work, own.sitting(work.in()).stream().filter(m -> !have.contains(m.person().id())).toList());
    }

    private Reply spare(Visit v, FormView form) {
        Unclaimed u = unclaimed(v);
        return Reply.page(pages.show(v.reader(), "typing-spare", new TypingSpareView(u.spare().number(), u.work().assignment().title(), u.work().in().name(),
                u.work().assignment().id(), form, u.students().stream().map(m -> new AssignmentFormView.Student(m.person().id(), m.seat(), m.person().shown())).toList())));
    }

    private Reply claim(Visit v) {
        Unclaimed u = unclaimed(v);
        open(u.work().in());
        FilledForm form = new FilledForm(v.form());
        Optional<Member> student = u.students().stream().filter(m -> String.valueOf(m.person().id()).equals(v.form().text("student"))).findFirst();
        if (student.isEmpty()) {
            form.fault("student", Message.of("filled.choice"));
            return spare(v, form.view()).as(WRONG);
        }
        long person = student.get().person().id();
        Sheet sheet = school().spares().claim(u.spare().id(), person, own.now()).orElseThrow(() -> Trouble.of(409));
        own.note(v, "assignment.spare", Optional.of(person), u.work().in(), u.work().assignment().title());
        return Reply.goTo("/typing/" + sheet.id());
    }

    private static void open(SchoolClass in) {
        if (in.archived().isPresent()) {
            throw Trouble.of(409);
        }
    }

    // A sheet

    private OwnSheet sheet(Visit v) {
        Sheet sheet = school().sheets().find(v.id("sheet")).orElseThrow(() -> Trouble.of(404));
        return ownSheet(sheet, own.work(v, sheet.assignment()));
    }

    private static String name(Problem p) {
        return String.valueOf(p.place());
    }

    private TypingSheetView fresh(Visit v, OwnSheet o) {
        List<TypingSheetView.Part> parts = new ArrayList<>();
        for (Problem p : o.sheet().problems()) {
            Optional<SheetView> asked = answers(v).asked(o, p, Map.of());
            parts.add(PaperAnswers.onPaper(o, p).map(a -> kept(v, o, p, asked, a)).orElseGet(() -> open(o, p, asked)));
        }
        return view(v, o, parts, false, false, Optional.empty());
    }

    private TypingSheetView.Part open(OwnSheet o, Problem p, Optional<SheetView> asked) {
        Optional<Message> refusal = asked.isEmpty() ? Optional.of(Message.of("typing.stale")) : o.triesLeft(p.place()) < 1 ? Optional.of(WorkPages.noTries(o.terms())) : Optional.empty();
        List<AnswerBox> boxes = refusal.isPresent() ? List.of() : PaperAnswers.named(name(p), asked.orElseThrow().boxes());
        return new TypingSheetView.Part(p.place(), desk.exercise(p.exercise()).title(), asked.map(SheetView::story).orElse(""), boxes, refusal, List.of());
    }

    private TypingSheetView.Part kept(Visit v, OwnSheet o, Problem p, Optional<SheetView> asked, Attempt attempt) {
        Words words = v.reader().words();
        List<TypingSheetView.Kept> kept = o.work(p).marks(attempt).stream().map(c -> new TypingSheetView.Kept(p.place() + c.mark().letter(), c.mark().typed(),
                words.say("school.verdict-" + Words.key(c.mark().verdict()).replace('_', '-'), List.of()))).toList();
        return new TypingSheetView.Part(p.place(), desk.exercise(p.exercise()).title(), asked.map(SheetView::story).orElse(""), List.of(), Optional.empty(), kept);
    }

    private TypingSheetView view(Visit v, OwnSheet o, List<TypingSheetView.Part> parts, boolean looked, boolean good, Optional<Message> fault) {
        return new TypingSheetView(o.sheet().id(), o.sheet().number(), who(o), o.terms().assignment().id(), o.terms().assignment().title(), o.terms().schoolClass().name(), parts,
                looked, good, fault, v.form().get("late").isPresent(), v.form().text("next"), 0);
    }

    private Reply take(Visit v) {
        OwnSheet o = sheet(v);
        open(o.terms().schoolClass());
        List<PaperAnswers.Looked> looked = new ArrayList<>();
        for (Problem p : o.sheet().problems()) {
            if (PaperAnswers.onPaper(o, p).isEmpty()) {
                looked.add(answers(v).look(o, p, PaperAnswers.typed(v, name(p))));
            }
        }
        boolean good = looked.stream().allMatch(PaperAnswers.Looked::isGood);
        boolean blank = looked.stream().allMatch(PaperAnswers.Looked::isBlank);
        if (good && (blank || v.wasReadBack())) {
            answers(v).keep(looked, v.form().get("late").isPresent());
            return goOn(v, o, blank);
        }
        List<TypingSheetView.Part> parts = new ArrayList<>();
        for (Problem p : o.sheet().problems()) {
            Optional<Attempt> there = PaperAnswers.onPaper(o, p);
            parts.add(there.map(a -> kept(v, o, p, answers(v).asked(o, p, Map.of()), a)).orElseGet(() -> part(looked.stream().filter(l -> l.problem().id() == p.id())
                    .findFirst().orElseThrow())));
        }
        Optional<Message> fault = good ? Optional.empty() : Optional.of(Message.of("typing.again"));
        return Reply.page(pages.show(v.reader(), "typing-sheet", view(v, o, parts, true, good, fault))).as(good ? 200 : WRONG);
    }

    private TypingSheetView.Part part(PaperAnswers.Looked l) {
        Problem p = l.problem();
        List<AnswerBox> boxes = l.sheet().map(s -> PaperAnswers.named(name(p), s.boxes())).orElse(List.of());
        return new TypingSheetView.Part(p.place(), desk.exercise(p.exercise()).title(), l.sheet().map(SheetView::story).orElse(""), boxes, l.refusal(), List.of());
    }

    /** To the sheet whose number was typed; else to where one is typed. */
    private static Reply goOn(Visit v, OwnSheet o, boolean blank) {
        String next = v.form().text("next").strip();
        String kept = blank ? "" : "kept=" + o.sheet().id();
        if (next.isEmpty()) {
            return Reply.goTo("/assignments/" + o.sheet().assignment() + "/typing" + (blank ? "" : "?" + kept));
        }
        SheetNumbers.Typed number = SheetNumbers.read(next);
        String plain = number.number().replaceAll("[^A-Z0-9-]", "");
        return Reply.goTo("/typing?number=" + plain.substring(0, Math.min(LONGEST_NUMBER, plain.length())) + (blank ? "" : "&" + kept));
    }

    // Putting right what was typed wrong

    /** A problem whose answers came on paper. */
    private record Paper(OwnSheet own, Problem problem, Attempt attempt) {

        Map<String, String> texts() {
            Map<String, String> texts = new LinkedHashMap<>();
            own.work(problem).marks(attempt).forEach(c -> texts.put(c.mark().letter(), c.mark().typed()));
            return texts;
        }
    }

    private Paper paper(Visit v) {
        OwnSheet o = sheet(v);
        Problem problem = o.sheet().problems().stream().filter(p -> String.valueOf(p.place()).equals(v.part("place"))).findFirst().orElseThrow(() -> Trouble.of(404));
        return new Paper(o, problem, PaperAnswers.onPaper(o, problem).orElseThrow(() -> Trouble.of(404)));
    }

    private Reply fixing(Visit v, Paper paper, Map<String, String> typed, boolean looked, Optional<Message> fault) {
        OwnSheet o = paper.own();
        Problem p = paper.problem();
        Optional<SheetView> sheet = looked ? answers(v).look(o, p, typed).sheet() : answers(v).asked(o, p, paper.texts());
        TypingSheetView.Part part = new TypingSheetView.Part(p.place(), desk.exercise(p.exercise()).title(), sheet.map(SheetView::story).orElse(""),
                sheet.map(s -> PaperAnswers.named(name(p), s.boxes())).orElse(List.of()), sheet.isEmpty() ? Optional.of(Message.of("typing.stale")) : Optional.empty(), List.of());
        TypingSheetView view = new TypingSheetView(o.sheet().id(), o.sheet().number(), who(o), o.terms().assignment().id(), o.terms().assignment().title(),
                o.terms().schoolClass().name(), List.of(part), looked, fault.isEmpty(), fault, false, "", p.place());
        return Reply.page(pages.show(v.reader(), "typing-sheet", view)).as(fault.isPresent() ? WRONG : 200);
    }

    private Reply fix(Visit v) {
        Paper paper = paper(v);
        open(paper.own().terms().schoolClass());
        Map<String, String> typed = PaperAnswers.typed(v, name(paper.problem()));
        PaperAnswers.Looked looked = answers(v).look(paper.own(), paper.problem(), typed);
        Optional<Marking.Outcome.Done> done = looked.outcome().filter(Marking.Outcome.Done.class::isInstance).map(Marking.Outcome.Done.class::cast);
        if (done.isEmpty()) {
            return fixing(v, paper, typed, true, Optional.of(Message.of(looked.isBlank() ? "typing.all-blank" : "typing.again")));
        }
        if (!v.wasReadBack()) {
            return fixing(v, paper, typed, true, Optional.empty());
        }
        List<Remark> remarks = remarks(v, paper, done.get());
        if (!remarks.isEmpty()) {
            school().attempts().remark(remarks);
            own.note(v, "mark.corrected", Optional.of(paper.own().sheet().person()), paper.own().terms().schoolClass(), "Attempt " + paper.attempt().id());
        }
        return Reply.goTo("/typing/" + paper.own().sheet().id());
    }

    /** The first mark stays; what the paper says stands beside it and counts. */
    private List<Remark> remarks(Visit v, Paper paper, Marking.Outcome.Done done) {
        Words words = Words.of(paper.own().terms().schoolClass().settings().language());
        List<Remark> remarks = new ArrayList<>();
        for (Counted c : paper.own().work(paper.problem()).marks(paper.attempt())) {
            done.marks().stream().filter(m -> m.place() == c.mark().place()).findFirst().ifPresent(m -> {
                boolean same = m.verdict() == c.mark().verdict() && m.points() == c.mark().points() && m.typed().strip().equals(c.mark().typed().strip());
                if (!same) {
                    String reason = words.say("typing.fixed-reason", List.of(quoted(words, c.mark().typed()), quoted(words, m.typed())));
                    remarks.add(new Remark(0, paper.attempt().id(), m.place(), own.now(), Optional.of(v.person().id()), Remark.Cause.CORRECTED, m.verdict(), m.points(), reason).with(m));
                }
            });
        }
        return remarks;
    }

    private static String quoted(Words words, String typed) {
        String plain = typed.strip().replaceAll("\\s+", " ");
        return plain.isEmpty() ? words.say("typing.nothing", List.of()) : plain.substring(0, Math.min(LONGEST_QUOTE, plain.length()));
    }
}
