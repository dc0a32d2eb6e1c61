package soapstone.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.school.Codes;
import soapstone.school.School;
import soapstone.school.SignedIn;
import soapstone.school.Throttle;
import soapstone.school.Tidying;

/** What is over goes away; what still holds stays. */
class TidyingTest {

    private static final Instant NOW = FilledSchool.NOW;

    private static void begin(FilledSchool f, String token, Instant seen) {
        f.school.sessions().begin(new SignedIn(f.student, token.repeat(64), "k".repeat(43), false, seen, seen));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("soapstone.record.Databases#both")
    void onlyWhatWasOverADayAgoIsTakenAway(String kind, Database database) {
        try (database) {
            FilledSchool f = new FilledSchool(database, 1);
            School school = f.school;
            Instant later = NOW.plus(Duration.ofDays(3));
            begin(f, "c", later.minus(Duration.ofHours(23)));
            school.codes().make("d".repeat(64), Codes.Purpose.NEW_PASSWORD, Optional.of(f.student.id()), later.plusSeconds(60));
            Throttle.LOGIN.fail(school.throttles(), Throttle.LOGIN.subject("ada"), NOW);
            Throttle.ADDRESS.fail(school.throttles(), Throttle.ADDRESS.subject("192.0.2.7"), NOW);
            Throttle.JOIN.fail(school.throttles(), Throttle.JOIN.subject("192.0.2.7"), NOW);
            Throttle.JOIN.fail(school.throttles(), Throttle.JOIN.subject("192.0.2.8"), later);
            for (int node = 1; node <= 2; node++) {
                Tidying.tidy(school, later);
                assertThat(school.sessions().find("a".repeat(64))).isEmpty();
                assertThat(school.sessions().find("c".repeat(64))).as("a session of yesterday").isPresent();
                assertThat(database.<Long>read(h -> h.createQuery("select count(*) from once_code").mapTo(Long.class).one())).isOne();
                assertThat(school.codes().isOpen(Codes.Purpose.NEW_PASSWORD, later)).isTrue();
                assertThat(school.throttles().of(Throttle.LOGIN.subject("ada"))).as("failures of a login in a row").isPresent();
                assertThat(school.throttles().of(Throttle.ADDRESS.subject("192.0.2.7"))).isEmpty();
                assertThat(school.throttles().of(Throttle.JOIN.subject("192.0.2.7"))).isEmpty();
                assertThat(school.throttles().of(Throttle.JOIN.subject("192.0.2.8"))).isPresent();
            }
        }
    }
}
