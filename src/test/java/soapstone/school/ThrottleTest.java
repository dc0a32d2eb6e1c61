package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static soapstone.school.Throttle.ADDRESS;
import static soapstone.school.Throttle.LOGIN;
import static soapstone.school.Throttle.PAIR;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThrottleTest {

    private static final Instant LAST = Instant.parse("2026-09-01T13:00:00Z");

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0", "4, 0", "5, 30", "6, 60", "7, 120", "8, 240", "9, 480", "10, 960", "11, 1920", "12, 3600", "50, 3600", "99, 3600"})
    void fourAreFreeThenWaitsDoubleToAnHour(int failures, long seconds) {
        assertThat(PAIR.freeAt(failures, LAST)).isEqualTo(LAST.plusSeconds(seconds));
        assertThat(PAIR.isClosed(failures)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "20, 0", "21, 30", "22, 60", "23, 120", "24, 240", "25, 300", "99, 300"})
    void aLoginHasMoreAndShortWaits(int failures, long seconds) {
        assertThat(LOGIN.freeAt(failures, LAST)).isEqualTo(LAST.plusSeconds(seconds));
        assertThat(LOGIN.isClosed(failures)).isFalse();
    }

    /** Whoever guesses as soon as it is allowed, from one address, with the numbers that the rule's description tells. */
    @Test
    void guessesADay() {
        int first = 0;
        int second = 0;
        int byLogin = 0;
        int failures = 0;
        for (Instant now = LAST; now.isBefore(LAST.plus(Duration.ofDays(2))); now = PAIR.freeAt(failures, now)) {
            failures++;
            boolean firstDay = now.isBefore(LAST.plus(Duration.ofDays(1)));
            first += firstDay ? 1 : 0;
            second += firstDay ? 0 : 1;
            byLogin += now.isBefore(LAST.plus(Duration.ofMinutes(64))) ? 1 : 0;
        }
        assertThat(byLogin).isEqualTo(12);
        assertThat(first).isEqualTo(34);
        assertThat(second).isEqualTo(24);
    }

    @Test
    void aPairIsOfItsLogin() {
        assertThat(Throttle.pair("ada", "192.0.2.1")).startsWith(Throttle.pairsOf("ada")).doesNotStartWith(Throttle.pairsOf("bo")).doesNotContain("ada").doesNotContain("192")
                .hasSizeLessThanOrEqualTo(160).isNotEqualTo(Throttle.pair("ada", "192.0.2.2"));
    }

    /** NIST SP 800-63B-4, 3.2.2: at most 100 in a row. */
    @Test
    void theHundredthCloses() {
        assertThat(LOGIN.isClosed(100)).isTrue();
        assertThat(LOGIN.freeAt(100, LAST)).isEqualTo(Throttle.NEVER);
        assertThat(LOGIN.freeAt(Integer.MAX_VALUE, LAST)).isEqualTo(Throttle.NEVER);
    }

    @ParameterizedTest
    @CsvSource({"100, 0", "200, 0", "201, 30", "202, 60", "204, 240", "205, 300", "100000, 300", "2147483647, 300"})
    void anAddressHasManyAndShortWaits(int failures, long seconds) {
        assertThat(ADDRESS.freeAt(failures, LAST)).isEqualTo(LAST.plusSeconds(seconds));
        assertThat(ADDRESS.isClosed(failures)).isEqualTo(false);
    }

    @Test
    void aHundredFailuresOfOneDoNotKeepOthersOutAtTheSameAddress() {
        assertThat(LOGIN.isClosed(100)).isTrue();
        assertThat(Throttle.isFree(ADDRESS.freeAt(100, LAST), LAST)).isTrue();
    }

    @Test
    void freeFromTheMomentOn() {
        Instant freeAt = PAIR.freeAt(5, LAST);
        assertThat(Throttle.isFree(freeAt, freeAt.minusMillis(1))).isFalse();
        assertThat(Throttle.isFree(freeAt, freeAt)).isTrue();
        assertThat(Throttle.isFree(Throttle.NEVER, LAST)).isFalse();
    }

    @Test
    void aRightSignInEndsTheCountOfTheLoginOnly() {
        assertThat(PAIR.endsWithSuccess()).isTrue();
        assertThat(LOGIN.endsWithSuccess()).isTrue();
        assertThat(ADDRESS.endsWithSuccess()).isFalse();
    }

    @Test
    void anHourOfQuietEndsTheCountOfTheAddressADayThatOfThePairAndNothingThatOfTheLogin() {
        Instant quiet = LAST.plus(Duration.ofHours(1));
        assertThat(ADDRESS.isForgotten(LAST, quiet)).isTrue();
        assertThat(ADDRESS.isForgotten(LAST, quiet.minusMillis(1))).isFalse();
        assertThat(Throttle.JOIN.isForgotten(LAST, quiet)).isTrue();
        assertThat(PAIR.isForgotten(LAST, LAST.plus(Duration.ofDays(1)).minusMillis(1))).isFalse();
        assertThat(PAIR.isForgotten(LAST, LAST.plus(Duration.ofDays(1)))).isTrue();
        assertThat(LOGIN.isForgotten(LAST, quiet.plus(Duration.ofDays(300)))).isFalse();
    }

    @Test
    void failuresAreCountedFromZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> LOGIN.freeAt(-1, LAST)).withMessageContaining("-1");
    }

    @Test
    void isTheRuleOfTheCounter() {
        Throttles.FreeAt rule = PAIR::freeAt;
        assertThat(rule.after(5, LAST)).isEqualTo(LAST.plusSeconds(30));
    }
}
