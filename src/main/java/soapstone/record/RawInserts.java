package soapstone.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicLong;

/** The least that keeping a few bytes for good can cost: one row, one commit. For measuring against. */
public final class RawInserts {

    private final Database database;
    private final AtomicLong next = new AtomicLong();

    /** Makes a table of its own in the database, anew. */
    public RawInserts(Database database) {
        this.database = database;
        database.run(h -> {
            h.execute("drop table if exists raw_insert");
            h.execute("create table raw_insert (id bigint primary key, content varchar(8000) not null)");
        });
    }

    /** Keeps one row of that text, and returns when it is committed. */
    public void insert(String content) {
        database.run(h -> {
            Connection connection = h.getConnection();
            try (PreparedStatement statement = connection.prepareStatement("insert into raw_insert (id, content) values (?, ?)")) {
                statement.setLong(1, next.incrementAndGet());
                statement.setString(2, content);
                statement.executeUpdate();
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    /** Takes the table away again. */
    public void drop() {
        database.run(h -> h.execute("drop table raw_insert"));
    }
}
