package soapstone.lesson;

import java.util.List;

/**
 * A unit of the course.
 *
 * @param folder  the folder of its exercises in the bank
 * @param lessons ids, in the order in which they are taught
 */
public record CourseUnit(String folder, String title, List<Skill> skills, List<String> lessons) {}
