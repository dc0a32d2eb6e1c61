package soapstone.school;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is typed for a problem and not handed in yet.
 *
 * @param typed by the letters of the boxes, as it was typed
 * @param saved when the last of it was kept; empty when nothing is
 */
public record Draft(Map<String, String> typed, Optional<Instant> saved) {

    /** Nothing typed yet. */
    public static final Draft NONE = new Draft(Map.of(), Optional.empty());

    private static final int VERSION_LENGTH = 16;

    public Draft {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    }

    /** Whether nothing stands in any box. */
    public boolean isEmpty() {
        return typed.values().stream().allMatch(String::isBlank);
    }

    /**
     * Names what is typed, so that a page can say which draft it goes on from; empty boxes do not matter. Empty when
     * nothing is typed.
     */
    public String version() {
        Map<String, String> filled = new TreeMap<>(typed);
        filled.values().removeIf(String::isBlank);
        StringBuilder all = new StringBuilder();
        filled.forEach((letter, text) -> all.append(letter).append('=').append(text.length()).append(':').append(text));
        return filled.isEmpty() ? "" : SessionRule.hash(all.toString()).substring(0, VERSION_LENGTH);
    }

    /** The same with other texts over it; letters that are left out keep what they have. */
    public Draft with(Map<String, String> texts, Instant now) {
        Map<String, String> all = new LinkedHashMap<>(typed);
        all.putAll(texts);
        return new Draft(all, Optional.of(now));
    }
}
