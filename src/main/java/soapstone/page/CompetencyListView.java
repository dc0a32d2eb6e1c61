package soapstone.page;

import java.util.List;

/**
 * The list of what may be signed off in a class, to be changed.
 *
 * @param frames that come with the program
 * @param own    of the class
 * @param skills of the course, for a new one
 * @param form   of a new one
 */
public record CompetencyListView(ClassHead in, List<Frame> frames, List<Own> own, List<Skill> skills, FormView form) {

    public CompetencyListView {
        frames = List.copyOf(frames);
        own = List.copyOf(own);
        skills = List.copyOf(skills);
    }

    /** A trade frame in one edition. */
    public record Frame(String name, String owner, String edition, int taken, List<Code> codes) {

        public Frame {
            codes = List.copyOf(codes);
        }
    }

    /**
     * One of its codes.
     *
     * @param field  of the form
     * @param trains titles of the skills that train it
     * @param memory whether it is from memory, so that it has to be looked up
     * @param taken  whether it is on the class's list
     */
    public record Code(String field, String code, String title, String trains, boolean memory, boolean taken) {}

    /** One of the class's own. */
    public record Own(long id, String code, String title, String trains) {}

    /** A skill to tick. */
    public record Skill(String name, String title) {}
}
