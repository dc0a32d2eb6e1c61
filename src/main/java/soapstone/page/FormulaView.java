package soapstone.page;

import java.util.List;

/**
 * A formula's card.
 *
 * @param name     in the book, such as {@code bend_allowance}
 * @param says     what it gives
 * @param symbol   such as {@code BA}; may be empty
 * @param takes    its inputs, in order
 * @param gives    dimension of the result, in words
 * @param lines    the expression, or the lines of its working, the last of them the result
 * @param limits   where it holds
 * @param source   where it is published, or that it is common practice
 * @param cautions shown above everything else
 * @param slips    what goes wrong with it
 * @param checks   published examples with their outcome
 * @param usedIn   exercises that call it
 * @param tables   tables that it looks into
 */
public record FormulaView(String name, String says, String symbol, List<Takes> takes, String gives, List<Line> lines,
        List<String> limits, String source, List<Caution> cautions, List<Slip> slips, List<CheckRow> checks,
        List<ExerciseLink> usedIn, List<Reference> tables) {

    /**
     * An input.
     *
     * @param name      in the expression
     * @param dimension in words
     */
    public record Takes(String name, String dimension) {}

    /**
     * One line.
     *
     * @param name       what it gives a name to; empty for a formula of one expression
     * @param expression as written
     * @param says       may be empty
     */
    public record Line(String name, String expression, String says) {}

    /**
     * A slip in plain words.
     *
     * @param title  of the slip's family
     * @param swaps  the line as the slip has it
     * @param says   text without numbers, may be empty
     * @param remedy lesson of the family, null-free: empty list or one
     */
    public record Slip(String title, String swaps, String says, List<Reference> remedy) {

        public Slip {
            remedy = List.copyOf(remedy);
        }
    }

    public FormulaView {
        takes = List.copyOf(takes);
        lines = List.copyOf(lines);
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
        slips = List.copyOf(slips);
        checks = List.copyOf(checks);
        usedIn = List.copyOf(usedIn);
        tables = List.copyOf(tables);
    }
}
