package soapstone.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import soapstone.page.Html;

/**
 * What every page on paper begins with.
 *
 * @param style the style sheet with the size of the paper
 * @param title of the file
 * @param kinds words that the style sheet knows, such as {@code large}
 */
public record Leaf(Html style, String title, String kinds) {

    private static final String STYLE = read();

    /** @param margins in millimeters: above, beside, below */
    static Leaf of(PaperSize size, boolean across, String margins, String title, String kinds) {
        double wide = across ? size.height() : size.width();
        double high = across ? size.width() : size.height();
        String page = String.format(Locale.ROOT, "@page { size: %.1fmm %.1fmm; margin: %s; }%n", wide, high, margins);
        return new Leaf(new Html(page + STYLE), title, kinds + " on-" + size.word());
    }

    private static String read() {
        try (InputStream in = Leaf.class.getResourceAsStream("/soapstone/paper/paper.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
