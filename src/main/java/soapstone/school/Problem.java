package soapstone.school;

import soapstone.quantity.UnitSystem;

/**
 * One exercise with one draw of numbers on a sheet.
 *
 * @param place       on the sheet, from 1
 * @param round       1, and one more for each time that the student took other numbers
 * @param fingerprint of the exercise when it was dealt
 * @param points      for all its asks together
 */
public record Problem(long id, long sheet, long task, int place, int round, String exercise, long seed, UnitSystem units, String fingerprint,
        double points) {}
