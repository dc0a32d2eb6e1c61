package soapstone.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    /** The same without the texts whose letters stand nowhere on a sheet, lettered anew; such a text is a note, or is not printed. */
    Tabulated usedIn(Sheet sheet) {
        Set<String> words = Stream.of(Pen.TEXT, Pen.YOURS_TEXT, Pen.NOTE, Pen.YOURS_NOTE).flatMap(p -> sheet.shapes(p).stream())
                .flatMap(s -> s instanceof Shape.Text t ? Stream.of(t.text().split("[^\\p{L}\\p{N}]+")) : Stream.empty()).collect(Collectors.toSet());
        Map<String, String> used = new LinkedHashMap<>();
        letters.forEach((text, letter) -> {
            if (words.contains(letter)) {
                used.put(text, String.valueOf((char) ('A' + used.size())));
            }
        });
        return new Tabulated(used);
    }

    /** The letter of a text that is set apart, else the text itself. */
    String shown(String text) {
        return letters.getOrDefault(text, text);
    }

    /** Such as "A = 3 ft 5 3/8 in  ·  B = 76 9/16 in"; a line ends only between two of them. */
    List<Label> lines() {
        String all = letters.entrySet().stream().map(e -> held(e.getValue() + " = " + e.getKey()))
                .collect(Collectors.joining("  ·  "));
        return all.isEmpty() ? List.of() : List.of(Label.text(all));
    }

    private static String held(String text) {
        return text.replace(' ', '\u00A0');
    }
}
