package soapstone.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import soapstone.Heap;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issue;
import soapstone.variant.Drawer;

/**
 * Whatever becomes of a bank file, reading it ends in a bank or in issues, never in an exception; a bank that is read can
 * be drawn from. Everything is cut off after every character, and mutated ten thousand times with fixed seeds: letters and
 * lines go out, come twice, change places, and pieces of other files and of hostile texts go in. These are 25,000
 * readings, in about a minute of one core.
 */
class MutatedFilesTest {

    private static final int MUTATIONS = 10_000;
    private static final int MOST_CHANGES = 4;
    private static final double FLAT = 8;

    private static final Map<String, String> TOUCHED = Map.of("formulas/shop.yaml", "bends/one-bend.yaml", "tables/gauge.csv", "bends/one-bend.yaml",
            "checks/holes.csv", "spacing/bolt-holes.yaml");
    private static final List<String> PATHS = List.copyOf(SmallBank.files().keySet());
    private static final String[] HOSTILE = {"{", "}", "[", "]", "\"", "'", ": ", " #", "\t", "\n", "- ", "&a ", "*a", "!!int ", "|", ">", "%", "@", "`", "?", "---\n",
        "\u0000", "\u0007", "\ufeff", "\ud83d", "\ud83d\ude00", "½", "−", "\u2028", "\u00a0", "1e999", "999999999999999999999", "-1", "0", "0.0000001", "1/0 in",
        "{length}", "{theirs.spaces}", "{", "in", "pi", "if(", "solve(x, 0, 1, x = x)", "each(i, 1, 1e9, i)", "marks(0 in, 1 in, 1e9)", "9^9^9^9", "((((((((((",
        "gauge(metal, number)", "bend_allowance(1, 2)", "round_area(round_area(", "true", "null", "~", "[]", "{}", "\"\"", "''", "<<: ", "kind: count", "hidden: true",
        "from: 1 in", "pick: []", "is: length", "row: gauge", "row: pail", "in: gal", "show: ft in", "to: 1 lb", "metric:\n", "without: [x]", "ties:\n", "let: x = 1"};

    /** The files with one in another's place; of the exercises only one that the change can touch, to save time. */
    private static Map<String, String> files(String path, String text) {
        Map<String, String> files = new TreeMap<>(SmallBank.files());
        String touched = isExercise(path) ? path : TOUCHED.getOrDefault(path, "tanks/drum.yaml");
        files.keySet().removeIf(f -> isExercise(f) && !f.equals(touched));
        files.put(path, text);
        return files;
    }

    private static boolean isExercise(String path) {
        return path.contains("/") && path.endsWith(".yaml") && !path.startsWith("formulas/");
    }

    /** Reads, and draws from what could be read; gives how many banks came out. */
    private static int tried(String path, String text, String what) {
        try {
            BankReader.Result result = BankReader.read(new BankFiles(files(path, text)));
            assertThat(result.bank().isPresent()).as("a bank or issues, %s", what).isEqualTo(result.issues().isEmpty());
            for (Issue issue : result.issues().all()) {
                assertThat(issue.toString()).as(what).contains(":", "^");
            }
            result.bank().ifPresent(bank -> bank.exercises().values().forEach(e -> drawn(e)));
            return result.bank().isPresent() ? 1 : 0;
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(what + ":\n" + text, e);
        }
    }

    private static void drawn(Exercise exercise) {
        for (UnitSystem system : UnitSystem.values()) {
            new Drawer(exercise, system).draw(1);
        }
    }

    @Test
    void cutOffAnywhereAFileGivesABankOrIssues() {
        for (String path : PATHS) {
            String text = SmallBank.files().get(path);
            int banks = IntStream.rangeClosed(0, text.length()).parallel()
                    .map(end -> tried(path, text.substring(0, end), path + " cut off after " + end + " characters")).sum();
            assertThat(banks).as("banks read from beginnings of %s", path).isBetween(1, text.length());
        }
    }

    @Test
    void withAnyLineLeftOutAFileGivesABankOrIssues() {
        for (String path : PATHS) {
            List<String> lines = SmallBank.files().get(path).lines().toList();
            for (int out = 0; out < lines.size(); out++) {
                List<String> left = new ArrayList<>(lines);
                left.remove(out);
                tried(path, String.join("\n", left), path + " without line " + (out + 1));
            }
        }
    }

