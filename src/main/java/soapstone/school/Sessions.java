package soapstone.school;

import java.time.Instant;
import java.util.Optional;

/** Where it is kept who is signed in: in the database, so that any node knows. */
public interface Sessions {

    void begin(SignedIn session);

    /** The session with that hashed secret, unless its person was disabled. */
    Optional<SignedIn> find(String token);

    void seen(String token, Instant now);

    void end(String token);

    void endAll(long person);

    /** Forgets sessions that nobody has used since then. */
    int forgetBefore(Instant seen);
}
