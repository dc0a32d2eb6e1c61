package soapstone.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.School;
import soapstone.web.SchoolOffice;

/**
 * The school of a running site, if it keeps one. The database opens while the bank is read and the site starts; whoever
 * needs it first waits for it.
 */
final class OpenSchool implements AutoCloseable {

    private final Optional<CompletableFuture<Database>> opening;
    private final Optional<CompletableFuture<School>> school;

    private OpenSchool(Optional<CompletableFuture<Database>> opening) {
        this.opening = opening;
        this.school = opening.map(o -> o.thenApply(SqlSchool::of));
    }

    /** @param folder or url: one of them, or none for a site of guests */
    static OpenSchool begin(Path folder, String url) {
        if (url != null) {
            String user = System.getenv().getOrDefault("SOAPSTONE_DATABASE_USER", "");
            String password = System.getenv().getOrDefault("SOAPSTONE_DATABASE_PASSWORD", "");
            return new OpenSchool(Optional.of(CompletableFuture.supplyAsync(() -> Database.at(url, user, password))));
        }
        return new OpenSchool(Optional.ofNullable(folder).map(f -> CompletableFuture.supplyAsync(() -> Database.inFolder(f))));
    }

    Optional<SchoolOffice> office(boolean secure) {
        return school.map(s -> new SchoolOffice(s::join, Clock.systemUTC(), secure));
    }

    /** Waits until the database is open, and says why when it cannot be. */
    void await() {
        try {
            opening.ifPresent(CompletableFuture::join);
        } catch (CompletionException e) {
            if (e.getCause() instanceof Database.Unusable unusable) {
                throw Refusal.failed(unusable.getMessage());
            }
            throw e;
        }
    }

    Optional<School> school() {
        return school.map(CompletableFuture::join);
    }

    @Override
    public void close() {
        opening.filter(o -> !o.isCompletedExceptionally()).ifPresent(o -> o.join().close());
    }
}
