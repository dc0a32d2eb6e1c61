package soapstone.page;

/**
 * A unit as a list shows it.
 *
 * @param name      its folder name
 * @param title     as in the course file
 * @param says      one sentence on what it is about; may be empty
 * @param lessons   how many
 * @param exercises how many
 */
public record UnitSummary(String name, String title, String says, int lessons, int exercises) {}
