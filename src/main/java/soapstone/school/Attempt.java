package soapstone.school;

import java.time.Instant;
import java.util.List;

/**
 * One time that a problem was handed in. Never changed afterwards.
 *
 * @param number      from 1 on, for one problem
 * @param receipt     made with the page that was sent: the same page sent twice is one attempt
 * @param program     version of the program that marked it
 * @param fingerprint of the exercise that it was marked with
 * @param marks       one for each ask, in order
 */
public record Attempt(long id, long problem, int number, String receipt, Instant handedIn, boolean late, Way way, String program, String fingerprint,
        List<AnswerMark> marks) {

    /** How the answers came. */
    public enum Way { SCREEN, PAPER }

    public Attempt {
        marks = List.copyOf(marks);
    }

    /** The same attempt with marks. */
    public Attempt with(List<AnswerMark> own) {
        return new Attempt(id, problem, number, receipt, handedIn, late, way, program, fingerprint, own);
    }

    public double points() {
        double sum = 0;
        for (AnswerMark mark : marks) {
            sum += mark.points();
        }
        return sum;
    }

    public double possible() {
        double sum = 0;
        for (AnswerMark mark : marks) {
            sum += mark.possible();
        }
        return sum;
    }
}
