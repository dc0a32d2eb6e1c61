package soapstone.figure;

import java.util.List;
import soapstone.quantity.UnitSystem;

/**
 * What a kind draws from.
 *
 * @param right the right part
 * @param yours the part as an answer makes it, or null
 * @param words for the drawing and its description
 * @param width of the whole sheet: one of the two layouts
 */
record Brief(Values right, Values yours, Words words, int width) {

    boolean isAsCut() {
        return yours != null;
    }

    UnitSystem system() {
        return right.system();
    }

    boolean isNarrow() {
        return width < 500;
    }

    /** The same with long texts set apart from the drawing. */
    Brief with(Tabulated apart) {
        return new Brief(right.with(apart), yours == null ? null : yours.with(apart), words, width);
    }

    Tabulated tabulated() {
        return Tabulated.of(yours == null ? List.of(right) : List.of(right, yours));
    }

    String say(String key, Object... with) {
        return words.say(key, with);
    }

    /** The label of a value of the answer's part, starting with the word that says whose it is. */
    Label yoursLabel(String name, int index) {
        Label own = yours == null ? Label.NONE : yours.label(name, index);
        return own.isEmpty() ? Label.NONE : Label.text(say("yours") + " ").then(own);
    }

    Label yoursLabel(String name) {
        return yoursLabel(name, 0);
    }

    /** Whether the answer's value is another one than the right part's. */
    boolean differs(String name) {
        if (yours == null || !yours.has(name) || !right.has(name)) {
            return false;
        }
        double[] a = right.all(name);
        double[] b = yours.all(name);
        if (a.length != b.length) {
            return true;
        }
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > 1e-9 * Math.max(1, Math.abs(a[i]))) {
                return true;
            }
        }
        return false;
    }

    /** A length that only the drawing knows, printed with its unit when the told ones are. */
    String size(double base) {
        return right.printsUnits() ? Sizes.lengthWithUnit(base, system()) : Sizes.length(base, system());
    }
}
