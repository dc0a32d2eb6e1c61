package soapstone.page;

/**
 * A safety caution of the bank.
 *
 * @param name  in the bank
 * @param title short
 * @param says  the whole text
 */
public record Caution(String name, String title, String says) {}
