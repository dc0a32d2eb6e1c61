package soapstone.mark;

/**
 * What an instructor can choose about points.
 *
 * @param carriedEarns whether an answer that is right with the student's own earlier wrong one earns its points
 * @param nearEarns    the share of the points that a near answer earns, 0 to 1
 * @param coarseEarns  whether an answer made with a coarser shop constant earns its points
 */
public record MarkRules(boolean carriedEarns, double nearEarns, boolean coarseEarns) {

    public static final MarkRules USUAL = new MarkRules(true, 0.5, true);
}
