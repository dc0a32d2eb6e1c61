package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where it is kept what is being printed, so that every program of a school shows it. */
public interface Prints {

    /** Those of an assignment, the newest first. */
    List<Print> of(long assignment);

    Optional<Print> find(long id);

    Print ask(long assignment, long by, String kind, String choices, int total, Instant now);

    /** Says how far it is; false when it was ended meanwhile and need not go on. */
    boolean goOn(long id, int done, Instant now);

    /** Keeps the file, unless it was ended meanwhile. */
    void done(long id, byte[] file, int pages, Instant now);

    /** It goes no further; one that is done stays done. */
    void end(long id, Print.State state);

    /** The file of one that is done. */
    Optional<byte[]> file(long id);

    /** Takes away what was asked for before that. */
    void forgetBefore(Instant asked);
}
