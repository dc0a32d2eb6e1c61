package soapstone.page;

import java.util.Map;
import java.util.Optional;
import soapstone.source.Message;

/**
 * The page on which a student keeps what was worked as a guest.
 *
 * @param path  of the form
 * @param typed answers by the letters of their boxes, which the form carries
 * @param row   as it would be kept; empty when it cannot be
 * @param says  why not
 */
public record PracticeView(String path, Map<String, String> typed, Optional<PracticeRow> row, Optional<Message> says) {}
