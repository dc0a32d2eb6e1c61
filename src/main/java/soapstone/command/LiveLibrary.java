package soapstone.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import soapstone.desk.Library;

/**
 * The library of a running site. One from a folder is read anew when a file of it has changed, so that an author sees the
 * change with the next page; while the files have issues the last good library stays, and the issues are printed.
 */
final class LiveLibrary implements Supplier<Library> {

    private static final long PAUSE_NANOS = 1_000_000_000L;
    private static final int DEEPEST = 4;

    private final BankOptions options;
    private final PrintWriter issues;
    private final LongSupplier clock;
    private Map<String, Long> seen;
    private volatile Library library;
    private volatile long looked;

    private LiveLibrary(BankOptions options, PrintWriter issues, LongSupplier clock) {
        this.options = options;
        this.issues = issues;
        this.clock = clock;
        this.seen = options.folders().isEmpty() ? Map.of() : stamps();
        this.looked = clock.getAsLong();
    }

    /** Reads the library, and refuses one with issues. */
    static Supplier<Library> of(BankOptions options, PrintWriter issues) {
        return of(options, issues, System::nanoTime);
    }

    static Supplier<Library> of(BankOptions options, PrintWriter issues, LongSupplier clock) {
        LiveLibrary live = new LiveLibrary(options, issues, clock);
        Library.Result first = options.library();
        if (first.library().isEmpty()) {
            first.issues().forEach(issues::println);
            issues.flush();
            throw Refusal.failed("There are " + first.issues().size() + " issues in the bank or its lessons, so the site does not start.");
        }
        live.library = first.library().get();
        return options.folders().isEmpty() ? () -> live.library : live;
    }

    @Override
    public Library get() {
        if (clock.getAsLong() - looked > PAUSE_NANOS) {
            look();
        }
        return library;
    }

    private synchronized void look() {
        if (clock.getAsLong() - looked <= PAUSE_NANOS) {
            return;
        }
        looked = clock.getAsLong();
        Map<String, Long> now = stamps();
        if (!now.equals(seen)) {
            seen = now;
            readAgain();
        }
    }

    private void readAgain() {
        try {
            Library.Result result = options.library();
            result.issues().forEach(issues::println);
            result.library().ifPresent(l -> library = l);
        } catch (Refusal refusal) {
            issues.println(refusal.getMessage());
        }
        issues.flush();
    }

    /** When each file was last changed. A folder that is away for a moment counts as unchanged. */
    private Map<String, Long> stamps() {
        Map<String, Long> stamps = new TreeMap<>();
        for (Path folder : options.folders()) {
            try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
                for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                    stamps.put(file.toString(), Files.getLastModifiedTime(file).toMillis());
                }
            } catch (IOException | UncheckedIOException e) {
                return seen == null ? stamps : seen;
            }
        }
        return stamps;
    }
}
