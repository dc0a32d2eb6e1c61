package soapstone.school;

import java.util.stream.LongStream;
import soapstone.exercise.Conventions;
import soapstone.exercise.Exercise;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;

/**
 * Whether numbers come out of an exercise for a class. As the bank has it they do, which is checked there; what a class sets can
 * leave a mistake that nobody could tell from the right answer, whatever else is drawn.
 */
public final class Fairness {

    /** A seed tries some hundred draws: what refuses all of so many seeds refuses whatever comes. */
    private static final int SEEDS = 3;

    private Fairness() {}

    /** @param set by the class; what the exercise does not follow makes no difference */
    public static boolean isFair(Exercise exercise, UnitSystem units, Conventions set) {
        Drawer drawer = new Drawer(exercise, units, set);
        return drawer.conventions().isEmpty() || LongStream.rangeClosed(1, SEEDS).anyMatch(seed -> drawer.draw(seed).isPresent());
    }
}
