package soapstone.paper;

import java.util.List;
import java.util.Optional;

/**
 * A sheet as a key knows it.
 *
 * @param number   of the sheet
 * @param seat     may be empty
 * @param name     of the student; empty for a spare sheet
 * @param problems in order
 */
public record KeySheet(String number, String seat, String name, List<Problem> problems) {

    /**
     * A problem with its answers.
     *
     * @param exercise its id
     * @param title    of the exercise
     * @param level    of the exercise
     * @param lines    of working
     * @param answers  one for each box
     */
    public record Problem(int place, String exercise, String title, int level, int lines, List<Answer> answers) {

        public Problem {
            answers = List.copyOf(answers);
        }
    }

    /**
     * A right answer.
     *
     * @param letter of its box
     * @param right  in shop notation
     * @param amount the same as a number, for the spread; empty where it is none
     * @param slips  what mistakes give with these numbers, in the order of the bank; only those that show
     */
    public record Answer(String letter, String right, Optional<Double> amount, List<Slip> slips) {

        public Answer {
            slips = List.copyOf(slips);
        }

        Optional<Slip> slip(String name) {
            return slips.stream().filter(s -> s.name().equals(name)).findFirst();
        }
    }

    /**
     * What a mistake gives.
     *
     * @param name  in the bank
     * @param title in words
     * @param gives in shop notation
     */
    public record Slip(String name, String title, String gives) {}

    /** A mistake in an exercise, by the names that the bank has for both. */
    public record Made(String exercise, String slip) {}

    public KeySheet {
        problems = List.copyOf(problems);
    }
}
