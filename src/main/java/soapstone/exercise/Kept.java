package soapstone.exercise;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Room for what a later stage works out once for a model and needs again with every draw or answer. Each finds its own by
 * its class. What is kept has only final fields: then it does no harm that two threads who ask for it at the same moment
 * may each make it, and one of the two is thrown away.
 */
public final class Kept {

    private Map<Class<?>, Object> things = Map.of();

    /** The thing of that class, made now if it is not there yet. */
    public <T> T get(Class<T> type, Supplier<T> make) {
        Object there = things.get(type);
        return there != null ? type.cast(there) : keep(type, make.get());
    }

    private <T> T keep(Class<T> type, T made) {
        Map<Class<?>, Object> more = new HashMap<>(things);
        more.put(type, made);
        things = Map.copyOf(more);
        return made;
    }
}
