package soapstone.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soapstone.school.AnswerMark;
import soapstone.school.Attempt;
import soapstone.school.Attempts;

/**
 * The statements that put attempts down: the one act of the school that a whole class does at the same moment. Plain
 * JDBC, because naming parameters costs as much here as the work itself.
 */
final class HandIn implements AutoCloseable {

    private static final String ATTEMPT = "insert into attempt (problem, number, receipt, handed_in, late, way, program, fingerprint) "
            + "values (?, (select coalesce(max(number), 0) + 1 from attempt where problem = ?), ?, ?, ?, ?, ?, ?)";
    private static final String MARK = "insert into mark (attempt, place, ask, letter, typed, read_as, verdict, slip, families, says, points, possible, odds) "
            + "values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String DRAFT = "delete from draft where problem = ?";

    private final PreparedStatement attempt;
    private final PreparedStatement mark;
    private final PreparedStatement draft;

    private HandIn(Connection connection) throws SQLException {
        attempt = connection.prepareStatement(ATTEMPT, new String[] {"id", "number"});
        mark = connection.prepareStatement(MARK);
        draft = connection.prepareStatement(DRAFT);
    }

    /** What is to be put down, and how many tries its problem allows. */
    record Piece(Attempts.Handed handed, int tries) {}

    /** Says that one of them was one try too many; the transaction is to be taken back. */
    static final class TooMany extends RuntimeException {

        private static final long serialVersionUID = 1L;

        TooMany() {
            super("too many tries", null, false, false);
        }
    }

    /**
     * Puts attempts down, with their marks, and takes their drafts away.
     *
     * @return the attempts, in the order of the pieces
     * @throws TooMany      when one of them has no tries left
     * @throws SQLException when a receipt or a number is there already, among others
     */
    static List<Attempt> put(Connection connection, List<Piece> pieces) throws SQLException {
        List<Piece> ordered = inOneOrder(pieces);
        try (HandIn statements = new HandIn(connection)) {
            Map<String, Attempt> put = statements.addAttempts(ordered);
            statements.addMarks(put.values());
            statements.dropDrafts(ordered);
            return pieces.stream().map(p -> put.get(p.handed().receipt())).toList();
        }
    }

    /** Always by problem, so that two nodes never wait for each other in a ring. */
    private static List<Piece> inOneOrder(List<Piece> pieces) {
        return pieces.size() < 2 ? pieces : pieces.stream().sorted(Comparator.comparingLong((Piece p) -> p.handed().problem())).toList();
    }

    private Map<String, Attempt> addAttempts(List<Piece> pieces) throws SQLException {
        for (Piece piece : pieces) {
            bind(piece.handed());
            attempt.addBatch();
        }
        attempt.executeBatch();
        Map<String, Attempt> put = new HashMap<>();
        try (ResultSet keys = attempt.getGeneratedKeys()) {
            for (Piece piece : pieces) {
                keys.next();
                Attempt added = attempt(piece.handed(), keys.getLong("id"), keys.getInt("number"));
                if (added.number() > piece.tries()) {
                    throw new TooMany();
                }
                put.put(added.receipt(), added);
            }
        }
        return put;
    }

    private static Attempt attempt(Attempts.Handed h, long id, int number) {
        return new Attempt(id, h.problem(), number, h.receipt(), h.at().truncatedTo(ChronoUnit.MICROS), h.late(), h.way(), h.program(), h.fingerprint(), h.marks());
    }

    private void bind(Attempts.Handed handed) throws SQLException {
        attempt.setLong(1, handed.problem());
        attempt.setLong(2, handed.problem());
        attempt.setString(3, handed.receipt());
        attempt.setObject(4, OffsetDateTime.ofInstant(handed.at().truncatedTo(ChronoUnit.MICROS), ZoneOffset.UTC));
        attempt.setBoolean(5, handed.late());
        attempt.setString(6, handed.way().name());
        attempt.setString(7, handed.program());
        attempt.setString(8, handed.fingerprint());
    }

    private void dropDrafts(List<Piece> pieces) throws SQLException {
        for (Piece piece : pieces) {
            draft.setLong(1, piece.handed().problem());
            draft.addBatch();
        }
        draft.executeBatch();
    }

    private void addMarks(Collection<Attempt> attempts) throws SQLException {
        boolean any = false;
        for (Attempt a : attempts) {
            for (AnswerMark m : a.marks()) {
                bind(a.id(), m);
                mark.addBatch();
                any = true;
            }
        }
        if (any) {
            mark.executeBatch();
        }
    }

    private void bind(long id, AnswerMark m) throws SQLException {
        mark.setLong(1, id);
        mark.setInt(2, m.place());
        mark.setString(3, m.ask());
        mark.setString(4, m.letter());
        mark.setString(5, m.typed());
        mark.setString(6, m.readAs());
        mark.setString(7, m.verdict().name());
        mark.setString(8, m.slip());
        mark.setString(9, String.join(" ", m.families()));
        mark.setString(10, m.says());
        mark.setDouble(11, m.points());
        mark.setDouble(12, m.possible());
        mark.setDouble(13, m.odds());
    }

    @Override
    public void close() throws SQLException {
        try (attempt; mark; draft) {
            // Each is closed, whatever the others do.
        }
    }
}
