package soapstone.exercise;

import java.util.List;
import soapstone.expression.Change;
import soapstone.expression.FormulaBody;
import soapstone.expression.Frame;
import soapstone.expression.Node;
import soapstone.expression.Value;

/**
 * A named mistake: the working with something else put in.
 *
 * @param change  what is put in
 * @param when    it makes sense where one of these holds; empty: always
 * @param say     what to say about it
 * @param formula the formula that brought it along, or empty for one of the exercise's own
 * @param swap    what the formula is swapped for; null when lines are swapped
 * @param lines   how the swapped lines are written, for the page
 */
public record Slip(String name, String family, Change change, List<Value> when, Template say, String formula, FormulaBody.Swap swap, List<Swapped> lines) {

    /** A line as the slip writes it; bare: every name stands for its plain number. */
    public record Swapped(int slot, Node value, boolean bare) {}

    /** Whether the slip makes sense with the values of a right run. */
    public boolean makesSense(Frame right) {
        if (when.isEmpty()) {
            return true;
        }
        for (Value v : when) {
            if (v.holds(right)) {
                return true;
            }
        }
        return false;
    }
}
