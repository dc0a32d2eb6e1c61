package soapstone.figure;

import java.util.List;

/** Draws one kind of part. */
interface Drawer {

    List<FigureArgument> arguments();

    /** Whether an answer's part can be laid over the right one. */
    default boolean asCut() {
        return false;
    }

    /** Whether the amounts make a part at all; called with finite amounts of the right dimension. */
    boolean canDraw(Values values);

    /** Whether an argument's text may stand in the drawing; one that does not only shapes it. */
    default boolean prints(String argument) {
        return true;
    }

    /** The same of an answer's part, where it prints what the right one does not. */
    default boolean printsOfYours(String argument) {
        return prints(argument);
    }

    String title(Brief brief);

    /** Says all that the drawing prints. */
    void tell(Brief brief, Telling telling);

    /**
     * Draws the part with its dimensions.
     *
     * @param room width for the part itself, without what stands beside it
     */
    void draw(Brief brief, Sheet sheet, double room);

    /** Notes that stand under the drawing. */
    default List<Label> notes(Brief brief) {
        return List.of();
    }

    /** The mark of the right part and of yours in the legend, beside their lines. */
    default LegendMark mark() {
        return LegendMark.NONE;
    }

    /** What stands behind the line samples of a legend. */
    enum LegendMark { NONE, HOLES, CIRCLE }
}
