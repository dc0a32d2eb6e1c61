package soapstone.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;

/**
 * View models to whole pages. Safe for many threads; templates are read when they are first used and kept.
 *
 * <p>A template sees the view as {@code v} and these methods, no others: {@code w(key, places…)} says a sentence,
 * {@code b(key, places…)} says it with the places in bold, {@code q(key, places…)} says it with the bank's words in the places,
 * {@code say(message)} says a message, {@code keep(text)} holds
 * fractions and units together, {@code f(text)} does that and sets fractions for paper, {@code to(reference)} and {@code bench(reference, units)} give addresses; every other address begins with
 * {@code ${base}}. What the bank says is English: on a page in another language an element that holds nothing else has {@code ${bank}}, one that
 * holds a message {@code ${tongue(message)}}. Every form that changes something holds {@code <@layout.key/>}.
 */
public final class Pages {

    /** Two letters beside each other. */
    private static final Pattern WORD = Pattern.compile("\\p{L}{2}");
    private static final int MOST_SHEETS = 200;
    private static final String FOLDER = "/soapstone/templates";

    /** Characters for private use: taken out of whatever is put in, so that only {@link #marked} sets them. */
    private static final String OPEN = "\uE000";
    private static final String CLOSE = "\uE001";

    private final Configuration templates;
    private final String assets;
    private final Recent<Shown, Page> sheets = new Recent<>(MOST_SHEETS);

    /**
     * @param assets where the site's own style sheets, fonts and scripts are found, ending in a slash; a link to each of
     *               these is relative to it
     * @param drawings whether there is a style sheet for drawings
     */
    public Pages(String assets, boolean drawings) {
        this.assets = assets;
        this.templates = locked();
        templates.setSharedVariable("drawings", new SimpleScalar(drawings ? "drawing.css" : ""));
    }

    /** Templates can show what they are given and do nothing else. */
    private static Configuration locked() {
        Configuration c = new Configuration(Configuration.VERSION_2_3_34);
        c.setTemplateLoader(new ClassTemplateLoader(Pages.class, FOLDER));
        c.setObjectWrapper(new ViewWrapper());
        c.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        c.setAPIBuiltinEnabled(false);
        c.setNumberFormat("computer");
        c.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        c.setLogTemplateExceptions(false);
        c.setWrapUncheckedExceptions(true);
        c.setDefaultEncoding(StandardCharsets.UTF_8.name());
        c.setLocale(Locale.ROOT);
        c.setLocalizedLookup(false);
        c.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        return c;
    }

    public Page front(Reader reader, FrontView view) {
        return render(reader, "front", view);
    }

    public Page units(Reader reader, List<UnitSummary> view) {
        return render(reader, "units", view);
    }

    public Page unit(Reader reader, UnitView view) {
        return render(reader, "unit", view);
    }

    /** A sheet that is asked and was shown a moment ago is not made anew: the same view gives the same page. */
    public Page sheet(Reader reader, SheetView view) {
        boolean kept = view.stage() == SheetView.Stage.ASKED && reader.signed().isEmpty();
        return kept ? sheets.get(new Shown(view, reader.words().language(), reader.place().base()), shown -> make(reader, view)) : make(reader, view);
    }