    @Test
    void mutatedFilesGiveABankOrIssuesOnAFlatHeap() {
        mutated(1, MUTATIONS / 10);
        double before = Heap.heldMegabytes();
        int banks = mutated(MUTATIONS / 10 + 1, MUTATIONS);
        assertThat(Heap.heldMegabytes() - before).as("megabytes held more than before").isLessThan(FLAT);
        assertThat(banks).as("mutations that still give a bank").isBetween(MUTATIONS / 50, MUTATIONS);
    }

    private static int mutated(int firstSeed, int count) {
        return IntStream.range(firstSeed, firstSeed + count).parallel().map(seed -> {
            SplittableRandom random = new SplittableRandom(seed);
            String path = PATHS.get(random.nextInt(PATHS.size()));
            return tried(path, mutant(SmallBank.files().get(path), random), "seed " + seed + ", " + path);
        }).sum();
    }

    private static String mutant(String text, SplittableRandom random) {
        String mutant = text;
        for (int n = 1 + random.nextInt(MOST_CHANGES); n > 0; n--) {
            mutant = random.nextInt(3) == 0 ? lines(mutant, random) : signs(mutant, random);
        }
        return mutant;
    }

    private static String lines(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(other));
            case 2 -> java.util.Collections.swap(lines, at, other);
            default -> lines.set(at, " ".repeat(random.nextInt(4)) + lines.get(at).strip());
        }
        return String.join("\n", lines) + "\n";
    }

    private static String signs(String text, SplittableRandom random) {
        if (text.isEmpty()) {
            return text;
        }
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + 1 + random.nextInt(random.nextInt(8) == 0 ? 200 : 3));
        String foreign = SmallBank.files().get(PATHS.get(random.nextInt(PATHS.size())));
        int from = random.nextInt(foreign.length());
        String piece = foreign.substring(from, Math.min(foreign.length(), from + 1 + random.nextInt(60)));
        return switch (random.nextInt(7)) {
            case 0 -> text.substring(0, at) + text.substring(end);
            case 1 -> text.substring(0, end) + text.substring(at);
            case 2 -> text.substring(0, at) + piece + text.substring(at);
            case 3 -> text.substring(0, at) + HOSTILE[random.nextInt(HOSTILE.length)] + text.substring(at);
            case 4 -> text.substring(0, at) + HOSTILE[random.nextInt(HOSTILE.length)] + text.substring(end);
            case 5 -> text.substring(0, at) + (char) random.nextInt(0x250) + text.substring(at + 1);
            default -> text.substring(0, at) + HOSTILE[random.nextInt(HOSTILE.length)].repeat(1 + random.nextInt(300)) + text.substring(at);
        };
    }

    @Test
    void deepBracketsAreTold() {
        String text = SmallBank.files().get("spacing/bolt-holes.yaml");
        for (int deep : new int[] {50, 500, 1_500, 3_000, 20_000}) {
            tried("spacing/bolt-holes.yaml", text + "ties:\n  - {slips: " + "[".repeat(deep) + "]".repeat(deep) + ", because: deep}\n", deep + " brackets deep");
            tried("spacing/bolt-holes.yaml", text + "notes: " + "[".repeat(deep) + "a" + "]".repeat(deep) + "\n", deep + " brackets deep in the notes");
            tried("spacing/bolt-holes.yaml", text + "notes: " + "{a: ".repeat(deep) + "a" + "}".repeat(deep) + "\n", deep + " braces deep");
        }
    }

    @Test
    void aHugeFileIsTold() {
        tried("spacing/bolt-holes.yaml", "x".repeat(3_000_000), "three million letters");
        tried("spacing/bolt-holes.yaml", "title: A\n".repeat(20_000), "a key 20,000 times");
        tried("tables/gauge.csv", SmallBank.files().get("tables/gauge.csv") + "17,0.1,0.1\n".repeat(100_000), "a table of 100,000 rows");
        tried("slips.yaml", "a: {title: b, says: c}\n".repeat(5_000), "a family 5,000 times");
    }
}
