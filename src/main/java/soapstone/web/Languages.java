package soapstone.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import soapstone.page.Words;

/** Chooses the words for a visitor among the languages that the site has. */
final class Languages {

    private static final int LONGEST = 200;

    private final Map<String, Words> spoken = new ConcurrentHashMap<>();

    Languages() {
        spoken.put("en", Words.of("en"));
        for (String language : List.of("es")) {
            if (Words.speaks(language)) {
                spoken.put(language, Words.of(language));
            }
        }
    }

    /** The languages that the site speaks. */
    List<String> all() {
        return spoken.keySet().stream().sorted().toList();
    }

    Words english() {
        return spoken.get("en");
    }

    /** The language of somebody's account; English when the site has it no more. */
    Words named(String language) {
        return spoken.getOrDefault(language, english());
    }

    /** @param accepted the header Accept-Language, as often as it came */
    Words of(List<String> accepted) {
        String wanted = String.join(",", accepted);
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return english();
        }
        List<Locale.LanguageRange> ranges;
        try {
            ranges = new ArrayList<>(Locale.LanguageRange.parse(wanted));
        } catch (IllegalArgumentException e) {
            return english();
        }
        String best = Locale.lookupTag(ranges, spoken.keySet());
        return best == null ? english() : spoken.get(best);
    }
}
