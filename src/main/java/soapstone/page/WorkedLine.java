package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * One line of the working.
 *
 * @param says  what the line does and why; may be empty
 * @param right the right line
 * @param yours the student's own beside it; absent on the bench and when all answers are right
 * @param flags numbers of the flags in the drawing on the same page whose sizes the line speaks of; mostly few, or none
 */
public record WorkedLine(String says, Side right, Optional<Yours> yours, List<Integer> flags) {

    public WorkedLine {
        flags = List.copyOf(flags);
    }

    /** A line that points at nothing. */
    public WorkedLine(String says, Side right, Optional<Yours> yours) {
        this(says, right, yours, List.of());
    }

    /**
     * A line in letters and in numbers: {@code spaces = holes − 1 = 9 − 1 = 8}.
     *
     * @param name    {@code spaces}
     * @param formula {@code holes − 1}; may be empty
     * @param numbers {@code 9 − 1}; empty when it would say no more than the formula or the value
     * @param value   {@code 8}, with its unit
     */
    public record Side(String name, String formula, String numbers, String value) {}

    /**
     * The student's own line.
     *
     * @param kind how it stands to the right one
     * @param side as {@link WorkedLine#right}; at {@link Kind#SAME} only the value is shown
     */
    public record Yours(Kind kind, Side side) {}

    /** How the student's own line stands to the right one. */
    public enum Kind {
        /** The same line with the same numbers. */
        SAME,
        /** The line where the answer fits another working. */
        SLIP,
        /** The right line with the student's own numbers. */
        CARRIED
    }
}
