package soapstone.web;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import soapstone.school.School;
import soapstone.school.Throttle;
import soapstone.school.Throttles;

/** Records leave the school at the pace of somebody at a browser: a stolen session cannot empty it in a minute. */
final class Leaving {

    private Leaving() {}

    /**
     * Counts a file that is about to leave.
     *
     * @param by who takes it
     * @throws Trouble 429 when this person took too many just now
     */
    static void count(School school, long by, Instant now) {
        String subject = Throttle.EXPORT.subject(String.valueOf(by));
        Optional<Instant> free = school.throttles().of(subject).map(Throttles.Failures::freeAt).filter(at -> !Throttle.isFree(at, now));
        if (free.isPresent()) {
            throw Trouble.tooSoon(Duration.between(now, free.get()).toSeconds() + 1);
        }
        Throttle.EXPORT.fail(school.throttles(), subject, now);
    }
}
