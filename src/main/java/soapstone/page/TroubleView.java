package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * A page that says what went wrong.
 *
 * @param status of HTTP
 * @param title  the key of its head
 * @param says   what is the matter, and what to do
 * @param near   pages that were perhaps meant
 */
public record TroubleView(int status, String title, List<Message> says, List<Reference> near) {

    public TroubleView {
        says = List.copyOf(says);
        near = List.copyOf(near);
    }
}
