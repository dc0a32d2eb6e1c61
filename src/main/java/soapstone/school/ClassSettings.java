package soapstone.school;

import soapstone.exercise.Conventions;
import soapstone.quantity.UnitSystem;

/**
 * How a class works.
 *
 * @param units        of its sheets
 * @param language     of its pages for students, such as {@code en}
 * @param decimalMark  point or comma in typed answers
 * @param carriedEarns a later answer that is right with the student's own earlier one earns its points
 * @param coarseEarns  an answer with a coarser constant, such as 3.14, earns its points
 * @param nearEarns    the share of the points that a near answer earns, 0 to 1
 * @param bareAllowed  a number without a unit is taken in the unit beside the box; else it is asked again
 * @param conventions  this shop's conventions in the instructor's words, shown on each sheet
 * @param shop         what is set of the bank's conventions: sheets that are dealt from now on have these numbers
 */
public record ClassSettings(UnitSystem units, String language, char decimalMark, boolean carriedEarns, boolean coarseEarns, double nearEarns,
        boolean bareAllowed, String conventions, Conventions shop) {

    /** What a new class starts with. */
    public static final ClassSettings USUAL = new ClassSettings(UnitSystem.US, "en", '.', true, true, 0, true, "");

    /** Without any convention set. */
    public ClassSettings(UnitSystem units, String language, char decimalMark, boolean carriedEarns, boolean coarseEarns, double nearEarns,
            boolean bareAllowed, String conventions) {
        this(units, language, decimalMark, carriedEarns, coarseEarns, nearEarns, bareAllowed, conventions, Conventions.NONE);
    }

    /** The same with other conventions set. */
    public ClassSettings with(Conventions set) {
        return new ClassSettings(units, language, decimalMark, carriedEarns, coarseEarns, nearEarns, bareAllowed, conventions, set);
    }

    public ClassSettings {
        if (decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("a decimal mark is a point or a comma, not '" + decimalMark + "'");
        }
        if (!(nearEarns >= 0 && nearEarns <= 1)) {
            throw new IllegalArgumentException("a near answer earns a share from 0 to 1, not " + nearEarns);
        }
    }
}
