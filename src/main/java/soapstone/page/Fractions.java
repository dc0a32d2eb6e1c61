package soapstone.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the fractions in a text, so that paper can set them as one writes them: the upper number raised, the lower one small. */
public final class Fractions {

    /** With the whole number before it, its dash or its space. A date or a path has more strokes than one. */
    private static final Pattern FRACTION = Pattern.compile("(?<![\\p{L}\\d/.,])(?:(\\d+)([ \\u00A0]|-\\u2060?))?(\\d{1,4})/(\\d{1,4})(?![\\d/]|[.,]\\d)");

    private Fractions() {}

    /** How a piece of text is set. */
    public enum Set { PLAIN, UPPER, LOWER }

    /** A piece of a text that is set in one way. */
    public record Piece(String text, Set set) {}

    /** The pieces of a text, in order; put together they are the text again. */
    public static List<Piece> pieces(String text) {
        List<Piece> pieces = new ArrayList<>();
        Matcher m = FRACTION.matcher(text);
        int done = 0;
        while (m.find()) {
            add(pieces, text.substring(done, m.start(3)), Set.PLAIN);
            add(pieces, m.group(3), Set.UPPER);
            add(pieces, "/", Set.PLAIN);
            add(pieces, m.group(4), Set.LOWER);
            done = m.end();
        }
        add(pieces, text.substring(done), Set.PLAIN);
        return pieces;
    }

    private static void add(List<Piece> pieces, String text, Set set) {
        if (!text.isEmpty()) {
            pieces.add(new Piece(text, set));
        }
    }

    /** The text as markup, escaped, with its fractions set; none of them breaks over a line. */
    static String markup(String text) {
        StringBuilder out = new StringBuilder();
        Matcher m = FRACTION.matcher(text);
        int done = 0;
        while (m.find()) {
            escape(out, text.substring(done, m.start()));
            escape(out.append("<span class=\"unbroken\">"), text.substring(m.start(), m.start(3)));
            out.append("<span class=\"upper\">").append(m.group(3)).append("</span>/<span class=\"lower\">").append(m.group(4)).append("</span></span>");
            done = m.end();
        }
        escape(out, text.substring(done));
        return out.toString();
    }

    private static void escape(StringBuilder out, String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }
}
