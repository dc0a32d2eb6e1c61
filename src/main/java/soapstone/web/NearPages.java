package soapstone.web;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import soapstone.page.Address;
import soapstone.page.Reference;
import soapstone.source.Near;

/** Finds pages whose addresses are spelled nearly like one that does not exist. */
final class NearPages {

    private static final int MOST = 5;
    /** Share of letters that may differ. */
    private static final double FAR = 0.4;
    private static final int LONGEST = 120;

    private NearPages() {}

    private record Candidate(Reference page, double far) {}

    static List<Reference> to(String path, List<Reference> contents) {
        if (path.length() > LONGEST) {
            return List.of();
        }
        String last = lastWord(path);
        return contents.stream()
                .map(page -> new Candidate(page, far(last, lastWord(Address.of(page)))))
                .filter(c -> c.far() <= FAR)
                .sorted(Comparator.comparingDouble(Candidate::far).thenComparing(c -> c.page().name()))
                .limit(MOST)
                .map(Candidate::page)
                .toList();
    }

    private static String lastWord(String path) {
        String trimmed = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
        String last = trimmed.substring(Math.max(trimmed.lastIndexOf('/'), trimmed.lastIndexOf('#')) + 1);
        return last.toLowerCase(Locale.ROOT).replace('_', '-').replace("%20", "-");
    }

    /** Edits as a share of the longer word; 0 is the same word. A word that begins with the other is near. */
    private static double far(String typed, String known) {
        if (typed.isEmpty() || known.isEmpty()) {
            return 1;
        }
        if (typed.length() >= 3 && known.startsWith(typed)) {
            return FAR / 2;
        }
        return (double) Near.distance(typed, known) / Math.max(typed.length(), known.length());
    }
}
