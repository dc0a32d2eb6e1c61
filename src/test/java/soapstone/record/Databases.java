package soapstone.record;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Fresh databases of both kinds. One PostgreSQL runs for all tests of a process, with a database of its own for each. */
public final class Databases {

    private static final AtomicInteger COUNT = new AtomicInteger();

    private Databases() {}

    private static final class Postgres {
        private static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                EmbeddedPostgres started = EmbeddedPostgres.builder().setServerConfig("max_connections", "200").start();
                Runtime.getRuntime().addShutdownHook(new Thread(() -> close(started)));
                return started;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static void close(EmbeddedPostgres started) {
            try {
                started.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** An embedded database in a new folder. */
    public static Database h2() {
        try {
            return Database.inFolder(Files.createTempDirectory("soapstone-h2"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An embedded database in that folder. */
    public static Database h2(Path folder) {
        return Database.inFolder(folder);
    }

    /** The address of a new, empty PostgreSQL database; its user is postgres, without a password. */
    public static String postgresUrl() {
        String name = "school" + COUNT.incrementAndGet();
        try (Connection connection = Postgres.RUNNING.getPostgresDatabase().getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return Postgres.RUNNING.getJdbcUrl("postgres", name);
    }

    public static Database postgres() {
        return Database.at(postgresUrl(), "postgres", "");
    }

    /** Both, for parameterized tests: the name and the open database. */
    public static Stream<Arguments> both() {
        return Stream.of(Arguments.of("H2", h2()), Arguments.of("PostgreSQL", postgres()));
    }
}
