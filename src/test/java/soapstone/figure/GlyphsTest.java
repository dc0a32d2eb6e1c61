package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of widths against the font's own, where Debian's fonts-b612 is installed. */
class GlyphsTest {

    private static final Path FONTS = Path.of("/usr/share/fonts/opentype/b612");
    private static final String SIGNS = "0123456789 /.,-–−×÷±°=≈ØRabcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
            + "áéíóúñü¿¡½⅝¼¾⅛⅜⅞'\"′″():;[]\u00A0";

    @ParameterizedTest
    @ValueSource(strings = {"B612-Regular.otf", "B612-Bold.otf"})
    void areThoseOfTheFont(String file) throws IOException {
        Assumptions.assumeTrue(Files.exists(FONTS.resolve(file)), "fonts-b612 is not installed");
        Map<Integer, Integer> font = widths(Files.readAllBytes(FONTS.resolve(file)));
        SIGNS.codePoints().forEach(c -> assertThat(Glyphs.width(c)).as(Character.toString(c)).isEqualTo(font.get(c)));
    }

    @Test
    void givesAllDigitsOneWidth() {
        "0123456789".chars().forEach(c -> assertThat(Glyphs.width(c)).isEqualTo(650));
        assertThat(Glyphs.width("41 3/8", 14)).isEqualTo((4 * 650 + 350 + 550) * 14 / 1000.0);
    }

    @Test
    void neverMeasuresAnUnknownSignShort() {
        assertThat(Glyphs.width("漢", 14)).isEqualTo(14);
        assertThat(Glyphs.width("😀", 14)).isEqualTo(14);
    }

    /** Advance widths by character in thousandths, from the tables head, hhea, hmtx and cmap (format 4) of an OpenType font. */
    private static Map<Integer, Integer> widths(byte[] bytes) {
        ByteBuffer font = ByteBuffer.wrap(bytes);
        Map<String, Integer> tables = new HashMap<>();
        for (int i = 0; i < font.getShort(4); i++) {
            tables.put(new String(bytes, 12 + 16 * i, 4, java.nio.charset.StandardCharsets.US_ASCII), font.getInt(20 + 16 * i));
        }
        int perEm = font.getShort(tables.get("head") + 18);
        int measured = font.getShort(tables.get("hhea") + 34);
        int cmap = tables.get("cmap");
        Map<Integer, Integer> widths = new HashMap<>();
        for (int i = 0; i < font.getShort(cmap + 2); i++) {
            int table = cmap + font.getInt(cmap + 8 + 8 * i);
            if (font.getShort(table) == 4) {
                glyphs(font, table).forEach((c, g) -> widths.put(c,
                        font.getShort(tables.get("hmtx") + 4 * Math.min(g, measured - 1)) * 1000 / perEm));
            }
        }
        return widths;
    }

    private static Map<Integer, Integer> glyphs(ByteBuffer font, int table) {
        int twice = font.getShort(table + 6);
        Map<Integer, Integer> glyphs = new HashMap<>();
        for (int i = 0; i < twice; i += 2) {
            int end = font.getShort(table + 14 + i) & 0xFFFF;
            int start = font.getShort(table + 16 + twice + i) & 0xFFFF;
            int delta = font.getShort(table + 16 + 2 * twice + i);
            int rangeAt = table + 16 + 3 * twice + i;
            int range = font.getShort(rangeAt) & 0xFFFF;
            for (int c = start; c <= end && c != 0xFFFF; c++) {
                int g = range == 0 ? c : font.getShort(rangeAt + range + 2 * (c - start)) & 0xFFFF;
                if (g != 0) {
                    glyphs.put(c, g + delta & 0xFFFF);
                }
            }
        }
        return glyphs;
    }
}
