package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import soapstone.school.Note;
import soapstone.school.Notes;

/** Requests for corrections, with their answers. */
final class SqlNotes implements Notes {

    private static final String SELECT = "select id, person, class, at, asks, outcome, answer, answered, by_name from note ";

    private final Database database;

    SqlNotes(Database database) {
        this.database = database;
    }

    private static Note note(ResultSet row) throws SQLException {
        return new Note(row.getLong("id"), row.getLong("person"), row.getLong("class"), Times.get(row, "at"), row.getString("asks"),
                Note.Outcome.valueOf(row.getString("outcome")), row.getString("answer"), Times.maybe(row, "answered"), row.getString("by_name"));
    }

    @Override
    public List<Note> of(long person) {
        return database.read(h -> h.createQuery(SELECT + "where person = :id order by id").bind("id", person).map((row, c) -> note(row)).list());
    }

    @Override
    public List<Note> ofClass(long schoolClass) {
        return database.read(h -> h.createQuery(SELECT + "where class = :id order by id").bind("id", schoolClass).map((row, c) -> note(row)).list());
    }

    /** The student's place in the class is held meanwhile, so that a form that is sent twice at once is one request. */
    @Override
    public void ask(long person, long schoolClass, String asks, Instant now) {
        database.run(h -> {
            h.createQuery("select person from member where class = :class and person = :person for update").bind("class", schoolClass).bind("person", person)
                    .mapTo(Long.class).one();
            h.createUpdate("insert into note (person, class, at, asks, outcome, answer, by_name) select m.person, m.class, :at, :asks, 'OPEN', '', '' from member m "
                    + "where m.class = :class and m.person = :person "
                    + "and not exists (select 1 from note n where n.person = :person and n.class = :class and n.asks = :asks and n.outcome = 'OPEN')")
                    .bind("person", person).bind("class", schoolClass).bind("at", now).bind("asks", asks).execute();
        });
    }

    @Override
    public boolean answer(long note, Answer a) {
        return database.in(h -> h.createUpdate("update note set outcome = :outcome, answer = :text, answered = :at, by_person = :by, by_name = :name "
                        + "where id = :id and outcome = 'OPEN'").bind("outcome", a.outcome().name()).bind("text", a.text()).bind("at", a.at()).bind("by", a.by())
                .bind("name", a.byName()).bind("id", note).execute()) == 1;
    }
}
