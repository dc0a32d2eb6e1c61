package soapstone.page;

import java.util.List;

/**
 * A unit with its lessons, for the list of all lessons.
 *
 * @param unit    link to the unit
 * @param lessons in order
 */
public record CourseUnit(Reference unit, List<LessonLink> lessons) {

    public CourseUnit {
        lessons = List.copyOf(lessons);
    }
}
