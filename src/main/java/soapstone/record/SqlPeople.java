package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import soapstone.school.People;
import soapstone.school.Person;

/** Accounts. */
final class SqlPeople implements People {

    /** The columns of a person; the factor itself is never read with them. */
    static final String COLUMNS = "p.id, p.kind, p.shown, p.login, p.language, p.disabled, p.must_change, p.factor is not null as two_factor, p.created";
    private static final String SELECT = "select " + COLUMNS + " from person p ";
    private static final String UNIQUE = "23505";

    private final Database database;

    SqlPeople(Database database) {
        this.database = database;
    }

    static Person person(ResultSet row) throws SQLException {
        return new Person(row.getLong("id"), Person.Kind.valueOf(row.getString("kind")), row.getString("shown"), row.getString("login"),
                row.getString("language"), row.getBoolean("disabled"), row.getBoolean("must_change"), row.getBoolean("two_factor"),
                Times.get(row, "created"));
    }

    @Override
    public Optional<Person> find(long id) {
        return database.read(h -> h.createQuery(SELECT + "where p.id = :id").bind("id", id).map((row, c) -> person(row)).findOne());
    }

    @Override
    public Optional<Person> byLogin(String login) {
        return database.read(h -> h.createQuery(SELECT + "where p.login = :login").bind("login", login).map((row, c) -> person(row)).findOne());
    }

    @Override
    public List<Person> all(Person.Kind kind) {
        return database.read(h -> h.createQuery(SELECT + "where p.kind = :kind order by lower(p.shown), p.id").bind("kind", kind.name())
                .map((row, c) -> person(row)).list());
    }

    @Override
    public Found students(String part, int most) {
        String where = "from person p where p.kind = 'STUDENT' and (position(lower(:part) in lower(p.shown)) > 0 or position(lower(:part) in p.login) > 0) ";
        return database.read(h -> new Found(h.createQuery("select " + COLUMNS + " " + where + "order by lower(p.shown), p.id limit :most").bind("part", part).bind("most", most)
                .map((row, c) -> person(row)).list(), h.createQuery("select count(*) " + where).bind("part", part).mapTo(Integer.class).one()));
    }

    @Override
    public Set<Long> waiting() {
        return new HashSet<>(database.read(h -> h.createQuery("select id from person where kind <> 'STUDENT' and password is null").mapTo(Long.class).list()));
    }

    @Override
    public Optional<String> password(long id) {
        return column(id, "password");
    }

    @Override
    public Optional<String> factor(long id) {
        return column(id, "factor");
    }

    private Optional<String> column(long id, String name) {
        return database.read(h -> h.createQuery("select " + name + " from person where id = :id").bind("id", id)
                .map((row, c) -> Optional.ofNullable(row.getString(1))).findOne().flatMap(found -> found));
    }

    @Override
    public Person add(NewPerson fresh, Instant now) {
        return database.in(h -> add(h, fresh, now));
    }

    /** Adds somebody in a transaction that does more. */
    static Person add(Handle h, NewPerson fresh, Instant now) {
        try {
            long id = h.createUpdate("insert into person (kind, shown, login, password, must_change, language, created) "
                            + "values (:kind, :shown, :login, :password, :change, :language, :now)")
                    .bind("kind", fresh.kind().name()).bind("shown", fresh.shown()).bind("login", fresh.login()).bind("password", fresh.password())
                    .bind("change", fresh.mustChange()).bind("language", fresh.language()).bind("now", now)
                    .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
            return h.createQuery(SELECT + "where p.id = :id").bind("id", id).map((row, c) -> person(row)).one();
        } catch (UnableToExecuteStatementException e) {
            if (e.getCause() instanceof SQLException cause && UNIQUE.equals(cause.getSQLState())) {
                throw new Taken(fresh.login());
            }
            throw e;
        }
    }

    @Override
    public void setPassword(long id, String encoded, boolean mustChange, String exceptToken) {
        database.run(h -> {
            h.createUpdate("update person set password = :password, must_change = :change where id = :id").bind("password", encoded)
                    .bind("change", mustChange).bind("id", id).execute();
            h.createUpdate("delete from session where person = :id and token <> :token").bind("id", id).bind("token", exceptToken).execute();
        });
    }

    @Override
    public void setFactor(long id, String secret) {
        database.run(h -> h.createUpdate("update person set factor = :secret, factor_step = 0 where id = :id")
                .bind("secret", secret.isEmpty() ? null : secret).bind("id", id).execute());
    }

    @Override
    public boolean takeStep(long id, long step) {
        return database.in(h -> h.createUpdate("update person set factor_step = :step where id = :id and factor_step < :step")
                .bind("step", step).bind("id", id).execute()) == 1;
    }

    @Override
    public void setDisabled(long id, boolean disabled) {
        database.run(h -> {
            h.createUpdate("update person set disabled = :disabled where id = :id").bind("disabled", disabled).bind("id", id).execute();
            if (disabled) {
                h.createUpdate("delete from session where person = :id").bind("id", id).execute();
            }
        });
    }

    @Override
    public void rename(long id, String shown) {
        database.run(h -> h.createUpdate("update person set shown = :shown where id = :id").bind("shown", shown).bind("id", id).execute());
    }

    @Override
    public void setLanguage(long id, String language) {
        database.run(h -> h.createUpdate("update person set language = :language where id = :id").bind("language", language).bind("id", id).execute());
    }

    @Override
    public boolean isNobodyInCharge() {
        return database.read(h -> h.createQuery("select count(*) from person where kind <> 'STUDENT'").mapTo(Integer.class).one()) == 0;
    }
}
