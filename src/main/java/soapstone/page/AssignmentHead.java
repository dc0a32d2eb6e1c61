package soapstone.page;

import java.util.List;

/**
 * Which assignment a page is about.
 *
 * @param due   when, in words; empty for practice without an end
 * @param tasks its exercises by title, in order
 */
public record AssignmentHead(long id, String title, ClassHead in, String due, List<String> tasks) {

    public AssignmentHead {
        tasks = List.copyOf(tasks);
    }
}
