package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import soapstone.mark.Verdict;
import soapstone.quantity.UnitSystem;
import soapstone.school.AnswerMark;
import soapstone.school.Practice;
import soapstone.school.Practices;

/** What students worked as guests, and kept. */
final class SqlPractices implements Practices {

    private final Database database;

    SqlPractices(Database database) {
        this.database = database;
    }

    @Override
    public boolean keep(Practice p) {
        return database.in(h -> {
            int added = h.createUpdate("insert into practice (person, receipt, at, exercise, seed, units, fingerprint, program) "
                            + "values (:person, :receipt, :at, :exercise, :seed, :units, :fingerprint, :program) on conflict do nothing")
                    .bind("person", p.person()).bind("receipt", p.receipt()).bind("at", p.at()).bind("exercise", p.exercise()).bind("seed", p.seed())
                    .bind("units", p.units().name()).bind("fingerprint", p.fingerprint()).bind("program", p.program()).execute();
            if (added == 1) {
                addMarks(h, p);
            }
            return added == 1;
        });
    }

    private static void addMarks(Handle h, Practice p) {
        long id = h.createQuery("select id from practice where receipt = :receipt").bind("receipt", p.receipt()).mapTo(Long.class).one();
        PreparedBatch batch = h.prepareBatch("insert into practice_mark (practice, place, ask, letter, typed, read_as, verdict, slip, families, says) "
                + "values (:practice, :place, :ask, :letter, :typed, :read, :verdict, :slip, :families, :says)");
        for (AnswerMark m : p.marks()) {
            batch.bind("practice", id).bind("place", m.place()).bind("ask", m.ask()).bind("letter", m.letter()).bind("typed", m.typed()).bind("read", m.readAs())
                    .bind("verdict", m.verdict().name()).bind("slip", m.slip()).bind("families", String.join(" ", m.families())).bind("says", m.says()).add();
        }
        batch.execute();
    }

    @Override
    public List<Practice> of(long person) {
        return database.read(h -> {
            Map<Long, List<AnswerMark>> marks = new HashMap<>();
            h.createQuery("select m.* from practice_mark m join practice p on p.id = m.practice where p.person = :person order by m.place").bind("person", person)
                    .map((row, c) -> marks.computeIfAbsent(row.getLong("practice"), k -> new ArrayList<>()).add(mark(row))).list();
            return h.createQuery("select * from practice where person = :person order by at desc, id desc").bind("person", person)
                    .map((row, c) -> practice(row, marks.getOrDefault(row.getLong("id"), List.of()))).list();
        });
    }

    private static Practice practice(ResultSet row, List<AnswerMark> marks) throws SQLException {
        return new Practice(row.getLong("person"), Times.get(row, "at"), row.getString("exercise"), row.getLong("seed"), UnitSystem.valueOf(row.getString("units")),
                row.getString("fingerprint"), row.getString("program"), marks);
    }

    private static AnswerMark mark(ResultSet row) throws SQLException {
        String families = row.getString("families");
        return new AnswerMark(row.getInt("place"), row.getString("ask"), row.getString("letter"), row.getString("typed"), row.getString("read_as"),
                Verdict.valueOf(row.getString("verdict")), row.getString("slip"), families.isEmpty() ? List.of() : List.of(families.split(" ")),
                row.getString("says"), 0, 0, 0);
    }
}
