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
import soapstone.exercise.Conventions;
import soapstone.quantity.UnitSystem;
import soapstone.school.Sheet;
import soapstone.school.Sheets.Dealt;
import soapstone.school.Spare;
import soapstone.school.Spares;

/** Spare sheets. */
final class SqlSpares implements Spares {

    private final Database database;

    SqlSpares(Database database) {
        this.database = database;
    }

    private static List<Spare> spares(Handle h, String where, Map<String, ?> names) {
        Map<Long, List<Dealt>> problems = new HashMap<>();
        h.createQuery("select p.* from spare_problem p join spare s on s.id = p.spare " + where + " order by p.place").bindMap(names)
                .map((row, c) -> problems.computeIfAbsent(row.getLong("spare"), k -> new ArrayList<>()).add(problem(row))).list();
        return h.createQuery("select s.id, s.assignment, s.number, s.made from spare s " + where + " order by s.id").bindMap(names)
                .map((row, c) -> new Spare(row.getLong("id"), row.getLong("assignment"), row.getString("number"), Times.get(row, "made"),
                        problems.getOrDefault(row.getLong("id"), List.of()))).list();
    }

    private static Dealt problem(ResultSet row) throws SQLException {
        return new Dealt(row.getLong("task"), row.getInt("place"), row.getString("exercise"), row.getLong("seed"), UnitSystem.valueOf(row.getString("units")),
                row.getString("fingerprint"), row.getDouble("points"), Conventions.parse(row.getString("conventions")));
    }

    @Override
    public List<Spare> all(long assignment) {
        return database.read(h -> spares(h, "where s.assignment = :assignment", Map.of("assignment", assignment)));
    }

    @Override
    public Optional<Spare> byNumber(String number) {
        return database.read(h -> spares(h, "where s.number = :number", Map.of("number", number)).stream().findFirst());
    }

    @Override
    public Spare add(long assignment, String number, List<Dealt> problems, Instant now) {
        return database.in(h -> {
            boolean given = h.createQuery("select count(*) from sheet where number = :number").bind("number", number).mapTo(Integer.class).one() > 0;
            int fresh = given ? 0 : h.createUpdate("insert into spare (assignment, number, made) values (:assignment, :number, :now) on conflict do nothing")
                    .bind("assignment", assignment).bind("number", number).bind("now", now).execute();
            if (fresh == 0) {
                throw new IllegalStateException("the sheet number " + number + " is given already");
            }
            long id = h.createQuery("select id from spare where number = :number").bind("number", number).mapTo(Long.class).one();
            problems.forEach(d -> add(h, id, d));
            return new Spare(id, assignment, number, now, problems);
        });
    }

    private static void add(Handle h, long spare, Dealt d) {
        h.createUpdate("insert into spare_problem (spare, place, task, exercise, seed, units, fingerprint, points, conventions) "
                        + "values (:spare, :place, :task, :exercise, :seed, :units, :fingerprint, :points, :conventions)")
                .bind("spare", spare).bind("place", d.place()).bind("task", d.task()).bind("exercise", d.exercise()).bind("seed", d.seed())
                .bind("units", d.units().name()).bind("fingerprint", d.fingerprint()).bind("points", d.points()).bind("conventions", d.conventions().text()).execute();
    }

    @Override
    public Optional<Sheet> claim(long spare, long person, Instant now) {
        return database.in(h -> {
            // Whoever comes second waits here, and finds it gone.
            Optional<Long> there = h.createQuery("select id from spare where id = :id for update").bind("id", spare).mapTo(Long.class).findOne();
            if (there.isEmpty()) {
                return Optional.empty();
            }
            Spare s = spares(h, "where s.id = :id", Map.of("id", spare)).get(0);
            Optional<Sheet> own = SqlSheets.of(h, s.assignment(), person);
            if (own.isPresent()) {
                return own;
            }
            h.createUpdate("delete from spare_problem where spare = :id").bind("id", spare).execute();
            h.createUpdate("delete from spare where id = :id").bind("id", spare).execute();
            return Optional.of(SqlSheets.deal(h, s.assignment(), person, s.number(), s.problems(), now));
        });
    }
}
