package soapstone.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import soapstone.page.AnswerBox;
import soapstone.page.FormView;
import soapstone.page.Pages;
import soapstone.page.SheetView;
import soapstone.page.TypingFileView;
import soapstone.page.TypingGridView;
import soapstone.page.Words;
import soapstone.school.AnswerMark;
import soapstone.school.AnswerRows;
import soapstone.school.Assignment;
import soapstone.school.Marking;
import soapstone.school.Problem;
import soapstone.school.School;
import soapstone.school.SessionRule;
import soapstone.school.SheetNumbers;
import soapstone.source.Message;

/** Answers from paper for a whole class at once: one problem in a grid, or everything in a file. All of it is kept, or nothing. */
final class TypingClassRoom implements SchoolSite.Room {

    private static final int WRONG = 422;
    private static final String TEXT = "rows";
    private static final String LIST = "list";
    private static final int LONGEST_TEXT = 23_000;
    private static final int MOST_ROWS = 1500;

    private final OwnClasses own;
    private final WorkDesk desk;
    private final Pages pages;

    TypingClassRoom(SchoolOffice office, WorkDesk desk, Pages pages) {
        this.own = new OwnClasses(office);
        this.desk = desk;
        this.pages = pages;
    }

    @Override
    public void addTo(Routes routes) {
        routes.post(Who.INSTRUCTOR, "/assignments/{assignment}/typing/form", this::form)
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/typing/file", v -> file(v, given(v), FormView.of(Map.of()), new Read(List.of(), List.of(), true), ""))
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/typing/file", Fields.Limit.ROSTER, this::look)
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/typing/file/keep", Fields.Limit.ROSTER, this::keep)
                .get(Who.INSTRUCTOR, "/assignments/{assignment}/typing/{place}", v -> grid(v, given(v), new Grid(v, given(v), false)))
                .post(Who.INSTRUCTOR, "/assignments/{assignment}/typing/{place}", Fields.Limit.CHOICE, this::take);
    }

    private School school() {
        return own.school();
    }

    private PaperAnswers answers(Visit v) {
        return new PaperAnswers(school(), desk.in(v.reader().words().language()), own.now());
    }

    private OwnClasses.Work given(Visit v) {
        OwnClasses.Work work = own.work(v);
        if (work.assignment().state() == Assignment.State.DRAFT) {
            throw Trouble.of(404);
        }
        return work;
    }

    private OwnClasses.Work open(Visit v) {
        OwnClasses.Work work = given(v);
        if (work.in().archived().isPresent()) {
            throw Trouble.of(409);
        }
        return work;
    }

    private List<PrintWork.Owned> sheets(OwnClasses.Work work) {
        return PrintWork.sheets(school(), work.in(), work.assignment(), 0);
    }

    private OwnSheet ownSheet(PrintWork.Owned owned, OwnClasses.Work work) {
        return OwnSheet.of(school(), owned.sheet(), OwnSheet.terms(school(), work.assignment().id(), owned.sheet().person()).orElseThrow(() -> Trouble.of(404)));
    }

    // One problem over the class

    /** The grid of a place, asked or looked at. */
    private final class Grid {

        private final List<TypingGridView.Row> rows = new ArrayList<>();
        private final List<PaperAnswers.Looked> looked = new ArrayList<>();
        private final Set<String> letters = new TreeSet<>();
        private final Set<String> titles = new TreeSet<>();
        private final int place;

        Grid(Visit v, OwnClasses.Work work, boolean look) {
            int problems = work.assignment().tasks().stream().mapToInt(Assignment.Task::many).sum();
            this.place = v.part("place").matches("[1-9][0-9]{0,3}") ? Integer.parseInt(v.part("place")) : 0;
            if (place < 1 || place > problems) {
                throw Trouble.of(404);
            }
            List<Line> lines = new ArrayList<>();
            for (PrintWork.Owned owned : sheets(work)) {
                OwnSheet o = ownSheet(owned, work);
                o.sheet().problems().stream().filter(p -> p.place() == place).findFirst().ifPresent(p -> lines.add(line(v, owned, o, p, look)));
            }
            lines.forEach(l -> rows.add(new TypingGridView.Row(l.owned().sheet().id(), l.owned().sheet().number(), l.owned().seat(), l.owned().name(),
                    letters.stream().map(letter -> new TypingGridView.Cell(l.boxes().stream().filter(b -> b.letter().equals(l.owned().sheet().id() + letter)).findFirst())).toList(),
                    l.refusal())));
        }

