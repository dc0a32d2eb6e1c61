package soapstone.exercise;

/**
 * A line of the working, or of what comes after the answer.
 *
 * @param slot  where its value stands; what it says is in the program
 * @param say   what it does and why
 * @param phase where in the exercise it stands
 */
public record Line(int slot, Template say, Phase phase) {

    /** Constants and derived givens come before the working; lines for consequence and drawing after it. */
    public enum Phase { CONSTANT, GIVEN, WORKING, AFTER }
}
