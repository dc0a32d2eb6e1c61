package soapstone.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import soapstone.source.Issue;

/**
 * Keeps the library that the site works with. When files of its folders change, it is read anew; when they have faults,
 * the last good one stays, and the faults are told.
 */
public final class LiveLibrary implements Supplier<Library> {

    private static final long LOOK_EVERY_MS = 2000;
    private static final int DEEPEST = 4;

    private final Path bank;
    private final Path lessons;
    private final Consumer<String> told;
    private final LongSupplier clock;
    private final ReentrantLock reading = new ReentrantLock();
    private volatile Library current;
    private volatile long looked;
    private long stamp;

    /**
     * @param first   the library that was read when the site started
     * @param bank    its folder, or null when it came with the program and cannot change
     * @param lessons likewise
     * @param told    receives what is to be said about changes
     * @param clock   milliseconds
     */
    public LiveLibrary(Library first, Path bank, Path lessons, Consumer<String> told, LongSupplier clock) {
        this.current = first;
        this.bank = bank;
        this.lessons = lessons;
        this.told = told;
        this.clock = clock;
        this.stamp = stamp();
        this.looked = clock.getAsLong();
    }

    @Override
    public Library get() {
        boolean canChange = bank != null || lessons != null;
        if (canChange && clock.getAsLong() - looked > LOOK_EVERY_MS && reading.tryLock()) {
            try {
                looked = clock.getAsLong();
                look();
            } finally {
                reading.unlock();
            }
        }
        return current;
    }

    private void look() {
        long now = stamp();
        if (now == stamp) {
            return;
        }
        stamp = now;
        try {
            Library.Result read = Library.read(bank, lessons);
            if (read.library().isPresent()) {
                current = read.library().get();
                told.accept("The bank was read anew.");
            } else {
                told.accept("The bank has faults; the site goes on with the last good one.\n"
                        + String.join("\n", read.issues().stream().map(Issue::toString).toList()));
            }
        } catch (IOException e) {
            told.accept("The bank cannot be read; the site goes on with the last good one: " + e.getMessage());
        }
    }

    /** Changes whenever a file is added, taken away or written. */
    private long stamp() {
        long sum = 17;
        for (Path folder : Stream.of(bank, lessons).filter(java.util.Objects::nonNull).toList()) {
            try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    sum = sum * 31 + file.hashCode();
                    sum = sum * 31 + Files.getLastModifiedTime(file).toMillis();
                    sum = sum * 31 + Files.size(file);
                }
            } catch (IOException e) {
                sum = sum * 31 + List.of(folder).hashCode();
            }
        }
        return sum;
    }
}
