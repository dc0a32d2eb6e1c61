package soapstone.paper;

import java.util.Locale;
import java.util.Optional;

/** What a printer is loaded with. */
public enum PaperSize {
    LETTER(8.5 * 25.4, 11 * 25.4),
    A4(210, 297);

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In millimeters, upright. */
    public double width() {
        return width;
    }

    /** In millimeters, upright. */
    public double height() {
        return height;
    }

    /** As it is typed: {@code letter}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<PaperSize> parse(String word) {
        for (PaperSize size : values()) {
            if (size.word().equals(word)) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }
}
