package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class PasswordHashTest {

    /** ASVS 5.0, 11.4.2: the text says how it was made. */
    @Test
    void saysItsParameters() {
        assertThat(PasswordHash.hash("quay lintel harrow")).matches("\\$argon2id\\$v=19\\$m=19456,t=2,p=1\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}");
    }

    @Test
    void fitsOnlyThePasswordItself() {
        String kept = PasswordHash.hash("Quay Lintel Harrow é ²");
        assertThat(PasswordHash.fits("Quay Lintel Harrow é ²", kept)).isTrue();
        assertThat(PasswordHash.fits("Quay\u00a0Lintel Harrow e\u0301 ²", kept)).isTrue();
        assertThat(PasswordHash.fits("quay Lintel Harrow é ²", kept)).isFalse();
        assertThat(PasswordHash.fits("Quay Lintel Harrow é 2", kept)).isFalse();
        assertThat(PasswordHash.fits("Quay Lintel Harrow é ", kept)).isFalse();
        assertThat(PasswordHash.fits("", kept)).isFalse();
    }

    @Test
    void countsTheLastOfManySigns() {
        String typed = "wren copper ".repeat(10) + "lintel!x";
        String kept = PasswordHash.hash(typed);
        assertThat(typed).hasSize(128);
        assertThat(PasswordHash.fits(typed, kept)).isTrue();
        assertThat(PasswordHash.fits(typed.substring(0, 127), kept)).isFalse();
        assertThat(PasswordHash.fits(typed.substring(0, 127) + "y", kept)).isFalse();
    }

    @Test
    void aPassphraseFitsHoweverItIsTyped() {
        String kept = PasswordHash.hash("copper willow tandem orbit");
        assertThat(PasswordHash.fits("Copper-Willow-Tandem-Orbit", kept)).isTrue();
        assertThat(PasswordHash.fits("copper willow orbit tandem", kept)).isFalse();
        assertThat(PasswordHash.fits("copper willow tandem orbit", PasswordHash.hash("COPPER.WILLOW.TANDEM.ORBIT"))).isTrue();
    }

    @Test
    void everyHashHasItsOwnSalt() {
        assertThat(PasswordHash.hash("quay lintel harrow")).isNotEqualTo(PasswordHash.hash("quay lintel harrow"));
    }

    @Test
    void nobodyNeverFits() {
        assertThat(PasswordHash.fitsNobody("quay lintel harrow")).isFalse();
        assertThat(PasswordHash.fitsNobody("")).isFalse();
    }

    @Test
    void olderParametersStillFitAndAreDated() {
        String older = Argon2Function.getInstance(8192, 1, 1, 32, Argon2.ID).hash("quay lintel".getBytes(StandardCharsets.UTF_8), new byte[16]).getResult();
        assertThat(PasswordHash.fits("quay lintel", older)).isTrue();
        assertThat(PasswordHash.isDated(older)).isTrue();
        assertThat(PasswordHash.isDated(PasswordHash.hash("quay lintel"))).isFalse();
    }

    @Test
    void whatIsNoHashIsRefused() {
        for (String broken : new String[] {"", "quay lintel", "$2a$10$abc", "$argon2i$v=19$m=19456,t=2,p=1$AAAA$AAAA"}) {
            assertThatIllegalArgumentException().isThrownBy(() -> PasswordHash.fits("quay lintel", broken)).withMessageContaining("$argon2id$");
        }
    }

    /** phc-winner-argon2, test.c: Argon2id v=19, t=2, m=64 MiB, p=1, "password", "somesalt". */
    @Test
    void theLibraryDoesArgon2idAsPublished() {
        byte[] made = Argon2Function.getInstance(65536, 2, 1, 32, Argon2.ID).hash("password".getBytes(StandardCharsets.UTF_8), "somesalt".getBytes(StandardCharsets.UTF_8))
                .getBytes();
        assertThat(HexFormat.of().formatHex(made)).isEqualTo("09316115d5cf24ed5a15a31a3ba326e5cf32edc24702987c02b6566f61913cf7");
    }
}
