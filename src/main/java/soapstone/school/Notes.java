package soapstone.school;

import java.time.Instant;
import java.util.List;

/** Where requests for corrections are kept. */
public interface Notes {

    /** All of a student's, in order. */
    List<Note> of(long person);

    /** All that were made in a class, in order. */
    List<Note> ofClass(long schoolClass);

    /** Keeps a request; the same words again while they are open are one request. */
    void ask(long person, long schoolClass, String asks, Instant now);

    /** Answers a request once: false when it has its answer already. */
    boolean answer(long note, Answer answer);

    /** The answer to a request. */
    record Answer(Note.Outcome outcome, String text, long by, String byName, Instant at) {}
}
