package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * A lesson's page.
 *
 * @param id        its file name without the end
 * @param title     its heading; the parts do not repeat it
 * @param unit      the unit that it belongs to
 * @param minutes   how long it takes to teach
 * @param parts     its text and live parts, in order; headings from {@code h2} down
 * @param exercises what to practise now
 * @param before    the lesson before it in the course
 * @param next      the lesson after it
 */
public record LessonView(String id, String title, Reference unit, int minutes, List<Part> parts, List<ExerciseLink> exercises,
        Optional<Reference> before, Optional<Reference> next) {

    /** A piece of a lesson; a template tells which by the component that is there. */
    public sealed interface Part {}

    /** Text. */
    public record Prose(Html text) implements Part {}

    /** A draw of an exercise, worked. */
    public record Example(SheetView sheet, List<WorkedLine> worked) implements Part {

        public Example {
            worked = List.copyOf(worked);
        }
    }

    /** A formula of the book. */
    public record FormulaCard(FormulaView formula) implements Part {}

    /** A safety caution. */
    public record CautionCard(Caution caution) implements Part {}

    public LessonView {
        parts = List.copyOf(parts);
        exercises = List.copyOf(exercises);
    }
}
