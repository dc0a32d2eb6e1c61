package soapstone.exercise;

import java.util.List;

/**
 * A text of the bank with places for values. There is nothing else in it: no conditions, no loops.
 *
 * @param parts in order
 */
public record Template(List<Part> parts) {

    public static final Template EMPTY = new Template(List.of());

    /**
     * Plain text ({@code slot} -1), or the place of a value.
     *
     * @param theirs the value with the slip or the student's answer put in, not the right one
     */
    public record Part(String text, int slot, boolean theirs) {

        public boolean isText() {
            return slot < 0;
        }
    }

    public Template {
        parts = List.copyOf(parts);
    }

    public boolean isEmpty() {
        return parts.isEmpty();
    }
}
