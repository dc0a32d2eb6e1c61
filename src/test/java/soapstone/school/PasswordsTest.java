package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soapstone.source.Message;

class PasswordsTest {

    private static final List<String> AROUND = List.of("Tamarack Valley Technical Center", "Fab 2 Evening");

    private static Person person(boolean twoFactor) {
        return new Person(7, Person.Kind.INSTRUCTOR, "Brin Okafor", "bokafor", "en", false, false, twoFactor, Instant.EPOCH);
    }

    private static Optional<Message> refusal(String typed) {
        return Passwords.refusal(typed, person(false), AROUND);
    }

    private static void refused(String typed, String key) {
        assertThat(refusal(typed)).as(typed).map(Message::key).contains(key);
    }

    @Test
    void takesFifteenSignsAndTellsHowManyAreMissing() {
        assertThat(refusal("quay lintel hem")).isEmpty();
        assertThat(refusal("quay lintel he")).contains(Message.of("school.password-short", "15", "14"));
        assertThat(refusal("")).contains(Message.of("school.password-short", "15", "0"));
    }

    @Test
    void takesEightBesideASecondFactor() {
        assertThat(Passwords.refusal("lintelqx", person(true), AROUND)).isEmpty();
        assertThat(Passwords.refusal("lintelq", person(true), AROUND)).contains(Message.of("school.password-short", "8", "7"));
    }

    @Test
    void takes128SignsAndNotOneMore() {
        String long128 = "wren copper é ".repeat(10).substring(0, 120) + "another!";
        assertThat(long128).hasSize(128);
        assertThat(refusal(long128)).isEmpty();
        assertThat(refusal(long128 + "x")).contains(Message.of("school.password-long", "128", "129"));
        assertThat(refusal("x".repeat(1_000_000))).map(Message::key).contains("school.password-long");
    }

    /** NIST SP 800-63B-4, 3.1.1.2: each code point is one sign. */
    @Test
    void countsCodePoints() {
        assertThat(refusal("\uD83D\uDE80 quay lintel h")).isEmpty();
        assertThat(refusal("\uD83D\uDE80 quay lintel ")).contains(Message.of("school.password-short", "15", "14"));
        assertThat(refusal("e\u0301 quay lintel h")).as("a letter and its mark are one").isEmpty();
        assertThat(refusal("e\u0301 quay lintel ")).contains(Message.of("school.password-short", "15", "14"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"quaylintelharrow", "QUAYLINTELHARROW", "quay lintel harrow", "83 16 07 52 94 61 38", "чайник медный берег", "%(;}&~?<|=:\"/[^",
        "an ordinary sentence about lunch"})
    void asksForNoKindsOfSigns(String typed) {
        assertThat(refusal(typed)).isEmpty();
    }

    @Test
    void takesWhatTheSiteDraws() {
        Random chance = new Random(11);
        for (int i = 0; i < 2000; i++) {
            String drawn = Passphrases.draw(chance);
            assertThat(refusal(drawn)).as(drawn).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"quay\tlintel harrow", "quay\u0000lintel harrow", "quay\uD83Dlintel harrow", "quay\u0378lintel harrow", "quay lintel harrow\n"})
    void refusesSignsThatMayNotComeAgain(String typed) {
        refused(typed, "school.password-sign");
    }

    @ParameterizedTest
    @ValueSource(strings = {"aaaaaaaaaaaaaaa", "AaAaAaAaAaAaAaAa", "...............", "               ", "éééééééÉÉÉÉÉÉÉÉÉ"})
    void refusesOneSign(String typed) {
        refused(typed, "school.password-one-sign");
    }

    @ParameterizedTest
    @ValueSource(strings = {"123456789012345", "987654321098765", "qwertyuiopasdfgh", "1qaz2wsx3edc4rfv", "abcdefghijklmno", "zyxwvutsrqponml",
        "Qwertzuiop12345", "azertyuiop789456", "!@#$%^&*()_+QWER", "111222333444555", "qwerty1234567!!", "poiuytrewq09876"})
    void refusesRuns(String typed) {
        refused(typed, "school.password-run");
    }

    @ParameterizedTest
    @ValueSource(strings = {"passwordpassword", "PasswordPassword1", "password-password", "letmeinletmeinletmein", "p@ssw0rdP@ssw0rd", "dragon dragon dragon",
        "password19840612", "2026!!sunshine!!2026", "password1password2", "sunshinesunshinesun", "correcthorsebatterystaple", "Correct Horse Battery Staple",
        "May the force be with you", "sheetmetalsheetmetal", "shop math shop math", "thisismypassword7", "johnsonjohnson2", "congratulations"})
    void refusesWhatManyPeopleUse(String typed) {
        refused(typed, "school.password-common");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bokaforbokafor26", "B.Okafor.B.Okafor", "2026-Brin-Okafor-2026", "okaforbrin123456", "TamarackValley2026", "tamarack valley technical center",
        "xx-tamarackvalley-1", "t@m@r@ckvalley26", "soapstonesoapstone", "S0apst0ne-2026-2026", "Soapstone password 1", "evening fab 2 evening"})
    void refusesNames(String typed) {
        refused(typed, "school.password-name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"xq7xq7xq7xq7xq7", "gv-gv-gv-gv-gv-gv", "jxkwqzvjxkwqzvj", "?!?!?!?!?!?!?!?!"})
    void refusesAShortPieceSaidAgain(String typed) {
        refused(typed, "school.password-repeated");
    }

    @Test
    void aNameInsideALongerThoughtIsNoHarm() {
        assertThat(refusal("okafor eats gravel on tuesdays")).isEmpty();
    }

    @Test
    void anEmptyNameIsNoName() {
        Person nameless = new Person(7, Person.Kind.STUDENT, "", "", "en", false, false, false, Instant.EPOCH);
        assertThat(Passwords.refusal("quay lintel harrow", nameless, List.of("", " ", "4"))).isEmpty();
    }
}
