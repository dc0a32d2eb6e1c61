package soapstone.paper;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soapstone.page.Figure;
import soapstone.page.Html;

/** A drawing made ready for paper: in one of its two layouts, with what it shows as the text that stands for it. */
final class Drawn {

    private static final Pattern TELLS = Pattern.compile("<desc[^>]*>(.*?)</desc>", Pattern.DOTALL);

    private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");
    /** How many units wide the narrow layout is. */
    static final double NARROW = 340;

    private Drawn() {}

    /** In units. */
    static double height(Html svg) {
        Matcher box = BOX.matcher(svg.markup());
        return box.find() ? Double.parseDouble(box.group(2)) : 0;
    }

    static Html wide(Figure figure) {
        return ready(figure.wide());
    }

    static Html narrow(Figure figure) {
        return ready(figure.narrow());
    }

    /** Not wider and not higher than that, in millimeters. */
    static Html fitted(Figure figure, double width, double height) {
        double wide = Math.min(width, height * NARROW / height(figure.narrow()));
        return new Html(narrow(figure).markup().replaceFirst("<svg ", String.format(Locale.ROOT, "<svg style=\"width: %.1fmm\" ", wide)));
    }

    private static Html ready(Html svg) {
        Matcher tells = TELLS.matcher(svg.markup());
        String alt = tells.find() ? tells.group(1) : "";
        // How wide it is drawn is said by the style sheet alone.
        String free = svg.markup().replaceFirst(" width=\"\\d+\" height=\"\\d+\"", "");
        return new Html(free.replaceFirst("<svg ", Matcher.quoteReplacement("<svg alt=\"" + alt + "\" ")));
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
