package soapstone.expression;

import java.util.List;

/**
 * What the language needs of a formula of the book.
 *
 * @param name   by which it is called
 * @param takes  names and types of what it takes, in the order of a call
 * @param gives  the type of the result
 * @param lines  the working; the last line is the result
 */
public record FormulaBody(String name, List<Parameter> takes, Type gives, List<Line> lines) {

    public record Parameter(String name, Type type) {}

    /** A line inside of a formula; its offsets count in its own text. */
    public record Line(String name, Node value) {}

    /**
     * What to put in the place of a formula's lines, wherever {@code when} holds (null: always).
     */
    public record Swap(String formula, List<Line> lines, Node when) {}
}
