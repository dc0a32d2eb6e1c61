package soapstone.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps what was made most recently, up to a number of things. A link that a whole class opens, a page that is loaded
 * again and the way back from a marked sheet then cost next to nothing. For many threads at once; two that ask for the
 * same new thing at the same moment may both make it.
 */
public final class Recent<K, V> {

    private final Map<K, V> kept;

    public Recent(int most) {
        this.kept = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** What is kept for a key, or else what is made for it, kept from now on. */
    public V get(K key, Function<K, V> made) {
        synchronized (kept) {
            V found = kept.get(key);
            if (found != null) {
                return found;
            }
        }
        V fresh = made.apply(key);
        synchronized (kept) {
            kept.put(key, fresh);
        }
        return fresh;
    }
}
