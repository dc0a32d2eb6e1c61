package soapstone.school;

import java.time.Instant;
import java.util.List;

/**
 * A printed sheet that nobody has yet.
 *
 * @param number   as a sheet's
 * @param problems in order
 */
public record Spare(long id, long assignment, String number, Instant made, List<Sheets.Dealt> problems) {

    public Spare {
        problems = List.copyOf(problems);
    }
}
