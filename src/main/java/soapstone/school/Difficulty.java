package soapstone.school;

import soapstone.exercise.Exercise;
import soapstone.exercise.Line;
import soapstone.exercise.Model;
import soapstone.quantity.UnitSystem;

/**
 * How hard an exercise is, as far as a file can tell. Two exercises are equally hard when all of this is the same: they train
 * one skill, stand on one level, take the same number of lines of working and ask for the same number of answers. The
 * numbers do not come in: every draw of an exercise is fair by itself.
 *
 * @param lines of the working that the student has to go through, without constants and what comes after the answer
 */
public record Difficulty(String skill, int level, int lines, int asks) {

    public static Difficulty of(Exercise exercise, UnitSystem units) {
        Model model = exercise.model(units);
        int lines = (int) model.lines().stream().filter(l -> l.phase() == Line.Phase.WORKING).count();
        return new Difficulty(exercise.skill(), exercise.level(), lines, model.asks().size());
    }
}
