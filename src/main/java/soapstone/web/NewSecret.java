package soapstone.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.school.Passwords;
import soapstone.school.Person;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.source.Message;

/** A new password as it is typed twice on a form, in the fields {@code fresh} and {@code again}. */
final class NewSecret {

    static final String FRESH = "fresh";
    static final String AGAIN = "again";

    private NewSecret() {}

    /**
     * Puts down what does not fit.
     *
     * @param around names that a password is not made of, besides the person's own
     * @return the password as typed
     */
    static String take(FilledForm form, Fields fields, Person person, List<String> around) {
        String fresh = fields.text(FRESH);
        Optional<Message> refusal = Passwords.refusal(fresh, person, around);
        refusal.ifPresent(says -> form.fault(FRESH, says));
        if (refusal.isEmpty() && !fresh.equals(fields.text(AGAIN))) {
            form.fault(AGAIN, Message.of("account.not-same"));
        }
        return fresh;
    }

    /** The names of the school and of the person's classes. */
    static List<String> around(School school, Person person) {
        List<String> names = new ArrayList<>();
        school.charters().find().ifPresent(c -> names.add(c.name()));
        List<SchoolClass> classes = person.isStudent() ? school.classes().of(person.id()) : school.classes().taughtBy(person.id());
        classes.forEach(c -> names.add(c.name()));
        return names;
    }
}
