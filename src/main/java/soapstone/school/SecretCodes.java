package soapstone.school;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Codes that work once and soon end, such as {@code K7CW-34MR-XPN9-THQ6}: read off a console or a slip and typed by hand.
 *
 * <p>16 signs out of 21, which is 70 bits. Left out are signs that are taken for each other (0 O Q would be, so Q alone
 * stays; 1 I L, 2 Z, 5 S, 8 B, U V) and vowels, so that no word comes up. ASVS 5.0, 6.4.1 asks that such a code is drawn at random,
 * ends soon and works once; {@link Codes} sees to the last.
 */
public final class SecretCodes {

    static final String SIGNS = "34679CDFGHJKMNPQRTWXY";
    private static final int GROUPS = 4;
    private static final int GROUP = 4;

    private SecretCodes() {}

    /** When a code that is made now ends; from then on it does not work. A new password is the matter of half an hour: ASVS 5.0, 6.4.3. */
    public static Instant ends(Codes.Purpose purpose, Instant made) {
        return made.plus(switch (purpose) {
            case FIRST_RUN -> Duration.ofHours(24);
            case NEW_PASSWORD -> Duration.ofMinutes(30);
            case SECOND_FACTOR -> Duration.ofMinutes(5);
        });
    }

    /** @param chance a {@link java.security.SecureRandom} in use */
    public static String draw(RandomGenerator chance) {
        return IntStream.range(0, GROUPS)
                .mapToObj(g -> chance.ints(GROUP, 0, SIGNS.length()).mapToObj(i -> SIGNS.substring(i, i + 1)).collect(Collectors.joining()))
                .collect(Collectors.joining("-"));
    }

    /**
     * What is kept in the place of a code, of however it was typed: case, gaps, hyphens and dots do not matter. Plain SHA-256,
     * so that {@link Codes} can find it; 2 to the power of 70 tries are out of reach within the life of a code.
     */
    public static String hash(String typed) {
        return SessionRule.hash(typed.replaceAll("[\\s\\p{Zs}.\\-\\u2010-\\u2015]+", "").toUpperCase(Locale.ROOT));
    }
}
