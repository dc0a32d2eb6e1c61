package soapstone.school;

import java.time.Instant;
import java.util.Comparator;

/**
 * A student's place in a class.
 *
 * @param seat      a number or a few signs; may be empty
 * @param extraTime in per cent of the time that others have
 * @param since     when the state was reached
 */
public record Member(long schoolClass, Person person, String seat, State state, int extraTime, Instant since) {

    private static final int WIDEST = 20;

    /** By seat, numbers as numbers; those without a seat by name after them; those who left come last. */
    public static final Comparator<Member> BY_SEAT = Comparator.comparing((Member m) -> m.state() == State.LEFT).thenComparing(m -> m.seat().isEmpty())
            .thenComparing(m -> seatKey(m.seat())).thenComparing(m -> m.person().shown(), String.CASE_INSENSITIVE_ORDER).thenComparing(m -> m.person().id());

    private static String seatKey(String seat) {
        boolean number = !seat.isEmpty() && seat.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? "0".repeat(Math.max(0, WIDEST - seat.length())) + seat : seat;
    }

    /** How far somebody is a member. */
    public enum State {
        /** Has typed the class's code and waits for the instructor. */
        ASKED,
        IN,
        /** Out of the class; what was handed in stays. */
        LEFT
    }
}
