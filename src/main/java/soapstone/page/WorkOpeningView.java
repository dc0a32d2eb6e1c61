package soapstone.page;

import java.util.Optional;
import soapstone.source.Message;

/**
 * An assignment whose sheet is not dealt yet.
 *
 * @param path    that the button sends to
 * @param refused why it cannot be opened; empty when it can
 */
public record WorkOpeningView(WorkHead head, String path, Optional<Message> refused) {}
