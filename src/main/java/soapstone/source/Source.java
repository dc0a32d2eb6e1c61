package soapstone.source;

/**
 * A text with a name, in which places can be found again.
 *
 * @param name the path below the bank or lesson folder, as an author knows it
 * @param text the whole text
 */
public record Source(String name, String text) {

    /** The text of a line, counted from 1, without its end; empty when there is no such line. */
    public String line(int number) {
        int start = 0;
        for (int n = 1; n < number; n++) {
            start = text.indexOf('\n', start) + 1;
            if (start == 0) {
                return "";
            }
        }
        int end = text.indexOf('\n', start);
        String line = end < 0 ? text.substring(start) : text.substring(start, end);
        return line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
    }

    public Place at(int line, int column) {
        return new Place(this, line, column);
    }

    /** The place of a character, counted from 0. */
    public Place atOffset(int offset) {
        int line = 1;
        int start = 0;
        int stop = Math.min(offset, text.length());
        for (int i = 0; i < stop; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                start = i + 1;
            }
        }
        return new Place(this, line, stop - start + 1);
    }
}
