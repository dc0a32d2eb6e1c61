package soapstone.page;

import java.util.List;

/**
 * A new assignment, or a draft that is changed.
 *
 * @param path     where the form goes
 * @param units    of the bank, with their exercises
 * @param chosen   the exercises that are ticked, in the order in which they will stand
 * @param pools    letters of the pools that are used
 * @param students who sit in the class
 */
public record AssignmentFormView(long inClass, String className, String path, boolean fresh, FormView form, List<Unit> units, List<Exercise> chosen,
        List<String> pools, List<Student> students) {

    /** The letters that a pool may have. */
    public static final List<String> LETTERS = List.of("A", "B", "C", "D", "E", "F");

    /** @param ticked how many of its exercises are chosen */
    public record Unit(String name, String title, List<Exercise> exercises, int ticked) {

        public Unit {
            exercises = List.copyOf(exercises);
        }
    }

    /** @param id such as {@code spacing/bolt-holes} */
    public record Exercise(String id, String title, int level, String skill) {}

    /** A student to choose. */
    public record Student(long id, String seat, String shown) {}

    public AssignmentFormView {
        units = List.copyOf(units);
        chosen = List.copyOf(chosen);
        pools = List.copyOf(pools);
        students = List.copyOf(students);
    }
}