        private record Line(PrintWork.Owned owned, List<AnswerBox> boxes, Optional<Message> refusal) {}

        private Line line(Visit v, PrintWork.Owned owned, OwnSheet o, Problem p, boolean look) {
            titles.add(desk.exercise(p.exercise()).title());
            String before = String.valueOf(owned.sheet().id());
            if (PaperAnswers.onPaper(o, p).isPresent()) {
                return new Line(owned, List.of(), Optional.of(Message.of("typing.is-kept")));
            }
            PaperAnswers.Looked l = answers(v).look(o, p, look ? PaperAnswers.typed(v, before) : Map.of());
            Optional<Message> refusal = l.refusal().isPresent() || o.triesLeft(place) > 0 ? l.refusal() : Optional.of(WorkPages.noTries(o.terms()));
            looked.add(l);
            l.sheet().ifPresent(s -> s.boxes().forEach(b -> letters.add(b.letter())));
            boolean takes = refusal.isEmpty() || !l.isBlank();
            return new Line(owned, takes ? l.sheet().map(SheetView::boxes).map(b -> PaperAnswers.named(before, b)).orElse(List.of()) : List.of(), refusal);
        }

        boolean isGood() {
            return looked.stream().allMatch(PaperAnswers.Looked::isGood);
        }

        TypingGridView view(Visit v, OwnClasses.Work work, boolean shown) {
            int places = work.assignment().tasks().stream().mapToInt(Assignment.Task::many).sum();
            return new TypingGridView(work.assignment().id(), work.assignment().title(), work.in().id(), work.in().name(), place, places, String.join(" / ", titles),
                    List.copyOf(letters), rows, shown, isGood(), isGood() ? Optional.empty() : Optional.of(Message.of("typing.again")), v.form().get("late").isPresent());
        }
    }

    private Reply grid(Visit v, OwnClasses.Work work, Grid grid) {
        return Reply.page(pages.show(v.reader(), "typing-grid", grid.view(v, work, false)));
    }

    private Reply take(Visit v) {
        OwnClasses.Work work = open(v);
        Grid grid = new Grid(v, work, true);
        boolean blank = grid.looked.stream().allMatch(PaperAnswers.Looked::isBlank);
        if (grid.isGood() && !blank && v.wasReadBack()) {
            answers(v).keep(grid.looked, v.form().get("late").isPresent());
            return Reply.goTo("/assignments/" + work.assignment().id() + "/typing/" + grid.place);
        }
        return Reply.page(pages.show(v.reader(), "typing-grid", grid.view(v, work, true))).as(grid.isGood() ? 200 : WRONG);
    }

    // A file

    private Reply form(Visit v) {
        OwnClasses.Work work = given(v);
        Leaving.count(school(), v.person().id(), own.now());
        own.left(v, "assignment.form", work.in(), work.assignment().title());
        List<AnswerRows.Open> rows = new ArrayList<>();
        for (PrintWork.Owned owned : sheets(work)) {
            OwnSheet o = ownSheet(owned, work);
            for (Problem p : o.sheet().problems()) {
                if (PaperAnswers.onPaper(o, p).isEmpty()) {
                    answers(v).asked(o, p, Map.of()).ifPresent(s -> s.boxes().forEach(b -> rows.add(new AnswerRows.Open(owned.sheet().number(), owned.seat(), owned.name(),
                            p.place(), b.letter(), b.unit(), ""))));
                }
            }
        }
        return Reply.download("text/csv;charset=utf-8", "answers-" + work.assignment().id() + ".csv", AnswerRows.form(rows));
    }

