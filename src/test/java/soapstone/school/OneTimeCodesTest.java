package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OneTimeCodesTest {

    /** The secret of the examples in RFC 4226 and, for SHA-1, in RFC 6238. */
    private static final byte[] KEY = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);
    private static final String SECRET = Base32.write(KEY);

    /** RFC 4226, appendix D. */
    @ParameterizedTest
    @CsvSource({"0, 755224", "1, 287082", "2, 359152", "3, 969429", "4, 338314", "5, 254676", "6, 287922", "7, 162583", "8, 399871", "9, 520489"})
    void countsAsPublished(long step, String code) {
        assertThat(OneTimeCodes.code(KEY, step)).isEqualTo(code);
    }

    /** RFC 6238, appendix B, the rows of SHA-1: of its eight digits the last six. */
    @ParameterizedTest
    @CsvSource({"59, 94287082", "1111111109, 07081804", "1111111111, 14050471", "1234567890, 89005924", "2000000000, 69279037", "20000000000, 65353130"})
    void tellsTheTimeAsPublished(long second, String published) {
        assertThat(accepts(published.substring(2), second, OneTimeCodes.NO_STEP)).hasValue(second / 30);
    }

    private static OptionalLong accepts(String typed, long second, long last) {
        return OneTimeCodes.accepts(SECRET, typed, Instant.ofEpochSecond(second), last);
    }

    @Test
    void oneStepEitherWayCounts() {
        long step = 1111111109 / 30;
        assertThat(accepts("081804", (step - 1) * 30, 0)).hasValue(step);
        assertThat(accepts("081804", (step + 1) * 30 + 29, 0)).hasValue(step);
        assertThat(accepts("081804", (step - 1) * 30 - 1, 0)).isEmpty();
        assertThat(accepts("081804", (step + 2) * 30, 0)).isEmpty();
    }

    @Test
    void aStepCountsOnceAndNoneBeforeItAfterwards() {
        long step = 1111111109 / 30;
        assertThat(accepts("081804", 1111111109, step)).isEmpty();
        assertThat(accepts("081804", 1111111109, step + 1)).isEmpty();
        assertThat(accepts("081804", 1111111109, step - 1)).hasValue(step);
        assertThat(accepts(OneTimeCodes.code(KEY, step + 1), 1111111109, step)).hasValue(step + 1);
    }

    /** The first two steps of one window that have the same code by chance. */
    @Test
    void aCodeOfTwoStepsWorksOnce() {
        long step = -1;
        for (long s = 1; step < 0; s++) {
            step = OneTimeCodes.code(KEY, s).equals(OneTimeCodes.code(KEY, s + 2)) ? s : -1;
        }
        String code = OneTimeCodes.code(KEY, step);
        assertThat(accepts(code, (step + 1) * 30, 0)).hasValue(step + 2);
        assertThat(accepts(code, (step + 1) * 30, step + 2)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "81804", "0081804", "081805", "08180a", "-81804", "94287082", "٠٨١٨٠٤"})
    void anythingElseIsNotRight(String typed) {
        assertThat(accepts(typed, 1111111109, 0)).isEmpty();
    }

    @Test
    void gapsDoNotMatter() {
        assertThat(accepts(" 081 804\n", 1111111109, 0)).isPresent();
        assertThat(accepts("081\u00a0804", 1111111109, 0)).isPresent();
    }

    @Test
    void aSecretHas160BitsAndIsDrawn() {
        String secret = OneTimeCodes.draw(new Random(4));
        assertThat(secret).matches("[A-Z2-7]{32}").isNotEqualTo(OneTimeCodes.draw(new Random(5)));
        assertThat(Base32.read(secret)).hasSize(20);
    }

    @Test
    void theLinkNamesSiteAndLogin() {
        assertThat(OneTimeCodes.link("Tamarack Valley", "b okafor&x=1", SECRET)).isEqualTo("otpauth://totp/Tamarack%20Valley:b%20okafor%26x%3D1?secret="
                + SECRET + "&issuer=Tamarack%20Valley&algorithm=SHA1&digits=6&period=30");
    }

    @Test
    void aBrokenSecretIsNamed() {
        assertThatIllegalArgumentException().isThrownBy(() -> OneTimeCodes.accepts("ABC1", "081804", Instant.EPOCH, 0)).withMessageContaining("A to Z");
    }

    /** RFC 4648, section 10, without the padding. */
    @ParameterizedTest
    @CsvSource({"'', ''", "f, MY", "fo, MZXQ", "foo, MZXW6", "foob, MZXW6YQ", "fooba, MZXW6YTB", "foobar, MZXW6YTBOI"})
    void writesBase32AsPublished(String text, String written) {
        assertThat(Base32.write(text.getBytes(StandardCharsets.US_ASCII))).isEqualTo(written);
        assertThat(Base32.read(written)).isEqualTo(text.getBytes(StandardCharsets.US_ASCII));
        assertThat(Base32.read(" " + written.toLowerCase() + "==")).isEqualTo(text.getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void readsEveryByteBack() {
        byte[] all = new byte[256];
        for (int i = 0; i < all.length; i++) {
            all[i] = (byte) i;
        }
        assertThat(Base32.read(Base32.write(all))).isEqualTo(all);
    }
}
