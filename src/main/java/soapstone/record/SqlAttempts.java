package soapstone.record;

import java.sql.BatchUpdateException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
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
    /** What a remark says of an answer that was marked again. */
    static final String ANEW = "r.typed, r.read_as, r.slip, r.families, r.says, r.odds";
    private static final String REMARK = "select r.id, r.attempt, r.place, r.at, r.by_person, r.cause, r.verdict, r.points, r.reason, " + ANEW + " from remark r ";
    private static final String OF_ASSIGNMENT = "join problem p on p.id = a.problem join sheet s on s.id = p.sheet where s.assignment = :id ";
    private static final String OF_SHEET = "join problem p on p.id = a.problem where p.sheet = :id ";
    private static final String OF_PERSON = "join problem p on p.id = a.problem join sheet s on s.id = p.sheet where s.person = :id ";

    /** What both databases say when something is there already. */
    static final String UNIQUE = "23505";
    private static final int MOST_TURNS = 100;

    private final Database database;
    private final Gathering<HandIn.Piece, Attempt> together = new Gathering<>(this::put);

    SqlAttempts(Database database) {
        this.database = database;
    }

    static AnswerMark mark(ResultSet row) throws SQLException {
        return new AnswerMark(row.getInt("place"), row.getString("ask"), row.getString("letter"), row.getString("typed"), row.getString("read_as"),
                Verdict.valueOf(row.getString("verdict")), row.getString("slip"), families(row.getString("families")),
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
     * Nearly always the attempt is simply put down, in one commit with what others hand in at the same moment. Only when
     * the tables say that it, or another one of the same number, is there already, it is looked up which that was.
     */
    @Override
    public Kept hand(Handed handed, int tries) {
        HandIn.Piece piece = new HandIn.Piece(handed, tries);
        return together.share(piece).<Kept>map(Kept.Counted::new).orElseGet(() -> alone(piece));
    }

    private Kept alone(HandIn.Piece piece) {
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            try {
                return new Kept.Counted(put(List.of(piece)).get(0));
            } catch (HandIn.TooMany e) {
                return before(piece.handed()).orElse(new Kept.NoTriesLeft(piece.tries()));
            } catch (Refused e) {
                if (!UNIQUE.equals(e.cause.getSQLState())) {
                    throw e;
                }
                Optional<Kept> before = before(piece.handed());
                if (before.isPresent()) {
                    return before.get();
                }
            }
        }
        throw new IllegalStateException("problem " + piece.handed().problem() + " is handed in too often at the same moment");
    }

    private List<Attempt> put(List<HandIn.Piece> pieces) {
        return database.in(h -> {
            try {
                return HandIn.put(h.getConnection(), pieces);
            } catch (SQLException e) {
                throw new Refused(e);
            }
        });
    }

    /** What the tables would not take. */
    private static final class Refused extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient SQLException cause;

        Refused(SQLException cause) {
            super(cause);
            this.cause = cause instanceof BatchUpdateException && cause.getNextException() != null ? cause.getNextException() : cause;
        }
    }

    private Optional<Kept> before(Handed handed) {
        return database.read(h -> attempts(h, "where a.problem = :id ", handed.problem()).stream().filter(a -> a.receipt().equals(handed.receipt()))
                .findFirst().map(Kept.Before::new));
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
        database.run(h -> remarks.forEach(r -> h.createUpdate("insert into remark (attempt, place, at, by_person, cause, verdict, points, reason, typed, read_as, slip, families, says, odds) "
                        + "values (:attempt, :place, :at, :by, :cause, :verdict, :points, :reason, :typed, :readAs, :slip, :families, :says, :odds)")
                .bind("typed", r.anew().map(Remark.Anew::typed).orElse(null)).bind("readAs", r.anew().map(Remark.Anew::readAs).orElse(null))
                .bind("slip", r.anew().map(Remark.Anew::slip).orElse(null)).bind("families", r.anew().map(a -> String.join(" ", a.families())).orElse(null))
                .bind("says", r.anew().map(Remark.Anew::says).orElse(null)).bind("odds", r.anew().map(Remark.Anew::odds).orElse(null))
                .bind("attempt", r.attempt()).bind("place", r.place()).bind("at", r.at()).bind("by", r.by().orElse(null)).bind("cause", r.cause().name())
                .bind("verdict", r.verdict().name()).bind("points", r.points()).bind("reason", r.reason()).execute()));
    }

    static Remark remark(ResultSet row) throws SQLException {
        return new Remark(row.getLong("id"), row.getLong("attempt"), row.getInt("place"), Times.get(row, "at"), Optional.ofNullable(row.getObject("by_person", Long.class)),
                Remark.Cause.valueOf(row.getString("cause")), Verdict.valueOf(row.getString("verdict")), row.getDouble("points"), row.getString("reason"), anew(row));
    }

    private static Optional<Remark.Anew> anew(ResultSet row) throws SQLException {
        String typed = row.getString("typed");
        return typed == null ? Optional.empty()
                : Optional.of(new Remark.Anew(typed, row.getString("read_as"), row.getString("slip"), families(row.getString("families")), row.getString("says"), row.getDouble("odds")));
    }

    private static List<String> families(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
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
