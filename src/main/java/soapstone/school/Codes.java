package soapstone.school;

import java.time.Instant;
import java.util.Optional;

/** Where codes are kept that work once. */
public interface Codes {

    /** What a code is good for. */
    enum Purpose {
        /** Makes the first instructor. */
        FIRST_RUN,
        /** Sets a new password for one person. */
        NEW_PASSWORD,
        /** Says that a password was right, until the code of the second factor is typed. Never shown to anybody. */
        SECOND_FACTOR
    }

    /** @param hash of the code */
    void make(String hash, Purpose purpose, Optional<Long> person, Instant ends);

    /** Takes a code: whose it is, the first time before its end; else empty. */
    Optional<Taken> take(String hash, Purpose purpose, Instant now);

    /** A code that was good. */
    record Taken(Optional<Long> person) {}

    /** Whether a code of that purpose is still good. */
    boolean isOpen(Purpose purpose, Instant now);

    /** Forgets codes that were over before then. */
    int forgetBefore(Instant ends);

    /** Ends all codes of that purpose. */
    void endAll(Purpose purpose);
}
