package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * A new class, or the settings of one.
 *
 * @param languages that pages can be had in
 * @param shop      fields for the conventions of the shop
 * @param kept      empty for a new class
 */
public record ClassSettingsView(FormView settings, List<String> languages, List<Field> shop, Optional<Kept> kept) {

    /**
     * A field for a convention.
     *
     * @param range       it may be set to, in US units
     * @param metricRange the same in a metric shop
     * @param usual       what most shops take, in US units
     * @param metricUsual the same in a metric shop
     * @param picks       what it may be set to where these are only some amounts; else empty
     */
    public record Field(String name, String title, String says, String range, String metricRange, String usual, String metricUsual, List<String> picks) {

        public Field {
            picks = List.copyOf(picks);
        }
    }

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
        shop = List.copyOf(shop);
    }
}
