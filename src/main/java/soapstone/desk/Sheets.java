package soapstone.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.exercise.Ask;
import soapstone.exercise.Check;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.exercise.Model;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.expression.Frame;
import soapstone.mark.AnswerReader;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.page.AnswerBox;
import soapstone.page.AsCut;
import soapstone.page.CheckSource;
import soapstone.page.Explanation;
import soapstone.page.Feedback;
import soapstone.page.Figure;
import soapstone.page.Reference;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.quantity.Reading;
import soapstone.source.Message;
import soapstone.variant.Drawer;
import soapstone.variant.Shown;
import soapstone.variant.Variant;
import soapstone.web.Desk;

/** Makes sheets: asked, read back, marked. */
final class Sheets {

    static final char POINT = '.';
    private static final int MOST_SOURCES = 4;

    private final Library library;
    private final Links links;
    private final char decimalMark;
    private final Drawings drawings;

    Sheets(Library library, Links links, String language) {
        this(library, links, language, POINT);
    }

    /**
     * @param language    of the words in drawings
     * @param decimalMark of typed answers
     */
    Sheets(Library library, Links links, String language, char decimalMark) {
        this.drawings = Drawings.in(language);
        this.library = library;
        this.links = links;
        this.decimalMark = decimalMark;
    }

    private Boxes boxes(Variant variant) {
        return new Boxes(links, variant, decimalMark);
    }

    private static SheetKey key(Variant variant) {
        return new SheetKey(variant.seed(), variant.system(), variant.exercise().fingerprint());
    }

    /** A draw with what was typed before standing in its boxes. */
    SheetView draft(Variant variant, Map<String, String> texts) {
        Boxes boxes = boxes(variant);
        List<AnswerBox> all = variant.model().asks().stream().map(a -> boxes.box(a, soapstone.page.Answer.typed(texts.getOrDefault(a.letter(), "")))).toList();
        return view(variant, key(variant), SheetView.Stage.ASKED, all, Optional.empty());
    }

    /** A draw with every answer read back. */
    SheetView read(Variant variant, Map<String, String> texts) {
        return readBack(variant, key(variant), typed(variant.model(), texts, decimalMark));
    }

    /** A draw with every answer marked; only read back where one must be asked again. */
    SheetView marked(Variant variant, Map<String, String> texts, MarkRules rules) {
        return mark(variant, key(variant), typed(variant.model(), texts, decimalMark), rules);
    }

    Variant variant(Exercise exercise, SheetKey key) {
        return Drawer.draw(exercise, key.units(), key.seed())
                .orElseThrow(() -> new Desk.NoDraw(exercise.id() + " has no fair draw for seed " + key.seed()));
    }

    SheetView asked(Exercise exercise, SheetKey key) {
        return asked(variant(exercise, key), key);
    }

    /** A draw, not answered yet. */
    SheetView asked(Variant variant) {
        return asked(variant, key(variant));
    }

    private SheetView asked(Variant variant, SheetKey key) {
        Boxes boxes = boxes(variant);
        List<AnswerBox> empty = variant.model().asks().stream().map(a -> boxes.box(a, soapstone.page.Answer.empty())).toList();
        return view(variant, key, SheetView.Stage.ASKED, empty, Optional.empty());
    }

    SheetView read(Exercise exercise, SheetKey key, Map<String, String> typed) {
        Variant variant = variant(exercise, key);
        return readBack(variant, key, typed(variant.model(), typed));
    }

    private SheetView readBack(Variant variant, SheetKey key, List<Typed> typed) {
        Boxes boxes = boxes(variant);
        List<AnswerBox> all = new ArrayList<>();
        List<Ask> asks = variant.model().asks();
        for (int i = 0; i < asks.size(); i++) {
            all.add(boxes.box(asks.get(i), boxes.read(asks.get(i), typed.get(i))));
        }
        return view(variant, key, SheetView.Stage.READ, all, Optional.empty());
    }

    static List<Typed> typed(Model model, Map<String, String> texts) {
        return typed(model, texts, POINT);
    }

    static List<Typed> typed(Model model, Map<String, String> texts, char decimalMark) {
        return model.asks().stream().map(a -> AnswerReader.read(model, a, texts.getOrDefault(a.letter(), ""), decimalMark)).toList();
    }

