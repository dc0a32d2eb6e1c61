package soapstone.page;

import java.util.Map;

/**
 * Something that is being printed.
 *
 * @param id     of the assignment
 * @param state  a key: {@code making}, {@code done}, {@code ended}, {@code failed}, {@code left}
 * @param done   sheets that are laid out
 * @param fields of the form that asks for the same again
 */
public record PrintView(long id, String title, long print, String kind, String state, int done, int total, int pages, Map<String, String> fields) {}
