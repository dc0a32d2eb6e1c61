package soapstone.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.expression.Value;
import soapstone.figure.FigureInput;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.figure.FigureValue;
import soapstone.page.Figure;
import soapstone.page.Html;
import soapstone.page.Words;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.variant.Variant;

/**
 * Drawings for pages, made from a run: the right one, or the one with the student's answers put in. One whose numbers are told has
 * flags at the sizes that lines of the working speak of; an asked one is for working with, and has none.
 */
public final class Drawings {

    private static final char POINT = '.';
    private static final Map<String, Drawings> SPOKEN = new ConcurrentHashMap<>();

    private final Map<String, String> words;

    private Drawings(Map<String, String> words) {
        this.words = words;
    }

    /** Drawings with the words of a language such as {@code en}; what it lacks is said in English. */
    public static Drawings in(String language) {
        return SPOKEN.computeIfAbsent(language, l -> new Drawings(Words.ofDrawings(l)));
    }

    /** The part as it is asked: what is asked shows as a letter. */
    public Optional<Figure> asked(Variant variant) {
        return asked(variant, "asked");
    }

    /** @param name that the ids in the drawing begin with, where a page has several */
    Optional<Figure> asked(Variant variant, String name) {
        Model model = variant.model();
        return model.figure().flatMap(plan -> draw(input(model, plan, variant.right(), true), null, name, List.of()));
    }

    /** The part as the answers would make it, over the right one; empty where they change nothing that is drawn. */
    Optional<Figure> asCut(Variant variant, Frame theirs) {
        return asCut(variant, theirs, "cut", new Spoken(variant.model()).sizes());
    }

    /** The same without flags, for a page with several of them. */
    Optional<Figure> asCut(Variant variant, Frame theirs, String name) {
        return asCut(variant, theirs, name, List.of());
    }

    private Optional<Figure> asCut(Variant variant, Frame theirs, String name, List<String> flags) {
        Model model = variant.model();
        return model.figure().filter(plan -> FigureKinds.kind(plan.kind()).map(FigureKind::asCut).orElse(false)).flatMap(plan -> {
            FigureInput right = input(model, plan, variant.right(), false);
            FigureInput yours = input(model, plan, theirs, false);
            return yours.equals(right) ? Optional.empty() : draw(right, yours, name, flags);
        });
    }

    /** The part with all its numbers told. */
    public Optional<Figure> told(Model model, Frame run) {
        return told(model, run, "told");
    }

    /** @param name that the ids in the drawing begin with, where a page has several */
    Optional<Figure> told(Model model, Frame run, String name) {
        return model.figure().flatMap(plan -> draw(input(model, plan, run, false), null, name, new Spoken(model).sizes()));
    }

    private Optional<Figure> draw(FigureInput right, FigureInput yoursOrNull, String name, List<String> flags) {
        return FigureKinds.draw(right, yoursOrNull, name, words, flags)
                .map(f -> new Figure(new Html(f.wide()), new Html(f.narrow()), "", name, f.flags()));
    }

    static FigureInput input(Model model, Model.FigurePlan plan, Frame run, boolean hideAsked) {
        Map<String, FigureValue> values = new LinkedHashMap<>();
        plan.with().forEach((name, value) -> values.put(name, value(model, plan, name, value, run, hideAsked)));
        return new FigureInput(plan.kind(), values, model.system());
    }

    private static FigureValue value(Model model, Model.FigurePlan plan, String name, Value value, Frame run, boolean hideAsked) {
        Type type = value.type();
        int slot = plan.slots().getOrDefault(name, -1);
        Program program = model.program();
        Unit unit = slot >= 0 && type.isAmount() ? program.slot(slot).shown() : Units.usual(type.dimension(), model.system());
        Show show = slot >= 0 ? model.shows()[slot] : Show.AUTO;
        double[] base = type.isList() ? value.list(run) : new double[] {value.number(run)};
        double[] amounts = base == null ? new double[0] : base.clone();
        String letter = hideAsked ? plan.asked().get(name) : null;
        String[] texts = new String[letter == null ? amounts.length : 0];
        Told told = hideAsked ? new Told(model, run) : null;
        for (int i = 0; i < amounts.length; i++) {
            if (letter == null) {
                boolean printed = told == null || told.tells(value, slot, amounts[i]);
                String text = Double.isFinite(amounts[i]) ? ShopPrinter.text(amounts[i], unit, model.system(), show, POINT) : "?";
                texts[i] = printed ? text : "";
            }
            amounts[i] = unit.fromBase(amounts[i], model.system());
        }
        return new FigureValue(amounts, unit, texts, letter);
    }
}
