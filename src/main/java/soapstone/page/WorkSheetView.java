package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * A student's sheet.
 *
 * @param says   why nothing is taken any more, or not yet, or that it need not be done; empty usually
 * @param points of the sheet, empty while they are not shown
 */
public record WorkSheetView(WorkHead head, Optional<Message> says, Optional<Message> points, List<Row> rows) {

    /** A problem on it. */
    public record Row(int place, String title, String path, Message state, Optional<Message> points) {}

    public WorkSheetView {
        rows = List.copyOf(rows);
    }
}
