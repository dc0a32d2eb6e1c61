package soapstone.web;

import java.util.Locale;
import java.util.Optional;
import soapstone.page.Figure;
import soapstone.page.Html;

/**
 * Drawings for the sample desk: a row of holes, plain or with a second row over it. Drawn here with the plainest means,
 * since the pages only place them.
 */
final class SampleFigures {

    private static final String INK = "#1B2226";
    private static final String GRAPHITE = "#4A555B";
    private static final String BLUE = "#0B5577";

    private SampleFigures() {}

    /** The angle with nine holes; with {@code yours} set, the holes at that spacing below. */
    static Figure holeRow(Optional<Double> yours) {
        String caption = yours.isPresent() ? "right above, yours below" : "";
        return new Figure(new Html(row(720, "w", yours)), new Html(row(340, "n", yours)), caption);
    }

    private static String row(int width, String id, Optional<Double> yours) {
        double left = 20;
        double scale = (width - 40) / 36.5;
        StringBuilder svg = new StringBuilder();
        int height = yours.isPresent() ? 190 : 130;
        String name = id + (yours.isPresent() ? "-cut" : "");
        svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"%d\" height=\"%d\" "
                + "viewBox=\"0 0 %d %d\" aria-labelledby=\"t-%s d-%s\">", width, height, width, height, name, name));
        svg.append("<title id=\"t-").append(name).append("\">Row of holes</title><desc id=\"d-").append(name)
                .append("\">An angle 36 1/2 in long with 9 holes; the first and the last are 1 1/4 in from the ends.")
                .append(yours.map(p -> " With yours, " + p + " in apart, hole 9 lands 4 in short.").orElse(""))
                .append("</desc>");
        dimension(svg, left, left + 36.5 * scale, 20, "36 1/2");
        dimension(svg, left + 1.25 * scale, left + 1.25 * scale + 4.25 * scale, 52, yours.isPresent() ? "4 1/4" : "a");
        svg.append(line("visible", left, 70, left + 36.5 * scale, 70, INK, 2)).append(line("visible", left, 100, left + 36.5 * scale, 100, INK, 2))
                .append(line("visible", left, 70, left, 100, INK, 2)).append(line("visible", left + 36.5 * scale, 70, left + 36.5 * scale, 100, INK, 2));
        for (int i = 0; i < 9; i++) {
            double x = left + (1.25 + i * 4.25) * scale;
            svg.append(String.format(Locale.ROOT, "<circle class=\"visible\" cx=\"%.1f\" cy=\"85\" r=\"4\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/>", x, INK));
        }
        yours.ifPresent(pitch -> over(svg, left, scale, pitch));
        return svg.append("</svg>").toString();
    }

    private static void over(StringBuilder svg, double left, double scale, double pitch) {
        for (int i = 0; i < 9; i++) {
            double x = left + (1.25 + i * pitch) * scale;
            svg.append(line("phantom", x - 5, 80, x + 5, 90, BLUE, 2)).append(line("phantom", x - 5, 90, x + 5, 80, BLUE, 2));
            svg.append(text(x, 120, String.valueOf(i + 1), BLUE));
        }
        svg.append(text(left + 5.1 * scale + 40, 150, "yours 3 3/4", BLUE));
        svg.append(text(left + 33.2 * scale, 150, "4 short", BLUE));
    }

    private static void dimension(StringBuilder svg, double from, double to, double y, String says) {
        svg.append(line("dim", from, y, to, y, GRAPHITE, 1)).append(line("thin", from, y - 5, from, 66, GRAPHITE, 1))
                .append(line("thin", to, y - 5, to, 66, GRAPHITE, 1)).append(text((from + to) / 2, y - 4, says, INK));
    }

    private static String line(String type, double x1, double y1, double x2, double y2, String color, double width) {
        return String.format(Locale.ROOT, "<path class=\"%s\" d=\"M%.1f %.1fL%.1f %.1f\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.1f\"/>",
                type, x1, y1, x2, y2, color, width);
    }

    private static String text(double x, double y, String says, String color) {
        return String.format(Locale.ROOT, "<text class=\"note\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"14\" fill=\"%s\">%s</text>",
                x, y, color, says);
    }
}
