package soapstone.bank;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soapstone.exercise.Exercise;
import soapstone.expression.FormulaBody;
import soapstone.source.Issues;
import soapstone.source.Source;

/**
 * Reads an exercise as it was, out of the text that its fingerprint stands for. The formulas and tables that it reaches are
 * taken from the bank as it is now, so it comes back only where these are word for word what they were.
 */
public final class KeptReader {

    private static final Pattern PART = Pattern.compile("\n# (formula|table) ([a-z][a-z0-9_]*)\n");

    private KeptReader() {}

    /**
     * The exercise, or empty when something that it reaches was changed since, or it cannot be read by this program.
     *
     * @param whole as {@link Bank#wholes} had it then
     */
    public static Optional<Exercise> read(Bank bank, String id, String fingerprint, String whole) {
        Map<String, String> now = new HashMap<>();
        bank.wholes().values().forEach(w -> now.putAll(parts(w)));
        Map<String, String> formulas = new HashMap<>();
        Map<String, String> tables = new HashMap<>();
        now.forEach((name, text) -> (name.startsWith("formula ") ? formulas : tables).put(name.substring(name.indexOf(' ') + 1), text));
        Map<String, FormulaBody> bodies = new HashMap<>();
        bank.formulas().forEach((name, formula) -> bodies.put(name, formula.body()));
        Book book = new Book(bank.formulas(), bodies, formulas, bank.tables(), tables, bank.families(), bank.cautions(),
                Optional.empty());
        Matcher first = PART.matcher(whole);
        int begins = whole.indexOf('\n') + 1;
        String text = whole.substring(begins, first.find(Math.max(0, begins - 1)) ? first.start() : whole.length());
        // The fingerprint is that of text, formulas and tables together: the same one says that all of it is as it was.
        return new ExerciseReader(new BankFiles(Map.of()), book).read(id, new Source(BankFiles.shown(id + ".yaml"), text), new Issues())
                .map(ExerciseReader.Read::exercise).filter(e -> e.fingerprint().equals(fingerprint));
    }

    /** Formulas and tables in a whole text, by kind and name. */
    private static Map<String, String> parts(String whole) {
        Map<String, String> parts = new HashMap<>();
        Matcher part = PART.matcher(whole);
        boolean found = part.find();
        while (found) {
            String name = part.group(1) + " " + part.group(2);
            int from = part.end();
            found = part.find();
            parts.put(name, whole.substring(from, found ? part.start() : whole.length()));
        }
        return parts;
    }
}
