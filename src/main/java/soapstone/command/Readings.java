package soapstone.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import soapstone.quantity.Reading;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;

/** Readings as JSON. */
final class Readings {

    private Readings() {}

    /** {@code {text, value, unit}}: one amount in the unit typed, several in the unit asked for; null when nothing was understood. */
    static JsonNode understood(Reading reading, Unit asked, UnitSystem system) {
        if (reading instanceof Reading.One one) {
            return Values.value(one.text(), Json.number(one.amount()), Values.unit(one.unit()));
        } else if (reading instanceof Reading.Many many) {
            return Values.value(text(many.items()), list(many.items(), asked, system), Values.unit(asked));
        } else if (reading instanceof Reading.Points points) {
            return Values.value(text(points), list(points, asked, system), Values.unit(asked));
        }
        return JsonNodeFactory.instance.nullNode();
    }

    private static String text(List<Reading.One> items) {
        return String.join("; ", items.stream().map(Reading.One::text).toList());
    }

    private static String text(Reading.Points points) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < points.x().size(); i++) {
            text.append(i == 0 ? "" : "; ").append('(').append(points.x().get(i).text()).append(", ").append(points.y().get(i).text()).append(')');
        }
        return text.toString();
    }

    private static ArrayNode list(List<Reading.One> items, Unit asked, UnitSystem system) {
        ArrayNode array = Json.array();
        items.forEach(i -> array.add(Json.number(asked.fromBase(i.base(), system))));
        return array;
    }

    private static ArrayNode list(Reading.Points points, Unit asked, UnitSystem system) {
        ArrayNode array = Json.array();
        for (int i = 0; i < points.x().size(); i++) {
            array.add(Values.pair(asked.fromBase(points.x().get(i).base(), system), asked.fromBase(points.y().get(i).base(), system)));
        }
        return array;
    }
}
