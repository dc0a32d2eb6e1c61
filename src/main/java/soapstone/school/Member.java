package soapstone.school;

import java.time.Instant;

/**
 * A student's place in a class.
 *
 * @param seat      a number or a few signs; may be empty
 * @param extraTime in per cent of the time that others have
 * @param since     when the state was reached
 */
public record Member(long schoolClass, Person person, String seat, State state, int extraTime, Instant since) {

    /** How far somebody is a member. */
    public enum State {
        /** Has typed the class's code and waits for the instructor. */
        ASKED,
        IN,
        /** Out of the class; what was handed in stays. */
        LEFT
    }
}
