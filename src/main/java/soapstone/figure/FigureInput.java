package soapstone.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import soapstone.quantity.UnitSystem;

/**
 * What a drawing is made from.
 *
 * @param kind   one of {@link FigureKinds#kinds()}
 * @param values by the argument's name
 * @param system the system whose base units the part is laid out in
 */
public record FigureInput(String kind, Map<String, FigureValue> values, UnitSystem system) {

    public FigureInput {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(system);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}
