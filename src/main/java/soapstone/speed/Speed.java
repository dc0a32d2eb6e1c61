package soapstone.speed;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;
import soapstone.record.Database;

/**
 * All measurements of one run. Seconds differ from machine to machine; the ratios do so much less, and each side of a
 * ratio is measured by turns with the other.
 *
 * @param marking empty where this Java has no compiler
 * @param keeping for each database that was measured
 */
public record Speed(Optional<MarkingSpeed> marking, PageSpeed page, StartSpeed start, SmallHeap heap, List<KeepingSpeed> keeping) {

    private static final String USUAL = "spacing/bolt-holes";
    private static final double FOR_MARKING = 0.45;
    private static final double FOR_PAGES = 0.25;
    private static final double FOR_KEEPING = 0.15;
    private static final double SECONDS_A_START = 8;
    private static final int LEAST_STARTS = 3;

    /**
     * Measures for about so many seconds.
     *
     * @param bankOptions what the command line needs to find the same bank and lessons
     * @param other       a fresh PostgreSQL database to measure as well; null for none
     */
    public static Speed measure(Library library, List<String> bankOptions, double seconds, Database other) throws Exception {
        List<Exercise> all = List.copyOf(library.bank().exercises().values());
        String exercise = library.bank().exercise(USUAL).orElse(all.get(0)).id();
        Optional<MarkingSpeed> marking = MarkingSpeed.measure(library.bank(), seconds * FOR_MARKING);
        PageSpeed page = PageSpeed.measure(library, exercise, seconds * FOR_PAGES);
        int turns = (int) Math.max(LEAST_STARTS, seconds / SECONDS_A_START);
        StartSpeed start = StartSpeed.measure(bankOptions, exercise, page.bytes(), turns);
        return new Speed(marking, page, start, SmallHeap.try64(library.bank(), bankOptions), keeping(other, seconds * FOR_KEEPING));
    }

    private static List<KeepingSpeed> keeping(Database other, double seconds) throws Exception {
        List<KeepingSpeed> keeping = new ArrayList<>();
        Path folder = Files.createTempDirectory("soapstone-speed");
        try (Database embedded = Database.inFolder(folder)) {
            keeping.add(KeepingSpeed.measure("the embedded database", embedded, seconds));
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        if (other != null) {
            keeping.add(KeepingSpeed.measure("PostgreSQL", other, seconds));
        }
        return keeping;
    }
}
