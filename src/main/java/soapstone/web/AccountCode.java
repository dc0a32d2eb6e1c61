package soapstone.web;

import java.util.random.RandomGenerator;
import soapstone.page.AccountCodeView;
import soapstone.school.PasswordCodes;
import soapstone.school.Person;

/** The page that shows a code for a new password, and where it is taken. */
final class AccountCode {

    private AccountCode() {}

    static AccountCodeView shown(SchoolOffice office, Visit v, Person person, RandomGenerator random, String back) {
        return shown(office, v, person, PasswordCodes.make(office.school().get(), person, office.clock().instant(), random), back);
    }

    static AccountCodeView shown(SchoolOffice office, Visit v, Person person, String code, String back) {
        String where = (office.secure() ? "https://" : "http://") + v.caller().site() + StartRoom.PASSWORD;
        return new AccountCodeView(person.shown(), person.login(), code, where, back);
    }
}
