package soapstone.record;

import java.time.Instant;
import java.time.MonthDay;
import soapstone.school.Retentions;

/** The one row about how long records are kept. */
final class SqlRetentions implements Retentions {

    private final Database database;

    SqlRetentions(Database database) {
        this.database = database;
    }

    @Override
    public Rule rule() {
        return database.read(h -> h.createQuery("select year_month, year_day, by_itself from retention where id = 1")
                .map((row, c) -> new Rule(MonthDay.of(row.getInt("year_month"), row.getInt("year_day")), row.getBoolean("by_itself"))).findOne().orElse(Rule.USUAL));
    }

    @Override
    public void write(Rule rule, Instant first) {
        database.run(h -> {
            // The row is there before it is written, so that two who write at once do not both add it.
            h.createUpdate("insert into retention (id, year_month, year_day, by_itself, next_at) values (1, 1, 1, false, :first) on conflict do nothing").bind("first", first).execute();
            h.createUpdate("update retention set year_month = :month, year_day = :day, by_itself = :itself, next_at = :first where id = 1")
                    .bind("month", rule.yearEnds().getMonthValue()).bind("day", rule.yearEnds().getDayOfMonth()).bind("itself", rule.byItself()).bind("first", first).execute();
        });
    }

    @Override
    public boolean take(Instant now, Instant next) {
        return database.in(h -> h.createUpdate("update retention set next_at = :next where id = 1 and by_itself and next_at <= :now").bind("next", next).bind("now", now)
                .execute()) == 1;
    }
}
