package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * What one student of a class did.
 *
 * @param erased   whether the record was erased, so that nothing is left to look up
 * @param sheets   all assignments, the newest first
 * @param open     the one that is looked at; absent while there is none
 * @param practice kept by the student from the open site; it counts nowhere
 */
public record StudentView(ClassHead head, long person, String seat, String name, boolean erased, GradebookView.Average average, List<Sheet> sheets, Optional<Open> open,
        List<PracticeRow> practice) {

    /** One assignment in the list. */
    public record Sheet(long assignment, String title, String due, GradebookView.Cell cell, String possible, boolean chosen) {}

    /**
     * One assignment with everything that was handed in.
     *
     * @param number  of the sheet; empty while there is none
     * @param excused from the whole assignment
     */
    public record Open(long assignment, String title, String number, boolean excused, List<Problem> problems) {

        public Open {
            problems = List.copyOf(problems);
        }
    }

    /**
     * One problem with one draw.
     *
     * @param counts whether this round counts
     */
    public record Problem(int place, int round, String title, boolean counts, String points, List<Attempt> attempts) {

        public Problem {
            attempts = List.copyOf(attempts);
        }
    }

    /** One time that it was handed in. */
    public record Attempt(long id, int number, String at, boolean late, boolean paper, boolean counts, List<Mark> marks) {

        public Attempt {
            marks = List.copyOf(marks);
        }
    }

    /**
     * The mark of one answer.
     *
     * @param first   the sign of the first mark
     * @param says    the reason, as it was told
     * @param points  of the first mark, such as {@code 1 of 2}
     * @param remarks later words, the newest last; the last one counts
     */
    public record Mark(int place, String letter, String typed, String readAs, MarkSign.Cell first, String says, String points, List<Remark> remarks) {

        public Mark {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A later word on a mark.
     *
     * @param by    empty for the program
     * @param cause {@code overruled}, {@code regraded}, {@code excused} or {@code corrected}
     */
    public record Remark(String at, String by, String cause, MarkSign.Cell sign, String points, String reason) {}

    public StudentView {
        sheets = List.copyOf(sheets);
        practice = List.copyOf(practice);
    }
}
