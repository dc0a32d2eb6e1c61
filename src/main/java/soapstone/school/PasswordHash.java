package soapstone.school;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;

/**
 * Passwords as they are kept: Argon2id (RFC 9106) with 19 MiB, two passes, one lane, the least that the OWASP Password
 * Storage Cheat Sheet names, which a small machine can bear when a class signs in. Salt of 128 bits, hash of 256. The
 * encoded text carries its parameters, {@code $argon2id$v=19$m=19456,t=2,p=1$salt$hash}, so that they can grow later.
 *
 * <p>Whatever is hashed or compared goes through {@link Passphrases#plain} here and nowhere else. The hashing is done by
 * password4j, in Java.
 */
public final class PasswordHash {

    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int HASH_BYTES = 32;
    private static final int SALT_BYTES = 16;
    private static final Argon2Function ARGON = Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, HASH_BYTES, Argon2.ID, Argon2Function.ARGON2_VERSION_13);
    private static final String USUAL = "$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=" + LANES + "$";
    /** A hash of zeros: no password is known that gives it, nor will be found. */
    private static final String NOBODY = USUAL + "A".repeat(22) + "$" + "A".repeat(43);

    /** No seed makes a salt again: nothing that is shown or marked comes of it. */
    private static final SecureRandom SALTS = new SecureRandom();

    private PasswordHash() {}

    /** The encoded text of a password, with a salt of its own. */
    public static String hash(String typed) {
        byte[] salt = new byte[SALT_BYTES];
        SALTS.nextBytes(salt);
        return ARGON.hash(bytes(typed), salt).getResult();
    }

    /**
     * Whether the typed password is the one that was hashed.
     *
     * @throws IllegalArgumentException if the encoded text is not one of Argon2id
     */
    public static boolean fits(String typed, String encoded) {
        if (!encoded.startsWith("$argon2id$")) {
            throw new IllegalArgumentException("a kept password begins with $argon2id$, this one does not");
        }
        return Argon2Function.getInstanceFromHash(encoded).check(bytes(typed), encoded.getBytes(StandardCharsets.US_ASCII));
    }

    /**
     * Never fits, and takes the work of one that does: asked when there is no such account, or one without a password,
     * so that the time of an answer does not tell which logins there are (ASVS 5.0, 6.3.8).
     */
    public static boolean fitsNobody(String typed) {
        return fits(typed, NOBODY);
    }

    /** Whether it was hashed with other parameters than today's; then it is hashed anew at the next right sign-in. */
    public static boolean isDated(String encoded) {
        return !encoded.startsWith(USUAL);
    }

    private static byte[] bytes(String typed) {
        return Passphrases.plain(typed).getBytes(StandardCharsets.UTF_8);
    }
}
