package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Writes a sheet as SVG: no style attributes, no script, nothing loaded from elsewhere. */
final class Svg {

    private static final String FONT = "B612, 'DejaVu Sans', Verdana, sans-serif";

    private static final String SPECIAL = "&<>\"";
    private static final int LAST_OF_ASCII = 0x7E;
    private static final int USUAL_LENGTH = 8192;

    private Svg() {}

    /** A coordinate with at most two decimals, without an exponent. */
    static String number(double v) {
        StringBuilder out = new StringBuilder(8);
        number(out, v);
        return out.toString();
    }

    /** Writes a coordinate; a drawing has hundreds. */
    static StringBuilder number(StringBuilder out, double v) {
        long hundredths = Math.round(v * 100);
        if (hundredths < 0) {
            out.append('-');
        }
        long size = Math.abs(hundredths);
        // The digits of an int are written faster than those of a long.
        if (size < Integer.MAX_VALUE) {
            out.append((int) size / 100);
        } else {
            out.append(size / 100);
        }
        int rest = (int) (size % 100);
        if (rest != 0) {
            out.append('.').append((char) ('0' + rest / 10));
            if (rest % 10 != 0) {
                out.append((char) ('0' + rest % 10));
            }
        }
        return out;
    }

    /** Leaves out what XML cannot hold, and turns line ends into spaces. */
    static String clean(String text) {
        return isPlain(text) ? text : cleaned(text);
    }

    /** Nothing to leave out or to turn: so are nearly all texts. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == 0x7F || c >= Character.MIN_SURROGATE || c > ' ' && Character.isWhitespace(c)) {
                return false;
            }
        }
        return true;
    }

    private static String cleaned(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (Character.isWhitespace(c)) {
                out.append(' ');
            } else if (c >= ' ' && c != 0x7F && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF) {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /**
     * Writes a text so that a reader of XML gets it back. Signs beyond ASCII are written as their numbers: the drawing is
     * then the same in every encoding, and goes into a page as fast as bytes can be copied.
     */
    static StringBuilder text(StringBuilder out, String text) {
        String clean = clean(text);
        int written = 0;
        int at = 0;
        while (at < clean.length()) {
            int sign = clean.codePointAt(at);
            int next = at + Character.charCount(sign);
            if (sign > LAST_OF_ASCII || SPECIAL.indexOf(sign) >= 0) {
                out.append(clean, written, at);
                sign(out, sign);
                written = next;
            }
            at = next;
        }
        return out.append(clean, written, clean.length());
    }

    private static void sign(StringBuilder out, int sign) {
        switch (sign) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            default -> out.append("&#").append(sign).append(';');
        }
    }

    /**
     * The whole drawing.
     *
     * @param id     prefix of the ids of title and desc, one for each drawing of a page
     * @param layout {@code wide} or {@code narrow}, for the style sheet
     * @param flags  the sizes that have a flag
     */
    static String write(Sheet sheet, int width, int height, String id, String layout, String title, String desc, Flags flags) {
        StringBuilder out = new StringBuilder(USUAL_LENGTH);
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing drawing-").append(layout)
                .append("\" viewBox=\"0 0 ").append(width).append(' ').append(height)
                .append("\" width=\"").append(width).append("\" height=\"").append(height).append("\" role=\"img\" aria-labelledby=\"");
        text(text(out, id).append("-title "), id).append("-desc\" font-family=\"").append(FONT).append("\">\n");
        text(text(out.append("<title id=\""), id).append("-title\">"), title).append("</title>\n");
        text(text(out.append("<desc id=\""), id).append("-desc\">"), desc).append("</desc>\n");
        for (Pen pen : Pen.values()) {
            layer(out, pen, sheet.shapes(pen), s -> flags.attributes(sheet.ties().of(s)));
        }
        return out.append("</svg>\n").toString();
    }

    private static void layer(StringBuilder out, Pen pen, List<Shape> shapes, Function<Shape, String> attributes) {
        if (shapes.isEmpty()) {
            return;
        }
        out.append("<g class=\"").append(pen.styleName()).append("\" ").append(pen.attributes()).append(">\n");
        List<Shape.Stroke> joined = new ArrayList<>();
        for (Shape s : shapes) {
            String more = attributes.apply(s);
            if (more.isEmpty() && s instanceof Shape.Stroke stroke && stroke.role().isEmpty()) {
                joined.add(stroke);
            } else {
                s.write(out, more);
            }
        }
        if (!joined.isEmpty()) {
            join(out, joined);
        }
        out.append("</g>\n");
    }

    /** Lines that are nothing by themselves are written as one. */
    private static void join(StringBuilder out, List<Shape.Stroke> strokes) {
        out.append("<path d=\"");
        strokes.forEach(s -> s.path().data(out));
        out.append("\"/>\n");
    }

    /** What a shape is, for whoever measures it. No class: the site has styles for classes such as {@code mark}. */
    static String role(String role) {
        return role.isEmpty() ? "" : " data-part=\"" + role + "\"";
    }
}
