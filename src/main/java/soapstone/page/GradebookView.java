package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * The marks of a class for all its assignments.
 *
 * @param whole the average over everybody
 */
public record GradebookView(ClassHead head, List<Column> columns, List<Row> rows, Average whole) {

    /** One assignment. */
    public record Column(long id, String title, String due, String possible) {}

    /**
     * How a student stands with one assignment.
     *
     * @param state  {@code not-begun}, {@code open}, {@code handed-in}, {@code excused}, or {@code not-for} for one that is for others
     * @param points such as {@code 4.5}; empty where nothing is to be said
     */
    public record Cell(String state, String points, boolean late) {}

    /**
     * An average and how it was made.
     *
     * @param percent such as {@code 82.5 %}; empty when nothing counts
     */
    public record Average(String percent, List<Message> how) {

        public Average {
            how = List.copyOf(how);
        }
    }

    /** One student. */
    public record Row(long person, String seat, String name, boolean left, List<Cell> cells, Average average) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    public GradebookView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
