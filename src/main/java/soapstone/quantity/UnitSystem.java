package soapstone.quantity;

import java.util.Locale;
import java.util.Optional;

/**
 * The two systems in which an exercise is drawn. Each works on its own base units (inch, pound, pound of force; or
 * millimetre, kilogram, newton), because rounding down a count that is exact in inches goes wrong on a millimetre base.
 */
public enum UnitSystem {
    US, METRIC;

    /** Reads {@code us} or {@code metric}, in any case. */
    public static Optional<UnitSystem> parse(String text) {
        return switch (text.trim().toLowerCase(Locale.ROOT)) {
            case "us" -> Optional.of(US);
            case "metric" -> Optional.of(METRIC);
            default -> Optional.empty();
        };
    }

    /** The word by which links and the command line call this system. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
