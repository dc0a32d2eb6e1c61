package soapstone.school;

import java.util.Optional;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * One exercise with one draw of numbers on a sheet.
 *
 * @param place       on the sheet, from 1
 * @param round       1, and one more for each time that the student took other numbers
 * @param fingerprint of the exercise when it was dealt
 * @param points      for all its asks together
 * @param conventions that were set when it was dealt, of those that the exercise follows
 */
public record Problem(long id, long sheet, long task, int place, int round, String exercise, long seed, UnitSystem units, String fingerprint,
        double points, Conventions conventions) {

    /** Dealt without any convention set. */
    public Problem(long id, long sheet, long task, int place, int round, String exercise, long seed, UnitSystem units, String fingerprint, double points) {
        this(id, sheet, task, place, round, exercise, seed, units, fingerprint, points, Conventions.NONE);
    }

    /** The numbers that it was dealt with, out of the exercise that it was dealt from. */
    public Optional<Variant> drawn(Exercise dealt) {
        return Drawer.draw(dealt, units, conventions, seed);
    }
}
