package soapstone.page;

import java.util.List;

/**
 * The front page.
 *
 * @param start the exercise that one click starts
 * @param units all units, in teaching order
 */
public record FrontView(ExerciseLink start, List<UnitSummary> units) {

    public FrontView {
        units = List.copyOf(units);
    }
}
