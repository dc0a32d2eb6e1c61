package soapstone.school;

import java.util.List;
import soapstone.mark.Verdict;

/**
 * The mark of one answer, as it is kept.
 *
 * @param place    of the ask in the exercise, from 0
 * @param ask      its name in the exercise
 * @param letter   of its box
 * @param typed    exactly as it was typed
 * @param readAs   what was understood; empty when nothing was
 * @param slip     the name of what fits first; empty when nothing fits
 * @param families behind it
 * @param says     what was said, in the language of the class, plain text
 * @param points   earned by this mark, the latest remark included
 * @param possible points at most
 * @param odds     the chance that a random wrong answer would have been named here
 */
public record AnswerMark(int place, String ask, String letter, String typed, String readAs, Verdict verdict, String slip, List<String> families,
        String says, double points, double possible, double odds) {

    public AnswerMark {
        families = List.copyOf(families);
    }
}
