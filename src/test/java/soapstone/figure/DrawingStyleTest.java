package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The style sheet of drawings: it knows every pen, says the same colors, and they can be seen. */
class DrawingStyleTest {

    private static final Pattern COLOR = Pattern.compile("--draw-(\\w+): var\\([^,]+, (#[0-9A-F]{6})\\)");

    private static String css() throws IOException {
        return css("drawing");
    }

    private static String css(String name) throws IOException {
        try (InputStream in = DrawingStyleTest.class.getResourceAsStream("/soapstone/site/" + name + ".css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void knowsEveryPen() throws IOException {
        for (Pen pen : Pen.values()) {
            assertThat(css()).contains(".drawing ." + pen.styleName());
        }
    }

    /** A class that the site styles would hide a drill on paper, and clip the hidden edges of a tube away. */
    @Test
    void theSitesOwnClassesDoNotReachIntoDrawings() throws IOException {
        Set<String> site = Pattern.compile("\\.([a-z][a-z-]*)").matcher(css("site")).results().map(m -> m.group(1)).collect(Collectors.toSet());
        assertThat(site).contains("hidden", "mark", "drill");
        for (Samples.Sample sample : Samples.all()) {
            Figure figure = FigureKinds.draw(sample.right(), sample.yours(), "s").orElseThrow();
            List<String> classes = Pattern.compile("class=\"([^\"]*)\"").matcher(figure.wide()).results().flatMap(m -> Stream.of(m.group(1).split(" "))).toList();
            assertThat(classes).as(sample.name()).isNotEmpty().doesNotContainAnyElementsOf(site);
        }
    }

    @Test
    void hasTheColorsOfTheDrawingItself() throws IOException {
        Matcher m = COLOR.matcher(css());
        StringBuilder attributes = new StringBuilder();
        for (Pen pen : Pen.values()) {
            attributes.append(pen.attributes());
        }
        while (m.find()) {
            assertThat(attributes).as(m.group(1)).contains(m.group(2));
        }
    }

    /** Contrast after WCAG 2: lettering at least 4.5 to 1, lines at least 3 to 1, on white and on the tint of water. */
    @Test
    void canBeSeen() throws IOException {
        Matcher m = COLOR.matcher(css());
        int colors = 0;
        while (m.find()) {
            double least = switch (m.group(1)) {
                case "ink", "yours" -> 4.5;
                case "graphite", "pencil" -> 3;
                default -> 0;
            };
            assertThat(contrast(m.group(2), "#FFFFFF")).as(m.group(1)).isGreaterThanOrEqualTo(least);
            assertThat(contrast(m.group(2), "#F1F4F3")).as(m.group(1)).isGreaterThanOrEqualTo(least);
            colors += least > 0 ? 1 : 0;
        }
        assertThat(colors).isEqualTo(4);
    }

    private static double contrast(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(String color) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(color.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
