package soapstone.school;

import java.time.Instant;
import java.util.Optional;

/** Where failures in a row are counted, by account and by address. */
public interface Throttles {

    Optional<Failures> of(String subject);

    /** Failures in a row, and from when on the next try is taken. */
    record Failures(int count, Instant freeAt) {}

    /** Puts down one more failure; two at the same moment count as two. */
    Failures fail(String subject, FreeAt rule, Instant now);

    /** From when on the next try is taken after so many failures. */
    interface FreeAt {
        Instant after(int failures, Instant now);
    }

    void reset(String subject);

    /** Resets all whose subjects begin so. */
    void resetAll(String beginning);

    /** Forgets the counts of one kind that have been free since before then. */
    int forgetBefore(Throttle kind, Instant free);
}
