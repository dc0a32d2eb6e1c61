package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import soapstone.exercise.Exercise;
import soapstone.lesson.CourseUnit;
import soapstone.lesson.Lesson;
import soapstone.page.AboutView;
import soapstone.page.Answer;
import soapstone.page.AnswersView;
import soapstone.page.BenchView;
import soapstone.page.Caution;
import soapstone.page.FigureKindLink;
import soapstone.page.FigureKindView;
import soapstone.page.FormulaTopic;
import soapstone.page.FormulaView;
import soapstone.page.FrontView;
import soapstone.page.LessonView;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.page.TableView;
import soapstone.page.UnitSummary;
import soapstone.page.UnitView;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.quantity.UnitSystem;
import soapstone.web.Desk;
import soapstone.web.MarksDesk;
import soapstone.web.PaperDesk;
import soapstone.web.ShopDesk;
import soapstone.web.WorkDesk;

/**
 * Answers the web out of a library. Every call looks at the library once, so that a bank which is read anew while the
 * site runs comes in whole or not at all.
 */
public final class EngineDesk implements Desk {

    static final String VERSION = "0.1.0";
    private static final String START = "spacing/bolt-holes";
    private static final long FRONT_SEED = 7;

    private final Supplier<Library> current;
    private final String language;
    private final MarksDesk marks;
    private final WorkDesk work;
    private final ShopDesk shop;
    private final PaperDesk paper;

    /** @param current gives the library as it is now */
    public EngineDesk(Supplier<Library> current) {
        this(current, "en");
    }

    private EngineDesk(Supplier<Library> current, String language) {
        this.current = current;
        this.language = language;
        this.marks = new EngineMarksDesk(current, language);
        this.work = new EngineWorkDesk(current, language);
        this.shop = new EngineShopDesk(current, language);
        this.paper = new EnginePaperDesk(current, language);
    }

    @Override
    public Desk in(String reader) {
        return reader.equals(language) ? this : new EngineDesk(current, reader);
    }

    @Override
    public MarksDesk marks() {
        return marks;
    }

    @Override
    public WorkDesk work() {
        return work;
    }

    @Override
    public ShopDesk shop() {
        return shop;
    }

    @Override
    public PaperDesk paper() {
        return paper;
    }

    @Override
    public FrontView front() {
        Library library = current.get();
        Links links = new Links(library);
        Exercise start = library.bank().exercise(START).orElseGet(() -> library.bank().exercises().values().iterator().next());
        SheetView sheet = new Sheets(library, links, language).asked(start, new SheetKey(FRONT_SEED, UnitSystem.US, ""));
        return new FrontView(links.exercise(start), sheet.figure(), units());
    }

    @Override
    public List<UnitSummary> units() {
        Library library = current.get();
        return library.course().units().stream().map(u -> new UnitSummary(u.folder(), u.title(),
                String.join(", ", u.skills().stream().map(s -> Boxes.lower(s.title())).toList()), u.lessons().size(),
                library.bank().unit(u.folder()).size())).toList();
    }

    @Override
    public Optional<UnitView> unit(String unit) {
        Library library = current.get();
        Links links = new Links(library);
        List<CourseUnit> units = library.course().units();
        for (int i = 0; i < units.size(); i++) {
            if (units.get(i).folder().equals(unit)) {
                Optional<Reference> next = i + 1 < units.size() ? Optional.of(links.unit(units.get(i + 1).folder())) : Optional.empty();
                return Optional.of(unit(library, links, units.get(i), next));
            }
        }
        return Optional.empty();
    }

    private static UnitView unit(Library library, Links links, CourseUnit u, Optional<Reference> next) {
        List<Exercise> exercises = library.bank().unit(u.folder());
        Set<String> cautions = new LinkedHashSet<>();
        exercises.forEach(e -> cautions.addAll(e.cautions()));
        Set<Reference> needs = new LinkedHashSet<>();
        u.skills().forEach(s -> s.after().forEach(a -> library.course().units().stream()
                .filter(o -> o != u && o.skills().stream().anyMatch(x -> x.name().equals(a))).forEach(o -> needs.add(links.unit(o.folder())))));
        return new UnitView(u.folder(), u.title(), "", u.skills().stream().map(soapstone.lesson.Skill::title).toList(), List.copyOf(needs),
                u.lessons().stream().flatMap(id -> library.course().lesson(id).stream()).map(links::lessonLink).toList(),
                exercises.stream().map(links::exercise).toList(), links.cautions(List.copyOf(cautions)), next);
    }

    @Override
    public Optional<String> fingerprint(String unit, String id, UnitSystem units) {
        return new Links(current.get()).find(unit, id).map(Exercise::fingerprint);
    }

