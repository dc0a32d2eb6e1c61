package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import soapstone.school.Competency;
import soapstone.school.Signoff;
import soapstone.school.Signoffs;
import soapstone.school.TradeCode;

/** Competency lists, and signatures that are appended. */
final class SqlSignoffs implements Signoffs {

    private static final String SIGNOFF = "select id, person, class, frame, edition, code, title, act, conditions, evidence, by_person, by_name, at from signoff ";

    private final Database database;

    SqlSignoffs(Database database) {
        this.database = database;
    }

    private static TradeCode code(ResultSet row) throws SQLException {
        return new TradeCode(row.getString("frame"), row.getString("edition"), row.getString("code"), row.getString("title"));
    }

    private static Competency competency(ResultSet row) throws SQLException {
        String skills = row.getString("skills");
        return new Competency(row.getLong("id"), row.getLong("class"), code(row), skills.isEmpty() ? List.of() : List.of(skills.split(" ")));
    }

    @Override
    public List<Competency> listed(long schoolClass) {
        return database.read(h -> listed(h, schoolClass));
    }

    /** Those of frames come first; a class's own have no frame. */
    private static List<Competency> listed(Handle h, long schoolClass) {
        return h.createQuery("select id, class, frame, edition, code, title, skills from competency where class = :class "
                + "order by case when frame = '' then 1 else 0 end, frame, edition, code, id").bind("class", schoolClass).map((row, c) -> competency(row)).list();
    }

    @Override
    public void list(long schoolClass, List<NewCompetency> ofFrames) {
        database.run(h -> {
            List<Competency> before = listed(h, schoolClass).stream().filter(c -> !c.code().isOwn()).toList();
            before.stream().filter(c -> ofFrames.stream().noneMatch(n -> n.code().isSame(c.code())))
                    .forEach(c -> h.createUpdate("delete from competency where id = :id").bind("id", c.id()).execute());
            ofFrames.stream().filter(n -> before.stream().noneMatch(c -> c.code().isSame(n.code()))).forEach(n -> add(h, schoolClass, n));
        });
    }

    @Override
    public boolean add(long schoolClass, NewCompetency own) {
        return database.in(h -> add(h, schoolClass, own)) == 1;
    }

    private static int add(Handle h, long schoolClass, NewCompetency fresh) {
        return name(h.createUpdate("insert into competency (class, frame, edition, code, title, skills) values (:class, :frame, :edition, :code, :title, :skills) "
                + "on conflict do nothing"), fresh.code()).bind("class", schoolClass).bind("title", fresh.code().title()).bind("skills", String.join(" ", fresh.skills())).execute();
    }

    private static <S extends SqlStatement<S>> S name(S statement, TradeCode code) {
        return statement.bind("frame", code.frame()).bind("edition", code.edition()).bind("code", code.code());
    }

    @Override
    public void remove(long schoolClass, long competency) {
        database.run(h -> h.createUpdate("delete from competency where id = :id and class = :class and frame = ''").bind("id", competency).bind("class", schoolClass).execute());
    }

    private static Signoff signoff(ResultSet row) throws SQLException {
        return new Signoff(row.getLong("id"), row.getLong("person"), row.getLong("class"), code(row), Signoff.Act.valueOf(row.getString("act")),
                row.getString("conditions"), row.getString("evidence"), row.getLong("by_person"), row.getString("by_name"), Times.get(row, "at"));
    }

    @Override
    public List<Signoff> of(long person) {
        return database.read(h -> h.createQuery(SIGNOFF + "where person = :id order by id").bind("id", person).map((row, c) -> signoff(row)).list());
    }

    @Override
    public List<Signoff> ofClass(long schoolClass) {
        return database.read(h -> h.createQuery(SIGNOFF + "where class = :id order by id").bind("id", schoolClass).map((row, c) -> signoff(row)).list());
    }

    /** The student's place in the class is held meanwhile, so that two entries at once come one after the other. */
    @Override
    public boolean append(Signoff e) {
        return database.in(h -> {
            h.createQuery("select person from member where class = :class and person = :person for update").bind("class", e.schoolClass()).bind("person", e.person())
                    .mapTo(Long.class).one();
            Optional<String> newest = name(h.createQuery("select act from signoff where person = :person and class = :class and frame = :frame and edition = :edition "
                    + "and code = :code order by id desc limit 1"), e.code()).bind("person", e.person()).bind("class", e.schoolClass()).mapTo(String.class).findOne();
            if (newest.orElse(Signoff.Act.WITHDRAWN.name()).equals(e.act().name())) {
                return false;
            }
            name(h.createUpdate("insert into signoff (person, class, frame, edition, code, title, act, conditions, evidence, by_person, by_name, at) "
                    + "values (:person, :class, :frame, :edition, :code, :title, :act, :conditions, :evidence, :by, :name, :at)"), e.code())
                    .bind("person", e.person()).bind("class", e.schoolClass()).bind("title", e.code().title()).bind("act", e.act().name()).bind("conditions", e.conditions())
                    .bind("evidence", e.evidence()).bind("by", e.by()).bind("name", e.byName()).bind("at", e.at()).execute();
            return true;
        });
    }
}
