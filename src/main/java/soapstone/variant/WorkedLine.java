package soapstone.variant;

/**
 * A line of the working with its numbers put in.
 *
 * @param slot   the line
 * @param name   its name in words
 * @param say    what it does and why
 * @param sum    the right side with numbers
 * @param result the value
 */
public record WorkedLine(int slot, String name, String say, String sum, String result) {

    /** {@code name = sum = result}, or without the sum where it says no more than the result. */
    public String text() {
        return name + " = " + (sum.isEmpty() || sum.equals(result) ? result : sum + " = " + result);
    }
}
