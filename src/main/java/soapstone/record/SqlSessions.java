package soapstone.record;

import java.time.Instant;
import java.util.Optional;
import soapstone.school.Sessions;
import soapstone.school.SignedIn;

/** Who is signed in. */
final class SqlSessions implements Sessions {

    private final Database database;

    SqlSessions(Database database) {
        this.database = database;
    }

    @Override
    public void begin(SignedIn session) {
        database.run(h -> h.createUpdate("insert into session (token, person, form_key, tablet, begun, seen) values (:token, :person, :key, :tablet, :begun, :seen)")
                .bind("token", session.token()).bind("person", session.person().id()).bind("key", session.formKey()).bind("tablet", session.tablet())
                .bind("begun", session.begun()).bind("seen", session.seen()).execute());
    }

    @Override
    public Optional<SignedIn> find(String token) {
        return database.read(h -> h.createQuery("select s.token, s.form_key, s.tablet, s.begun, s.seen, " + SqlPeople.COLUMNS
                        + " from session s join person p on p.id = s.person where s.token = :token and not p.disabled")
                .bind("token", token)
                .map((row, c) -> new SignedIn(SqlPeople.person(row), row.getString("token"), row.getString("form_key"), row.getBoolean("tablet"),
                        Times.get(row, "begun"), Times.get(row, "seen")))
                .findOne());
    }

    @Override
    public void seen(String token, Instant now) {
        database.run(h -> h.createUpdate("update session set seen = :now where token = :token and seen < :now").bind("now", now).bind("token", token).execute());
    }

    @Override
    public void end(String token) {
        database.run(h -> h.createUpdate("delete from session where token = :token").bind("token", token).execute());
    }

    @Override
    public void endAll(long person) {
        database.run(h -> h.createUpdate("delete from session where person = :person").bind("person", person).execute());
    }

    @Override
    public int forgetBefore(Instant seen) {
        return database.in(h -> h.createUpdate("delete from session where seen < :seen").bind("seen", seen).execute());
    }
}
