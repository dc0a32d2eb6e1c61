package soapstone.school;

import java.time.Instant;
import java.util.Optional;

/**
 * A student's request to correct a record. It stays beside the record with the answer, also when it was refused.
 *
 * @param asks    what should be corrected, as it was written
 * @param answer  empty while it is open
 * @param byName  who answered, as that person was called then; empty while it is open
 */
public record Note(long id, long person, long schoolClass, Instant at, String asks, Outcome outcome, String answer, Optional<Instant> answered, String byName) {

    /** What became of it. */
    public enum Outcome { OPEN, MENDED, REFUSED }

    public boolean isOpen() {
        return outcome == Outcome.OPEN;
    }
}
