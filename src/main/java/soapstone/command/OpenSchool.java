package soapstone.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import soapstone.bank.Bank;
import soapstone.demo.DemoSchool;
import soapstone.files.SecurityLog;
import soapstone.record.Database;
import soapstone.record.SqlSchool;
import soapstone.school.Codes;
import soapstone.school.School;
import soapstone.school.SecretCodes;
import soapstone.web.SchoolOffice;

/**
 * The school of a running site, if it keeps one. The database opens while the bank is read and the site starts; whoever
 * needs it first waits for it.
 */
final class OpenSchool implements AutoCloseable {

    /** The invented school is the same every time. */
    private static final long SEED = 7;

    private final Optional<CompletableFuture<Database>> opening;
    private final Optional<Path> backups;
    private final Optional<CompletableFuture<School>> school;
    private SecurityLog log = SecurityLog.to(System.err);
    private Optional<Path> thrownAway = Optional.empty();
    private Optional<DailyBackups> daily = Optional.empty();
    private Optional<DailyTidying> tidying = Optional.empty();

    private OpenSchool(Optional<CompletableFuture<Database>> opening, Optional<Path> backups) {
        this.opening = opening;
        this.backups = backups;
        this.school = opening.map(o -> o.thenApply(SqlSchool::of));
    }

    /**
     * Begins to open the database.
     *
     * @param folder  or url: one of them, or none for a site of guests
     * @param backups where each day's backup goes; null for {@code backups} in the data folder
     */
    static OpenSchool begin(Path folder, String url, Path backups) {
        Optional<Path> into = Optional.ofNullable(backups).or(() -> Optional.ofNullable(folder).map(f -> f.resolve("backups")));
        if (url != null) {
            String user = System.getenv().getOrDefault("SOAPSTONE_DATABASE_USER", "");
            String password = System.getenv().getOrDefault("SOAPSTONE_DATABASE_PASSWORD", "");
            return new OpenSchool(Optional.of(CompletableFuture.supplyAsync(() -> Database.at(url, user, password))), into);
        }
        OpenSchool school = new OpenSchool(Optional.ofNullable(folder).map(f -> CompletableFuture.supplyAsync(() -> Database.inFolder(f))), into);
        if (folder != null) {
            school.log = SecurityLog.in(folder);
        }
        return school;
    }

    /** A school in a folder of its own, which never comes near a real one and goes away with the site. */
    static OpenSchool demo() throws IOException {
        Path folder = Files.createTempDirectory("soapstone-demo");
        OpenSchool demo = new OpenSchool(Optional.of(CompletableFuture.supplyAsync(() -> Database.inFolder(folder))), Optional.empty());
        demo.log = SecurityLog.in(folder);
        demo.thrownAway = Optional.of(folder);
        return demo;
    }

    void fillDemo(Bank bank) {
        DemoSchool.fill(school().orElseThrow(), bank, Instant.now(), SEED);
    }

    Optional<SchoolOffice> office(boolean secure) {
        return school.map(s -> new SchoolOffice(s::join, Clock.systemUTC(), secure, log));
    }

    /** Waits until the database is open, and says why when it cannot be; then the day's backup is made. */
    void await(PrintWriter err) {
        try {
            opening.ifPresent(CompletableFuture::join);
            daily = opening.flatMap(o -> backups.map(folder -> DailyBackups.into(folder, o.join(), err)));
        } catch (CompletionException e) {
            if (e.getCause() instanceof Database.Unusable unusable) {
                throw Refusal.failed(unusable.getMessage());
            }
            throw e;
        }
    }

    /**
     * The code with which the first instructor makes an account, as long as nobody is in charge; a new one at each start
     * stands for the one before. Only its hash is kept.
     */
    Optional<String> firstCode() {
        return school().filter(s -> s.people().isNobodyInCharge()).map(s -> {
            String code = SecretCodes.draw(new SecureRandom());
            s.codes().endAll(Codes.Purpose.FIRST_RUN);
            s.codes().make(SecretCodes.hash(code), Codes.Purpose.FIRST_RUN, Optional.empty(), SecretCodes.ends(Codes.Purpose.FIRST_RUN, Instant.now()));
            return code;
        });
    }

    /** Begins to tidy, now and each day. */
    void tidy(PrintWriter err) {
        tidying = school().map(s -> DailyTidying.of(s, DailyTidying.DAY, err));
    }

    Optional<School> school() {
        return school.map(CompletableFuture::join);
    }

    @Override
    public void close() {
        daily.ifPresent(DailyBackups::close);
        tidying.ifPresent(DailyTidying::close);
        opening.filter(o -> !o.isCompletedExceptionally()).ifPresent(o -> o.join().close());
        thrownAway.ifPresent(OpenSchool::throwAway);
    }

    private static void throwAway(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
