package soapstone.school;

import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;

/** Takes away what is over and of no use to anybody. Two nodes that do it at the same moment do no harm. */
public final class Tidying {

    private static final Duration OVER = Duration.ofDays(1);

    private Tidying() {}

    /** Sessions and codes that were over a day ago, what was printed before that, and counts of addresses that were quiet for so long; the count of a login stays. */
    public static void tidy(School school, Instant now) {
        Instant before = now.minus(OVER);
        school.sessions().forgetBefore(before);
        school.codes().forgetBefore(before);
        school.prints().forgetBefore(before);
        Stream.of(Throttle.values()).filter(Throttle::forgets).forEach(kind -> school.throttles().forgetBefore(kind, before));
    }
}
