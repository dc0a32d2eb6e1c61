package soapstone.page;

import java.util.List;

/**
 * One box to be filled in, on a sheet or on the bench.
 *
 * @param letter  {@code a}, {@code b} …: stands framed beside the box and in the drawing, and names the form field
 * @param kind    how it is answered
 * @param prompt  what is asked
 * @param to      resolution asked for, such as {@code 1/16 in}; empty for counts, choices and where none is asked
 * @param within  what is marked right, such as {@code 1/32 in}; empty where it must be exact
 * @param unit    printed beside the box; empty for plain numbers and choices
 * @param reads   how a text in this box is to be read, in the desk's own shorthand (such as {@code quantity:in}): the
 *                page gives it back when it asks how a text reads
 * @param options for a choice, in the order shown; else empty
 * @param answer  what stands in the box, and what is said about it
 */
public record AnswerBox(String letter, Kind kind, String prompt, String to, String within, String unit, String reads,
        List<Option> options, Answer answer) {

    /** The kinds of asks. */
    public enum Kind {
        QUANTITY, COUNT, LIST, CHOICE, FRACTION, POINT
    }

    /**
     * One way to answer a choice.
     *
     * @param label what the form sends and the bank calls it
     * @param text  what is shown
     */
    public record Option(String label, String text) {}

    public AnswerBox {
        options = List.copyOf(options);
    }

    /** The same box with something else said about it. */
    public AnswerBox with(Answer other) {
        return new AnswerBox(letter, kind, prompt, to, within, unit, reads, options, other);
    }
}
