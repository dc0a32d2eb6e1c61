package soapstone.school;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;
import soapstone.source.Message;

/**
 * Whether a new password will do. NIST SP 800-63B-4, 3.1.1.2, and ASVS 5.0, 6.2: at least 15 signs, or 8 beside a second
 * factor; 128 are taken, all of them; no rule on which kinds of signs, no end of life; not one that is on everyone's list.
 *
 * <p>Lists of common passwords hold almost nothing of 15 signs, so that comparing with them would turn nothing away. What
 * people do to reach 15 is turned away too: {@link Guessable} has the rules. A sign is a code point of the form that is
 * hashed, {@link Passphrases#plain}.
 */
public final class Passwords {

    /** The fewest signs of a password that stands alone. */
    public static final int LEAST = 15;
    /** The fewest signs beside a second factor. */
    public static final int LEAST_WITH_FACTOR = 8;
    /** The most signs; at least 64 have to be allowed, and more than 128 nobody types. */
    public static final int MOST = 128;

    private Passwords() {}

    /**
     * Why this password is not taken, in a sentence that says what would do; nothing when it is taken.
     *
     * @param person who is to have it; the login, the shown name and a second factor are heeded
     * @param around the names of the school and of the person's classes
     */
    public static Optional<Message> refusal(String typed, Person person, Collection<String> around) {
        String password = Passphrases.plain(typed);
        int signs = password.codePointCount(0, password.length());
        int least = person.twoFactor() ? LEAST_WITH_FACTOR : LEAST;
        if (signs < least) {
            return Optional.of(Message.of("school.password-short", Integer.toString(least), Integer.toString(signs)));
        }
        if (signs > MOST) {
            return Optional.of(Message.of("school.password-long", Integer.toString(MOST), Integer.toString(signs)));
        }
        if (!password.codePoints().allMatch(Passwords::canBeKept)) {
            return Optional.of(Message.of("school.password-sign"));
        }
        return Guessable.how(password, Stream.concat(Stream.of(person.login(), person.shown()), around.stream()).toList());
    }

    /**
     * RFC 8264, 4.3 lets in all but control signs, halves of signs, and code points that mean nothing yet, whose normal form
     * a later Unicode may change.
     */
    private static boolean canBeKept(int sign) {
        int type = Character.getType(sign);
        return type != Character.CONTROL && type != Character.SURROGATE && type != Character.UNASSIGNED;
    }
}
