package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * A new class, or the settings of one.
 *
 * @param languages that pages can be had in
 * @param kept      empty for a new class
 */
public record ClassSettingsView(FormView settings, List<String> languages, Optional<Kept> kept) {

    /**
     * What only a class that is there has.
     *
     * @param instructors who teach it
     * @param another     the form that adds one
     * @param copy        the form that copies it to the next term
     */
    public record Kept(long id, String name, boolean archived, String code, List<Named> instructors, FormView another, FormView copy) {

        public Kept {
            instructors = List.copyOf(instructors);
        }
    }

    /** Somebody by name and login. */
    public record Named(long id, String shown, String login) {}

    public ClassSettingsView {
        languages = List.copyOf(languages);
    }
}
