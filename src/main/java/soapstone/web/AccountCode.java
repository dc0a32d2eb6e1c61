package soapstone.web;

import java.time.Instant;
import java.util.Optional;
import java.util.random.RandomGenerator;
import soapstone.page.AccountCodeView;
import soapstone.school.Codes;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SecretCodes;

/** Makes codes with which somebody sets a new password. */
final class AccountCode {

    private AccountCode() {}

    /** The code itself, to be shown once: only its hash is kept. */
    static String make(School school, Person person, Instant now, RandomGenerator random) {
        String code = SecretCodes.draw(random);
        school.codes().make(SecretCodes.hash(code), Codes.Purpose.NEW_PASSWORD, Optional.of(person.id()), SecretCodes.ends(Codes.Purpose.NEW_PASSWORD, now));
        return code;
    }

    /** The page that shows one, and where it is taken. */
    static AccountCodeView shown(SchoolOffice office, Visit v, Person person, RandomGenerator random, String back) {
        String where = (office.secure() ? "https://" : "http://") + v.caller().site() + StartRoom.PASSWORD;
        return new AccountCodeView(person.shown(), person.login(), make(office.school().get(), person, office.clock().instant(), random), where, back);
    }
}
