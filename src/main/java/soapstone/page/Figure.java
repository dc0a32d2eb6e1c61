package soapstone.page;

import java.util.List;

/**
 * A drawing, laid out twice; the style sheet shows one of the two. Both are inline {@code <svg role="img">} with a title
 * and a description that gives every number in the drawing, and no id in one occurs in the other.
 *
 * @param wide    for 720 units of width
 * @param narrow  for 340 units of width
 * @param caption under the drawing; may be empty
 * @param name    that its ids begin with; no other drawing of the page has it
 * @param flags   the sizes that have a numbered flag, in the order of their numbers, from 1
 */
public record Figure(Html wide, Html narrow, String caption, String name, List<String> flags) {

    public Figure {
        flags = List.copyOf(flags);
    }

    /** A drawing without flags. */
    public Figure(Html wide, Html narrow, String caption) {
        this(wide, narrow, caption, "", List.of());
    }
}
