package soapstone.record;

import java.io.ByteArrayOutputStream;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soapstone.school.Print;
import soapstone.school.Prints;

/** What is being printed. */
final class SqlPrints implements Prints {

    /** The embedded database takes a million bytes in a row. */
    private static final int PIECE = 500_000;
    private static final String SELECT = "select id, assignment, by_person, kind, choices, state, done, total, pages, asked, seen from print ";

    private final Database database;

    SqlPrints(Database database) {
        this.database = database;
    }

    private static Print print(ResultSet row) throws SQLException {
        return new Print(row.getLong("id"), row.getLong("assignment"), row.getLong("by_person"), row.getString("kind"), row.getString("choices"),
                Print.State.valueOf(row.getString("state")), row.getInt("done"), row.getInt("total"), row.getInt("pages"), Times.get(row, "asked"), Times.get(row, "seen"));
    }

    @Override
    public List<Print> of(long assignment) {
        return database.read(h -> h.createQuery(SELECT + "where assignment = :assignment order by id desc").bind("assignment", assignment).map((row, c) -> print(row)).list());
    }

    @Override
    public Optional<Print> find(long id) {
        return database.read(h -> h.createQuery(SELECT + "where id = :id").bind("id", id).map((row, c) -> print(row)).findOne());
    }

    @Override
    public Print ask(long assignment, long by, String kind, String choices, int total, Instant now) {
        return database.in(h -> {
            long id = h.createUpdate("insert into print (assignment, by_person, kind, choices, state, done, total, pages, asked, seen) "
                            + "values (:assignment, :by, :kind, :choices, 'MAKING', 0, :total, 0, :now, :now)").bind("assignment", assignment).bind("by", by).bind("kind", kind)
                    .bind("choices", choices).bind("total", total).bind("now", now).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
            return h.createQuery(SELECT + "where id = :id").bind("id", id).map((row, c) -> print(row)).one();
        });
    }

    @Override
    public boolean goOn(long id, int done, Instant now) {
        return database.in(h -> h.createUpdate("update print set done = :done, seen = :now where id = :id and state = 'MAKING'").bind("done", done).bind("now", now)
                .bind("id", id).execute() == 1);
    }

    @Override
    public void done(long id, byte[] file, int pages, Instant now) {
        database.run(h -> {
            int fresh = h.createUpdate("update print set state = 'DONE', done = total, pages = :pages, seen = :now where id = :id and state = 'MAKING'").bind("pages", pages)
                    .bind("now", now).bind("id", id).execute();
            for (int place = 0; fresh == 1 && place * PIECE < file.length; place++) {
                h.createUpdate("insert into print_part (print, place, content) values (:print, :place, :content)").bind("print", id).bind("place", place)
                        .bind("content", Arrays.copyOfRange(file, place * PIECE, Math.min(file.length, (place + 1) * PIECE))).execute();
            }
        });
    }

    @Override
    public void end(long id, Print.State state) {
        database.run(h -> h.createUpdate("update print set state = :state where id = :id and state = 'MAKING'").bind("state", state.name()).bind("id", id).execute());
    }

    @Override
    public Optional<byte[]> file(long id) {
        return database.read(h -> {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            h.createQuery("select content from print_part where print = :id order by place").bind("id", id).map((row, c) -> row.getBytes("content")).forEach(file::writeBytes);
            return file.size() == 0 ? Optional.empty() : Optional.of(file.toByteArray());
        });
    }

    @Override
    public void forgetBefore(Instant asked) {
        database.run(h -> {
            h.createUpdate("delete from print_part where print in (select id from print where asked < :asked)").bind("asked", asked).execute();
            h.createUpdate("delete from print where asked < :asked").bind("asked", asked).execute();
        });
    }
}
