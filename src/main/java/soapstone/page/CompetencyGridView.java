package soapstone.page;

import java.util.List;

/** A class's students by what may be signed off: the evidence that was gathered, and what is signed. */
public record CompetencyGridView(ClassHead in, List<Column> columns, List<Row> rows) {

    public CompetencyGridView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A competency.
     *
     * @param frame with its edition; empty for the class's own
     */
    public record Column(String code, String title, String frame) {}

    /** A student. */
    public record Row(long person, String seat, String shown, List<Cell> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * How a student stands with a competency.
     *
     * @param state    {@code signed}, {@code withdrawn} or {@code open}
     * @param standing skills with evidence that stands
     * @param skills   that train it
     */
    public record Cell(String state, int standing, int skills) {}
}
