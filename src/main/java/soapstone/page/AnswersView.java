package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * How answers may be written, with a box to try it.
 *
 * @param groups examples, grouped
 * @param ways   the ways of reading that can be tried; the first is the usual one
 * @param tried  what was tried, with its way and what came out
 */
public record AnswersView(List<Group> groups, List<Way> ways, Optional<Tried> tried) {

    /**
     * Examples of one kind.
     *
     * @param title    of the group
     * @param examples in order
     */
    public record Group(Message title, List<Example> examples) {

        public Group {
            examples = List.copyOf(examples);
        }
    }

    /**
     * A text and its reading.
     *
     * @param typed  as somebody writes it
     * @param answer how it reads
     */
    public record Example(String typed, Answer answer) {}

    /**
     * A way in which a text can be read.
     *
     * @param reads the desk's shorthand, as in {@link AnswerBox#reads}
     * @param label what the list says
     * @param unit  printed beside the box
     */
    public record Way(String reads, Message label, String unit) {}

    /**
     * What the visitor tried.
     *
     * @param reads  the way chosen
     * @param answer the reading
     */
    public record Tried(String reads, Answer answer) {}

    public AnswersView {
        groups = List.copyOf(groups);
        ways = List.copyOf(ways);
    }
}
