package soapstone.school;

import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Variant;

/**
 * How hard an exercise is, as far as a file can tell. Two exercises are equally hard when all of this is the same: they train
 * one skill, stand on one level, take the same number of lines of working and ask for the same number of answers. The
 * numbers do not come in here: every draw of an exercise is fair by itself. {@link #apart} says how alike two of them are.
 *
 * @param lines of the working that the student has to go through, without constants and what comes after the answer
 */
public record Difficulty(String skill, int level, int lines, int asks) {

    /** Of nothing and something. */
    private static final double MOST_APART = 100;

    /**
     * How far apart two draws are in the size of their numbers: the greatest ratio between an answer of one and that answer of
     * the other, as its logarithm. 0 for the same sizes, and for what has no number for an answer.
     */
    public static double apart(Variant one, Variant other) {
        double most = 0;
        for (Ask ask : one.model().asks()) {
            if (ask.isNumber()) {
                double a = Math.abs(one.right().number(ask.slot()));
                double b = Math.abs(other.right().number(ask.slot()));
                most = Math.max(most, a == b ? 0 : a > 0 && b > 0 ? Math.abs(Math.log(a / b)) : MOST_APART);
            }
        }
        return most;
    }

    public static Difficulty of(Exercise exercise, UnitSystem units) {
        Model model = exercise.model(units);
        int lines = (int) model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).count();
        return new Difficulty(exercise.skill(), exercise.level(), lines, model.asks().size());
    }
}