    /** A view by its identity: comparing all that is in it would cost more than to make the page. */
    private record Shown(SheetView view, String language, String base) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Shown that && view == that.view && language.equals(that.language) && base.equals(that.base);
        }

        @Override
        public int hashCode() {
            return (System.identityHashCode(view) * 31 + language.hashCode()) * 31 + base.hashCode();
        }
    }

    private Page make(Reader reader, SheetView view) {
        String unit = view.exercise().unit();
        String id = view.exercise().id();
        UnitSystem other = view.key().units() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
        String base = reader.place().base();
        String same = Address.sheet(unit, id, view.key());
        // A kept page is for everybody: what else one of them had in the address stays out of it.
        return render(reader.at(same), "sheet", view, Map.of(
                "keeps", base + Address.practice(unit, id, view.key()),
                "keepsSigned", base + Address.practice(unit, id, view.key(), view.boxes()),
                "cells", BlockCell.of(reader.words(), view),
                "same", base + same,
                "fresh", base + Address.exercise(unit, id, view.key().units()),
                "otherUnits", base + Address.exercise(unit, id, other),
                "own", base + Address.bench(Reference.exercise(unit, id, view.exercise().title()), view.key().units())));
    }

    public Page lessons(Reader reader, List<CourseUnit> view) {
        return render(reader, "lessons", view);
    }

    public Page lesson(Reader reader, LessonView view) {
        return render(reader, "lesson", view);
    }

    public Page formulas(Reader reader, List<FormulaTopic> view) {
        return render(reader, "formulas", view);
    }

    public Page formula(Reader reader, FormulaView view) {
        Reference self = Reference.formula(view.name(), view.says());
        return render(reader, "formula", view, Map.of("own", reader.place().base() + Address.bench(self, UnitSystem.US)));
    }

    public Page bench(Reader reader, BenchView view) {
        UnitSystem other = view.units() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
        return render(reader, "bench", view, Map.of(
                "here", reader.place().base() + Address.bench(view.of(), view.units()),
                "otherUnits", reader.place().base() + Address.bench(view.of(), other)));
    }

    public Page tables(Reader reader, List<Reference> view) {
        return render(reader, "tables", view);
    }

    public Page table(Reader reader, TableView view) {
        return render(reader, "table", view);
    }

    public Page figureKinds(Reader reader, List<FigureKindLink> view) {
        return render(reader, "figure-kinds", view);
    }

    public Page figureKind(Reader reader, FigureKindView view) {
        return render(reader, "figure-kind", view);
    }

    public Page cautions(Reader reader, List<Caution> view) {
        return render(reader, "cautions", view);
    }

    public Page answers(Reader reader, AnswersView view) {
        return render(reader, "answers", view);
    }

    public Page about(Reader reader, AboutView view) {
        return render(reader, "about", view);
    }

    /**
     * A page of the school.
     *
     * @param template its name without ending; it sees the view as {@code v} and the reader as {@code reader}
     */
    public Page show(Reader reader, String template, Record view) {
        return render(reader, template, view);
    }

    /** The page for everything that went wrong. */
    public Page trouble(Reader reader, TroubleView view) {
        return render(reader, "trouble", view);
    }

    /**
     * What a page says under the box, as plain text: for the script that says it while one types.
     *
     * @param marking whether the box stands on a sheet, where answers are marked later
     */
    public String reading(Words words, Answer answer, boolean marking) {
        List<String> parts = new ArrayList<>();
        boolean read = answer.state() == Answer.State.READ;
        if (read) {
            parts.add(words.say("answer.reads", List.of(answer.readAs())));
        }
        if (read && marking) {
            parts.add(words.say("answer.not-marked", List.of()));
        }
        if (!answer.isReadable()) {
            parts.add(words.say("answer.again", List.of()));
        }
        answer.says().forEach(sentence -> parts.add(words.say(sentence)));
        return Shop.keepTogether(String.join(" ", parts));
    }

    private Page render(Reader reader, String template, Object view) {
        return render(reader, template, view, Map.of());
    }

    private Page render(Reader reader, String template, Object view, Map<String, ?> more) {
        Map<String, Object> root = new HashMap<>(more);
        root.put("v", view);
        root.put("assets", assets);
        root.put("language", reader.words().language());
        root.put("reader", reader);
        root.put("base", reader.place().base());
        root.putAll(methods(reader.words(), reader.place().base()));
        Page.Sink out = new Page.Sink();
        try {
            root.put("bank", tongue(reader.words(), true));
            templates.getTemplate(template + ".ftlh").process(root, out);
        } catch (IOException e) {
            throw new UncheckedIOException(template, e);
        } catch (TemplateException e) {
            throw new IllegalStateException("template " + template, e);
        }
        return out.page();
    }

    private static Map<String, TemplateMethodModelEx> methods(Words words, String base) {
        return Map.of(
                "w", given -> given.size() == 1 ? words.kept(text(given, 0)) : Shop.keepTogether(words.say(text(given, 0), texts(given, 1))),
                "b", given -> marked(words, text(given, 0), texts(given, 1), place -> true, "<b>", "</b>"),
                "q", given -> english(words, text(given, 0), texts(given, 1)),
                "tongue", given -> tongue(words, Words.isVerbatim(part(given, 0, Message.class))),
                "say", given -> Shop.keepTogether(words.say(part(given, 0, Message.class))),
                "keep", given -> Shop.keepTogether(text(given, 0)),
                "f", given -> HTMLOutputFormat.INSTANCE.fromMarkup(Fractions.markup(Shop.keepTogether(text(given, 0)))),
                "to", given -> base + Address.of(part(given, 0, Reference.class)),
                "bench", given -> base + Address.bench(part(given, 0, Reference.class), UnitSystem.valueOf(text(given, 1))),
                "practise", given -> base + exercise(part(given, 0, ExerciseLink.class)));
    }

    private static String exercise(ExerciseLink link) {
        return Address.exercise(link.unit(), link.id());
    }

    /** Says in an element's tag that its words are the bank's, where the page is in another language. */
    private static TemplateModel tongue(Words words, boolean bank) throws TemplateModelException {
        return HTMLOutputFormat.INSTANCE.fromMarkup(bank && !words.isEnglish() ? " lang=\"en\"" : "");
    }

    /**
     * A sentence whose places hold the bank's words; a number or a letter belongs to every language. It stands in an element of its own: in a
     * link or button that lays its parts out side by side it would come apart.
     */
    private static TemplateModel english(Words words, String key, List<String> places) throws TemplateModelException {
        if (words.isEnglish()) {
            return HTMLOutputFormat.INSTANCE.fromMarkup(HTMLOutputFormat.INSTANCE.escapePlainText(Shop.keepTogether(words.say(key, places))));
        }
        TemplateHTMLOutputModel sentence = marked(words, key, places, WORD.asPredicate(), "<span lang=\"en\">", "</span>");
        return HTMLOutputFormat.INSTANCE.fromMarkup("<span>" + HTMLOutputFormat.INSTANCE.getMarkupString(sentence) + "</span>");
    }

    /** A sentence with its places between tags, as markup. The marks for the tags go through the escaping untouched. */
    private static TemplateHTMLOutputModel marked(Words words, String key, List<String> places, Predicate<String> which, String before, String behind)
            throws TemplateModelException {
        List<String> marked = places.stream().map(p -> which.test(p) ? OPEN + p + CLOSE : p).toList();
        String escaped = HTMLOutputFormat.INSTANCE.escapePlainText(Shop.keepTogether(words.say(key, marked)));
        return HTMLOutputFormat.INSTANCE.fromMarkup(escaped.replace(OPEN, before).replace(CLOSE, behind));
    }

    private static String text(List<?> given, int at) throws TemplateModelException {
        Object model = given.get(at);
        if (model instanceof TemplateScalarModel scalar) {
            return scalar.getAsString().replace(OPEN, "").replace(CLOSE, "");
        }
        return String.valueOf(model);
    }

    private static List<String> texts(List<?> given, int from) throws TemplateModelException {
        List<String> texts = new ArrayList<>(given.size());
        for (int i = from; i < given.size(); i++) {
            texts.add(text(given, i));
        }
        return texts;
    }

    private static <T extends Record> T part(List<?> given, int at, Class<T> type) throws TemplateModelException {
        Optional<T> part = ViewWrapper.behind(given.get(at), type);
        return part.orElseThrow(() -> new TemplateModelException("a " + type.getSimpleName() + " is wanted here"));
    }
}
