package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * The map of mistakes of a class.
 *
 * @param assignment  that is looked at; absent on the page of the class
 * @param skills      to choose from
 * @param skill       that is looked at; empty for the whole term
 * @param students    who answered anything
 * @param unexplained wrong answers that nothing explains
 */
public record MistakesView(ClassHead head, Optional<AssignmentHead> assignment, List<Skill> skills, String skill, int students, List<Mistake> families,
        List<Mistake> slips, List<Answer> unexplained) {

    public record Skill(String name, String title) {}

    /**
     * One mistake.
     *
     * @param exercise of a slip; empty for a family
     * @param says     how many, and no more than is known
     * @param against  the odds against chance
     * @param lesson   that undoes it
     */
    public record Mistake(String title, String about, String exercise, Message says, Message against, List<Student> students,
            Optional<Reference> lesson) {

        public Mistake {
            students = List.copyOf(students);
        }
    }

    /** Who made it, and what was typed. */
    public record Student(long person, String name, List<Answer> answers) {

        public Student {
            answers = List.copyOf(answers);
        }
    }

    /** One answer as it was typed. */
    public record Answer(long person, String name, long assignment, String exercise, String letter, String typed, String readAs) {}

    public MistakesView {
        skills = List.copyOf(skills);
        families = List.copyOf(families);
        slips = List.copyOf(slips);
        unexplained = List.copyOf(unexplained);
    }
}
