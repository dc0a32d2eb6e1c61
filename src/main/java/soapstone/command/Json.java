package soapstone.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;

/** Makes and prints JSON. Keys stand in the order in which they were put. */
final class Json {

    /** More figures than any shop measures; fewer than binary arithmetic needs to show its noise. */
    private static final MathContext FIGURES = new MathContext(12);
    /** What is left of a sine of 180 degrees is nothing. */
    private static final double LEAST = 1e-12;
    private static final double MOST_WHOLE = 1e15;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = array();
        texts.forEach(t -> array.add(plain(t)));
        return array;
    }

    /** A number without the noise of binary arithmetic; whole ones without a point; null for what is not defined. */
    static JsonNode number(double value) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (!Double.isFinite(value)) {
            return make.nullNode();
        }
        if (Math.abs(value) < LEAST) {
            return make.numberNode(0);
        }
        double clean = new BigDecimal(value).round(FIGURES).doubleValue();
        return clean == Math.rint(clean) && Math.abs(clean) < MOST_WHOLE ? make.numberNode((long) clean) : make.numberNode(clean);
    }

    /** Text for a terminal or a script: with plain spaces, which is what people type. */
    static String plain(String text) {
        return text.replace('\u00a0', ' ').strip();
    }

    static void print(PrintWriter out, JsonNode node) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        printer.indentObjectsWith(indent);
        try {
            out.println(MAPPER.writer(printer).writeValueAsString(node));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain nodes", e);
        }
    }
}
