package soapstone.page;

import java.util.List;
import java.util.Map;
import soapstone.source.Message;

/**
 * The form to say a later word on a mark.
 *
 * @param possible points at most
 * @param choices  what can be said, by the words of {@link MarkSign}
 * @param chosen   one of them, as it was chosen; empty at first
 * @param points   as typed
 * @param reason   as typed
 * @param troubles by the field: {@code choice}, {@code points}, {@code reason}
 */
public record RemarkView(ClassHead head, long person, String name, long assignment, String assignmentTitle, String exercise, long attempt, StudentView.Mark mark,
        String possible, List<String> choices, String chosen, String points, String reason, Map<String, Message> troubles) {

    public RemarkView {
        choices = List.copyOf(choices);
        troubles = Map.copyOf(troubles);
    }
}
