package soapstone.school;

import java.time.Instant;

/**
 * Somebody with an account.
 *
 * @param shown      the name that others see: of a student a nickname, or "Seat 7"
 * @param login      what is typed to sign in, already in the form of {@link Logins#plain}
 * @param language   of the pages, such as {@code en}
 * @param disabled   cannot sign in
 * @param mustChange has a password from a slip, to be replaced at the first sign-in
 * @param twoFactor  signs in with a time-based code as well
 */
public record Person(long id, Kind kind, String shown, String login, String language, boolean disabled, boolean mustChange, boolean twoFactor,
        Instant created) {

    /** What somebody may do. */
    public enum Kind {
        /** Accounts and backups, no answers. */
        KEEPER,
        /** Own classes, everything in them. */
        INSTRUCTOR,
        /** Own sheets, own marks. */
        STUDENT
    }

    public boolean isKeeper() {
        return kind == Kind.KEEPER;
    }

    public boolean isInstructor() {
        return kind == Kind.INSTRUCTOR;
    }

    public boolean isStudent() {
        return kind == Kind.STUDENT;
    }
}
