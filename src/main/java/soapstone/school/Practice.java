package soapstone.school;

import java.time.Instant;
import java.util.List;
import soapstone.quantity.UnitSystem;

/**
 * A sheet that a student worked as a guest, and kept. The formula book was open and the marks are shown at once, so that it
 * proves nothing; it has no points and no place in a gradebook.
 *
 * @param fingerprint of the exercise that it was marked with
 * @param program     version of the program that marked it
 * @param marks       one for each ask, in order, without points
 */
public record Practice(long person, Instant at, String exercise, long seed, UnitSystem units, String fingerprint, String program, List<AnswerMark> marks) {

    /** Points that all of it together is marked with; they are not kept. */
    public static final double POINTS = 1;

    public Practice {
        marks = List.copyOf(marks);
    }

    /** The same for the same answers to the same numbers, and for nobody else. */
    public String receipt() {
        StringBuilder all = new StringBuilder(person + " " + exercise + " " + seed + " " + units + " " + fingerprint);
        marks.forEach(m -> all.append('\n').append(m.letter()).append(' ').append(m.typed().length()).append(' ').append(m.typed()));
        return SessionRule.hash(all.toString());
    }

    /** How many answers are right. */
    public int right() {
        return (int) marks.stream().filter(m -> m.verdict().isRight()).count();
    }
}
