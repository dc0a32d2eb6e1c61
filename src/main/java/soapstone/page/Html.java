package soapstone.page;

import java.util.Objects;

/**
 * Markup that goes into a page as it is. Only our own code makes it, from parts that it has escaped itself: an SVG
 * drawing, or the body of a lesson. Never from what a visitor typed.
 *
 * @param markup well-formed HTML or inline SVG
 */
public record Html(String markup) {

    public Html {
        Objects.requireNonNull(markup);
    }
}
