package soapstone.page;

/**
 * Which class a page is about.
 *
 * @param archived put away: nothing in it changes
 */
public record ClassHead(long id, String name, String term, boolean archived) {}
