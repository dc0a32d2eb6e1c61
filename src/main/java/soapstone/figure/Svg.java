package soapstone.figure;

import java.util.List;

/** Writes a sheet as SVG: no style attributes, no script, nothing loaded from elsewhere. */
final class Svg {

    private static final String FONT = "B612, 'DejaVu Sans', Verdana, sans-serif";

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
        out.append(size / 100);
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
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (Character.isWhitespace(c)) {
                out.append(' ');
            } else if (c >= 0x20 && c != 0x7F && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF) {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    static String escape(String text) {
        return clean(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    /**
     * The whole drawing.
     *
     * @param id     prefix of the ids of title and desc, one for each drawing of a page
     * @param layout {@code wide} or {@code narrow}, for the style sheet
     */
    static String write(Sheet sheet, int width, int height, String id, String layout, String title, String desc) {
        StringBuilder out = new StringBuilder(4096);
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing drawing-").append(layout)
                .append("\" viewBox=\"0 0 ").append(width).append(' ').append(height)
                .append("\" width=\"").append(width).append("\" height=\"").append(height)
                .append("\" role=\"img\" aria-labelledby=\"").append(escape(id)).append("-title ").append(escape(id))
                .append("-desc\" font-family=\"").append(FONT).append("\">\n")
                .append("<title id=\"").append(escape(id)).append("-title\">").append(escape(title)).append("</title>\n")
                .append("<desc id=\"").append(escape(id)).append("-desc\">").append(escape(desc)).append("</desc>\n");
        for (Pen pen : Pen.values()) {
            layer(out, pen, sheet.shapes(pen));
        }
        return out.append("</svg>\n").toString();
    }

    private static void layer(StringBuilder out, Pen pen, List<Shape> shapes) {
        if (shapes.isEmpty()) {
            return;
        }
        out.append("<g class=\"").append(pen.styleName()).append("\" ").append(pen.attributes()).append(">\n");
        StringBuilder joined = new StringBuilder();
        for (Shape s : shapes) {
            if (s instanceof Shape.Stroke stroke && stroke.role().isEmpty()) {
                stroke.path().data(joined);
            } else {
                s.write(out);
            }
        }
        if (joined.length() > 0) {
            out.append("<path d=\"").append(joined).append("\"/>\n");
        }
        out.append("</g>\n");
    }

    static String role(String role) {
        return role.isEmpty() ? "" : " class=\"" + role + "\"";
    }
}
