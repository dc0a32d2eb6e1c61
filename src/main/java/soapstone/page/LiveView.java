package soapstone.page;

import java.util.List;

/**
 * How a class is getting on right now.
 *
 * @param at     what time it was
 * @param done   students who handed in everything
 * @param open   who began
 * @param behind who has not begun
 */
public record LiveView(AssignmentHead head, String at, int done, int open, int behind, List<MarksView.Column> columns, List<MarksView.Row> rows) {

    public LiveView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
