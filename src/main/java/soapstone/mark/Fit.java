package soapstone.mark;

import java.util.List;
import soapstone.exercise.Slip;
import soapstone.expression.Change;
import soapstone.source.Message;

/**
 * Something that would give the typed answer.
 *
 * @param name    of the slip, of both slips of a pair joined by {@code +}, or of the family for a mechanical one
 * @param families the ideas behind it: one, or two of a pair
 * @param slips   one, two, or none for a mechanical one
 * @param change  what to put into the working; {@link Change#NONE} where it cannot be put in
 * @param say     what to say of a mechanical one; null where the bank says it
 * @param carried whether it fits on the student's own earlier values
 */
public record Fit(String name, List<String> families, List<Slip> slips, Change change, Message say, boolean carried) {

    static Fit slip(Slip slip, boolean carried) {
        return new Fit(slip.name(), List.of(slip.family()), List.of(slip), slip.change(), null, carried);
    }

    static Fit pair(Slip a, Slip b, Change both) {
        List<String> families = a.family().equals(b.family()) ? List.of(a.family()) : List.of(a.family(), b.family());
        return new Fit(a.name() + "+" + b.name(), families, List.of(a, b), both, null, false);
    }

    static Fit mechanical(String family, Change change, Message say) {
        return new Fit(family, List.of(family), List.of(), change, say, false);
    }

    /** The idea behind it; of a pair, that of the first. */
    public String family() {
        return families.get(0);
    }

    /** One slip of the bank, which is all that counts in the class's figures. */
    public boolean isSingle() {
        return slips.size() == 1;
    }
}
