package soapstone.figure;

import soapstone.quantity.Dimension;

/**
 * One argument of a kind of drawing.
 *
 * @param name      as bank files write it
 * @param dimension what it measures
 * @param list      true when it takes a list of any length
 * @param optional  true when the drawing does without it
 */
public record FigureArgument(String name, Dimension dimension, boolean list, boolean optional) {

    static FigureArgument length(String name) {
        return new FigureArgument(name, Dimension.LENGTH, false, false);
    }

    static FigureArgument number(String name) {
        return new FigureArgument(name, Dimension.NUMBER, false, false);
    }

    static FigureArgument angle(String name) {
        return new FigureArgument(name, Dimension.ANGLE, false, false);
    }

    static FigureArgument pressure(String name) {
        return new FigureArgument(name, Dimension.PRESSURE, false, false);
    }

    static FigureArgument force(String name) {
        return new FigureArgument(name, Dimension.FORCE, false, false);
    }

    FigureArgument many() {
        return new FigureArgument(name, dimension, true, optional);
    }

    FigureArgument maybe() {
        return new FigureArgument(name, dimension, list, true);
    }
}
