package soapstone.page;

/**
 * A published example and what our own working gives for it.
 *
 * @param given    inputs, as text
 * @param printed  the result as published
 * @param within   tolerance of the print
 * @param computed what our lines give
 * @param outcome  whether they agree
 * @param source   where it is published
 * @param note     may be empty
 */
public record CheckRow(String given, String printed, String within, String computed, Outcome outcome,
        CheckSource source, String note) {

    /** Whether print and working agree. */
    public enum Outcome {
        AGREES, DIFFERS,
        /** The print is known to be wrong, and the working indeed differs from it. */
        MISPRINT
    }
}
