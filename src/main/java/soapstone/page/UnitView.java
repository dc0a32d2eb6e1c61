package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * A unit's page.
 *
 * @param name      its folder name
 * @param title     as in the course file
 * @param says      what it is about; may be empty
 * @param skills    titles of its skills, in order
 * @param needs     units that come before it
 * @param lessons   its lessons, in order
 * @param exercises its exercises, in order
 * @param cautions  cautions of all its exercises, each once
 * @param next      the unit after it
 */
public record UnitView(String name, String title, String says, List<String> skills, List<Reference> needs,
        List<LessonLink> lessons, List<ExerciseLink> exercises, List<Caution> cautions, Optional<Reference> next) {

    public UnitView {
        skills = List.copyOf(skills);
        needs = List.copyOf(needs);
        lessons = List.copyOf(lessons);
        exercises = List.copyOf(exercises);
        cautions = List.copyOf(cautions);
    }
}
