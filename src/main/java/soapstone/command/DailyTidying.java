package soapstone.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import soapstone.school.School;
import soapstone.school.Tidying;

/** Tidies a school at the start and then each day, for as long as the site runs. */
final class DailyTidying implements AutoCloseable {

    static final Duration DAY = Duration.ofDays(1);

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "tidying");
        thread.setDaemon(true);
        return thread;
    });

    private DailyTidying() {}

    /** @param err where it is said that it could not be done: the site goes on, and it is tried again */
    static DailyTidying of(School school, Duration every, PrintWriter err) {
        DailyTidying tidying = new DailyTidying();
        tidying.clock.scheduleWithFixedDelay(() -> tidy(school, err), 0, every.toMillis(), TimeUnit.MILLISECONDS);
        return tidying;
    }

    private static void tidy(School school, PrintWriter err) {
        try {
            Tidying.tidy(school, Instant.now());
        } catch (RuntimeException e) {
            err.println("Sessions and codes that are over could not be taken away: " + e.getMessage());
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
