package soapstone.school;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.random.RandomGenerator;

/** How a session is named and when it is over. */
public final class SessionRule {

    private static final int BYTES = 32;
    private static final int SIGNS = 43;
    private static final Duration IDLE = Duration.ofMinutes(30);
    private static final Duration IDLE_TABLET = Duration.ofMinutes(10);
    private static final Duration LONGEST = Duration.ofHours(12);

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

    /** What is kept of a secret. */
    public static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Compares two secrets in a time that says nothing about where they differ. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** Whether a session was left alone for too long, or is too old. */
    public static boolean isOver(SignedIn session, Instant now) {
        Duration idle = session.tablet() ? IDLE_TABLET : IDLE;
        return now.isAfter(session.seen().plus(idle)) || now.isAfter(session.begun().plus(LONGEST));
    }
}
