package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * Answers that come in a file.
 *
 * @param text   what was sent, to be mended by hand
 * @param rows   what it says; none before anything is sent
 * @param good   whether all of it can be kept
 * @param seen   names what was looked at
 * @param kept   how many problems were kept a moment ago
 */
public record TypingFileView(long id, String title, long inClass, String className, FormView form, List<Row> rows, boolean good, String seen, Optional<Message> kept) {

    /**
     * A row.
     *
     * @param says  the verdict
     * @param fault what is wrong with it
     */
    public record Row(int line, String number, String shown, String place, String letter, String typed, Optional<Message> says, Optional<Message> fault) {}

    public TypingFileView {
        rows = List.copyOf(rows);
    }
}
