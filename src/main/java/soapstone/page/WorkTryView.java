package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * What was handed in, with as much of its marking as may be shown.
 *
 * @param number  of the try with these numbers
 * @param receipt its number in the record
 * @param when    it was handed in
 * @param sheet   empty when the exercise was mended and its earlier form is not to be had: then the answers are told
 * @param answers as they are kept
 * @param marked  whether a verdict may be shown
 * @param points  empty while they are not shown
 * @param changed later words on the marks
 * @param more    whether a further try can be made with these numbers
 */
public record WorkTryView(WorkPlace at, int number, String receipt, String when, boolean late, Optional<SheetView> sheet, List<KeptAnswer> answers,
        boolean marked, Optional<Message> points, List<Changed> changed, boolean more) {

    /**
     * An answer as it is kept.
     *
     * @param says empty while it is not shown
     */
    public record KeptAnswer(String letter, String typed, String readAs, String says) {}

    /**
     * A later word on a mark.
     *
     * @param says   the verdict now, and the points
     * @param reason as it was given
     */
    public record Changed(String letter, Message says, String when, String reason) {}

    public WorkTryView {
        answers = List.copyOf(answers);
        changed = List.copyOf(changed);
    }
}
