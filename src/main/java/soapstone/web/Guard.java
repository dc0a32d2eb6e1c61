package soapstone.web;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import soapstone.page.SchoolTimes;
import soapstone.school.Logins;
import soapstone.school.Throttle;
import soapstone.school.Throttles;
import soapstone.source.Message;

/**
 * Makes those wait who guess, by login at an address, by login and by address, with the rules of {@link Throttle}. A login counts as typed, whether
 * there is such an account or not, so that the wait does not tell.
 */
final class Guard {

    private static final long LONGEST_SAID = Duration.ofDays(1).toSeconds();

    private final SchoolOffice office;

    Guard(SchoolOffice office) {
        this.office = office;
    }

    private Throttles throttles() {
        return office.school().get().throttles();
    }

    private Instant now() {
        return office.clock().instant();
    }

    /** A wait that is not over. */
    record Wait(Instant until, long seconds, boolean closed) {

        Message says(String language) {
            return closed ? Message.of("account.closed") : Message.of("account.wait", SchoolTimes.clock(until, language));
        }
    }

    /**
     * Lets a try in, or says how long it has to wait. Of a login, there and everywhere, the try counts as failed until {@link #right}:
     * so those that come in at the same moment are all counted.
     */
    Optional<Wait> enter(String login, String address) {
        Optional<Wait> wait = wait(login, address);
        if (wait.isEmpty()) {
            fail(Throttle.PAIR, Throttle.pair(Logins.plain(login), address));
            fail(Throttle.LOGIN, Throttle.LOGIN.subject(Logins.plain(login)));
        }
        return wait;
    }

    /** The same where no login is typed: by address alone. */
    Optional<Wait> enter(String address) {
        return wait(Stream.of(Throttle.ADDRESS.subject(address)));
    }

    private Optional<Wait> wait(String login, String address) {
        return wait(Stream.of(Throttle.pair(Logins.plain(login), address), Throttle.LOGIN.subject(Logins.plain(login)), Throttle.ADDRESS.subject(address)));
    }

    private Optional<Wait> wait(Stream<String> subjects) {
        Instant now = now();
        return subjects.flatMap(s -> throttles().of(s).stream()).map(Throttles.Failures::freeAt).filter(free -> !Throttle.isFree(free, now)).max(Instant::compareTo)
                .map(free -> new Wait(free, Math.min(LONGEST_SAID, Duration.between(now, free).plusSeconds(1).toSeconds()), free.equals(Throttle.NEVER)));
    }

    /** The try was wrong. */
    void wrong(String address) {
        fail(Throttle.ADDRESS, Throttle.ADDRESS.subject(address));
    }

    private void fail(Throttle kind, String subject) {
        kind.fail(throttles(), subject, now());
    }

    /** The try was right: the login's count begins anew, there and everywhere; the address's does not, nor that of others who guess. */
    void right(String login, String address) {
        throttles().reset(Throttle.pair(Logins.plain(login), address));
        throttles().reset(Throttle.LOGIN.subject(Logins.plain(login)));
    }

    /** The login has a new secret: nobody need wait with it, wherever they are. */
    void open(String login) {
        throttles().resetAll(Throttle.pairsOf(Logins.plain(login)));
        throttles().reset(Throttle.LOGIN.subject(Logins.plain(login)));
    }
}
