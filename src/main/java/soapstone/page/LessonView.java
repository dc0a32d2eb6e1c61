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
 * @param exercises what to practise now, where none of the parts names it
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
     * @param practice links to exercises, at least one
     */
    public record Part(Optional<Html> text, Optional<Example> example, Optional<FormulaView> formula, Optional<Caution> caution,
            List<ExerciseLink> practice) {

        public Part {
            practice = List.copyOf(practice);
        }

        public static Part of(Html text) {
            return new Part(Optional.of(text), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        }

        public static Part of(Example example) {
            return new Part(Optional.empty(), Optional.of(example), Optional.empty(), Optional.empty(), List.of());
        }

        public static Part of(FormulaView formula) {
            return new Part(Optional.empty(), Optional.empty(), Optional.of(formula), Optional.empty(), List.of());
        }

        public static Part of(Caution caution) {
            return new Part(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(caution), List.of());
        }

        public static Part of(List<ExerciseLink> practice) {
            return new Part(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), practice);
        }
    }

    /** A draw of an exercise as it is asked, the drawing with its numbers told, and its working. */
    public record Example(SheetView sheet, Optional<Figure> told, List<WorkedLine> worked) {

        public Example {
            worked = List.copyOf(worked);
        }
    }

    public LessonView {
        parts = List.copyOf(parts);
        exercises = List.copyOf(exercises);
    }
}
