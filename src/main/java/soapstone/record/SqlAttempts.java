package soapstone.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
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
    private static final String OF_SHEET = "join problem p on p.id = a.problem where p.sheet = :id ";
    private static final String OF_PERSON = "join problem p on p.id = a.problem join sheet s on s.id = p.sheet where s.person = :id ";

    /** What both databases say when something is there already. */
    static final String UNIQUE = "23505";
    private static final int MOST_TURNS = 100;

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

    /**
     * Nearly always the attempt is simply put down: three statements and a commit. Only when the tables say that it, or
     * another one of the same number, is there already, it is looked up what that was.
     */
    @Override
    public Kept hand(Handed handed, int tries) {
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            try {
                return new Kept.Counted(database.in(h -> add(h, handed, tries)));
            } catch (TooMany e) {
                return before(handed).orElse(new Kept.NoTriesLeft(tries));
            } catch (UnableToExecuteStatementException e) {
                if (!(e.getCause() instanceof SQLException cause) || !UNIQUE.equals(cause.getSQLState())) {
                    throw e;
                }
                Optional<Kept> before = before(handed);
                if (before.isPresent()) {
                    return before.get();
                }
            }
        }
        throw new IllegalStateException("problem " + handed.problem() + " is handed in too often at the same moment");
    }

    private Optional<Kept> before(Handed handed) {
        return database.read(h -> attempts(h, "where a.problem = :id ", handed.problem()).stream().filter(a -> a.receipt().equals(handed.receipt()))
                .findFirst().map(Kept.Before::new));
    }

    /** Takes back what was put down as one try too many. */
    private static final class TooMany extends RuntimeException {

        private static final long serialVersionUID = 1L;

        TooMany() {
            super("too many tries", null, false, false);
        }
    }

    private static Attempt add(Handle h, Handed handed, int tries) {
        Attempt added = h.createUpdate("insert into attempt (problem, number, receipt, handed_in, late, way, program, fingerprint) "
                        + "values (:problem, (select coalesce(max(number), 0) + 1 from attempt where problem = :problem), :receipt, :at, :late, :way, :program, :fingerprint)")
                .bind("problem", handed.problem()).bind("receipt", handed.receipt()).bind("at", handed.at()).bind("late", handed.late())
                .bind("way", handed.way().name()).bind("program", handed.program()).bind("fingerprint", handed.fingerprint())
                .executeAndReturnGeneratedKeys("id", "number")
                .map((row, c) -> new Attempt(row.getLong("id"), handed.problem(), row.getInt("number"), handed.receipt(), handed.at().truncatedTo(ChronoUnit.MICROS),
                        handed.late(), handed.way(), handed.program(), handed.fingerprint(), handed.marks())).one();
        if (added.number() > tries) {
            throw new TooMany();
        }
        addMarks(h, added);
        h.createUpdate("delete from draft where problem = :problem").bind("problem", handed.problem()).execute();
        return added;
    }

    private static void addMarks(Handle h, Attempt added) {
        if (added.marks().isEmpty()) {
            return;
        }
        PreparedBatch batch = h.prepareBatch("insert into mark (attempt, place, ask, letter, typed, read_as, verdict, slip, families, says, points, possible, odds) "
                + "values (:attempt, :place, :ask, :letter, :typed, :read, :verdict, :slip, :families, :says, :points, :possible, :odds)");
        for (AnswerMark m : added.marks()) {
            batch.bind("attempt", added.id()).bind("place", m.place()).bind("ask", m.ask()).bind("letter", m.letter()).bind("typed", m.typed()).bind("read", m.readAs())
                    .bind("verdict", m.verdict().name()).bind("slip", m.slip()).bind("families", String.join(" ", m.families())).bind("says", m.says())
                    .bind("points", m.points()).bind("possible", m.possible()).bind("odds", m.odds()).add();
        }
        batch.execute();
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
    public List<Attempt> ofSheet(long sheet) {
        return database.read(h -> attempts(h, OF_SHEET, sheet));
    }

    @Override
    public List<Remark> remarksOfSheet(long sheet) {
        return remarks(OF_SHEET, sheet);
    }

    @Override
    public List<Attempt> ofPerson(long person) {
        return database.read(h -> attempts(h, OF_PERSON, person));
    }

    @Override
    public List<Remark> remarksOfPerson(long person) {
        return remarks(OF_PERSON, person);
    }

    private List<Remark> remarks(String where, long id) {
        return database.read(h -> h.createQuery(REMARK + "join attempt a on a.id = r.attempt " + where + "order by r.id").bind("id", id)
                .map((row, c) -> remark(row)).list());
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
        return remarks(OF_ASSIGNMENT, assignment);
    }
}