    SheetView mark(Exercise exercise, SheetKey key, Map<String, String> texts) {
        Variant variant = variant(exercise, key);
        return mark(variant, key, typed(variant.model(), texts), MarkRules.USUAL);
    }

    private SheetView mark(Variant variant, SheetKey key, List<Typed> typed, MarkRules rules) {
        if (typed.stream().anyMatch(t -> t.reading() instanceof Reading.Again)) {
            return readBack(variant, key, typed);
        }
        Marked marked = new Marker(variant, rules).mark(typed);
        Boxes boxes = boxes(variant);
        List<AnswerBox> all = marked.asks().stream().map(m -> boxes.box(m.ask(), boxes.marked(m, marked))).toList();
        return view(variant, key, SheetView.Stage.MARKED, all, Optional.of(feedback(variant, marked, boxes)));
    }

    private SheetView view(Variant variant, SheetKey key, SheetView.Stage stage, List<AnswerBox> boxes, Optional<Feedback> feedback) {
        Exercise exercise = variant.exercise();
        Model model = variant.model();
        Frame right = variant.right();
        boolean changed = !key.fingerprint().isEmpty() && !key.fingerprint().equals(exercise.fingerprint());
        List<String> notes = model.notes().stream().map(n -> Shown.text(model, n, right, right)).toList();
        Optional<Figure> figure = drawings.asked(variant);
        return new SheetView(links.exercise(exercise), links.unit(exercise.unit()), new SheetKey(key.seed(), key.units(), exercise.fingerprint()),
                changed, stage, Shown.text(model, model.story(), right, right), notes,
                EngineShopDesk.told(library.bank(), variant.conventions()), links.cautions(exercise.cautions()), figure, boxes,
                sources(exercise), feedback);
    }

    /** The documents that an exercise and its formulas are checked against; our own values are no documents. */
    private List<CheckSource> sources(Exercise exercise) {
        Map<String, CheckSource> sources = new LinkedHashMap<>();
        List<Check> checks = new ArrayList<>(exercise.checks());
        for (Formula formula : library.formulasOf(exercise)) {
            checks.addAll(formula.checks());
        }
        for (Check check : checks) {
            if (check.kind() != Check.Kind.OWN && !check.misprint() && sources.size() < MOST_SOURCES) {
                sources.putIfAbsent(check.source(), Links.source(check));
            }
        }
        return List.copyOf(sources.values());
    }

    private Feedback feedback(Variant variant, Marked marked, Boxes boxes) {
        int right = (int) marked.asks().stream().filter(m -> m.verdict().isRight() || m.verdict() == Verdict.CARRIED).count();
        Lines lines = new Lines(library, variant.model());
        if (marked.isAllRight()) {
            Optional<Figure> told = drawings.told(variant.model(), variant.right());
            return new Feedback(right, marked.asks().size(), List.of(), Optional.empty(), told, lines.pointingAt(told).right(variant.right()),
                    readNext(variant, marked));
        }
        PutIn putIn = putIn(variant, marked);
        Frame theirs = marked.run(putIn.right().over(putIn.slipsChange()).over(putIn.typed()));
        // The part is cut to what was typed, whatever stands behind it.
        Frame cut = marked.run(marked.typed().over(putIn.right()).over(putIn.slipsChange()));
        Optional<AsCut> asCut = asCut(variant, marked, cut);
        Optional<Figure> drawn = asCut.flatMap(AsCut::figure);
        Optional<Figure> told = drawn.isPresent() ? Optional.empty() : drawings.told(variant.model(), variant.right());
        return new Feedback(right, marked.asks().size(), explanations(variant, marked, boxes), asCut, told,
                lines.pointingAt(drawn.or(() -> told)).beside(variant.right(), theirs, putIn.slips(), putIn.typed().mask()), readNext(variant, marked));
    }

    /**
     * What is put into the working to show it as the answers have it.
     *
     * @param slips       behind the answers
     * @param slipsChange all of them at once
     * @param typed       the typed values where no slip is behind them
     * @param right       answers that are right, which a slip elsewhere does not move
     */
    private record PutIn(List<Slip> slips, Change slipsChange, Change typed, Change right) {}

