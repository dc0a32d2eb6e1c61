package soapstone.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import soapstone.exercise.Conventions;
import soapstone.quantity.UnitSystem;
import soapstone.school.ClassSettings;

/** The settings of a class as one text. What an older program did not know yet takes the usual value. */
final class Settings {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Settings() {}

    static String write(ClassSettings s) {
        ObjectNode node = JSON.createObjectNode();
        node.put("units", s.units().name());
        node.put("language", s.language());
        node.put("decimalMark", String.valueOf(s.decimalMark()));
        node.put("carriedEarns", s.carriedEarns());
        node.put("coarseEarns", s.coarseEarns());
        node.put("nearEarns", s.nearEarns());
        node.put("bareAllowed", s.bareAllowed());
        node.put("conventions", s.conventions());
        node.put("shop", s.shop().text());
        return node.toString();
    }

    static ClassSettings read(String text) {
        ClassSettings usual = ClassSettings.USUAL;
        try {
            JsonNode n = JSON.readTree(text);
            return new ClassSettings(UnitSystem.valueOf(n.path("units").asText(usual.units().name())), n.path("language").asText(usual.language()),
                    n.path("decimalMark").asText(String.valueOf(usual.decimalMark())).charAt(0), n.path("carriedEarns").asBoolean(usual.carriedEarns()),
                    n.path("coarseEarns").asBoolean(usual.coarseEarns()), n.path("nearEarns").asDouble(usual.nearEarns()),
                    n.path("bareAllowed").asBoolean(usual.bareAllowed()), n.path("conventions").asText(usual.conventions()),
                    Conventions.parse(n.path("shop").asText("")));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the settings of a class are no JSON: " + text, e);
        }
    }
}
