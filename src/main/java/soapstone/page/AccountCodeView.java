package soapstone.page;

/**
 * A code that is shown this once.
 *
 * @param where the address at which it is taken
 * @param back  where to go on
 */
public record AccountCodeView(String shown, String login, String code, String where, String back) {}
