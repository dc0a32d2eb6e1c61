package soapstone.page;

import java.util.List;
import java.util.Optional;

/**
 * One exercise with one draw of numbers, at one of three stages: asked, read back, marked.
 *
 * @param exercise  which exercise
 * @param unit      link to its unit
 * @param key       the draw, with the bank's fingerprint as it is now
 * @param changed   the link that was followed names another fingerprint: the numbers may not be the same
 * @param stage     how far the visitor has come
 * @param story     with the numbers put in
 * @param notes     conventions, with the numbers put in
 * @param shop      what a class has set of the conventions that the exercise follows, such as "K = 0.42"
 * @param cautions  shown beside the drawing; empty when it touches nothing that can hurt
 * @param figure    the drawing as asked, without the student's own
 * @param boxes     one for each ask, in order
 * @param sources   documents that its checks come from, each once
 * @param feedback  present exactly at the stage {@link Stage#MARKED}
 */
public record SheetView(ExerciseLink exercise, Reference unit, SheetKey key, boolean changed, Stage stage, String story,
        List<String> notes, List<String> shop, List<Caution> cautions, Optional<Figure> figure, List<AnswerBox> boxes,
        List<CheckSource> sources, Optional<Feedback> feedback) {

    /** How far the visitor has come with this sheet. */
    public enum Stage {
        /** The boxes are empty. */
        ASKED,
        /** The answers were read and are shown back; nothing is marked. Also when something must be asked again. */
        READ,
        /** Every box has its verdict. */
        MARKED
    }

    public SheetView {
        notes = List.copyOf(notes);
        shop = List.copyOf(shop);
        cautions = List.copyOf(cautions);
        boxes = List.copyOf(boxes);
        sources = List.copyOf(sources);
        if (feedback.isPresent() != (stage == Stage.MARKED)) {
            throw new IllegalArgumentException("feedback belongs to a marked sheet, and to no other: " + stage);
        }
    }

    /** The same sheet with other things said about the answers. */
    public SheetView with(Stage otherStage, List<AnswerBox> otherBoxes, Optional<Feedback> otherFeedback) {
        return new SheetView(exercise, unit, key, changed, otherStage, story, notes, shop, cautions, figure, otherBoxes, sources, otherFeedback);
    }
}
