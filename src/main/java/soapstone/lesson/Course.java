package soapstone.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The whole course, read and checked against its bank.
 *
 * @param units   in teaching order
 * @param lessons by id
 */
public record Course(List<CourseUnit> units, Map<String, Lesson> lessons) {

    public Optional<Lesson> lesson(String id) {
        return Optional.ofNullable(lessons.get(id));
    }

    public Optional<CourseUnit> unit(String folder) {
        return units.stream().filter(u -> u.folder().equals(folder)).findFirst();
    }

    /** The title of a skill, or its name in words. */
    public String skillTitle(String name) {
        return units.stream().flatMap(u -> u.skills().stream()).filter(s -> s.name().equals(name)).findFirst()
                .map(Skill::title).orElse(name.replace('-', ' '));
    }

    /** The unit in which a lesson is taught. */
    public Optional<CourseUnit> unitOf(String lesson) {
        return units.stream().filter(u -> u.lessons().contains(lesson)).findFirst();
    }

    /** All lessons in teaching order. */
    public List<Lesson> inOrder() {
        return units.stream().flatMap(u -> u.lessons().stream()).map(lessons::get).filter(java.util.Objects::nonNull).toList();
    }
}
