package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * What an instructor wants to know before the class comes in, on one screen.
 *
 * @param roll how many it is for
 */
public record MorningView(AssignmentHead head, String now, int roll, List<Name> handedIn, List<Name> open, List<Name> notBegun, List<Mistake> mistakes) {

    public record Name(long person, String shown) {}

    /**
     * One of the commonest mistakes.
     *
     * @param family    its name, for the drill
     * @param example   whose numbers are on the board
     * @param exercise  where it was made most
     * @param typed     what that student typed
     * @param lines     the right line and the other one
     * @param figure    for the board
     * @param again     how it went with other numbers
     * @param drill     what a drill would give
     * @param given     the drill that these students have already; 0 for none
     */
    public record Mistake(String family, String title, String about, Message says, Message against, List<Name> names, String example, String exercise, String letter,
            String typed, List<WorkedLine> lines, Optional<Figure> figure, Optional<Reference> lesson, List<Again> again, List<String> drill, long given) {

        public Mistake {
            names = List.copyOf(names);
            lines = List.copyOf(lines);
            again = List.copyOf(again);
            drill = List.copyOf(drill);
        }
    }

    /**
     * How it went when the same was asked with other numbers.
     *
     * @param names with whom; none where they need not be told
     */
    public record Again(Message word, int count, List<Name> names) {

        public Again {
            names = List.copyOf(names);
        }
    }

    public MorningView {
        handedIn = List.copyOf(handedIn);
        open = List.copyOf(open);
        notBegun = List.copyOf(notBegun);
        mistakes = List.copyOf(mistakes);
    }
}
