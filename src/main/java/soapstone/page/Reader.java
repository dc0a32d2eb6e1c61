package soapstone.page;

import java.util.Optional;

/**
 * Who reads a page, and in which language.
 *
 * @param school whether the site keeps a school, so that one can sign in
 * @param signed who is signed in; empty for a guest
 */
public record Reader(Words words, boolean school, Optional<Signed> signed) {

    /**
     * Somebody who is signed in.
     *
     * @param shown   the name that others see
     * @param kind    {@code keeper}, {@code instructor} or {@code student}
     * @param formKey goes into every form that changes something
     * @param warns   in so many seconds the page says that it will soon sign out
     * @param ends    in so many seconds it does
     * @param tablet  several people use the machine: afterwards nothing of the page may be seen
     */
    public record Signed(String shown, String kind, String formKey, long warns, long ends, boolean tablet) {}

    /** A guest of a site without a school. */
    public static Reader guest(Words words) {
        return new Reader(words, false, Optional.empty());
    }
}
