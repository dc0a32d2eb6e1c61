package soapstone.page;

import soapstone.source.Message;

/**
 * Something was not taken.
 *
 * @param says why, and what becomes of what was typed
 * @param path of the page to go on from
 */
public record WorkRefusedView(WorkHead head, Message says, String path) {}
