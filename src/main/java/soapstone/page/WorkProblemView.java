package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * A problem to be worked on.
 *
 * @param sheet   empty when the exercise was mended and its earlier form is not to be had
 * @param version of the draft that stands in the boxes
 * @param kept    when it was kept, such as {@code 10:32}; empty when nothing is
 * @param tablet  whether the browser is shared, so that nothing may stay in it
 * @param refused why nothing can be handed in; then the boxes cannot be changed
 * @param newer   what was kept meanwhile from another page, where that stands in the way
 */
public record WorkProblemView(WorkPlace at, Optional<SheetView> sheet, String version, Optional<String> kept, boolean tablet, Optional<Message> refused,
        List<Newer> newer) {

    /** A box in which something newer is kept than what was sent. */
    public record Newer(String letter, String kept, String yours) {}

    public WorkProblemView {
        newer = List.copyOf(newer);
    }
}
