package soapstone.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The English words of all drawings. */
final class EnglishWords {

    static final Map<String, String> ALL = all();

    private EnglishWords() {}

    private static Map<String, String> all() {
        Map<String, String> w = new LinkedHashMap<>();
        w.put("tell", "{0}: {1}.");
        w.put("asked", "asked, letter {0}");
        w.put("yours", "yours");
        w.put("yours.below", "Yours, drawn below.");
        w.put("cannot.draw.yours", "Yours cannot be drawn.");
        w.put("legend.right", "right");
        w.put("legend.yours", "yours");
        w.put("legend.right.holes", "right, numbered above");
        w.put("legend.yours.holes", "yours, × and numbered below");
        w.put("legend.miss", "the miss");
        w.put("miss.short", "{0} short");
        w.put("miss.long", "{0} long");
        w.put("miss.off", "{0} off");
        w.put("length", "Length");
        w.put("diameter", "Diameter");
        holes(w);
        return Collections.unmodifiableMap(w);
    }

    private static void holes(Map<String, String> w) {
        w.put("hole-row.title", "Row of holes");
        w.put("hole-row.title.yours", "Row of holes as your answer cuts it, over the right one");
        w.put("hole-row.is", "A bar with equally spaced holes on one line, numbered from the left.");
        w.put("hole-row.first", "End of the bar to the center of hole 1");
        w.put("hole-row.pitch", "Center to center");
        w.put("hole-row.count", "Holes");
        w.put("hole-row.holes", "holes");
        w.put("hole-row.lands.short", "Your hole {0} lands {1} short of its place.");
        w.put("hole-row.lands.past", "Your hole {0} lands {1} past its place.");
        w.put("row.spaces", "{0} spaces");
        w.put("row.all", "From the first to the last: {0}.");
    }
}
