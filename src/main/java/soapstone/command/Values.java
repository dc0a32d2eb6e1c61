package soapstone.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.DoubleUnaryOperator;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.expression.Program;
import soapstone.quantity.Show;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.variant.Answers;
import soapstone.variant.Shown;

/** Values of a run as {@code {text, value, unit}}. */
final class Values {

    private Values() {}

    static ObjectNode value(String text, JsonNode value, String unit) {
        ObjectNode node = Json.object();
        node.put("text", Json.plain(text));
        node.set("value", value);
        node.put("unit", unit);
        return node;
    }

    /** A unit as JSON names it; empty for plain numbers and labels. */
    static String unit(Unit unit) {
        return unit.equals(Units.ONE) ? "" : unit.name();
    }

    /** A named value of an exercise, in the unit in which it is shown. */
    static ObjectNode slot(Model model, Frame f, int slot) {
        return slot(model.program(), f, slot, Shown.value(model, f, slot));
    }

    private static ObjectNode slot(Program program, Frame f, int slot, String text) {
        Program.Slot s = program.slot(slot);
        return switch (s.type().kind()) {
            case LABEL -> value(text, JsonNodeFactory.instance.textNode(program.labels().text(f.number(slot))), "");
            case TRUTH -> value(text, JsonNodeFactory.instance.booleanNode(f.number(slot) == 1), "");
            case LIST -> value(text, list(f.list(slot), x -> s.shown().fromBase(x, program.system())), unit(s.shown()));
            default -> value(text, Json.number(s.shown().fromBase(f.number(slot), program.system())), unit(s.shown()));
        };
    }

    /** A named value of a formula, in the usual unit of its dimension. */
    static ObjectNode slot(Program program, Frame f, int slot) {
        return slot(program, f, slot, text(program, f, slot));
    }

    static String text(Program program, Frame f, int slot) {
        return Shown.value(program, f, slot, Show.AUTO);
    }

    private static JsonNode list(double[] values, DoubleUnaryOperator unit) {
        if (values == null) {
            return JsonNodeFactory.instance.nullNode();
        }
        ArrayNode array = Json.array();
        for (double v : values) {
            array.add(Json.number(unit.applyAsDouble(v)));
        }
        return array;
    }

    /** What a run gives at an ask: the text rounded as asked, the value exact, both in the unit beside the box. */
    static ObjectNode answer(Model model, Frame f, Ask ask) {
        String text = ask.kind() == Ask.Kind.CHOICE ? option(model, f, ask) : Shown.answer(model, f, ask);
        return value(text, answerValue(model, f, ask), ask.kind() == Ask.Kind.CHOICE ? "" : unit(ask.unit()));
    }

    private static String option(Model model, Frame f, Ask ask) {
        return ask.options().stream().filter(o -> o.label() == f.number(ask.slot())).findFirst()
                .map(o -> Shown.text(model, o.text(), f, f)).orElse(model.program().labels().text(f.number(ask.slot())));
    }

    private static JsonNode answerValue(Model model, Frame f, Ask ask) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return JsonNodeFactory.instance.textNode(model.program().labels().text(f.number(ask.slot())));
        }
        if (!Answers.isDefined(ask, f)) {
            return JsonNodeFactory.instance.nullNode();
        }
        DoubleUnaryOperator unit = x -> ask.unit().fromBase(x, model.system());
        if (!ask.isMany()) {
            double x = unit.applyAsDouble(f.number(ask.slot()));
            return ask.second() < 0 ? Json.number(x) : Json.array().add(pair(x, unit.applyAsDouble(f.number(ask.second()))));
        }
        if (ask.second() < 0) {
            return list(f.list(ask.slot()), unit);
        }
        ArrayNode points = Json.array();
        for (int i = 0; i < f.list(ask.slot()).length; i++) {
            points.add(pair(unit.applyAsDouble(f.list(ask.slot())[i]), unit.applyAsDouble(f.list(ask.second())[i])));
        }
        return points;
    }

    static ArrayNode pair(double x, double y) {
        return Json.array().add(Json.number(x)).add(Json.number(y));
    }
}
