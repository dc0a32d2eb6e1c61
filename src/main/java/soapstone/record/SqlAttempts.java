package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import soapstone.mark.Verdict;
import soapstone.school.AnswerMark;
import soapstone.school.Attempt;
import soapstone.school.Attempts;
import soapstone.school.Remark;

/** Attempts and remarks, appended. */
final class SqlAttempts implements Attempts {

    private static final String ATTEMPT = "select a.id, a.problem, a.number, a.receipt, a.handed_in, a.late, a.way, a.program, a.fingerprint from attempt a ";
    private static final String MARK = "select m.attempt, m.place, m.ask, m.letter, m.typed, m.read_as, m.verdict, m.slip, m.families, m.says, m.points, m.possible, "
            + "m.odds from mark m join attempt a on a.id = m.attempt ";
    private static final String REMARK = "select r.id, r.attempt, r.place, r.at, r.by_person, r.cause, r.verdict, r.points, r.reason from remark r ";
    private static final String OF_ASSIGNMENT = "join problem p on p.id = a.problem join sheet s on s.id = p.sheet where s.assignment = :id ";

    private final Database database;

    SqlAttempts(Database database) {
        this.database = database;
    }

    static AnswerMark mark(ResultSet row) throws SQLException {
        String families = row.getString("families");
        return new AnswerMark(row.getInt("place"), row.getString("ask"), row.getString("letter"), row.getString("typed"), row.getString("read_as"),
                Verdict.valueOf(row.getString("verdict")), row.getString("slip"), families.isEmpty() ? List.of() : List.of(families.split(" ")),
                row.getString("says"), row.getDouble("points"), row.getDouble("possible"), row.getDouble("odds"));
    }

    private static List<Attempt> attempts(Handle h, String where, long id) {
        Map<Long, List<AnswerMark>> marks = new HashMap<>();
        h.createQuery(MARK + where + "order by m.place").bind("id", id)
                .map((row, c) -> marks.computeIfAbsent(row.getLong("attempt"), k -> new ArrayList<>()).add(mark(row))).list();
        return h.createQuery(ATTEMPT + where + "order by a.problem, a.number").bind("id", id)
                .map((row, c) -> attempt(row, marks.getOrDefault(row.getLong("id"), List.of()))).list();
    }

    static Attempt attempt(ResultSet row, List<AnswerMark> marks) throws SQLException {
        return new Attempt(row.getLong("id"), row.getLong("problem"), row.getInt("number"), row.getString("receipt"), Times.get(row, "handed_in"),
                row.getBoolean("late"), Attempt.Way.valueOf(row.getString("way")), row.getString("program"), row.getString("fingerprint"), marks);
    }

    @Override
    public Kept hand(Handed handed, int tries) {
        return database.in(h -> {
            // One at a time for each problem: then a page that is sent twice finds what the first left.
            h.createQuery("select id from problem where id = :id for update").bind("id", handed.problem()).mapTo(Long.class).one();
            List<Attempt> before = attempts(h, "where a.problem = :id ", handed.problem());
            for (Attempt attempt : before) {
                if (attempt.receipt().equals(handed.receipt())) {
                    return new Kept.Before(attempt);
                }
            }
            if (before.size() >= tries) {
                return new Kept.NoTriesLeft(tries);
            }
            long id = add(h, handed, before.size() + 1);
            h.createUpdate("delete from draft where problem = :id").bind("id", handed.problem()).execute();
            return new Kept.Counted(attempts(h, "where a.id = :id ", id).get(0));
        });
    }

    private static long add(Handle h, Handed handed, int number) {
        long id = h.createUpdate("insert into attempt (problem, number, receipt, handed_in, late, way, program, fingerprint) "
                        + "values (:problem, :number, :receipt, :at, :late, :way, :program, :fingerprint)")
                .bind("problem", handed.problem()).bind("number", number).bind("receipt", handed.receipt()).bind("at", handed.at()).bind("late", handed.late())
                .bind("way", handed.way().name()).bind("program", handed.program()).bind("fingerprint", handed.fingerprint())
                .executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
        PreparedBatch batch = h.prepareBatch("insert into mark (attempt, place, ask, letter, typed, read_as, verdict, slip, families, says, points, possible, odds) "
                + "values (:attempt, :place, :ask, :letter, :typed, :read, :verdict, :slip, :families, :says, :points, :possible, :odds)");
        for (AnswerMark m : handed.marks()) {
            batch.bind("attempt", id).bind("place", m.place()).bind("ask", m.ask()).bind("letter", m.letter()).bind("typed", m.typed()).bind("read", m.readAs())
                    .bind("verdict", m.verdict().name()).bind("slip", m.slip()).bind("families", String.join(" ", m.families())).bind("says", m.says())
                    .bind("points", m.points()).bind("possible", m.possible()).bind("odds", m.odds()).add();
        }
        batch.execute();
        return id;
    }

    @Override
    public Optional<Attempt> find(long id) {
        return database.read(h -> attempts(h, "where a.id = :id ", id).stream().findFirst());
    }

    @Override
    public List<Attempt> of(long problem) {
        return database.read(h -> attempts(h, "where a.problem = :id ", problem));
    }

    @Override
    public List<Attempt> ofAssignment(long assignment) {
        return database.read(h -> attempts(h, OF_ASSIGNMENT, assignment));
    }

    @Override
    public void remark(List<Remark> remarks) {
        database.run(h -> remarks.forEach(r -> h.createUpdate("insert into remark (attempt, place, at, by_person, cause, verdict, points, reason) "
                        + "values (:attempt, :place, :at, :by, :cause, :verdict, :points, :reason)")
                .bind("attempt", r.attempt()).bind("place", r.place()).bind("at", r.at()).bind("by", r.by().orElse(null)).bind("cause", r.cause().name())
                .bind("verdict", r.verdict().name()).bind("points", r.points()).bind("reason", r.reason()).execute()));
    }

    static Remark remark(ResultSet row) throws SQLException {
        return new Remark(row.getLong("id"), row.getLong("attempt"), row.getInt("place"), Times.get(row, "at"), Optional.ofNullable(row.getObject("by_person", Long.class)),
                Remark.Cause.valueOf(row.getString("cause")), Verdict.valueOf(row.getString("verdict")), row.getDouble("points"), row.getString("reason"));
    }

    @Override
    public List<Remark> remarks(long attempt) {
        return database.read(h -> h.createQuery(REMARK + "where r.attempt = :id order by r.id").bind("id", attempt).map((row, c) -> remark(row)).list());
    }

    @Override
    public List<Remark> remarksOfAssignment(long assignment) {
        return database.read(h -> h.createQuery(REMARK + "join attempt a on a.id = r.attempt " + OF_ASSIGNMENT + "order by r.id").bind("id", assignment)
                .map((row, c) -> remark(row)).list());
    }
}
