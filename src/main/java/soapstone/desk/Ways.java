package soapstone.desk;

import java.util.Locale;
import java.util.Optional;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Unit;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** The shorthand in which a page names how a text is to be read: {@code quantity:in:us}, {@code count:1:us}. */
final class Ways {

    private static final char POINT = '.';

    private Ways() {}

    static String shorthand(ReadAs as) {
        return as.kind().name().toLowerCase(Locale.ROOT) + ":" + as.unit().name() + ":" + as.system().word();
    }

    static Optional<ReadAs> parse(String shorthand) {
        String[] parts = shorthand.split(":", -1);
        if (parts.length != 3 || shorthand.length() > 60) {
            return Optional.empty();
        }
        Optional<Unit> unit = Units.parse(parts[1]);
        Optional<UnitSystem> system = UnitSystem.parse(parts[2]);
        for (ReadAs.Kind kind : ReadAs.Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(parts[0]) && unit.isPresent() && system.isPresent()) {
                return Optional.of(new ReadAs(kind, unit.get(), system.get(), POINT));
            }
        }
        return Optional.empty();
    }
}
