package soapstone.record;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import soapstone.school.OutOfReach;

/**
 * The database of a school: H2 in a data folder, or PostgreSQL at an address. Opening it brings its tables up to this
 * program; tables that a newer program made are refused. For many threads.
 */
public final class Database implements AutoCloseable {

    /** Where the steps of the tables are, the same for both databases. */
    static final String STEPS = "classpath:soapstone/record";
    static final String H2_USER = "sa";
    private static final String FILE = "school";
    /** What H2 says of a file that another process holds. */
    private static final int ALREADY_OPEN = 90020;
    private static final int MOST_CONNECTIONS = 12;
    /** So long a page waits for a database that is away before it says so. */
    private static final long WAIT_MILLIS = 4_000;
    private static final long TRY_MILLIS = 2_000;
    /**
     * Each commit is written before it is acknowledged: without it a killed process loses what it has promised. What was read
     * is not kept for a second time: it would be a class's year in the memory of each connection, stale at the next hand-in.
     * All statements of the house stay planned, which by themselves are only the last eight of a connection.
     */
    private static final String H2_OPTIONS = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0;OPTIMIZE_REUSE_RESULTS=0;QUERY_CACHE_SIZE=256;DB_CLOSE_ON_EXIT=FALSE";

    /** Of the heap, for pages of the embedded database: in a big school the answers of one class lie far apart, and are read again and again. */
    private static final int SHARE_FOR_CACHE = 4;

    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private Database(HikariDataSource pool) {
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
        Times.teach(jdbi);
    }

    /** Says why a database cannot be used, in a sentence for whoever runs the site. */
    public static final class Unusable extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Unusable(String sentence, Throwable cause) {
            super(sentence, cause);
        }
    }

    /**
     * Opens the database in a data folder, and makes it where there is none.
     *
     * @throws Unusable when another program has it open, when it is of a newer program, or when it is damaged
     */
    public static Database inFolder(Path folder) {
        return open(addressOf(folder), H2_USER, "", null);
    }

    /** Where the driver finds the database of a data folder. */
    static String addressOf(Path folder) {
        return "jdbc:h2:file:" + folder.toAbsolutePath().resolve(FILE) + H2_OPTIONS + ";CACHE_SIZE=" + Runtime.getRuntime().maxMemory() / SHARE_FOR_CACHE / 1024;
    }

    /**
     * Opens a PostgreSQL database.
     *
     * @param url      such as {@code jdbc:postgresql://localhost/school}
     * @param user     may be empty where the address says it all
     * @throws Unusable when it cannot be reached, or when it is of a newer program
     */
    public static Database at(String url, String user, String password) {
        return open(url, user, password, null);
    }

    /**
     * Opens a school that stands beside others in one PostgreSQL database, and makes it where there is none.
     *
     * @param schema where its tables are, and nothing else
     */
    public static Database at(String url, String user, String password, String schema) {
        return open(url, user, password, schema);
    }

    private static Database open(String url, String user, String password, String schema) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setUsername(user);
        config.setPassword(password);
        config.setSchema(schema);
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(WAIT_MILLIS);
        config.setValidationTimeout(TRY_MILLIS);
        config.setPoolName("school");
        HikariDataSource pool;
        try {
            pool = new HikariDataSource(config);
        } catch (RuntimeException e) {
            throw new Unusable(whyClosed(e), e);
        }
        try {
            bringUp(pool);
            return new Database(pool);
        } catch (RuntimeException e) {
            pool.close();
            throw e instanceof Unusable ? e : new Unusable(whyClosed(e), e);
        }
    }

    private static String whyClosed(RuntimeException e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getErrorCode() == ALREADY_OPEN) {
                return "Another program has the school in this data folder open. Most likely that is the running site. A folder serves one program at a time: end the other one "
                        + "and do this again, or keep the school in PostgreSQL (--database URL), which serves several.";
            }
        }
        return "The school's database cannot be opened: " + deepest(e) + ". Is it running, is there room on the disk, and may this program write there?";
    }

    private static void bringUp(HikariDataSource pool) {
        Flyway flyway = Flyway.configure().dataSource(pool).locations(STEPS).failOnMissingLocations(true).load();
        for (MigrationInfo step : flyway.info().applied()) {
            if (step.getState() == MigrationState.FUTURE_SUCCESS || step.getState() == MigrationState.FUTURE_FAILED) {
                throw new Unusable("The school's database was made by a newer Soapstone (its tables are at step " + step.getVersion()
                        + "). Run that program, or restore a backup of before.", null);
            }
        }
        try {
            flyway.migrate();
        } catch (FlywayException e) {
            throw new Unusable("The school's tables cannot be brought up to this program: " + deepest(e), e);
        }
    }

    private static String deepest(Throwable e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        String says = String.valueOf(last.getMessage());
        return says.lines().findFirst().orElse(says).replaceAll("[.\\s]+$", "");
    }

    /**
     * Works in one transaction and gives its result; whatever is thrown takes everything back.
     *
     * @throws OutOfReach when the database is away, as all that follow
     */
    public <T> T in(Function<Handle, T> work) {
        return reaching(() -> jdbi.inTransaction(work::apply));
    }

    /** Works in one transaction. */
    public void run(Consumer<Handle> work) {
        in(h -> {
            work.accept(h);
            return null;
        });
    }

    /** Works in one transaction that sees everything as it stood at one moment. */
    <T> T at(TransactionIsolationLevel level, Function<Handle, T> work) {
        return reaching(() -> jdbi.inTransaction(level, work::apply));
    }

    /** The step that the tables are at. */
    String step() {
        return read(h -> h.createQuery("select max(cast(\"version\" as int)) from \"flyway_schema_history\" where \"success\"").mapTo(String.class).one());
    }

    /** Reads without a transaction of its own. */
    public <T> T read(Function<Handle, T> work) {
        return reaching(() -> jdbi.withHandle(work::apply));
    }

    private <T> T reaching(Supplier<T> work) {
        try {
            return work.get();
        } catch (JdbiException e) {
            throw pool.isClosed() || Reach.isLost(e) ? lost(e) : e;
        }
    }

    /** The pool does not know how the embedded database says that it is closed, and would give its dead connections out again. */
    private OutOfReach lost(JdbiException e) {
        if (isEmbedded() && !pool.isClosed()) {
            pool.getHikariPoolMXBean().softEvictConnections();
        }
        return new OutOfReach(e);
    }

    /** Takes everything away that stands in its schema. */
    public void throwAway() {
        if (pool.getSchema() == null) {
            throw new IllegalStateException("only a school in a schema of its own is thrown away");
        }
        run(h -> h.execute("drop schema " + pool.getSchema() + " cascade"));
    }

    /** What its tables and indexes take on the disk, in bytes. */
    public long bytes() {
        return read(h -> h.createQuery(isEmbedded() ? "select cast(setting_value as bigint) from information_schema.settings where setting_name = 'info.FILE_SIZE'"
                : "select cast(sum(pg_total_relation_size(c.oid)) as bigint) from pg_class c where c.relkind = 'r' and c.relnamespace = cast(current_schema() as regnamespace)")
                .mapTo(Long.class).one());
    }

    /** Whether it is the embedded one. */
    public boolean isEmbedded() {
        return pool.getJdbcUrl().startsWith("jdbc:h2:");
    }

    @Override
    public void close() {
        pool.close();
    }
}
