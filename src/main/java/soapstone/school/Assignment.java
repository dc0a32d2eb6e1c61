package soapstone.school;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Work for a class.
 *
 * @param due      empty for practice without an end
 * @param tries    how often one problem may be handed in
 * @param shows    what is shown after each try, until the sheet is closed
 * @param formulas whether the formula book may be used beside it
 * @param after    the assignment that this one makes up for, retakes or drills
 * @param tasks    in order
 */
public record Assignment(long id, long schoolClass, String title, State state, Instant opens, Optional<Instant> due, Late late, int tries, Shows shows,
        boolean formulas, long madeBy, Instant made, Optional<Long> after, List<Task> tasks) {

    /** Where an assignment stands. */
    public enum State {
        /** Only instructors see it. */
        DRAFT,
        /** Open from its opening time on. */
        GIVEN,
        /** Taken back: nobody can hand in. */
        TAKEN
    }

    /** What becomes of an answer after the due time. */
    public enum Late {
        TAKEN,
        /** Earns half of its points. */
        HALF,
        REFUSED
    }

    /** What a student sees after a try; each shows all that stands before it too. */
    public enum Shows { NOTHING, VERDICT, MISTAKE, LINES }

    /**
     * One thing to do.
     *
     * @param exercises one exercise, or a pool of several
     * @param many      how many of the pool
     * @param points    of each
     */
    public record Task(long id, int place, List<String> exercises, int many, double points) {

        public Task {
            exercises = List.copyOf(exercises);
            if (exercises.isEmpty() || many < 1 || many > exercises.size()) {
                throw new IllegalArgumentException(many + " of " + exercises.size() + " exercises");
            }
        }
    }

    public Assignment {
        tasks = List.copyOf(tasks);
    }
}
