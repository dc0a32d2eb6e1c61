package soapstone.page;

/**
 * What this is, in figures of the bank that is loaded.
 *
 * @param version   of the program
 * @param units     how many
 * @param lessons   how many
 * @param exercises how many
 * @param formulas  how many
 * @param checks    published examples of all files
 */
public record AboutView(String version, int units, int lessons, int exercises, int formulas, int checks) {}
