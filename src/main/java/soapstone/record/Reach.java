package soapstone.record;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.List;
import java.util.Set;

/** Tells a database that is away, or cannot write, from a statement that is wrong. */
final class Reach {

    /** Connections (SQL), shut down, no room or place left, trouble of the machine (PostgreSQL). */
    private static final List<String> KINDS = List.of("08", "53", "57P", "58");
    /** Closed, broken off, or its file can be neither read nor written (H2). */
    private static final Set<String> EMBEDDED = Set.of("90007", "90028", "90031", "90067", "90098", "90121");

    private Reach() {}

    /** Whether any cause says so. */
    static boolean isLost(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            // A full disk is told by the embedded database at the end of a transaction, in no words of SQL.
            if (cause instanceof IOException || cause instanceof SQLException sql && isLost(sql)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLost(SQLException e) {
        String state = String.valueOf(e.getSQLState());
        return e instanceof SQLTransientConnectionException || e instanceof SQLNonTransientConnectionException || e instanceof SQLRecoverableException
                || EMBEDDED.contains(state) || KINDS.stream().anyMatch(state::startsWith);
    }
}
