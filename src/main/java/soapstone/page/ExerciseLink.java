package soapstone.page;

/**
 * An exercise as a list shows it.
 *
 * @param unit  folder name of its unit
 * @param id    its file name without the end
 * @param title as in its file
 * @param level 1 to 4
 * @param skill title of the skill that it trains
 */
public record ExerciseLink(String unit, String id, String title, int level, String skill) {}
