package soapstone.page;

/**
 * A lesson as a list shows it.
 *
 * @param id    its file name without the end
 * @param title its heading
 * @param says  one sentence; may be empty
 */
public record LessonLink(String id, String title, String says) {}
