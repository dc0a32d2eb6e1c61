package soapstone.school;

import java.time.Instant;
import java.time.MonthDay;

/** Where it is kept how long records are kept, and who does the day's work. */
public interface Retentions {

    /**
     * What the keeper decided.
     *
     * @param yearEnds the last day of a school year
     * @param byItself whether those whose time is over are erased each day without anybody's hand
     */
    record Rule(MonthDay yearEnds, boolean byItself) {

        /** As long as nobody has decided anything. */
        public static final Rule USUAL = new Rule(MonthDay.of(7, 31), false);
    }

    Rule rule();

    /** Writes the rule. Nothing is done by itself before {@code first}. */
    void write(Rule rule, Instant first);

    /**
     * Takes the day's work, if it is to be done by itself and is due. Of several programs on one database one gets it.
     *
     * @param next when it is due again
     */
    boolean take(Instant now, Instant next);
}
