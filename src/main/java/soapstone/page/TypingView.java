package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * Where a sheet is found by its number.
 *
 * @param of     the assignment that it is about; empty for all of them
 * @param typed  a number that did not do
 * @param fault  why not
 * @param kept   what was kept a moment ago
 * @param sheets those of the assignment
 */
public record TypingView(Optional<Of> of, String typed, Optional<Message> fault, Optional<Kept> kept, List<Row> sheets) {

    /** @param places how many problems a sheet has: each can be typed in for the whole class */
    public record Of(long id, String title, long inClass, String className, boolean open, List<Place> places) {

        public Of {
            places = List.copyOf(places);
        }
    }

    /** A problem of the sheets. */
    public record Place(int place, String title) {}

    /** @param says what became of it, such as {@code 3 of 5 right} */
    public record Kept(String who, String number, Message says) {}

    /** @param kept how many problems are in, of how many */
    public record Row(long sheet, String number, String seat, String shown, Message kept) {}

    public TypingView {
        sheets = List.copyOf(sheets);
    }
}
