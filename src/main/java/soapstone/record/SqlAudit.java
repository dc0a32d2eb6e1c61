package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import soapstone.school.Audit;

/** What was changed, and what left. */
final class SqlAudit implements Audit {

    private static final String SELECT = "select at, by_person, act, about_person, about_class, detail, left_school from audit ";

    private final Database database;

    SqlAudit(Database database) {
        this.database = database;
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(Times.get(row, "at"), Optional.ofNullable(row.getObject("by_person", Long.class)), row.getString("act"),
                Optional.ofNullable(row.getObject("about_person", Long.class)), Optional.ofNullable(row.getObject("about_class", Long.class)),
                row.getString("detail"), row.getBoolean("left_school"));
    }

    @Override
    public void note(Entry e) {
        database.run(h -> h.createUpdate("insert into audit (at, by_person, act, about_person, about_class, detail, left_school) "
                        + "values (:at, :by, :act, :person, :class, :detail, :left)").bind("at", e.at()).bind("by", e.by().orElse(null)).bind("act", e.act())
                .bind("person", e.aboutPerson().orElse(null)).bind("class", e.aboutClass().orElse(null)).bind("detail", e.detail()).bind("left", e.leftSchool())
                .execute());
    }

    @Override
    public List<Entry> about(long person) {
        return list("where about_person = :id order by id", person);
    }

    @Override
    public List<Entry> aboutClass(long schoolClass) {
        return list("where about_class = :id order by id", schoolClass);
    }

    @Override
    public List<Entry> latest(int most) {
        return list("order by id desc limit :id", most);
    }

    @Override
    public List<Entry> latest(String act, int most) {
        return database.read(h -> h.createQuery(SELECT + "where act = :act order by id desc limit :most").bind("act", act).bind("most", most).map((row, c) -> entry(row)).list());
    }

    private List<Entry> list(String where, long id) {
        return database.read(h -> h.createQuery(SELECT + where).bind("id", id).map((row, c) -> entry(row)).list());
    }
}
