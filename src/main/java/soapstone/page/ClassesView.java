package soapstone.page;

import java.util.List;

/**
 * The classes of an instructor.
 *
 * @param current  the newest first
 * @param archived put away, the newest first
 */
public record ClassesView(List<Row> current, List<Row> archived) {

    /**
     * One class.
     *
     * @param students who sit in it
     * @param asking   who wait for a place
     * @param out      assignments that are given out
     */
    public record Row(long id, String name, String term, int students, int asking, int out) {}

    public ClassesView {
        current = List.copyOf(current);
        archived = List.copyOf(archived);
    }
}
