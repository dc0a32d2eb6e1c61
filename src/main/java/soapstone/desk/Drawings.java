package soapstone.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import soapstone.exercise.Given;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.expression.Node;
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
        Model model = variant.model();
        return model.figure().filter(plan -> FigureKinds.kind(plan.kind()).map(FigureKind::asCut).orElse(false)).flatMap(plan -> {
            FigureInput right = input(model, plan, variant.right(), false);
            FigureInput yours = input(model, plan, theirs, false);
            return yours.equals(right) ? Optional.empty() : FigureKinds.draw(right, yours, "cut");
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
        String[] texts = new String[amounts.length];
        for (int i = 0; i < amounts.length; i++) {
            texts[i] = Double.isFinite(amounts[i]) ? ShopPrinter.text(amounts[i], unit, model.system(), show, POINT) : "?";
            amounts[i] = unit.fromBase(amounts[i], model.system());
        }
        String letter = hideAsked ? plan.asked().get(name) : null;
        boolean printed = !hideAsked || letter == null && isTold(model, value, slot);
        return new FigureValue(amounts, unit, printed ? texts : new String[0], letter);
    }

    /** A drawing that asks prints only what the task tells: a number of the working would give the answer away. */
    private static boolean isTold(Model model, Value value, int slot) {
        long told = told(model);
        if (slot >= 0) {
            return (told & 1L << slot) != 0;
        }
        return value.reads() == 0 || value.type().isList() && (value.reads() & ~told) == 0;
    }

    /** The slots that the task tells: its givens, constants, and lines that do no more than put such in a row. */
    private static long told(Model model) {
        long told = 0;
        for (Given given : model.givens()) {
            told |= given.hidden() ? 0 : 1L << given.slot();
        }
        for (Line line : model.lines()) {
            Node node = model.program().slot(line.slot()).value();
            if (line.phase() == Line.Phase.CONSTANT || line.phase() == Line.Phase.AFTER && isRow(model.program(), node, told)) {
                told |= 1L << line.slot();
            }
        }
        return told;
    }

    private static boolean isRow(Program program, Node node, long told) {
        if (node instanceof Node.Name name) {
            return program.find(name.name()) >= 0 && (told & 1L << program.find(name.name())) != 0;
        }
        return node instanceof Node.Amount || node instanceof Node.Call call && call.name().equals("list")
                && call.with().stream().allMatch(item -> isRow(program, item, told));
    }
}
