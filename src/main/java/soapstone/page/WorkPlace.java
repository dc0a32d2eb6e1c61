package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * One problem's place on a student's sheet.
 *
 * @param place from 1
 * @param of    how many there are
 * @param round 1, and one more for each time that other numbers were taken
 * @param title of the exercise
 * @param left  the tries that are left, in a sentence
 * @param next  path of the next problem, and of the sheet after the last
 * @param cells of the title block
 * @param tries that were made, the newest first
 * @param again whether other numbers can be taken
 */
public record WorkPlace(WorkHead head, int place, int of, int round, String title, String path, Message left, String next, List<BlockCell> cells,
        List<PastTry> tries, boolean again) {

    /**
     * A try that was made.
     *
     * @param number of the try with these numbers
     * @param round  of the numbers
     * @param when   it was handed in
     * @param points empty while they are not shown
     * @param path   of its page
     */
    public record PastTry(int number, int round, String when, boolean late, Optional<Message> points, String path) {}

    public WorkPlace {
        cells = List.copyOf(cells);
        tries = List.copyOf(tries);
    }
}
