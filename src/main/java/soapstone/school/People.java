package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where accounts are kept. Each method is one act: it happens as a whole or not at all. */
public interface People {

    Optional<Person> find(long id);

    /** @param login in the form of {@link Logins#plain} */
    Optional<Person> byLogin(String login);

    /** Everybody of that kind, by their shown names. */
    List<Person> all(Person.Kind kind);

    /**
     * Students whose shown name or login holds a text, in small letters or in capitals; by their shown names.
     *
     * @param part an empty one is in every name
     * @param most so many come at most
     */
    Found students(String part, int most);

    /**
     * The first of those who were looked for.
     *
     * @param all how many there are
     */
    record Found(List<Person> first, int all) {

        public Found {
            first = List.copyOf(first);
        }
    }

    /** Keepers and instructors who have not set a password yet. */
    Set<Long> waiting();

    /** The encoded hash of a password, or empty while there is none. */
    Optional<String> password(long id);

    /**
     * A new account.
     *
     * @throws Taken when somebody has that login already
     */
    Person add(NewPerson fresh, Instant now);

    /**
     * Somebody who gets an account.
     *
     * @param password encoded; null for somebody who sets one with a code, and cannot sign in before
     */
    record NewPerson(Person.Kind kind, String shown, String login, String password, boolean mustChange, String language) {}

    /**
     * Sets a password and ends every session of that person but one.
     *
     * @param encoded null takes the password away: nobody signs in before a new one is set
     */
    void setPassword(long id, String encoded, boolean mustChange, String exceptToken);

    /** The secret of the second factor, or empty when there is none. */
    Optional<String> factor(long id);

    /** Turns the second factor on with a secret, or off with an empty one. */
    void setFactor(long id, String secret);

    /** Takes a step of the second factor; false when it, or a later one, was taken before. */
    boolean takeStep(long id, long step);

    /** Lets nobody sign in with that account any more, and ends its sessions; or lets them again. */
    void setDisabled(long id, boolean disabled);

    void rename(long id, String shown);

    void setLanguage(long id, String language);

    /** Whether nobody has an account that others are made with: no instructor and no keeper, not even a disabled one. */
    boolean isNobodyInCharge();

    /** Says that a login stands for somebody else. */
    final class Taken extends RuntimeException {

        private static final long serialVersionUID = 1L;

        public Taken(String login) {
            super("the login '" + login + "' is taken");
        }
    }
}
