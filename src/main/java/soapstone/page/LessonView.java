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

    /**
     * A piece of a lesson: exactly one of these.
     *
     * @param text    prose
     * @param example a draw of an exercise, worked
     * @param formula a card of the formula book
     * @param caution a safety caution
     */
    public record Part(Optional<Html> text, Optional<Example> example, Optional<FormulaView> formula, Optional<Caution> caution) {

        public static Part of(Html text) {
            return new Part(Optional.of(text), Optional.empty(), Optional.empty(), Optional.empty());
        }

        public static Part of(Example example) {
            return new Part(Optional.empty(), Optional.of(example), Optional.empty(), Optional.empty());
        }

        public static Part of(FormulaView formula) {
            return new Part(Optional.empty(), Optional.empty(), Optional.of(formula), Optional.empty());
        }

        public static Part of(Caution caution) {
            return new Part(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(caution));
        }
    }

    /** A draw of an exercise as it is asked, and its working. */
    public record Example(SheetView sheet, List<WorkedLine> worked) {

        public Example {
            worked = List.copyOf(worked);
        }
    }

    public LessonView {
        parts = List.copyOf(parts);
        exercises = List.copyOf(exercises);
    }
}
