package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * The part "This answer fits …". Bank texts are wrapped by {@link Words#verbatim}.
 *
 * @param letters boxes that it is about
 * @param title   the slip's title, or those of several that fit
 * @param says    its text, a paragraph each
 * @param remedy  the lesson of its family
 */
public record Explanation(List<String> letters, Message title, List<Message> says, Optional<Reference> remedy) {

    public Explanation {
        letters = List.copyOf(letters);
        says = List.copyOf(says);
    }
}
