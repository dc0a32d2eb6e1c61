package soapstone.school;

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
 */
public record ClassSettings(UnitSystem units, String language, char decimalMark, boolean carriedEarns, boolean coarseEarns, double nearEarns,
        boolean bareAllowed, String conventions) {

    /** What a new class starts with. */
    public static final ClassSettings USUAL = new ClassSettings(UnitSystem.US, "en", '.', true, true, 0, true, "");

    public ClassSettings {
        if (decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("a decimal mark is a point or a comma, not '" + decimalMark + "'");
        }
        if (!(nearEarns >= 0 && nearEarns <= 1)) {
            throw new IllegalArgumentException("a near answer earns a share from 0 to 1, not " + nearEarns);
        }
    }
}
