package soapstone.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Long printed values set apart from the drawing: a capital letter stands at the part, and a list below says what it is.
 * The last resort where lettering would leave the part no room.
 *
 * @param letters the capital letter of every text that is set apart, in order
 */
record Tabulated(Map<String, String> letters) {

    static final Tabulated NOTHING = new Tabulated(Map.of());
    private static final double LONG = 40;
    private static final int MOST = 26;

    /** Sets apart all long texts of single values. */
    static Tabulated of(List<Values> values) {
        Map<String, String> letters = new LinkedHashMap<>();
        for (Values v : values) {
            for (String text : v.singleTexts()) {
                boolean apart = Glyphs.width(text, Lettering.TEXT.size()) > LONG;
                if (apart && letters.size() < MOST && !letters.containsKey(text)) {
                    letters.put(text, String.valueOf((char) ('A' + letters.size())));
                }
            }
        }
        return new Tabulated(letters);
    }

    /** The letter of a text that is set apart, else the text itself. */
    String shown(String text) {
        return letters.getOrDefault(text, text);
    }

    /** Such as "A = 3 ft 5 3/8 in", each holding together at line ends. */
    List<Label> lines() {
        return letters.entrySet().stream().map(e -> Label.text(e.getValue() + " = " + e.getKey())).toList();
    }
}
