package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * One problem over a class.
 *
 * @param letters the columns
 * @param looked  whether the verdicts stand at the boxes
 * @param good    whether all can be kept
 * @param places  how many problems there are
 */
public record TypingGridView(long id, String title, long inClass, String className, int place, int places, String problem, List<String> letters, List<Row> rows, boolean looked,
        boolean good, Optional<Message> fault, boolean late) {

    /** @param box empty where the sheet asks for nothing in this column */
    public record Cell(Optional<AnswerBox> box) {}

    /**
     * A sheet.
     *
     * @param boxes   one for each column
     * @param refusal why nothing is taken
     */
    public record Row(long sheet, String number, String seat, String shown, List<Cell> boxes, Optional<Message> refusal) {

        public Row {
            boxes = List.copyOf(boxes);
        }
    }

    public TypingGridView {
        letters = List.copyOf(letters);
        rows = List.copyOf(rows);
    }
}
