package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * The front page.
 *
 * @param start  the exercise that one click starts
 * @param figure its drawing, without numbers to be found out
 * @param units  all units, in teaching order
 */
public record FrontView(ExerciseLink start, Optional<Figure> figure, List<UnitSummary> units) {

    public FrontView {
        units = List.copyOf(units);
    }
}
