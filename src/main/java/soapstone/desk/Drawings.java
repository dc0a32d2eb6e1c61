package soapstone.desk;

import java.util.Optional;
import soapstone.expression.Frame;
import soapstone.page.Figure;
import soapstone.variant.Variant;

/** Drawings for pages. */
final class Drawings {

    /** The part as it is asked. */
    Optional<Figure> asked(Variant variant) {
        return Optional.empty();
    }

    /** The part as the answers would make it, over the right one. */
    Optional<Figure> asCut(Variant variant, Frame theirs) {
        return Optional.empty();
    }
}
