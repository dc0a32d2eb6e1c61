package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import soapstone.school.ClassSettings;
import soapstone.school.Classes;
import soapstone.school.Member;
import soapstone.school.Person;
import soapstone.school.SchoolClass;

/** Classes, and who is in them. */
final class SqlClasses implements Classes {

    private static final String SELECT = "select c.id, c.name, c.term, c.code, c.settings, c.created, c.archived from class c ";
    private static final String MEMBERS = "select m.class, m.seat, m.state, m.extra_time, m.since, " + SqlPeople.COLUMNS
            + " from member m join person p on p.id = m.person ";

    private final Database database;

    SqlClasses(Database database) {
        this.database = database;
    }

    private static SchoolClass schoolClass(ResultSet row) throws SQLException {
        return new SchoolClass(row.getLong("id"), row.getString("name"), row.getString("term"), row.getString("code"),
                Settings.read(row.getString("settings")), Times.get(row, "created"), Times.maybe(row, "archived"));
    }

    private static Member member(ResultSet row) throws SQLException {
        return new Member(row.getLong("class"), SqlPeople.person(row), row.getString("seat"), Member.State.valueOf(row.getString("state")),
                row.getInt("extra_time"), Times.get(row, "since"));
    }

    @Override
    public Optional<SchoolClass> find(long id) {
        return database.read(h -> find(h, id));
    }

    private static Optional<SchoolClass> find(Handle h, long id) {
        return h.createQuery(SELECT + "where c.id = :id").bind("id", id).map((row, c) -> schoolClass(row)).findOne();
    }

    @Override
    public Optional<SchoolClass> byCode(String code) {
        return database.read(h -> h.createQuery(SELECT + "where c.code = :code").bind("code", code).map((row, c) -> schoolClass(row)).findOne());
    }

    @Override
    public List<SchoolClass> taughtBy(long instructor) {
        return database.read(h -> h.createQuery(SELECT + "join teaches t on t.class = c.id where t.person = :person order by c.created desc, c.id desc")
                .bind("person", instructor).map((row, c) -> schoolClass(row)).list());
    }

    @Override
    public List<SchoolClass> of(long student) {
        return database.read(h -> h.createQuery(SELECT + "join member m on m.class = c.id where m.person = :person and m.state <> 'LEFT' order by c.created desc, c.id desc")
                .bind("person", student).map((row, c) -> schoolClass(row)).list());
    }

    @Override
    public boolean teaches(long schoolClass, long instructor) {
        return database.read(h -> h.createQuery("select count(*) from teaches where class = :class and person = :person").bind("class", schoolClass)
                .bind("person", instructor).mapTo(Integer.class).one()) > 0;
    }

    @Override
    public List<Person> instructors(long schoolClass) {
        return database.read(h -> h.createQuery("select " + SqlPeople.COLUMNS + " from teaches t join person p on p.id = t.person where t.class = :class order by p.id")
                .bind("class", schoolClass).map((row, c) -> SqlPeople.person(row)).list());
    }

    @Override
    public SchoolClass add(String name, String term, String code, ClassSettings settings, long instructor, Instant now) {
        return database.in(h -> {
            long id = h.createUpdate("insert into class (name, term, code, settings, created) values (:name, :term, :code, :settings, :now)")
                    .bind("name", name).bind("term", term).bind("code", code).bind("settings", Settings.write(settings)).bind("now", now)
                    .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
            addInstructor(h, id, instructor);
            return find(h, id).orElseThrow();
        });
    }

    @Override
    public void change(long id, String name, String term, ClassSettings settings) {
        database.run(h -> {
            find(h, id).map(SchoolClass::settings).map(ClassSettings::language).filter(before -> !before.equals(settings.language()))
                    .ifPresent(before -> readIn(h, id, before, settings.language()));
            h.createUpdate("update class set name = :name, term = :term, settings = :settings where id = :id").bind("name", name)
                    .bind("term", term).bind("settings", Settings.write(settings)).bind("id", id).execute();
        });
    }

    private static void readIn(Handle h, long id, String before, String now) {
        h.createUpdate("update person set language = :now where kind = 'STUDENT' and language = :before "
                        + "and id in (select m.person from member m where m.class = :id and m.state = 'IN')")
                .bind("now", now).bind("before", before).bind("id", id).execute();
    }

    @Override
    public void setCode(long id, String code) {
        database.run(h -> h.createUpdate("update class set code = :code where id = :id").bind("code", code).bind("id", id).execute());
    }

