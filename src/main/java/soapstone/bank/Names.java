package soapstone.bank;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import soapstone.quantity.Units;

/** What a given, a line or a formula can be called, so that expressions can speak of it. */
final class Names {

    private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_]{0,39}");
    private static final Set<String> OPERATORS = Set.of("and", "or", "not");

    private Names() {}

    /** Why a text cannot be a name, or empty. */
    static Optional<String> fault(String name) {
        if (Units.named(name).isPresent()) {
            return Optional.of("'" + name + "' is a unit");
        }
        if (OPERATORS.contains(name)) {
            return Optional.of("'" + name + "' is an operator");
        }
        String shown = name.length() > 60 ? name.substring(0, 60) + "…" : name;
        return WORD.matcher(name).matches() ? Optional.empty() : Optional.of("'" + shown + "' is no word of at most 40 letters");
    }
}
