package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * What would have been cut.
 *
 * @param figure       the as-cut drawing over the right one; absent where the exercise has no drawing
 * @param consequences sentences with their numbers; may be empty
 */
public record AsCut(Optional<Figure> figure, List<Message> consequences) {

    public AsCut {
        consequences = List.copyOf(consequences);
    }
}
