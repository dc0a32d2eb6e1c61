package soapstone.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/**
 * Everything that a school keeps, as a zip of one text file for each table: one row a line, in JSON. It is taken while the
 * site runs, as it stood at one moment, and goes back into either database. Passwords are in it as hashes only.
 */
public final class Backup {

    private static final String HEAD = "backup.json";
    private static final String ENDING = ".jsonl";
    private static final int FORMAT = 1;
    private static final int ROWS_AT_ONCE = 1000;
    private static final JsonFactory JSON = new JsonFactory();

    private Backup() {}

    /**
     * Says what a backup is.
     *
     * @param step of the tables
     * @param rows by table
     */
    public record Told(Instant taken, String step, Map<String, Long> rows) {}

    /** Says why a backup cannot be put back, in a sentence. */
    public static final class Unreadable extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Unreadable(String sentence) {
            super(sentence);
        }
    }

    /** Writes a backup. The stream is not closed. */
    public static Told write(Database database, OutputStream out, Instant now) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(new Open(out));
        Map<String, Long> rows = new LinkedHashMap<>();
        String step = database.step();
        database.at(TransactionIsolationLevel.REPEATABLE_READ, h -> {
            for (String table : Tables.KEPT) {
                rows.put(table, entry(zip, table + ENDING, to -> table(h, table, to)));
            }
            return null;
        });
        entry(zip, HEAD, to -> head(to, now, step, rows));
        zip.finish();
        return new Told(now, step, rows);
    }

    private interface Part {
        long write(OutputStream out) throws IOException, SQLException;
    }

    private static long entry(ZipOutputStream zip, String name, Part part) {
        try {
            zip.putNextEntry(new ZipEntry(name));
            long rows = part.write(new Open(zip));
            zip.closeEntry();
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SQLException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static long head(OutputStream to, Instant now, String step, Map<String, Long> rows) throws IOException {
        try (JsonGenerator json = JSON.createGenerator(to)) {
            json.writeStartObject();
            json.writeNumberField("format", FORMAT);
            json.writeStringField("taken", now.toString());
            json.writeStringField("step", step);
            json.writeObjectFieldStart("rows");
            for (Map.Entry<String, Long> e : rows.entrySet()) {
                json.writeNumberField(e.getKey(), e.getValue());
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        return 1;
    }

    private static long table(Handle h, String table, OutputStream to) throws IOException, SQLException {
        Connection connection = h.getConnection();
        long count = 0;
        try (Statement statement = connection.createStatement(); JsonGenerator json = JSON.createGenerator(to)) {
            statement.setFetchSize(ROWS_AT_ONCE);
            json.setRootValueSeparator(new com.fasterxml.jackson.core.io.SerializedString("\n"));
            ResultSet rows = statement.executeQuery("select * from " + table + " order by 1, 2");
            while (rows.next()) {
                row(rows, json);
                count++;
            }
            json.writeRaw("\n");
        }
        return count;
    }

    private static void row(ResultSet row, JsonGenerator json) throws IOException, SQLException {
        ResultSetMetaData columns = row.getMetaData();
        json.writeStartObject();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            json.writeFieldName(columns.getColumnLabel(i));
            switch (columns.getColumnType(i)) {
                case Types.BIGINT, Types.INTEGER -> {
                    long value = row.getLong(i);
                    number(json, row.wasNull(), value);
                }
                case Types.BOOLEAN, Types.BIT -> json.writeBoolean(row.getBoolean(i));
                case Types.DOUBLE -> json.writeNumber(row.getDouble(i));
                case Types.TIMESTAMP_WITH_TIMEZONE, Types.TIMESTAMP -> time(json, row.getObject(i, OffsetDateTime.class));
                default -> json.writeString(row.getString(i));
            }
        }
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, boolean nothing, long value) throws IOException {
        if (nothing) {
            json.writeNull();
        } else {
            json.writeNumber(value);
        }
    }

    private static void time(JsonGenerator json, OffsetDateTime value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else {
            json.writeString(value.toInstant().toString());
        }
    }

    /**
     * Puts a backup into a database that has nobody in it yet. Whatever goes wrong, nothing is put in.
     *
     * @throws Unreadable when it is no backup, is of a newer program, is not whole, or when the database is not empty
     */
    public static Told restore(Database database, InputStream in) throws IOException {
        try {
            return database.in(h -> restore(database, h, in));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static Told restore(Database database, Handle h, InputStream in) {
        if (h.createQuery("select count(*) from person").mapTo(Long.class).one() > 0) {
            throw new Unreadable("There are people in this school already: a backup goes into an empty data folder.");
        }
        Map<String, Long> rows = new LinkedHashMap<>();
        Told told = null;
        try {
            ZipInputStream zip = new ZipInputStream(in);
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                if (e.getName().equals(HEAD)) {
                    told = told(new Held(zip));
                } else {
                    String table = e.getName().endsWith(ENDING) ? e.getName().substring(0, e.getName().length() - ENDING.length()) : "";
                    if (!Tables.KEPT.contains(table)) {
                        throw new Unreadable("The backup holds '" + e.getName() + "', which this program does not know. It may be of a newer one.");
                    }
                    rows.put(table, rows(h, table, new Held(zip)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        check(database, told, rows);
        Tables.NUMBERED.forEach(table -> Tables.goOn(h, table));
        return told;
    }

    private static void check(Database database, Told told, Map<String, Long> rows) {
        if (told == null) {
            throw new Unreadable("This is no backup of a school, or its end is missing.");
        }
        if (Integer.parseInt(told.step()) > Integer.parseInt(database.step())) {
            throw new Unreadable("The backup is of a newer program (tables at step " + told.step() + ", here " + database.step() + "). Restore it with that program.");
        }
        if (!told.rows().equals(rows)) {
            throw new Unreadable("The backup is not whole: it says " + told.rows() + " and holds " + rows + ".");
        }
    }

    private static Told told(InputStream in) throws IOException {
        String step = "";
        Instant taken = Instant.EPOCH;
        Map<String, Long> rows = new LinkedHashMap<>();
        try (JsonParser json = JSON.createParser(in)) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                JsonToken value = json.nextToken();
                if (name.equals("rows") && value == JsonToken.START_OBJECT) {
                    while (json.nextToken() == JsonToken.FIELD_NAME) {
                        String table = json.currentName();
                        rows.put(table, json.nextLongValue(0));
                    }
                } else if (name.equals("step")) {
                    step = json.getText();
                } else if (name.equals("taken")) {
                    taken = Instant.parse(json.getText());
                } else if (name.equals("format") && json.getIntValue() > FORMAT) {
                    throw new Unreadable("The backup is written in a newer way than this program can read.");
                }
            }
        }
        return new Told(taken, step, rows);
    }

    private static long rows(Handle h, String table, InputStream in) throws IOException {
        Map<String, Integer> types = types(h, table);
        long count = 0;
        try (JsonParser json = JSON.createParser(in)) {
            List<Map<String, Object>> some = new ArrayList<>();
            while (json.nextToken() == JsonToken.START_OBJECT) {
                some.add(values(json, table, types));
                count++;
                if (some.size() == ROWS_AT_ONCE) {
                    insert(h, table, types, some);
                    some.clear();
                }
            }
            insert(h, table, types, some);
        }
        return count;
    }

    private static Map<String, Integer> types(Handle h, String table) {
        Map<String, Integer> types = new LinkedHashMap<>();
        try (Statement statement = h.getConnection().createStatement(); ResultSet none = statement.executeQuery("select * from " + table + " where 1 = 0")) {
            ResultSetMetaData columns = none.getMetaData();
            for (int i = 1; i <= columns.getColumnCount(); i++) {
                types.put(columns.getColumnLabel(i), columns.getColumnType(i));
            }
        } catch (SQLException e) {
            throw new IllegalStateException(table, e);
        }
        return types;
    }

    private static Map<String, Object> values(JsonParser json, String table, Map<String, Integer> types) throws IOException {
        Map<String, Object> values = new LinkedHashMap<>();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String column = json.currentName();
            if (!types.containsKey(column)) {
                throw new Unreadable("The backup has a column '" + column + "' of '" + table + "', which this program does not know.");
            }
            JsonToken value = json.nextToken();
            values.put(column, switch (value) {
                case VALUE_NULL -> null;
                case VALUE_TRUE -> true;
                case VALUE_FALSE -> false;
                case VALUE_NUMBER_INT -> json.getLongValue();
                case VALUE_NUMBER_FLOAT -> json.getDoubleValue();
                default -> json.getText();
            });
        }
        return values;
    }

    /** Columns that a backup does not have yet take what the tables give them. */
    private static void insert(Handle h, String table, Map<String, Integer> types, List<Map<String, Object>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        List<String> columns = List.copyOf(rows.get(0).keySet());
        String sql = "insert into " + table + " (" + String.join(", ", columns) + ") values (" + "?, ".repeat(columns.size() - 1) + "?)";
        try (PreparedStatement statement = h.getConnection().prepareStatement(sql)) {
            for (Map<String, Object> row : rows) {
                for (int i = 0; i < columns.size(); i++) {
                    set(statement, i + 1, types.get(columns.get(i)), row.get(columns.get(i)));
                }
                statement.addBatch();
            }
            statement.executeBatch();
        } catch (SQLException e) {
            throw new Unreadable("Rows of '" + table + "' in the backup do not fit together: " + e.getMessage().lines().findFirst().orElse(""));
        }
    }

    private static void set(PreparedStatement statement, int at, int type, Object value) throws SQLException {
        if (value == null) {
            statement.setNull(at, type);
        } else if (type == Types.TIMESTAMP_WITH_TIMEZONE || type == Types.TIMESTAMP) {
            statement.setObject(at, OffsetDateTime.parse(value.toString()));
        } else if (type == Types.DOUBLE) {
            statement.setDouble(at, ((Number) value).doubleValue());
        } else {
            statement.setObject(at, value);
        }
    }

    /** Closing a part must not close the whole. */
    private static final class Open extends FilterOutputStream {
        Open(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            out.write(bytes, from, count);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    /** The same for reading. */
    private static final class Held extends FilterInputStream {
        Held(InputStream in) {
            super(in);
        }

        @Override
        public void close() {
            // The zip goes on behind this part.
        }
    }
}
