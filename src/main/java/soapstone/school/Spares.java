package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where spare sheets are kept until they are somebody's. */
public interface Spares {

    /** Those of an assignment, in the order in which they were made. */
    List<Spare> all(long assignment);

    Optional<Spare> byNumber(String number);

    /**
     * Keeps a new one.
     *
     * @throws IllegalStateException when the number is given already, here or to a sheet
     */
    Spare add(long assignment, String number, List<Sheets.Dealt> problems, Instant now);

    /**
     * Makes it a student's sheet, with its number and problems. A student who has a sheet of the assignment keeps that one, which then
     * comes back, and the spare stays one. Empty when there is no such spare any more.
     */
    Optional<Sheet> claim(long spare, long person, Instant now);
}
