package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * What stands in a box and what is said about it. The page begins each state with its own words ("Right.", "Not right.
 * This answer fits: …"); {@code says} goes on from there.
 *
 * @param typed  the text as typed, always kept; for a choice the option's label
 * @param state  what is to be shown
 * @param readAs the reading in shop notation, such as {@code 41 3/8 in}; empty when there is none
 * @param says   further sentences: why it is asked again; what the "but" is; by how much it is off
 * @param fits   titles of the slips that the answer fits, at state {@link State#SLIP}; several could be it
 * @param from   the student's own earlier answers that this one is right with, at state {@link State#CARRIED}
 */
public record Answer(String typed, State state, String readAs, List<Message> says, List<String> fits,
        List<Own> from) {

    /** The states of a box. */
    public enum State {
        EMPTY, READ, ASKED_AGAIN, RIGHT, RIGHT_BUT, CARRIED, NEAR, SLIP, UNEXPLAINED, BLANK,
        /** Not right, and no more is said. */
        NOT_RIGHT
    }

    /**
     * An earlier answer of the student's own.
     *
     * @param letter of its box
     * @param value  in shop notation
     */
    public record Own(String letter, String value) {}

    public Answer {
        says = List.copyOf(says);
        fits = List.copyOf(fits);
        from = List.copyOf(from);
    }

    /** Nothing typed yet. */
    public static Answer empty() {
        return new Answer("", State.EMPTY, "", List.of(), List.of(), List.of());
    }

    /** Typed before and not read yet. */
    public static Answer typed(String typed) {
        return new Answer(typed, State.EMPTY, "", List.of(), List.of(), List.of());
    }

    /** Read, not marked. */
    public static Answer read(String typed, String readAs, Message... says) {
        return new Answer(typed, State.READ, readAs, List.of(says), List.of(), List.of());
    }

    /** Cannot be read, or in two ways: asked again, with the reason. */
    public static Answer askedAgain(String typed, Message... why) {
        return new Answer(typed, State.ASKED_AGAIN, "", List.of(why), List.of(), List.of());
    }

    /** A state that needs no more than its own words: right, right-but, near, unexplained, blank. */
    public static Answer marked(String typed, State state, String readAs, Message... says) {
        return new Answer(typed, state, readAs, List.of(says), List.of(), List.of());
    }

    /** Not right, and it fits these slips. */
    public static Answer slip(String typed, String readAs, String... fits) {
        return new Answer(typed, State.SLIP, readAs, List.of(), List.of(fits), List.of());
    }

    /** Right with the student's own earlier answers. */
    public static Answer carried(String typed, String readAs, Own... from) {
        return new Answer(typed, State.CARRIED, readAs, List.of(), List.of(), List.of(from));
    }

    /** Read without trouble or marked: not to be written again. */
    public boolean isReadable() {
        return state != State.ASKED_AGAIN;
    }
}
