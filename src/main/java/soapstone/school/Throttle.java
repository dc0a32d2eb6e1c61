package soapstone.school;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * The waits after sign-ins that failed, counted apart by login at one network address, by login and by network address. Each
 * wait is twice the one before. While it lasts a try is turned away unlooked at: it is neither right nor wrong and is not counted.
 *
 * <p>{@link Throttles} counts, {@link #freeAt} is its rule. NIST SP 800-63B-4, 3.2.2 asks for at most 100 failures in a row and
 * names waits of 30 seconds to an hour. The counts go by the login as typed, in the form of {@link Logins#plain}, whether there
 * is such an account or not; else the wait would tell. A right sign-in resets the login's, and the pair's where it came from.
 *
 * <p>Who fails on purpose to keep somebody else out makes it wait where they sit, and hardly anywhere else: the long waits are
 * those of the pair. From one address a login can be guessed at 34 times in the first 24 hours (12 in the first 64 minutes, then
 * once an hour) and 24 times in any later ones, so that the login itself makes its owner wait after ten hours only. From
 * however many addresses at once it is 20 times without a wait, then once in at most five minutes, and after 99 in a row, without
 * one right sign-in between them, it is closed: so 99 guesses a day at most where the owner signs in once a day. Of four words out
 * of 7 776 there are 3.7 · 10<sup>15</sup>: a hundred guesses a day find one in 5 · 10<sup>10</sup> years. Behind one address, as a
 * class in its room, the pair is the same for all.
 *
 * <p>By address, failures of everybody there: a class sits behind one address, so that many are free, the waits stay short,
 * and the address is never closed. A right sign-in does not reset it, or one account of one's own would be enough to try all
 * others; an hour of quiet does.
 */
public enum Throttle {
    /** One login from one network address. */
    PAIR(4, Duration.ofHours(1), Long.MAX_VALUE),
    /** One login, from wherever. */
    LOGIN(20, Duration.ofMinutes(5), 100),
    /** One network address, whatever the login. */
    ADDRESS(200, Duration.ofMinutes(5), Long.MAX_VALUE),
    /** Codes of classes that one network address tried: so many wrong ones are people who mistype. */
    JOIN(20, Duration.ofHours(1), Long.MAX_VALUE),
    /** Files with records that one person took: more than somebody at a browser needs in an hour (ASVS 5.0, 2.4.1). */
    EXPORT(60, Duration.ofMinutes(1), Long.MAX_VALUE);

    /** What stands for no end of waiting: an instructor or keeper has to open the account again. Any database can keep it. */
    public static final Instant NEVER = Instant.parse("9999-01-01T00:00:00Z");

    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration QUIET = Duration.ofHours(1);
    private static final Duration DAY = Duration.ofDays(1);

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

    /** The same of a login at an address: it begins with {@link #pairsOf} the login. */
    public static String pair(String login, String address) {
        return pairsOf(login) + SessionRule.hash(address);
    }

    /** With what the subjects of all pairs of a login begin. */
    public static String pairsOf(String login) {
        return PAIR.subject(login) + " ";
    }

    /** Whether it has to be opened again by an instructor or keeper. */
    public boolean isClosed(int failures) {
        return failures >= closedAt;
    }

    /** Whether a try is looked at. */
    public static boolean isFree(Instant freeAt, Instant now) {
        return !now.isBefore(freeAt);
    }

    /** Whether the count starts anew with the next failure: an address is forgotten after an hour of quiet, a pair after a day, a login never. */
    public boolean isForgotten(Instant freeAt, Instant now) {
        return forgets() && !now.isBefore(freeAt.plus(this == PAIR ? DAY : QUIET));
    }

    /** Whether quiet takes the count away. */
    public boolean forgets() {
        return this != LOGIN;
    }

    /**
     * Puts one more failure down, or the first one after it was quiet for long enough.
     *
     * @param subject of this kind
     */
    public void fail(Throttles throttles, String subject, Instant now) {
        if (throttles.of(subject).filter(f -> isForgotten(f.freeAt(), now)).isPresent()) {
            throttles.reset(subject);
        }
        throttles.fail(subject, this::freeAt, now);
    }

    /** Whether a right sign-in takes the count away. */
    public boolean endsWithSuccess() {
        return this != ADDRESS;
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
