package soapstone.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import soapstone.record.BackupFolder;
import soapstone.record.Database;

/** Looks once an hour whether the day's backup is there, and makes it. */
final class DailyBackups implements AutoCloseable {

    private static final int KEPT = 14;

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "backups");
        thread.setDaemon(true);
        return thread;
    });

    private DailyBackups() {}

    /** @param err where it is said that a backup could not be made: the site goes on */
    static DailyBackups into(Path folder, Database database, PrintWriter err) {
        DailyBackups backups = new DailyBackups();
        BackupFolder days = new BackupFolder(folder, SchoolOptions.passphrase(), KEPT);
        backups.clock.scheduleWithFixedDelay(() -> take(days, folder, database, err), 0, 1, TimeUnit.HOURS);
        return backups;
    }

    private static void take(BackupFolder days, Path folder, Database database, PrintWriter err) {
        try {
            days.takeIfDue(database, Instant.now());
        } catch (IOException | RuntimeException e) {
            err.println("The day's backup could not be made in '" + folder + "': " + e.getMessage());
            err.flush();
        }
    }

    @Override
    public void close() {
        clock.shutdown();
        try {
            clock.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
