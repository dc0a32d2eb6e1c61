package soapstone.school;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The marks of a class, ready to be written out.
 *
 * @param students down the side
 * @param columns  along the top
 * @param marks    for each student, one mark for each column
 */
public record MarksTable(List<Student> students, List<Column> columns, List<List<Mark>> marks) {

    /**
     * A student.
     *
     * @param seat      may be empty
     * @param sourcedId in the school's own system; empty where that is not known
     */
    public record Student(String seat, String name, String login, String sourcedId) {}

    /**
     * An assignment.
     *
     * @param given    since when it was open
     * @param due      empty for practice without an end
     * @param possible points at most
     */
    public record Column(long assignment, String title, double possible, LocalDate given, Optional<LocalDate> due) {

        public Column {
            if (!(possible >= 0) || Double.isInfinite(possible)) {
                throw new IllegalArgumentException(title + ": possible points are a number from 0 on, not " + possible);
            }
        }
    }

    /** How far a student has come with an assignment. */
    public enum State {
        NOT_BEGUN,
        /** Something is handed in, something is still open. */
        BEGUN,
        /** All is handed in and marked. */
        DONE,
        /** Does not count. */
        EXCUSED
    }

    /**
     * What stands where a student and an assignment meet.
     *
     * @param points earned so far; 0 where nothing was handed in or all is excused
     * @param late   whether something was handed in after the due time
     * @param on     the day of the newest mark
     * @param due    until when this student has; empty where it is as for all
     */
    public record Mark(State state, double points, boolean late, Optional<LocalDate> on, Optional<LocalDate> due) {

        public static final Mark NOT_BEGUN = notBegun(Optional.empty());
        public static final Mark EXCUSED = new Mark(State.EXCUSED, 0, false, Optional.empty());

        /** With the due day of all. */
        public Mark(State state, double points, boolean late, Optional<LocalDate> on) {
            this(state, points, late, on, Optional.empty());
        }

        /** Of a student who has until then. */
        public static Mark notBegun(Optional<LocalDate> due) {
            return new Mark(State.NOT_BEGUN, 0, false, Optional.empty(), due);
        }

        public Mark {
            if (Double.isNaN(points) || Double.isInfinite(points)) {
                throw new IllegalArgumentException("points are a number, not " + points);
            }
        }

        /** Whether there are points to tell. */
        public boolean isMarked() {
            return state == State.BEGUN || state == State.DONE;
        }
    }

    public MarksTable {
        students = List.copyOf(students);
        columns = List.copyOf(columns);
        marks = marks.stream().map(List::copyOf).toList();
        int wide = columns.size();
        if (marks.size() != students.size() || marks.stream().anyMatch(row -> row.size() != wide)) {
            throw new IllegalArgumentException("each of " + students.size() + " students needs a mark for each of " + wide + " assignments");
        }
    }

    public Mark mark(int student, int column) {
        return marks.get(student).get(column);
    }
}
