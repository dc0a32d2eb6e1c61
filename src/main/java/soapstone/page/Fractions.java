package soapstone.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the fractions in a text, so that paper can set them as one writes them: the upper number raised, the lower one small. */
public final class Fractions {

    /** With the whole number before it, its dash or its space. A date or a path has more strokes than one. */
    private static final Pattern FRACTION = Pattern.compile("(?<![\\p{L}\\d/.,])(?:(\\d+)([ \\u00A0]|-\\u2060?))?(\\d{1,4})/(\\d{1,4})(?![\\d/]|[.,]\\d)");

    /** A unit of two, such as lb/ft, with its number: no line ends at the stroke. */
    private static final Pattern RATE = Pattern.compile("(?:[\\d.,]+[ \\u00A0])?(?<![<\\p{L}])\\p{L}{1,4}/\\p{L}{1,4}(?!\\p{L})[23²³]?");
    private static final Pattern BETWEEN_TAGS = Pattern.compile("(<[^>]*>)|[^<]+");

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
        StringBuilder escaped = new StringBuilder();
        escape(escaped, text);
        return set(escaped.toString());
    }

    /** Sets the fractions in what is markup already; what stands in its tags is left alone. */
    public static Html inMarkup(Html markup) {
        StringBuilder out = new StringBuilder();
        Matcher m = BETWEEN_TAGS.matcher(markup.markup());
        while (m.find()) {
            out.append(m.group(1) == null ? set(Shop.keepTogether(m.group())) : m.group(1));
        }
        return new Html(out.toString());
    }

    private static String set(String text) {
        StringBuilder out = new StringBuilder();
        Matcher m = FRACTION.matcher(text);
        int done = 0;
        while (m.find()) {
            out.append(text, done, m.start()).append("<span class=\"unbroken\">").append(text, m.start(), m.start(3));
            out.append("<span class=\"upper\">").append(m.group(3)).append("</span>/<span class=\"lower\">").append(m.group(4)).append("</span></span>");
            done = m.end();
        }
        return RATE.matcher(out.append(text.substring(done))).replaceAll("<span class=\"unbroken\">$0</span>");
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
