package soapstone.school;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * The waits after sign-ins that failed, counted apart by login and by network address. Each wait is twice the one before.
 * While it lasts a try is turned away unlooked at: it is neither right nor wrong and is not counted.
 *
 * <p>{@link Throttles} counts, {@link #freeAt} is its rule. By login, failures in a row: NIST SP 800-63B-4, 3.2.2 asks for at most 100 and names waits of 30 seconds to an hour. The
 * count goes by the login as typed, in the form of {@link Logins#plain}, whether there is such an account or not; else the
 * wait would tell. A right sign-in resets it.
 *
 * <p>By address, failures of everybody there: a class sits behind one address, so that many are free, the waits stay short,
 * and the address is never closed. A right sign-in does not reset it, or one account of one's own would be enough to try all
 * others; an hour of quiet does.
 */
public enum Throttle {
    /** One login, from wherever. */
    LOGIN(4, Duration.ofHours(1), 100),
    /** One network address, whatever the login. */
    ADDRESS(200, Duration.ofMinutes(5), Long.MAX_VALUE),
    /** Codes of classes that one network address tried: so many wrong ones are people who mistype. */
    JOIN(20, Duration.ofHours(1), Long.MAX_VALUE);

    /** What stands for no end of waiting: an instructor or keeper has to open the account again. Any database can keep it. */
    public static final Instant NEVER = Instant.parse("9999-01-01T00:00:00Z");

    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration QUIET = Duration.ofHours(1);

    private final int free;
    private final Duration longest;
    private final long closedAt;

    Throttle(int free, Duration longest, long closedAt) {
        this.free = free;
        this.longest = longest;
        this.closedAt = closedAt;
    }

    /**
     * When the next try is looked at.
     *
     * @param failures counted, with the last one
     * @param last     when the last one was
     * @return {@code last} itself where there is no wait; {@link #NEVER} where it is closed
     */
    public Instant freeAt(int failures, Instant last) {
        if (failures < 0) {
            throw new IllegalArgumentException("failures are counted from 0, not " + failures);
        }
        return isClosed(failures) ? NEVER : last.plus(wait(failures));
    }

    /** Under what failures are counted in {@link Throttles}: a hash, because what is typed as a login may be a password by mistake. */
    public String subject(String of) {
        return prefix() + SessionRule.hash(of);
    }

    /** What its subjects begin with. */
    public String prefix() {
        return name().toLowerCase(Locale.ROOT) + " ";
    }

    /** Whether it has to be opened again by an instructor or keeper. */
    public boolean isClosed(int failures) {
        return failures >= closedAt;
    }

    /** Whether a try is looked at. */
    public static boolean isFree(Instant freeAt, Instant now) {
        return !now.isBefore(freeAt);
    }

    /** Whether the count starts anew with the next failure: an address is forgotten after an hour of quiet, a login never. */
    public boolean isForgotten(Instant freeAt, Instant now) {
        return forgets() && !now.isBefore(freeAt.plus(QUIET));
    }

    /** Whether quiet takes the count away. */
    public boolean forgets() {
        return this != LOGIN;
    }

    /**
     * Puts one more failure down, or the first one after it was quiet for long enough.
     *
     * @param of the login or address
     */
    public void fail(Throttles throttles, String of, Instant now) {
        String subject = subject(of);
        if (throttles.of(subject).filter(f -> isForgotten(f.freeAt(), now)).isPresent()) {
            throttles.reset(subject);
        }
        throttles.fail(subject, this::freeAt, now);
    }

    /** Whether a right sign-in takes the count away. */
    public boolean endsWithSuccess() {
        return this == LOGIN;
    }

    private Duration wait(int failures) {
        if (failures <= free) {
            return Duration.ZERO;
        }
        int doublings = Math.min(failures - free - 1, 20);
        Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
        return wait.compareTo(longest) < 0 ? wait : longest;
    }
}
