package soapstone.school;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/**
 * How a session is named and when it is over.
 *
 * <p>The secret has 256 random bits, twice what ASVS 5.0, 7.2.3 asks for, in base64url (RFC 4648, section 5), and only its
 * SHA-256 is kept: whoever reads the database can sign in as nobody. It is over after 30 minutes without doing anything, 10 on
 * a tablet that the class shares, and after 12 hours in all (ASVS 7.3.1, 7.3.2; NIST SP 800-63B-4 allows an hour and a day
 * where two factors are used).
 */
public final class SessionRule {

    private static final int BYTES = 32;
    private static final int SIGNS = 43;
    private static final Duration IDLE = Duration.ofMinutes(30);
    private static final Duration IDLE_TABLET = Duration.ofMinutes(10);
    private static final Duration LONGEST = Duration.ofHours(12);
    /** WCAG 2.2, 2.2.1 asks for 20 seconds at least. */
    private static final Duration WARNING = Duration.ofMinutes(2);

    private SessionRule() {}

    /** A secret of 256 bits in 43 signs. */
    public static String token(RandomGenerator random) {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether a text has the shape of such a secret. */
    public static boolean isToken(String text) {
        return text.length() == SIGNS && text.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '-' || c == '_');
    }

    /** In the form of a token, but the same for the same text, and so no secret. */
    public static String tokenOf(String text) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(digest(text));
    }

    /** What is kept of a secret. */
    public static String hash(String token) {
        return HexFormat.of().formatHex(digest(token));
    }

    private static byte[] digest(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Compares two secrets in a time that says nothing about where they differ. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** When a session ends if nothing is done any more. */
    public static Instant ends(SignedIn session) {
        Instant idle = session.seen().plus(session.tablet() ? IDLE_TABLET : IDLE);
        Instant longest = session.begun().plus(LONGEST);
        return idle.isBefore(longest) ? idle : longest;
    }

    /** When the page says that the session ends soon, early enough to stay. */
    public static Instant warns(SignedIn session) {
        return ends(session).minus(WARNING);
    }

    /** Whether a session was left alone for too long, or is too old, or its person was disabled. */
    public static boolean isOver(SignedIn session, Instant now) {
        return session.person().disabled() || !now.isBefore(ends(session));
    }
}