    private static PutIn putIn(Variant variant, Marked marked) {
        List<Slip> slips = new ArrayList<>();
        Change change = Change.NONE;
        Change right = Change.NONE;
        long covered = 0;
        for (AskMark mark : marked.asks()) {
            right = mark.verdict().isRight() ? held(variant.right(), mark.ask()).over(right) : right;
            Fit fit = mark.verdict() == Verdict.SLIP && !mark.fits().isEmpty() ? mark.fits().get(0) : null;
            boolean explained = fit != null && !fit.change().isEmpty();
            if (explained) {
                slips.addAll(fit.slips());
                change = change.over(fit.change());
            }
            covered |= explained || mark.verdict() == Verdict.CARRIED ? 1L << mark.ask().slot() : 0;
        }
        return new PutIn(slips, change, marked.typed().only(~covered), right);
    }

    /** The values of a run at an ask, held whatever else is put in. */
    private static Change held(Frame run, Ask ask) {
        Change first = held(run, ask.slot(), ask.isMany());
        return ask.second() < 0 ? first : held(run, ask.second(), ask.isMany()).over(first);
    }

    private static Change held(Frame run, int slot, boolean many) {
        return many ? Change.fixed(slot, run.list(slot)) : Change.fixed(slot, run.number(slot));
    }

    private List<Explanation> explanations(Variant variant, Marked marked, Boxes boxes) {
        Map<String, Explanation> all = new LinkedHashMap<>();
        for (AskMark mark : marked.asks()) {
            if (mark.verdict() == Verdict.SLIP) {
                String name = String.join(" ", mark.fits().stream().map(Fit::name).toList());
                Explanation before = all.get(name);
                List<String> letters = new ArrayList<>(before == null ? List.of() : before.letters());
                letters.add(mark.ask().letter());
                all.put(name, new Explanation(letters, title(mark, boxes), says(variant, marked, mark), links.remedy(mark.fits().get(0).family())));
            }
        }
        return List.copyOf(all.values());
    }

    private Message title(AskMark mark, Boxes boxes) {
        List<String> titles = mark.fits().stream().map(boxes::title).distinct().toList();
        return Boxes.verbatim(String.join(" / ", titles));
    }

    private List<Message> says(Variant variant, Marked marked, AskMark mark) {
        List<Message> says = new ArrayList<>();
        for (Fit fit : mark.fits()) {
            if (fit.say() != null) {
                says.add(fit.say());
            }
            // On carried values the numbers are the student's own, as they stand on the paper.
            Frame theirs = marked.run(fit.carried() ? fit.change().over(marked.typed()) : fit.change());
            for (Slip slip : fit.slips()) {
                says.add(Boxes.verbatim(Shown.text(variant.model(), slip.say(), variant.right(), theirs)));
            }
        }
        return says;
    }

    private Optional<AsCut> asCut(Variant variant, Marked marked, Frame cut) {
        Optional<Figure> figure = marked.typed().isEmpty() ? Optional.empty() : drawings.asCut(variant, cut);
        Frame typed = marked.asCut();
        List<Message> consequences = marked.consequence()
                .map(c -> List.of(Boxes.verbatim(Shown.text(variant.model(), c.say(), typed, typed)))).orElse(List.of());
        return figure.isEmpty() && consequences.isEmpty() ? Optional.empty() : Optional.of(new AsCut(figure, consequences));
    }

    /** The remedy of each slip first, then a lesson of the skill, then the formulas and tables that the working uses. */
    private List<Reference> readNext(Variant variant, Marked marked) {
        Exercise exercise = variant.exercise();
        Set<Reference> next = new LinkedHashSet<>();
        for (AskMark mark : marked.asks()) {
            mark.families().forEach(f -> links.remedy(f).ifPresent(next::add));
        }
        library.course().inOrder().stream().filter(l -> l.practice().contains(exercise.id()) || l.skill().equals(exercise.skill()))
                .limit(2).forEach(l -> next.add(links.lesson(l.id())));
        library.formulasOf(exercise).stream().limit(3).forEach(f -> next.add(links.formula(f.name())));
        library.tablesOf(exercise).forEach(t -> next.add(links.table(t)));
        return List.copyOf(next);
    }
}
