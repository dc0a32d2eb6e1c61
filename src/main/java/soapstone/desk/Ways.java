package soapstone.desk;

import java.util.Locale;
import java.util.Optional;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/**
 * The shorthand in which a page names how a text is to be read: {@code quantity:in:us}, {@code count:1:us}; with
 * {@code :comma} behind it where a comma is the decimal mark.
 */
final class Ways {

    private static final char POINT = '.';
    private static final char COMMA = ',';
    private static final String END = ":comma";

    private Ways() {}

    static String shorthand(ReadAs as) {
        return as.kind().name().toLowerCase(Locale.ROOT) + ":" + as.unit().name() + ":" + as.system().word() + (as.decimalMark() == COMMA ? END : "");
    }

    static Optional<ReadAs> parse(String shorthand) {
        boolean comma = shorthand.endsWith(END);
        String[] parts = (comma ? shorthand.substring(0, shorthand.length() - END.length()) : shorthand).split(":", -1);
        if (parts.length != 3 || shorthand.length() > 60) {
            return Optional.empty();
        }
        Optional<Unit> unit = Units.parse(parts[1]);
        Optional<UnitSystem> system = UnitSystem.parse(parts[2]);
        for (ReadAs.Kind kind : ReadAs.Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(parts[0]) && unit.isPresent() && system.isPresent()) {
                return Optional.of(new ReadAs(kind, unit.get(), system.get(), comma ? COMMA : POINT));
            }
        }
        return Optional.empty();
    }
}
