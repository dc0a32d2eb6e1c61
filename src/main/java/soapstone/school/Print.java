package soapstone.school;

import java.time.Duration;
import java.time.Instant;

/**
 * Something that was asked for on paper.
 *
 * @param kind    what it is, such as {@code packet}
 * @param choices how it was wanted, as a text from which it can be made again
 * @param done    pieces that are laid out
 * @param total   of all
 * @param pages   of the file, once it is done
 * @param seen    when whoever makes it last said so
 */
public record Print(long id, long assignment, long by, String kind, String choices, State state, int done, int total, int pages, Instant asked, Instant seen) {

    /** A program that says nothing for so long has ended. */
    private static final Duration SILENT = Duration.ofMinutes(1);

    /** How far it has come. */
    public enum State {
        MAKING, DONE,
        /** By whoever asked for it. */
        ENDED,
        FAILED
    }

    /** Whether nobody makes it any more, although it is not done. */
    public boolean isLeft(Instant now) {
        return state == State.MAKING && seen.plus(SILENT).isBefore(now);
    }
}