    /** What a file says, and the problems that it fills in. */
    private record Read(List<TypingFileView.Row> rows, List<PaperAnswers.Looked> looked, boolean good) {}

    private Reply file(Visit v, OwnClasses.Work work, FormView form, Read read, String seen) {
        Optional<Message> kept = v.query().get("kept").filter(k -> k.matches("[0-9]{1,5}")).map(k -> Message.of("typing.kept-problems", k));
        return Reply.page(pages.show(v.reader(), "typing-file", new TypingFileView(work.assignment().id(), work.assignment().title(), work.in().id(), work.in().name(), form,
                read.rows(), read.good(), seen, kept)));
    }

    /** The text of the form: what came in a file, else what stands in the field. */
    private static String text(Visit v, FilledForm form) {
        Optional<byte[]> sent = v.form().file(LIST);
        Optional<String> text = sent.flatMap(Fields::text);
        if (sent.isPresent() && text.isEmpty()) {
            form.fault(LIST, Message.of("class-roster.not-utf8"));
        }
        return text.orElseGet(() -> v.form().text(TEXT)).replace("\r\n", "\n").strip();
    }

    private Reply look(Visit v) {
        OwnClasses.Work work = open(v);
        FilledForm form = new FilledForm(v.form());
        AnswerRows.Read rows = rows(form, text(v, form));
        String compact = compact(rows.rows());
        if (form.isGood() && compact.length() > LONGEST_TEXT) {
            form.fault(LIST, Message.of("typing.file-long", String.valueOf(rows.rows().size())));
        }
        FormView shown = new FormView(Map.of(TEXT, compact), form.view().faults());
        if (!form.isGood()) {
            return file(v, work, shown, new Read(List.of(), List.of(), false), "").as(WRONG);
        }
        Read read = read(v, work, rows.rows());
        return file(v, work, shown, read, read.good() ? SessionRule.hash(compact) : "").as(read.good() ? 200 : WRONG);
    }

    private static AnswerRows.Read rows(FilledForm form, String text) {
        AnswerRows.Read read = AnswerRows.read(text);
        if (!read.missing().isEmpty()) {
            form.fault(LIST, Message.of("typing.no-heads", String.join(", ", read.missing())));
        } else if (read.broken() > 0) {
            form.fault(LIST, Message.of("typing.broken", String.valueOf(read.broken())));
        } else if (read.rows().isEmpty()) {
            form.fault(LIST, Message.of("typing.no-rows"));
        } else if (read.rows().size() > MOST_ROWS) {
            form.fault(LIST, Message.of("typing.file-long", String.valueOf(read.rows().size())));
        }
        return read;
    }

