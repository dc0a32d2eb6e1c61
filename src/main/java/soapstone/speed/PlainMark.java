package soapstone.speed;

/**
 * What written-out Java says of an answer.
 *
 * @param tier the tier that decided, as in {@link PlainVerdict}
 * @param fits what fitted there: for single slips a bit each
 */
public record PlainMark(int tier, long fits) {}
