package soapstone.page;

import java.util.List;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;

/**
 * A kind of drawing, for those who write exercises.
 *
 * @param link      its name and title
 * @param arguments what it is made from, in order
 * @param uses      the exercises of the bank that have it
 * @param tried     how many draws the samples were chosen from, in each unit system
 * @param samples   draws of one exercise, as they are asked; the last one maybe with a slip
 */
public record FigureKindView(FigureKindLink link, List<Argument> arguments, List<Use> uses, int tried, List<Sample> samples) {

    public FigureKindView {
        arguments = List.copyOf(arguments);
        uses = List.copyOf(uses);
        samples = List.copyOf(samples);
    }

    /**
     * Something that it is made from.
     *
     * @param takes    what it measures
     * @param list     whether it takes a list of any length
     * @param optional whether the drawing does without it
     */
    public record Argument(String name, Message takes, boolean list, boolean optional) {}

    /** An exercise, and the line that says so in its file. */
    public record Use(ExerciseLink exercise, String line) {}

    /**
     * A drawing.
     *
     * @param slip the name of the slip by whose answer the part is cut; empty for a drawing as it is asked
     */
    public record Sample(Which which, ExerciseLink exercise, UnitSystem units, String slip, Figure figure) {}

    /** Which draw a sample is. */
    public enum Which { SMALLEST, LARGEST, SLIP }
}
