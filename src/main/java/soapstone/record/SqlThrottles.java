package soapstone.record;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import soapstone.school.Throttle;
import soapstone.school.Throttles;

/** Failures in a row. */
final class SqlThrottles implements Throttles {

    private final Database database;

    SqlThrottles(Database database) {
        this.database = database;
    }

    @Override
    public Optional<Failures> of(String subject) {
        return database.read(h -> find(h, subject, ""));
    }

    private static Optional<Failures> find(Handle h, String subject, String lock) {
        return h.createQuery("select failures, free_at from throttle where subject = :subject" + lock).bind("subject", subject)
                .map((row, c) -> new Failures(row.getInt("failures"), Times.get(row, "free_at"))).findOne();
    }

    @Override
    public Failures fail(String subject, FreeAt rule, Instant now) {
        return database.in(h -> {
            // The row is there before it is locked, so that two first failures at once are two.
            h.createUpdate("insert into throttle (subject, failures, free_at) values (:subject, 0, :now) on conflict do nothing")
                    .bind("subject", subject).bind("now", now).execute();
            int failures = find(h, subject, " for update").orElseThrow().count() + 1;
            Instant free = rule.after(failures, now);
            h.createUpdate("update throttle set failures = :failures, free_at = :free where subject = :subject").bind("failures", failures)
                    .bind("free", free).bind("subject", subject).execute();
            return new Failures(failures, free);
        });
    }

    @Override
    public void resetAll(String beginning) {
        database.run(h -> h.createUpdate("delete from throttle where substring(subject, 1, :length) = :beginning").bind("length", beginning.length())
                .bind("beginning", beginning).execute());
    }

    @Override
    public int forgetBefore(Throttle kind, Instant free) {
        return database.in(h -> h.createUpdate("delete from throttle where subject like :subjects and free_at < :free").bind("subjects", kind.prefix() + "%")
                .bind("free", free).execute());
    }

    @Override
    public void reset(String subject) {
        database.run(h -> h.createUpdate("delete from throttle where subject = :subject").bind("subject", subject).execute());
    }
}