    @Override
    public void setArchived(long id, Optional<Instant> when) {
        database.run(h -> h.createUpdate("update class set archived = :when where id = :id").bind("when", when.orElse(null)).bind("id", id).execute());
    }

    @Override
    public void addInstructor(long schoolClass, long instructor) {
        database.run(h -> addInstructor(h, schoolClass, instructor));
    }

    private static void addInstructor(Handle h, long schoolClass, long instructor) {
        h.createUpdate("insert into teaches (class, person) values (:class, :person) on conflict do nothing").bind("class", schoolClass)
                .bind("person", instructor).execute();
    }

    @Override
    public boolean removeInstructor(long schoolClass, long instructor) {
        return database.in(h -> {
            // Two who leave at the same moment wait here for each other.
            h.createQuery("select id from class where id = :class for update").bind("class", schoolClass).mapTo(Long.class).one();
            return h.createUpdate("delete from teaches where class = :class and person = :person "
                            + "and exists (select 1 from teaches o where o.class = :class and o.person <> :person)")
                    .bind("class", schoolClass).bind("person", instructor).execute() == 1;
        });
    }

    @Override
    public List<Member> members(long schoolClass) {
        List<Member> all = new ArrayList<>(database.read(h -> h.createQuery(MEMBERS + "where m.class = :class").bind("class", schoolClass)
                .map((row, c) -> member(row)).list()));
        all.sort(Member.BY_SEAT);
        return all;
    }

    @Override
    public Optional<Member> member(long schoolClass, long student) {
        return database.read(h -> member(h, schoolClass, student));
    }

    private static Optional<Member> member(Handle h, long schoolClass, long student) {
        return h.createQuery(MEMBERS + "where m.class = :class and m.person = :person").bind("class", schoolClass).bind("person", student)
                .map((row, c) -> member(row)).findOne();
    }

    @Override
    public void seat(long schoolClass, long student, String seat, Member.State state, int extraTime, Instant now) {
        database.run(h -> seat(h, new Member(schoolClass, personOnly(h, student), seat, state, extraTime, now)));
    }

    private static Person personOnly(Handle h, long id) {
        return h.createQuery("select " + SqlPeople.COLUMNS + " from person p where p.id = :id").bind("id", id).map((row, c) -> SqlPeople.person(row)).one();
    }

    private static void seat(Handle h, Member m) {
        int there = h.createUpdate("update member set seat = :seat, state = :state, extra_time = :extra, since = :since where class = :class and person = :person")
                .bind("seat", m.seat()).bind("state", m.state().name()).bind("extra", m.extraTime()).bind("since", m.since())
                .bind("class", m.schoolClass()).bind("person", m.person().id()).execute();
        if (there == 0) {
            h.createUpdate("insert into member (class, person, seat, state, extra_time, since) values (:class, :person, :seat, :state, :extra, :since)")
                    .bind("class", m.schoolClass()).bind("person", m.person().id()).bind("seat", m.seat()).bind("state", m.state().name())
                    .bind("extra", m.extraTime()).bind("since", m.since()).execute();
        }
    }

    @Override
    public List<Member> enrol(long schoolClass, List<NewMember> roster, Instant now) {
        return database.in(h -> {
            List<Member> added = new ArrayList<>();
            for (NewMember fresh : roster) {
                Person person = SqlPeople.add(h, fresh.person(), now);
                Member member = new Member(schoolClass, person, fresh.seat(), Member.State.IN, fresh.extraTime(), now);
                seat(h, member);
                setSourcedId(h, schoolClass, person.id(), fresh.sourcedId());
                added.add(member);
            }
            return added;
        });
    }

    @Override
    public Map<Long, String> sourcedIds(long schoolClass) {
        return database.read(h -> h.createQuery("select person, sourced_id from member where class = :class and sourced_id <> ''").bind("class", schoolClass)
                .reduceRows(new HashMap<>(), (ids, row) -> {
                    ids.put(row.getColumn("person", Long.class), row.getColumn("sourced_id", String.class));
                    return ids;
                }));
    }

    @Override
    public void setSourcedIds(long schoolClass, Map<Long, String> byStudent) {
        database.run(h -> byStudent.forEach((student, id) -> setSourcedId(h, schoolClass, student, id)));
    }

    private static void setSourcedId(Handle h, long schoolClass, long student, String id) {
        h.createUpdate("update member set sourced_id = :id where class = :class and person = :person and sourced_id <> :id")
                .bind("id", id).bind("class", schoolClass).bind("person", student).execute();
    }
}
