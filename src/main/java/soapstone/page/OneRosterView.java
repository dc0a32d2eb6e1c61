package soapstone.page;

import java.util.List;
import java.util.Map;
import soapstone.source.Message;

/**
 * The form for a set of OneRoster files: how the school's own system calls school, class and term.
 *
 * @param typed    by the field: {@code school}, {@code class}, {@code session}, {@code category}
 * @param leftOut  students whose id in that system is not known: their marks cannot go
 * @param troubles by the field
 */
public record OneRosterView(ClassHead head, Map<String, String> typed, List<String> leftOut, Map<String, Message> troubles) {

    public OneRosterView {
        typed = Map.copyOf(typed);
        leftOut = List.copyOf(leftOut);
        troubles = Map.copyOf(troubles);
    }
}
