package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * A lesson's page.
 *
 * @param id        its file name without the end
 * @param title     its heading; the body does not repeat it
 * @param unit      the unit that it belongs to
 * @param body      its text, headings from {@code h2} down
 * @param exercises what to practise now
 * @param before    the lesson before it in the course
 * @param next      the lesson after it
 */
public record LessonView(String id, String title, Reference unit, Html body, List<ExerciseLink> exercises,
        Optional<Reference> before, Optional<Reference> next) {

    public LessonView {
        exercises = List.copyOf(exercises);
    }
}
