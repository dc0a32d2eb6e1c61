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

    /**
     * An address as it was asked for.
     *
     * @param base the language that it begins with, as {@code /es}; empty for none
     * @param path the rest, as the routes know it
     */
    record Asked(String base, String path) {

        /** Where the rest of the site is in the same language. */
        String behind(String address) {
            return base + address;
        }
    }

    /** An address may begin with a language of the site: a guest chooses by that, since nothing else of a guest is kept. */
    Asked asked(String address) {
        int end = address.indexOf('/', 1);
        String first = end < 0 ? address : address.substring(0, end);
        boolean language = first.length() > 1 && spoken.containsKey(first.substring(1));
        return language ? new Asked(first, end < 0 ? "/" : address.substring(end)) : new Asked("", address);
    }

    /** The words for a guest: the address goes before what the browser says. */
    Words of(Asked asked, List<String> accepted) {
        return asked.base().isEmpty() ? of(accepted) : named(asked.base().substring(1));
    }

    /** The languages that are not those words'. */
    List<String> besides(Words words) {
        return all().stream().filter(l -> !l.equals(words.language())).toList();
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
