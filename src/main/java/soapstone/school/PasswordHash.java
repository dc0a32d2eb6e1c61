package soapstone.school;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;

/** Argon2id with 19 MiB, two passes and one lane. */
public final class PasswordHash {

    private static final Argon2Function ARGON = Argon2Function.getInstance(19 * 1024, 2, 1, 32, Argon2.ID);
    private static final String NOBODY = hash("nobody has this password");

    private PasswordHash() {}

    public static String hash(String password) {
        return Password.hash(password).addRandomSalt(16).with(ARGON).getResult();
    }

    public static boolean fits(String password, String encoded) {
        return Password.check(password, encoded).with(Argon2Function.getInstanceFromHash(encoded));
    }

    /** Takes as long as a comparison for somebody: so nobody learns which accounts there are. */
    public static boolean fitsNobody(String password) {
        return fits(password, NOBODY) && false;
    }
}
