package soapstone.record;

import java.time.Instant;
import java.util.Optional;
import soapstone.school.Codes;

/** Codes that work once. */
final class SqlCodes implements Codes {

    private final Database database;

    SqlCodes(Database database) {
        this.database = database;
    }

    @Override
    public void make(String hash, Purpose purpose, Optional<Long> person, Instant ends) {
        database.run(h -> h.createUpdate("insert into once_code (code, purpose, person, ends) values (:code, :purpose, :person, :ends)").bind("code", hash)
                .bind("purpose", purpose.name()).bind("person", person.orElse(null)).bind("ends", ends).execute());
    }

    @Override
    public Optional<Taken> take(String hash, Purpose purpose, Instant now) {
        return database.in(h -> {
            int taken = h.createUpdate("update once_code set used = :now where code = :code and purpose = :purpose and used is null and ends > :now")
                    .bind("now", now).bind("code", hash).bind("purpose", purpose.name()).execute();
            if (taken == 0) {
                return Optional.empty();
            }
            return h.createQuery("select person from once_code where code = :code").bind("code", hash)
                    .map((row, c) -> new Taken(Optional.ofNullable(row.getObject("person", Long.class)))).findOne();
        });
    }

    @Override
    public boolean isOpen(Purpose purpose, Instant now) {
        return database.read(h -> h.createQuery("select count(*) from once_code where purpose = :purpose and used is null and ends > :now")
                .bind("purpose", purpose.name()).bind("now", now).mapTo(Integer.class).one()) > 0;
    }

    @Override
    public int forgetBefore(Instant ends) {
        return database.in(h -> h.createUpdate("delete from once_code where ends < :ends").bind("ends", ends).execute());
    }

    @Override
    public void endAll(Purpose purpose) {
        database.run(h -> h.createUpdate("delete from once_code where purpose = :purpose").bind("purpose", purpose.name()).execute());
    }
}
