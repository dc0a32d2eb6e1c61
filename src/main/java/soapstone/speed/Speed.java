package soapstone.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
 * @param crowd   on the embedded database
 * @param sizes   the same; none when no big school was wanted
 */
public record Speed(Optional<MarkingSpeed> marking, PageSpeed page, StartSpeed start, SmallHeap heap, List<KeepingSpeed> keeping,
        CrowdSpeed crowd, FigureSpeed figures, PaperSpeed paper, List<SizeSpeed> sizes) {

    private static final String USUAL = "spacing/bolt-holes";
    private static final double FOR_MARKING = 0.45;
    private static final double FOR_PAGES = 0.25;
    private static final double FOR_KEEPING = 0.15;
    private static final double FOR_FIGURES = 0.15;
    private static final double FOR_SIZE = 0.25;
    private static final double FOR_CROWD = 0.75;
    /** Two problems in so many seconds are quick work; more patient students would only measure an idle server. */
    private static final double LONGEST_CROWD = 45;
    private static final double SECONDS_A_START = 8;
    private static final int LEAST_STARTS = 3;
    private static final String EMBEDDED = "the embedded database";
    private static final String POSTGRES = "PostgreSQL";
    private static final String LARGE = "speed_large";
    private static final String SMALL = "speed_small";

    /**
     * How long to measure, and what.
     *
     * @param seconds  for all; filling a big school comes on top
     * @param students of the big school; 0 for none
     */
    public record Wanted(double seconds, int students) {}

    /**
     * A PostgreSQL database to measure as well.
     *
     * @param fresh  has no school yet
     * @param schema opens a schema of that name in it, and makes it where there is none
     */
    public record Other(Database fresh, Function<String, Database> schema) {}

    /**
     * Measures.
     *
     * @param bankOptions what the command line needs to find the same bank and lessons
     */
    public static Speed measure(Library library, List<String> bankOptions, Wanted wanted, Optional<Other> other) throws Exception {
        List<Exercise> all = List.copyOf(library.bank().exercises().values());
        String exercise = library.bank().exercise(USUAL).orElse(all.get(0)).id();
        double seconds = wanted.seconds();
        Optional<MarkingSpeed> marking = MarkingSpeed.measure(library.bank(), seconds * FOR_MARKING);
        PageSpeed page = PageSpeed.measure(library, exercise, seconds * FOR_PAGES);
        int turns = (int) Math.max(LEAST_STARTS, seconds / SECONDS_A_START);
        StartSpeed start = StartSpeed.measure(bankOptions, exercise, page.bytes(), turns);
        SmallHeap heap = SmallHeap.try64(library.bank(), bankOptions);
        return new Speed(marking, page, start, heap, keeping(other, seconds * FOR_KEEPING), crowd(library, bankOptions, Math.min(LONGEST_CROWD, seconds * FOR_CROWD)),
                FigureSpeed.measure(library.bank(), bankOptions, seconds * FOR_FIGURES), PaperSpeed.measure(library.bank(), bankOptions), sizes(library, wanted, other));
    }

    private static CrowdSpeed crowd(Library library, List<String> bankOptions, double seconds) throws Exception {
        try (Passing folder = new Passing()) {
            return CrowdSpeed.measure(library.bank(), () -> Database.inFolder(folder.path), CrowdSpeed.inFolder(folder.path, bankOptions), seconds);
        }
    }

    private static List<KeepingSpeed> keeping(Optional<Other> other, double seconds) throws Exception {
        List<KeepingSpeed> keeping = new ArrayList<>();
        try (Passing folder = new Passing(); Database embedded = Database.inFolder(folder.path)) {
            keeping.add(KeepingSpeed.measure(EMBEDDED, embedded, seconds));
        }
        if (other.isPresent()) {
            keeping.add(KeepingSpeed.measure(POSTGRES, other.get().fresh(), seconds));
        }
        return keeping;
    }

    private static List<SizeSpeed> sizes(Library library, Wanted wanted, Optional<Other> other) throws Exception {
        if (wanted.students() == 0) {
            return List.of();
        }
        List<SizeSpeed> sizes = new ArrayList<>();
        double seconds = wanted.seconds() * FOR_SIZE;
        try (Passing large = new Passing(); Passing small = new Passing()) {
            sizes.add(SizeSpeed.measure(EMBEDDED, library, wanted.students(), seconds, () -> Database.inFolder(large.path), () -> Database.inFolder(small.path)));
        }
        if (other.isPresent()) {
            sizes.add(inSchemas(library, wanted.students(), seconds, other.get().schema()));
        }
        return sizes;
    }

    private static SizeSpeed inSchemas(Library library, int students, double seconds, Function<String, Database> schema) throws Exception {
        try {
            return SizeSpeed.measure(POSTGRES, library, students, seconds, () -> schema.apply(LARGE), () -> schema.apply(SMALL));
        } finally {
            for (String name : List.of(LARGE, SMALL)) {
                try (Database database = schema.apply(name)) {
                    database.throwAway();
                }
            }
        }
    }

    /** A folder that goes away with all that was put into it. */
    private static final class Passing implements AutoCloseable {

        private final Path path;

        Passing() throws IOException {
            this.path = Files.createTempDirectory("soapstone-speed");
        }

        @Override
        public void close() throws IOException {
            try (Stream<Path> files = Files.walk(path)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