    @Override
    public Optional<SheetView> sheet(String unit, String id, SheetKey key) {
        Library library = current.get();
        Links links = new Links(library);
        return links.find(unit, id).map(e -> library.reached().sheets().get(new Library.SheetAddress(e.id(), key, language),
                address -> new Sheets(library, links, language).asked(e, key)));
    }

    @Override
    public Optional<SheetView> read(String unit, String id, SheetKey key, Map<String, String> typed) {
        Library library = current.get();
        Links links = new Links(library);
        return links.find(unit, id).map(e -> new Sheets(library, links, language).read(e, key, typed));
    }

    @Override
    public Optional<SheetView> mark(String unit, String id, SheetKey key, Map<String, String> typed) {
        Library library = current.get();
        Links links = new Links(library);
        return links.find(unit, id).map(e -> new Sheets(library, links, language).mark(e, key, typed));
    }

    @Override
    public Optional<Answer> reading(String reads, String typed) {
        return Ways.parse(reads).map(as -> answer(as, typed));
    }

    private static Answer answer(ReadAs as, String typed) {
        Reading reading = ShopReader.read(typed, as);
        if (reading instanceof Reading.Again again) {
            return Answer.askedAgain(typed, again.why());
        }
        return reading instanceof Reading.Blank ? Answer.empty() : Answer.read(typed, Boxes.understood(reading));
    }

    @Override
    public List<soapstone.page.CourseUnit> lessons() {
        Library library = current.get();
        Links links = new Links(library);
        return library.course().units().stream().map(u -> new soapstone.page.CourseUnit(links.unit(u.folder()),
                u.lessons().stream().flatMap(id -> library.course().lesson(id).stream()).map(links::lessonLink).toList())).toList();
    }

    @Override
    public Optional<LessonView> lesson(String id) {
        Library library = current.get();
        Links links = new Links(library);
        return library.course().lesson(id).map(l -> new Lessons(library, links, language).view(l));
    }

    @Override
    public List<FormulaTopic> formulas() {
        Library library = current.get();
        return new Books(library, new Links(library)).topics();
    }

    @Override
    public Optional<FormulaView> formula(String name) {
        Library library = current.get();
        Books books = new Books(library, new Links(library));
        return books.find(name).map(books::formula);
    }

    @Override
    public Optional<BenchView> bench(String unit, String id, UnitSystem units, Map<String, String> typed) {
        Library library = current.get();
        Links links = new Links(library);
        return links.find(unit, id).map(e -> new Benches(library, links, language).exercise(e, units, typed));
    }

    @Override
    public Optional<BenchView> formulaBench(String name, UnitSystem units, Map<String, String> typed) {
        Library library = current.get();
        Links links = new Links(library);
        return new Books(library, links).find(name).map(f -> new Benches(library, links, language).formula(f, units, typed));
    }

    @Override
    public List<Reference> tables() {
        Library library = current.get();
        return library.bank().tables().keySet().stream().map(new Links(library)::table).toList();
    }

    @Override
    public Optional<TableView> table(String name) {
        Library library = current.get();
        return Optional.ofNullable(library.bank().tables().get(name)).map(new Books(library, new Links(library))::table);
    }

    @Override
    public List<FigureKindLink> figureKinds() {
        Library library = current.get();
        return new KindBook(library, new Links(library), language).all();
    }

    @Override
    public Optional<FigureKindView> figureKind(String name) {
        Library library = current.get();
        return new KindBook(library, new Links(library), language).kind(name);
    }

    @Override
    public List<Caution> cautions() {
        Library library = current.get();
        return new Links(library).cautions(List.copyOf(library.bank().cautions().keySet()));
    }

    @Override
    public AnswersView answers() {
        return new Spelling().view();
    }

    @Override
    public AboutView about() {
        Library library = current.get();
        int checks = library.bank().exercises().values().stream().mapToInt(e -> e.checks().size()).sum()
                + library.bank().formulas().values().stream().mapToInt(f -> f.checks().size()).sum();
        return new AboutView(VERSION, library.course().units().size(), library.course().lessons().size(), library.bank().exercises().size(),
                library.bank().formulas().size(), checks);
    }

    @Override
    public List<Reference> contents() {
        Library library = current.get();
        Links links = new Links(library);
        List<Reference> all = new ArrayList<>();
        library.course().units().forEach(u -> all.add(links.unit(u.folder())));
        library.bank().exercises().values().forEach(e -> all.add(links.reference(e)));
        library.course().inOrder().stream().map(Lesson::id).forEach(id -> all.add(links.lesson(id)));
        library.bank().formulas().keySet().forEach(f -> all.add(links.formula(f)));
        library.bank().tables().keySet().forEach(t -> all.add(links.table(t)));
        figureKinds().forEach(k -> all.add(Reference.figure(k.name(), k.title())));
        return all;
    }
}
