package soapstone.page;

/**
 * A link to another page of the site, by name: the templates know the addresses.
 *
 * @param kind  what kind of page
 * @param unit  the unit's folder name for an exercise and its bench; empty for all others
 * @param name  file name of the thing without its end ({@code bolt-holes}), formula or table name
 * @param title what the link says
 */
public record Reference(Kind kind, String unit, String name, String title) {

    /** The kinds of pages that can be linked to. */
    public enum Kind {
        UNIT, EXERCISE, LESSON, FORMULA, TABLE, FIGURE, CAUTION
    }

    public static Reference unit(String name, String title) {
        return new Reference(Kind.UNIT, "", name, title);
    }

    public static Reference exercise(String unit, String id, String title) {
        return new Reference(Kind.EXERCISE, unit, id, title);
    }

    public static Reference lesson(String id, String title) {
        return new Reference(Kind.LESSON, "", id, title);
    }

    public static Reference formula(String name, String title) {
        return new Reference(Kind.FORMULA, "", name, title);
    }

    public static Reference table(String name, String title) {
        return new Reference(Kind.TABLE, "", name, title);
    }

    /** A kind of drawing. */
    public static Reference figure(String name, String title) {
        return new Reference(Kind.FIGURE, "", name, title);
    }

    public static Reference caution(String name, String title) {
        return new Reference(Kind.CAUTION, "", name, title);
    }
}
