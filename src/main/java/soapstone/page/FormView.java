package soapstone.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import soapstone.source.Message;

/**
 * A form as it goes out and comes back: everything as it was typed, and beside it what would fit.
 *
 * @param typed  by the names of the fields; of a box to tick, anything at all means ticked
 * @param faults by the names of the fields, in the order of the page
 */
public record FormView(Map<String, String> typed, Map<String, Message> faults) {

    public FormView {
        typed = Map.copyOf(typed);
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults));
    }

    /** A form with nothing wrong yet. */
    public static FormView of(Map<String, String> typed) {
        return new FormView(typed, Map.of());
    }
}
