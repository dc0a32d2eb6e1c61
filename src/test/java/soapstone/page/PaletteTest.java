package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The palette as the style sheet has it: text stands at 4.5 to 1 or better on every ground that it may stand on, lines of
 * a drawing and borders of fields at 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11).
 */
class PaletteTest {

    private static final Path CSS = Path.of("src/main/resources/soapstone/site/site.css");
    private static final List<String> GROUNDS = List.of("paper", "tint", "blue-tint");

    private static Map<String, String> palette(String css) {
        Map<String, String> tokens = new TreeMap<>();
        Matcher m = Pattern.compile("--([a-z-]+): (#[0-9A-Fa-f]{6});").matcher(css.substring(0, css.indexOf("*, *::before")));
        while (m.find()) {
            tokens.put(m.group(1), m.group(2));
        }
        return tokens;
    }

    private static double contrast(String a, String b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);
    }

    private static double channel(String hex, int at) {
        double c = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(contrast("#000000", "#FFFFFF")).isEqualTo(21, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void textIsReadableOnEveryGround() throws IOException {
        Map<String, String> palette = palette(Files.readString(CSS));
        for (String ground : GROUNDS) {
            for (String text : List.of("ink", "graphite", "blue", "blue-deep")) {
                assertThat(contrast(palette.get(text), palette.get(ground))).as(text + " on " + ground).isGreaterThanOrEqualTo(4.5);
            }
        }
        assertThat(contrast(palette.get("paper"), palette.get("blue"))).as("words on a filled button").isGreaterThanOrEqualTo(4.5);
    }

    @Test
    void linesAreSeenOnEveryGround() throws IOException {
        Map<String, String> palette = palette(Files.readString(CSS));
        for (String ground : GROUNDS) {
            for (String line : List.of("ink", "graphite", "pencil", "blue")) {
                assertThat(contrast(palette.get(line), palette.get(ground))).as(line + " on " + ground).isGreaterThanOrEqualTo(3);
            }
        }
    }

    /** Colors come from the palette; pencil and rule are for lines only. */
    @Test
    void theStyleSheetKeepsToThePalette() throws IOException {
        String css = Files.readString(CSS);
        String screen = css.substring(css.indexOf("*, *::before"), css.indexOf("@media print"));
        assertThat(screen).doesNotContainPattern("#[0-9A-Fa-f]{3,8}\\b(?![^{]*\\{)").doesNotContain("rgb(").doesNotContain("hsl(");
        assertThat(css).doesNotContainPattern("(?<![-a-z])color: var\\(--(pencil|rule)\\)");
    }

    @Test
    void nothingMovesAndNoCornerIsRound() throws IOException {
        String css = Files.readString(CSS);
        assertThat(css).doesNotContain("transition").doesNotContain("animation").doesNotContain("box-shadow");
        Matcher radius = Pattern.compile("border-radius: ([^;]+);").matcher(css);
        while (radius.find()) {
            assertThat(radius.group(1)).isEqualTo("0");
        }
    }
}
