package soapstone.page;

import java.util.List;

/**
 * The marks of a class for one assignment: a row for each student, a column for each problem and ask.
 *
 * @param possible what the assignment is worth
 */
public record MarksView(AssignmentHead head, String possible, List<Column> columns, List<Row> rows) {

    /**
     * One ask of one problem.
     *
     * @param label such as {@code 2b}
     * @param says  the titles of the exercises that stand there
     */
    public record Column(String label, String says) {}

    /**
     * One student.
     *
     * @param state  {@code not-begun}, {@code open}, {@code handed-in} or {@code excused}
     * @param points of this student's possible points, such as {@code 4.5 of 6}
     * @param cells  one for each column
     * @param left   is no longer in the class
     */
    public record Row(long person, String seat, String name, String state, String points, boolean late, boolean left, List<MarkSign.Cell> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    public MarksView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