    /** Only what is read of it, so that a form takes it; it can be mended by hand. */
    private static String compact(List<AnswerRows.Filled> rows) {
        StringBuilder text = new StringBuilder("sheet,problem,letter,answer\n");
        rows.forEach(r -> text.append(cell(r.sheet())).append(',').append(cell(r.problem())).append(',').append(cell(r.letter())).append(',').append(cell(r.answer())).append('\n'));
        return text.toString().strip();
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == ';' || c == '\t' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private Reply keep(Visit v) {
        OwnClasses.Work work = open(v);
        FilledForm form = new FilledForm(v.form());
        String text = text(v, form);
        AnswerRows.Read rows = rows(form, text);
        FormView shown = new FormView(Map.of(TEXT, text), form.view().faults());
        if (!form.isGood()) {
            return file(v, work, shown, new Read(List.of(), List.of(), false), "").as(WRONG);
        }
        Read read = read(v, work, rows.rows());
        if (!read.good() || !SessionRule.same(SessionRule.hash(text), v.form().text("seen"))) {
            return file(v, work, shown, read, read.good() ? SessionRule.hash(text) : "").as(read.good() ? 200 : WRONG);
        }
        int kept = answers(v).keep(read.looked(), v.form().get("late").isPresent());
        return Reply.goTo("/assignments/" + work.assignment().id() + "/typing/file?kept=" + kept);
    }

    /** A row with the sheet and the problem that it names, or why there is none. */
    private record Placed(AnswerRows.Filled row, Optional<PrintWork.Owned> owned, Optional<Problem> problem, Optional<Message> fault) {}

    private Read read(Visit v, OwnClasses.Work work, List<AnswerRows.Filled> rows) {
        Map<String, PrintWork.Owned> byNumber = new HashMap<>();
        sheets(work).forEach(o -> byNumber.put(o.sheet().number(), o));
        List<Placed> placed = rows.stream().map(r -> placed(r, byNumber)).toList();
        Map<Long, PaperAnswers.Looked> looked = new LinkedHashMap<>();
        Map<Long, Map<String, String>> typed = new LinkedHashMap<>();
        placed.forEach(p -> p.problem().ifPresent(x -> typed.computeIfAbsent(x.id(), k -> new LinkedHashMap<>()).putIfAbsent(p.row().letter(), p.row().answer())));
        for (Placed p : placed) {
            p.problem().ifPresent(x -> looked.computeIfAbsent(x.id(), k -> answers(v).look(ownSheet(p.owned().orElseThrow(), work), x, typed.get(x.id()))));
        }
        Set<String> once = new java.util.HashSet<>();
        List<TypingFileView.Row> shown = placed.stream().map(p -> shown(v.reader().words(), p, p.problem().map(x -> looked.get(x.id())), once)).toList();
        return new Read(shown, List.copyOf(looked.values()), shown.stream().allMatch(r -> r.fault().isEmpty()));
    }

    private Placed placed(AnswerRows.Filled row, Map<String, PrintWork.Owned> byNumber) {
        SheetNumbers.Typed number = SheetNumbers.read(row.sheet());
        Optional<PrintWork.Owned> owned = Optional.ofNullable(byNumber.get(number.number()));
        if (owned.isEmpty()) {
            return new Placed(row, owned, Optional.empty(), Optional.of(Message.of(number.sound() ? "typing.not-here" : "typing.misread")));
        }
        Optional<Problem> problem = owned.get().sheet().problems().stream().filter(p -> String.valueOf(p.place()).equals(row.problem().strip())).findFirst();
        return new Placed(row, owned, problem, problem.isPresent() ? Optional.empty()
                : Optional.of(Message.of("typing.no-place", String.valueOf(owned.get().sheet().problems().size()))));
    }

    private static TypingFileView.Row shown(Words words, Placed p, Optional<PaperAnswers.Looked> looked, Set<String> once) {
        Optional<Message> fault = p.fault().isPresent() ? p.fault() : looked.flatMap(l -> fault(p.row(), l, once));
        Optional<Message> says = fault.isPresent() ? Optional.empty() : looked.flatMap(PaperAnswers.Looked::outcome).filter(Marking.Outcome.Done.class::isInstance)
                .map(Marking.Outcome.Done.class::cast).flatMap(d -> d.marks().stream().filter(m -> m.letter().equals(p.row().letter())).findFirst()).map(TypingClassRoom::verdict);
        return new TypingFileView.Row(p.row().line(), p.row().sheet(), p.owned().map(PrintWork.Owned::who).orElse(""), p.row().problem(), p.row().letter(), p.row().answer(), says, fault);
    }

    private static Message verdict(AnswerMark mark) {
        return Message.of("typing.verdict", "@school.verdict-" + Words.key(mark.verdict()).replace('_', '-'));
    }

    private static Optional<Message> fault(AnswerRows.Filled row, PaperAnswers.Looked l, Set<String> once) {
        if (!l.texts().containsKey(row.letter())) {
            return Optional.of(Message.of("typing.no-letter", String.join(", ", l.texts().keySet())));
        }
        if (!once.add(l.problem().id() + " " + row.letter())) {
            return Optional.of(Message.of("typing.twice"));
        }
        if (l.refusal().isPresent()) {
            return l.refusal();
        }
        return l.outcome().filter(Marking.Outcome.AskedAgain.class::isInstance).map(Marking.Outcome.AskedAgain.class::cast)
                .flatMap(a -> a.boxes().stream().filter(b -> b.letter().equals(row.letter())).findFirst()).map(Marking.Again::why);
    }
}
