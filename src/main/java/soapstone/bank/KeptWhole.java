package soapstone.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soapstone.exercise.Exercise;

/**
 * Reads an exercise back from the whole text that its fingerprint covers, as it was kept beside the marks: so a sheet can be
 * shown and a mark computed again after the bank was mended. Published checks are left out, since their rows stand in files
 * of their own and no mark depends on them. Names of families and cautions are no part of the text; here they stand for
 * themselves.
 */
public final class KeptWhole {

    /** Where another part begins: a formula or a table, by its name. */
    private static final Pattern PART = Pattern.compile("(?m)^# (formula|table) ([a-z][a-z0-9_]*)$");
    private static final Pattern FAMILY = Pattern.compile("\\bfamily: *([a-z-]+)");
    private static final Pattern CAUTION = Pattern.compile("(?m)^ *caution: *(.*)$");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z-]*");
    private static final String CHECKS = "checks:";

    private KeptWhole() {}

    /** The exercise, or empty when the text is not that of the fingerprint, or is of another version of the language. */
    public static Optional<Exercise> read(String id, String fingerprint, String whole) {
        String language = ExerciseReader.LANGUAGE + "\n";
        if (!whole.startsWith(language) || !Fingerprint.of(whole).equals(fingerprint)) {
            return Optional.empty();
        }
        BankReader.Result result = BankReader.readKept(new BankFiles(files(id, whole.substring(language.length()))));
        return result.bank().flatMap(b -> b.exercise(id)).map(e -> new Exercise(e.id(), e.title(), e.skill(), e.level(), e.cautions(), e.us(), e.metric(),
                e.checks(), e.ties(), fingerprint));
    }

    private static Map<String, String> files(String id, String text) {
        Map<String, String> files = new TreeMap<>();
        StringBuilder formulas = new StringBuilder();
        Matcher part = PART.matcher(text);
        int from = 0;
        String path = id + ".yaml";
        while (from >= 0) {
            boolean more = part.find();
            String piece = text.substring(from, more ? part.start() - 1 : text.length());
            if (path.isEmpty()) {
                formulas.append(withoutChecks(indented(piece))).append('\n');
            } else {
                files.put(path, path.endsWith(".yaml") ? withoutChecks(piece) : piece);
            }
            boolean formula = more && part.group(1).equals("formula");
            path = !more || formula ? "" : "tables/" + part.group(2).replace('_', '-') + ".csv";
            formulas.append(formula ? part.group(2) + ":\n" : "");
            from = more ? part.end() + 1 : -1;
        }
        if (!formulas.isEmpty()) {
            files.put("formulas/kept.yaml", formulas.toString());
        }
        files.put("slips.yaml", named(families(text)));
        files.put("cautions.yaml", named(cautions(text)));
        return files;
    }

    /** A formula is kept from its first key on, so that its first line lacks the indent of the others. */
    private static String indented(String formula) {
        int indent = formula.lines().skip(1).filter(l -> !l.isBlank())
                .mapToInt(l -> l.length() - l.stripLeading().length()).filter(i -> i > 0).min().orElse(2);
        return " ".repeat(indent) + formula;
    }

    /** Drops every list of checks: its line, and what stands deeper or is an item of it. */
    private static String withoutChecks(String yaml) {
        List<String> lines = new ArrayList<>();
        int checks = -1;
        for (String line : yaml.split("\n", -1)) {
            String bare = line.stripLeading();
            int depth = line.length() - bare.length();
            boolean within = checks >= 0 && (bare.isEmpty() || depth > checks || depth == checks && bare.startsWith("- "));
            checks = within ? checks : bare.startsWith(CHECKS) ? depth : -1;
            if (checks < 0) {
                lines.add(line);
            }
        }
        return String.join("\n", lines);
    }

    private static TreeSet<String> families(String text) {
        return FAMILY.matcher(text).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static TreeSet<String> cautions(String text) {
        return CAUTION.matcher(text).results().flatMap(m -> NAME.matcher(m.group(1)).results()).map(m -> m.group())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String named(TreeSet<String> names) {
        return names.isEmpty() ? "{}\n" : names.stream().map(n -> n + ": {title: " + n + ", says: " + n + "}\n").collect(Collectors.joining());
    }
}
