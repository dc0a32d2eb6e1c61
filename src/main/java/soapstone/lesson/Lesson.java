package soapstone.lesson;

import java.util.List;

/**
 * A lesson: text with live blocks in it.
 *
 * @param minutes how long it takes to teach
 * @param after   lessons that should come before it
 * @param parts   in order
 */
public record Lesson(String id, String title, String skill, int minutes, List<String> after, List<Part> parts) {

    /** A piece of a lesson. */
    public sealed interface Part {}

    /** Text, ready as HTML that holds no markup of the author's own. */
    public record Prose(String html) implements Part {}

    /** A draw of an exercise with its working: the same numbers that a student with this seed gets. */
    public record Example(String exercise, long seed, soapstone.quantity.UnitSystem system) implements Part {}

    /** An exercise to go on with. */
    public record Practice(String exercise) implements Part {}

    /** A formula of the book. */
    public record FormulaCard(String formula) implements Part {}

    /** A safety caution. */
    public record CautionCard(String caution) implements Part {}

    /** The exercises that the lesson leads to. */
    public List<String> practice() {
        return parts.stream().filter(Practice.class::isInstance).map(p -> ((Practice) p).exercise()).distinct().toList();
    }
}
