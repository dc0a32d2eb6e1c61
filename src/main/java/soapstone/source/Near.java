package soapstone.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds names that are spelled nearly like one that is not known. */
public final class Near {

    private static final int MOST_SHOWN = 3;
    private static final int MOST_LISTED = 14;
    /** Nobody misspells a longer one: comparing two of many thousand letters would take minutes. */
    private static final int LONGEST = 60;

    private Near() {}

    /** "Did you mean a or b?", or what is known when nothing is near: a list in its order, a set by the alphabet. */
    public static String suggest(String name, Collection<String> known) {
        List<String> near = near(name, known);
        if (!near.isEmpty()) {
            return "Did you mean " + String.join(" or ", near) + "?";
        }
        if (known.isEmpty()) {
            return "";
        }
        List<String> some = (known instanceof List ? known.stream() : known.stream().sorted()).limit(MOST_LISTED).toList();
        return "Known here: " + String.join(", ", some) + (known.size() > MOST_LISTED ? " …" : "");
    }

    /** Up to three known names that are spelled nearly like this one, the nearest first. */
    public static List<String> near(String name, Collection<String> known) {
        int limit = Math.max(1, name.length() / 3);
        record Candidate(String name, int distance) {}
        List<Candidate> candidates = new ArrayList<>();
        for (String k : name.length() > LONGEST ? List.<String>of() : known) {
            if (Math.abs(k.length() - name.length()) <= limit) {
                int d = distance(name, k);
                if (d <= limit) {
                    candidates.add(new Candidate(k, d));
                }
            }
        }
        return candidates.stream().sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
                .limit(MOST_SHOWN).map(Candidate::name).toList();
    }

    /** Edits (a letter in, out, changed, or two neighbors swapped) from one name to the other. */
    public static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(change, 1 + Math.min(last[j], now[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] spare = before;
            before = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}
