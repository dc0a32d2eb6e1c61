package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SessionRuleTest {

    private static final Instant BEGUN = Instant.parse("2026-09-01T13:00:00Z");

    private static SignedIn session(Person.Kind kind, boolean tablet, Duration seenAfter, boolean disabled) {
        Person person = new Person(1, kind, "Seat 7", "seat7", "en", disabled, false, false, BEGUN);
        return new SignedIn(person, SessionRule.hash("x"), "key", tablet, BEGUN, BEGUN.plus(seenAfter));
    }

    @ParameterizedTest
    @CsvSource({"false, 30", "true, 10"})
    void endsWhenNothingIsDone(boolean tablet, long minutes) {
        SignedIn signedIn = session(Person.Kind.STUDENT, tablet, Duration.ofMinutes(100), false);
        Instant end = BEGUN.plus(Duration.ofMinutes(100 + minutes));
        assertThat(SessionRule.ends(signedIn)).isEqualTo(end);
        assertThat(SessionRule.isOver(signedIn, end.minusMillis(1))).isFalse();
        assertThat(SessionRule.isOver(signedIn, end)).isTrue();
        assertThat(SessionRule.warns(signedIn)).isEqualTo(end.minusSeconds(120));
    }

    @ParameterizedTest
    @EnumSource(Person.Kind.class)
    void endsAfterTwelveHoursHoweverBusy(Person.Kind kind) {
        SignedIn busy = session(kind, false, Duration.ofHours(12).minusMinutes(1), false);
        Instant end = BEGUN.plus(Duration.ofHours(12));
        assertThat(SessionRule.ends(busy)).isEqualTo(end);
        assertThat(SessionRule.isOver(busy, end.minusMillis(1))).isFalse();
        assertThat(SessionRule.isOver(busy, end)).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Person.Kind.class)
    void endsAtOnceForWhomIsDisabled(Person.Kind kind) {
        assertThat(SessionRule.isOver(session(kind, false, Duration.ZERO, true), BEGUN)).isTrue();
    }

    @Test
    void aClockSetBackEndsNothing() {
        assertThat(SessionRule.isOver(session(Person.Kind.STUDENT, false, Duration.ofMinutes(5), false), BEGUN.minusSeconds(60))).isFalse();
    }

    @Test
    void secretsAreOf256BitsAndAllDifferent() {
        Random chance = new Random(8);
        Set<String> drawn = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            String secret = SessionRule.token(chance);
            assertThat(SessionRule.isToken(secret)).as(secret).isTrue();
            drawn.add(secret);
        }
        assertThat(drawn).hasSize(1000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAé"})
    void anythingElseIsNoSecret(String text) {
        assertThat(SessionRule.isToken(text)).isFalse();
    }

    /** FIPS 180-4: the example of SHA-256 on "abc". */
    @Test
    void secretsAreKeptAsTheirHash() {
        assertThat(SessionRule.hash("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void sameIsSame() {
        assertThat(SessionRule.same("abc", "abc")).isTrue();
        assertThat(SessionRule.same("abc", "abd")).isFalse();
        assertThat(SessionRule.same("abc", "")).isFalse();
    }
}
