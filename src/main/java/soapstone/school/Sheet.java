package soapstone.school;

import java.time.Instant;
import java.util.List;

/**
 * What one student gets for one assignment.
 *
 * @param number   printed on it, typed in from paper: short, never given twice in a school
 * @param problems in order; of a problem that was drawn again, only the newest
 */
public record Sheet(long id, long assignment, long person, String number, Instant made, List<Problem> problems) {

    public Sheet {
        problems = List.copyOf(problems);
    }
}
