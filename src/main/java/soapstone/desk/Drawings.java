package soapstone.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.variant.Variant;

/** Drawings for pages, made from a run: the right one, or the one with the student's answers put in. */
public final class Drawings {

    private static final char POINT = '.';

    /** The part as it is asked: what is asked shows as a letter. */
    public Optional<Figure> asked(Variant variant) {
        Model model = variant.model();
        return model.figure().flatMap(plan -> FigureKinds.draw(input(model, plan, variant.right(), true), null, "asked")).map(Drawings::page);
    }

    /** The part as the answers would make it, over the right one; empty where they change nothing that is drawn. */
    Optional<Figure> asCut(Variant variant, Frame theirs) {
        return asCut(variant, theirs, "cut");
    }

    /** @param name that the ids in the drawing begin with, where a page has several */
    Optional<Figure> asCut(Variant variant, Frame theirs, String name) {
        Model model = variant.model();
        return model.figure().filter(plan -> FigureKinds.kind(plan.kind()).map(FigureKind::asCut).orElse(false)).flatMap(plan -> {
            FigureInput right = input(model, plan, variant.right(), false);
            FigureInput yours = input(model, plan, theirs, false);
            return yours.equals(right) ? Optional.empty() : FigureKinds.draw(right, yours, name);
        }).map(Drawings::page);
    }

    /** The part with all its numbers told. */
    public Optional<Figure> told(Model model, Frame run) {
        return model.figure().flatMap(plan -> FigureKinds.draw(input(model, plan, run, false), null, "told")).map(Drawings::page);
    }

    private static Figure page(soapstone.figure.Figure figure) {
        return new Figure(new Html(figure.wide()), new Html(figure.narrow()), "");
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
