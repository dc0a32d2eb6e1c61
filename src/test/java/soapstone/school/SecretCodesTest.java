package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SecretCodesTest {

    @Test
    void fourGroupsOfFourOfOver60Bits() {
        Random chance = new Random(2);
        Set<String> drawn = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            String code = SecretCodes.draw(chance);
            assertThat(code).matches("([" + SecretCodes.SIGNS + "]{4}-){3}[" + SecretCodes.SIGNS + "]{4}");
            drawn.add(code);
        }
        assertThat(drawn).hasSize(1000);
        assertThat(16 * Math.log(SecretCodes.SIGNS.length()) / Math.log(2)).isBetween(70.0, 71.0);
    }

    @Test
    void noSignIsTakenForAnother() {
        assertThat(SecretCodes.SIGNS.chars().distinct().count()).isEqualTo(SecretCodes.SIGNS.length());
        assertThat(SecretCodes.SIGNS).doesNotContain("0", "O", "1", "I", "L", "2", "Z", "5", "S", "8", "B", "U", "V", "A", "E");
    }

    @ParameterizedTest
    @ValueSource(strings = {"K7CW-34MR-XPN9-THQ6", "k7cw 34mr xpn9 thq6", "K7CW34MRXPN9THQ6", "K7CW.34MR\u2013XPN9\u00a0THQ6\n"})
    void howItIsTypedDoesNotMatter(String typed) {
        assertThat(SecretCodes.hash(typed)).isEqualTo(SessionRule.hash("K7CW34MRXPN9THQ6")).hasSize(64);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "K7CW-34MR-XPN9", "K7CW-34MR-XPN9-THQ7", "K7CW-34MR-XPN9-THQ6-6"})
    void anotherCodeHasAnotherHash(String typed) {
        assertThat(SecretCodes.hash(typed)).isNotEqualTo(SecretCodes.hash("K7CW-34MR-XPN9-THQ6"));
    }

    @Test
    void codesEndSoon() {
        Instant made = Instant.parse("2026-09-01T13:00:00Z");
        assertThat(SecretCodes.ends(Codes.Purpose.FIRST_RUN, made)).isEqualTo(made.plusSeconds(24 * 3600));
        assertThat(SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, made)).isEqualTo(made.plusSeconds(30 * 60));
    }
}
