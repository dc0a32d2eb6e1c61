package soapstone.page;

import java.util.List;

/**
 * The formulas of one topic of the formula book.
 *
 * @param title    of the topic
 * @param formulas in the book's order
 */
public record FormulaTopic(String title, List<FormulaLink> formulas) {

    /**
     * A formula as a list shows it.
     *
     * @param name   in the book
     * @param symbol such as {@code BA}; may be empty
     * @param says   what it gives
     */
    public record FormulaLink(String name, String symbol, String says) {}

    public FormulaTopic {
        formulas = List.copyOf(formulas);
    }
}
