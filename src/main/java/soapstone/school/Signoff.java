package soapstone.school;

import java.time.Instant;

/**
 * One entry in a student's competency record. None is ever changed or taken out: a withdrawal is a further entry.
 *
 * @param conditions of a signature: under which the work was done; of a withdrawal: the reason
 * @param evidence   what the records said at that moment, in lines
 * @param by         who signed
 * @param byName     as that person was called then
 */
public record Signoff(long id, long person, long schoolClass, TradeCode code, Act act, String conditions, String evidence, long by, String byName, Instant at) {

    /** What the entry says. */
    public enum Act { SIGNED, WITHDRAWN }
}
