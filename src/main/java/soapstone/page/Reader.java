package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * Who reads a page, and in which language.
 *
 * @param school whether the site keeps a school, so that one can sign in
 * @param signed who is signed in; empty for a guest
 * @param place  where a guest reads; somebody who is signed in has a language without it
 */
public record Reader(Words words, boolean school, Optional<Signed> signed, Place place) {

    /** No language in the address, and none to go over to. */
    public static final Place ANYWHERE = new Place("", "/", List.of());

    /**
     * How an address keeps the language that a guest chose, since nothing else of a guest is kept.
     *
     * @param base   what every address of the page begins with: {@code /es}, or nothing where the browser's language holds
     * @param here   address of the page behind that
     * @param others the languages that the page can be had in besides this one
     */
    public record Place(String base, String here, List<String> others) {

        public Place {
            others = List.copyOf(others);
        }

        Place at(String address) {
            return new Place(base, address, others);
        }
    }

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
        return new Reader(words, false, Optional.empty(), ANYWHERE);
    }

    /** The same on the page with that address. */
    Reader at(String address) {
        return new Reader(words, school, signed, place.at(address));
    }
}
