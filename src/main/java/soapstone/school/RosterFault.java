package soapstone.school;

import java.util.List;
import java.util.stream.Stream;
import soapstone.source.Message;

/**
 * Something about a roster that has to be put right, or at least looked at.
 *
 * @param weight whether it stands in the way of saving
 * @param file   name of the file; empty for what was typed or pasted
 * @param line   from 1, as an editor counts; 0 for the text as a whole
 * @param column the heading as it stands in the file, or the key of its name with an at-sign before it; empty for a whole line
 * @param found  what stands there, made visible and short
 * @param says   what is wrong
 * @param fits   what would fit
 */
public record RosterFault(Weight weight, String file, int line, String column, String found, Message says, Message fits) {

    /** How much something matters. */
    public enum Weight {
        /** Nothing is saved until it is put right. */
        FAULT,
        /** To look at; it may be meant so. */
        WARNING
    }

    private static final String KEY = "school.roster.";
    private static final int LONGEST = 60;

    /** Where something stands. */
    record Spot(String file, int line, String column) {

        RosterFault fault(String rule, String found, String... more) {
            return of(Weight.FAULT, rule, found, more);
        }

        RosterFault warning(String rule, String found, String... more) {
            return of(Weight.WARNING, rule, found, more);
        }

        private RosterFault of(Weight weight, String rule, String found, String... more) {
            String shown = visible(found);
            List<String> with = Stream.concat(Stream.of(shown), Stream.of(more)).toList();
            return new RosterFault(weight, file, line, column, shown, new Message(KEY + rule, with), new Message(KEY + rule + "-fits", with));
        }
    }

    public boolean isFault() {
        return weight == Weight.FAULT;
    }

    /** The place in words: line and column, with the file where there is one. */
    public Message where() {
        String shape = (file.isEmpty() ? "" : "file-") + (line == 0 ? "whole" : column.isEmpty() ? "line" : "cell");
        return Message.of(KEY + "place-" + shape, file, Integer.toString(line), column);
    }

    /** Signs that cannot be seen are written out, and a long text is cut. */
    private static String visible(String found) {
        StringBuilder out = new StringBuilder();
        found.codePoints().limit(LONGEST + 1L).forEach(sign -> {
            if (RosterSigns.isUnfit(sign)) {
                out.append(String.format("[U+%04X]", sign));
            } else {
                out.appendCodePoint(sign);
            }
        });
        boolean cut = found.codePointCount(0, found.length()) > LONGEST;
        return cut ? out.substring(0, out.offsetByCodePoints(out.length(), -1)) + "…" : out.toString();
    }
}
