package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * What a marked sheet says beyond its boxes.
 *
 * @param right        how many answers are right (also right-but and carried)
 * @param asked        how many were asked
 * @param explanations one for each slip found, however many answers it spoils; empty when all is right
 * @param asCut        the part as the answers would cut it, over the right one
 * @param told         the part with all its numbers, where there is no drawing of the answers and the working is shown
 * @param worked       the working, all lines in order
 * @param readNext     lessons, formulas, tables to read now; the remedy of a slip first
 */
public record Feedback(int right, int asked, List<Explanation> explanations, Optional<AsCut> asCut, Optional<Figure> told,
        List<WorkedLine> worked, List<Reference> readNext) {

    public Feedback {
        explanations = List.copyOf(explanations);
        worked = List.copyOf(worked);
        readNext = List.copyOf(readNext);
    }
}
