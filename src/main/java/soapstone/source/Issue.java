package soapstone.source;

/**
 * Something wrong in a text: where, what was found, what would fit.
 *
 * @param rule  the short name of the rule that found it
 * @param place where it stands
 * @param found what is wrong
 * @param fits  what would fit; empty when the finding says it all
 */
public record Issue(String rule, Place place, String found, String fits) {

    private static final int WIDEST = 160;

    /** {@code file:line:column: rule: what. What would fit.}, then the line and a caret under the place. */
    @Override
    public String toString() {
        String head = place + ": " + rule + ": " + found + (fits.isEmpty() ? "" : ". " + fits);
        String line = place.source().line(place.line()).replace('\t', ' ');
        int column = Math.min(Math.max(place.column(), 1), line.length() + 1);
        int from = Math.max(0, column - 1 - WIDEST / 2);
        int to = Math.min(line.length(), from + WIDEST);
        return head + "\n    " + line.substring(from, to) + "\n    " + " ".repeat(column - 1 - from) + "^";
    }
}
