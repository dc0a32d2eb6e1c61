package soapstone.page;

/**
 * A drawing, laid out twice; the style sheet shows one of the two. Both are inline {@code <svg role="img">} with a title
 * and a description that gives every number in the drawing, and no id in one occurs in the other.
 *
 * @param wide    for 720 units of width
 * @param narrow  for 340 units of width
 * @param caption under the drawing; may be empty
 */
public record Figure(Html wide, Html narrow, String caption) {}
