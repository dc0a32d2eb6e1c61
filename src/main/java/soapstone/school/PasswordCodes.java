package soapstone.school;

import java.time.Instant;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** Codes with which somebody sets a new password. Each is shown once: only its hash is kept. */
public final class PasswordCodes {

    private PasswordCodes() {}

    /** The code itself. */
    public static String make(School school, Person person, Instant now, RandomGenerator random) {
        String code = SecretCodes.draw(random);
        school.codes().make(SecretCodes.hash(code), Codes.Purpose.NEW_PASSWORD, Optional.of(person.id()), SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, now));
        return code;
    }

    /**
     * Everything that somebody signs in with begins anew: the old password and the second factor are gone, sessions end,
     * and a login that was closed after too many tries is open. Not for students: their passphrases come from the class's
     * instructor.
     *
     * @param by     empty where it is done at the console
     * @param detail for the audit
     */
    public static String anew(School school, Person person, Optional<Long> by, String detail, Instant now, RandomGenerator random) {
        school.people().setPassword(person.id(), null, false, "");
        school.people().setFactor(person.id(), "");
        school.throttles().resetAll(Throttle.pairsOf(person.login()));
        school.throttles().reset(Throttle.LOGIN.subject(person.login()));
        school.audit().note(new Audit.Entry(now, by, "account.code", Optional.of(person.id()), Optional.empty(), detail, false));
        return make(school, person, now, random);
    }
}
