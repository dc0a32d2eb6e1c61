package soapstone.web;

import java.time.Instant;
import java.util.regex.Pattern;
import soapstone.school.Logins;
import soapstone.school.People;
import soapstone.school.Person;
import soapstone.source.Message;

/** Somebody who is to get an account, as a form says: in the fields {@code shown} and {@code login}. */
final class FreshPerson {

    private static final Pattern LOGIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._@+-]{1,59}");

    private FreshPerson() {}

    /** Puts down what does not fit; the number of the person is 0, there is no account yet. */
    static Person read(FilledForm form, Person.Kind kind, People people, Instant now) {
        String shown = form.wanted("shown", StartRoom.LONGEST_NAME);
        String login = Logins.plain(form.wanted("login", StartRoom.LONGEST_NAME));
        if (!LOGIN.matcher(login).matches()) {
            form.fault("login", Message.of("account.login-wrong"));
        } else if (people.byLogin(login).isPresent()) {
            form.fault("login", Message.of("account.login-taken"));
        }
        return of(kind, shown, login, now);
    }

    static Person of(Person.Kind kind, String shown, String login, Instant now) {
        return new Person(0, kind, shown, login, "en", false, false, false, now);
    }
}
