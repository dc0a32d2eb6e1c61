package soapstone.command;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import soapstone.files.SecurityLog;
import soapstone.page.SchoolTimes;
import soapstone.school.Retention;
import soapstone.school.School;
import soapstone.school.Tidying;

/** Looks once an hour whether there is anything that has been kept long enough. */
final class DailyWork implements AutoCloseable {

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "retention");
        thread.setDaemon(true);
        return thread;
    });

    private DailyWork() {}

    /** @param err where it is said what was done, or that it could not be: the site goes on, and it is tried again in an hour */
    static DailyWork begin(Supplier<School> school, SecurityLog log, PrintWriter err) {
        DailyWork work = new DailyWork();
        work.clock.scheduleWithFixedDelay(() -> tryOnce(school, log, err), 0, 1, TimeUnit.HOURS);
        return work;
    }

    private static void tryOnce(Supplier<School> school, SecurityLog log, PrintWriter err) {
        try {
            once(school.get(), log, Instant.now(), err);
        } catch (RuntimeException e) {
            err.println("What has been kept long enough could not be taken away (" + e.getClass().getSimpleName() + "); it is tried again in an hour.");
            err.flush();
        }
    }

    /**
     * Sessions that were over a day ago, what is left of codes, what was counted of addresses, lines of the log of more than 30 days; and students whose time
     * is over, if the keeper wants it so and it is their day.
     */
    static void once(School school, SecurityLog log, Instant now, PrintWriter err) {
        Tidying.tidy(school, now);
        log.tidy(now);
        int erased = Retention.byItself(school, now, SchoolTimes.zone());
        if (erased > 0) {
            err.println("Students erased whose time was over: " + erased + ".");
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
