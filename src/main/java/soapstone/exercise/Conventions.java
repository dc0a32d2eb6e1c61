package soapstone.exercise;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import soapstone.quantity.Quantity;
import soapstone.quantity.Units;

/**
 * What a shop has set: amounts by the names of conventions. A given that follows one of them has that amount in every draw,
 * and an ask that follows one is rounded to it.
 */
public record Conventions(Map<String, Quantity> values) {

    /** Nothing is set: everything is drawn and asked for as the bank says. */
    public static final Conventions NONE = new Conventions(Map.of());

    public Conventions {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    public boolean isEmpty() {
        return values.isEmpty();
    }

    public Optional<Quantity> value(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** Those of these names. */
    public Conventions only(Set<String> names) {
        Map<String, Quantity> some = new TreeMap<>(values);
        some.keySet().retainAll(names);
        return new Conventions(some);
    }

    /** As a record keeps it: {@code k_factor=0.42; saw_kerf=0.125 in}. {@link #parse} brings the very same amounts back. */
    public String text() {
        return values.entrySet().stream().map(e -> e.getKey() + "=" + text(e.getValue())).collect(Collectors.joining("; "));
    }

    private static String text(Quantity q) {
        return q.unit().equals(Units.ONE) ? Double.toString(q.amount()) : q.amount() + " " + q.unit().name();
    }

    /** @throws IllegalArgumentException when it is not a text of {@link #text} */
    public static Conventions parse(String text) {
        Map<String, Quantity> values = new TreeMap<>();
        for (String one : text.isBlank() ? new String[0] : text.split("; ")) {
            String[] parts = one.split("[= ]", 3);
            if (parts.length < 2) {
                throw new IllegalArgumentException("no convention reads '" + one + "'");
            }
            values.put(parts[0], new Quantity(Double.parseDouble(parts[1]), parts.length == 2 ? Units.ONE
                    : Units.named(parts[2]).orElseThrow(() -> new IllegalArgumentException("there is no unit '" + parts[2] + "'"))));
        }
        return new Conventions(values);
    }
}
