package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.quantity.UnitSystem;
import soapstone.source.Message;

/**
 * An exercise or a formula worked with the visitor's own numbers.
 *
 * @param of       the exercise or formula; a formula has its own kind of reference
 * @param says     what it works out
 * @param units    system in which it is worked
 * @param notes    conventions that hold
 * @param cautions shown above the result
 * @param boxes    one for each number that can be put in; states empty, read, asked again, blank
 * @param limits   why there is no result, or what to heed about it
 * @param worked   the lines, when there is a result
 * @param results  what was looked for, when there is a result
 * @param figure   the drawing with these numbers
 */
public record BenchView(Reference of, String says, UnitSystem units, List<String> notes, List<Caution> cautions,
        List<AnswerBox> boxes, List<Message> limits, List<WorkedLine> worked, List<Result> results,
        Optional<Figure> figure) {

    /**
     * A result of the bench.
     *
     * @param prompt what it is
     * @param value  rounded as one would cut it, with its unit
     * @param exact  before rounding, with its unit; empty when the same
     */
    public record Result(String prompt, String value, String exact) {}

    public BenchView {
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        boxes = List.copyOf(boxes);
        limits = List.copyOf(limits);
        worked = List.copyOf(worked);
        results = List.copyOf(results);
    }
}
