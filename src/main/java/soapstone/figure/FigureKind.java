package soapstone.figure;

import java.util.List;
import java.util.Optional;

/**
 * A kind of drawing that bank files can name.
 *
 * @param name      as bank files write it, such as {@code hole-row}
 * @param arguments in the order in which they are documented
 * @param asCut     true when an answer's part can be laid over the right one
 */
public record FigureKind(String name, List<FigureArgument> arguments, boolean asCut) {

    public FigureKind {
        arguments = List.copyOf(arguments);
    }

    /** The argument of that name, or empty. */
    public Optional<FigureArgument> argument(String wanted) {
        return arguments.stream().filter(a -> a.name().equals(wanted)).findFirst();
    }
}
