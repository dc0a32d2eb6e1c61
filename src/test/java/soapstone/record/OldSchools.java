package soapstone.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.flywaydb.core.Flyway;

/**
 * Schools as older programs left them: the tables at an earlier step, with rows in all of them that are put in as plain SQL,
 * so that nothing of today's program has a hand in it.
 *
 * <p>{@code folder-of-step-1.zip} is a data folder that was made like this once and packed, and {@code backup-of-step-1.zip}
 * is what the program of that step wrote as its backup. Neither is ever made anew.
 */
public final class OldSchools {

    /** Everybody's passphrase in them. */
    public static final String PASSPHRASE = "a long enough sentence";

    private OldSchools() {}

    /** An address with its user, as drivers take it. */
    record Address(String url, String user) {

        Connection connect() throws SQLException {
            return DriverManager.getConnection(url, user, "");
        }

        /** Opens it with the program of today. */
        Database open() {
            return Database.at(url, user, "");
        }
    }

    static Address folder(Path folder) {
        return new Address(Database.addressOf(folder), Database.H2_USER);
    }

    static Address postgres() {
        return new Address(Databases.postgresUrl(), "postgres");
    }

    /** Makes the tables as they were at a step, and puts the rows in. */
    static void make(Address address, int step) {
        Flyway.configure().dataSource(address.url(), address.user(), "").locations(Database.STEPS).target(String.valueOf(step)).load().migrate();
        try (Connection connection = address.connect(); Statement statement = connection.createStatement()) {
            statement.execute(new String(resource("school-of-step-" + step + ".sql"), StandardCharsets.UTF_8));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Unpacks the data folder that was kept from a step. */
    public static Path unpack(int step, Path into) {
        try (ZipInputStream zip = new ZipInputStream(open("folder-of-step-" + step + ".zip"))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                Files.write(into.resolve(e.getName()), zip.readAllBytes());
            }
            return into;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static InputStream open(String name) {
        return OldSchools.class.getResourceAsStream("/soapstone/record/" + name);
    }

    private static byte[] resource(String name) {
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every row of every table of the school: by table, in order, the columns by name as text. */
    static Map<String, List<Map<String, String>>> rows(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet found = connection.createStatement().executeQuery("select lower(table_name) from information_schema.tables "
                + "where lower(table_schema) = 'public' and lower(table_name) <> 'flyway_schema_history' order by 1")) {
            while (found.next()) {
                tables.add(found.getString(1));
            }
        }
        Map<String, List<Map<String, String>>> all = new LinkedHashMap<>();
        for (String table : tables) {
            all.put(table, rows(connection, table));
        }
        return all;
    }

    private static List<Map<String, String>> rows(Connection connection, String table) throws SQLException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (ResultSet row = connection.createStatement().executeQuery("select * from " + table + " order by 1, 2")) {
            while (row.next()) {
                Map<String, String> columns = new LinkedHashMap<>();
                for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                    columns.put(row.getMetaData().getColumnLabel(i), row.getString(i));
                }
                rows.add(columns);
            }
        }
        return rows;
    }
}
