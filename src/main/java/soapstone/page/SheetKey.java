package soapstone.page;

import soapstone.quantity.UnitSystem;

/**
 * What brings the same numbers back.
 *
 * @param seed        the number of the draw, from 1; people know it as the sheet number
 * @param units       in which system it was drawn
 * @param fingerprint short mark of all that the exercise reaches in the bank; empty when a link does not say it
 */
public record SheetKey(long seed, UnitSystem units, String fingerprint) {}
