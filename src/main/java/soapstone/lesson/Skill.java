package soapstone.lesson;

import java.util.List;

/**
 * What exercises of one kind train.
 *
 * @param after skills that should come before it
 */
public record Skill(String name, String title, List<String> after) {}
