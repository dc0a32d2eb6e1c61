package soapstone.school;

import java.net.URLEncoder;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The second factor of instructors and keepers: a code of six digits that an app shows and that changes every 30 seconds,
 * as in RFC 6238 (TOTP) over RFC 4226 (HOTP) with HMAC-SHA-1, which every app knows.
 *
 * <p>A code of the step before or after counts too, for clocks that are off (RFC 6238, 5.2). A step counts once, and none
 * before it counts after it, so that a code that was watched is of no use (ASVS 5.0, 6.5.1).
 */
public final class OneTimeCodes {

    /** The last step of somebody who has used no code yet. */
    public static final long NO_STEP = 0;

    private static final int SECRET_BYTES = 20;
    private static final int STEP_SECONDS = 30;
    private static final int DIGITS = 6;
    private static final int MODULUS = 1_000_000;
    private static final int STEPS_OFF = 1;

    private OneTimeCodes() {}

    /**
     * A new secret, in Base32, the way that apps take it: 160 bits, the length that RFC 4226, section 4, R6 recommends.
     *
     * @param chance a {@link java.security.SecureRandom} in use
     */
    public static String draw(RandomGenerator chance) {
        byte[] secret = new byte[SECRET_BYTES];
        chance.nextBytes(secret);
        return Base32.write(secret);
    }

    /**
     * What an app reads out of a square code or a link, in the form {@code otpauth://totp/Site:login?secret=…} that apps
     * have agreed on.
     *
     * @param site   the name that the app shows, such as the school's
     * @param secret in Base32
     */
    public static String link(String site, String login, String secret) {
        return "otpauth://totp/" + escaped(site) + ":" + escaped(login) + "?secret=" + secret + "&issuer=" + escaped(site) + "&algorithm=SHA1&digits="
                + DIGITS + "&period=" + STEP_SECONDS;
    }

    /**
     * The step of the code, to be kept as the last step, when the code is right and its step was not used; else nothing.
     *
     * <p>All steps are compared, and the latest counts: two of them may by chance have the same code, and it works once.
     *
     * @param secret in Base32
     * @param typed  six digits; gaps do not matter
     * @param last   the step that was used last, or {@link #NO_STEP}
     * @throws IllegalArgumentException if the secret is not Base32
     */
    public static OptionalLong accepts(String secret, String typed, Instant now, long last) {
        byte[] key = Base32.read(secret);
        byte[] code = typed.replaceAll("[\\s\\p{Zs}]", "").getBytes(StandardCharsets.UTF_8);
        long step = Math.floorDiv(now.getEpochSecond(), (long) STEP_SECONDS);
        OptionalLong found = OptionalLong.empty();
        for (long s = step - STEPS_OFF; s <= step + STEPS_OFF; s++) {
            boolean same = MessageDigest.isEqual(code(key, s).getBytes(StandardCharsets.UTF_8), code);
            if (same && s > last) {
                found = OptionalLong.of(s);
            }
        }
        return found;
    }

    /** The code of a step, RFC 4226, 5.3 and 5.4: of the HMAC, four bytes from where its last half byte says. */
    static String code(byte[] key, long step) {
        byte[] mac = mac(key, ByteBuffer.allocate(Long.BYTES).putLong(step).array());
        int from = mac[mac.length - 1] & 0xf;
        int number = ByteBuffer.wrap(mac).getInt(from) & 0x7fff_ffff;
        String digits = Integer.toString(number % MODULUS);
        return "0".repeat(DIGITS - digits.length()) + digits;
    }

    private static byte[] mac(byte[] key, byte[] text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA1");
            mac.init(new SecretKeySpec(key, "HmacSHA1"));
            return mac.doFinal(text);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC-SHA-1", e);
        }
    }

    private static String escaped(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
