package soapstone.page;

/**
 * Where the published examples of an exercise or a formula come from.
 *
 * @param kind how the value was obtained
 * @param text document and place; empty for our own values
 */
public record CheckSource(Kind kind, String text) {

    /** How a check's value was obtained. */
    public enum Kind {
        /** Its numbers were seen in the source. */
        SEEN,
        /** Inputs and formula were seen, the result was computed. */
        INPUTS,
        /** From memory. */
        MEMORY,
        /** Our own value, no publication. */
        OWN
    }
}
