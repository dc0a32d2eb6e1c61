package soapstone.page;

import java.util.Set;

/**
 * Keeps what belongs together on one line: a whole number and its fraction, a number and its unit. The characters that
 * do it are passed over by whoever reads answers, so that an example can be copied into a box.
 */
final class Shop {

    private static final char NO_BREAK = '\u00A0';
    /** After the dash of 5-3/8: no line may end there. */
    private static final char JOINER = '\u2060';
    private static final String VULGAR = "½¼¾⅛⅜⅝⅞";
    private static final Set<String> UNITS = Set.of("in", "ft", "yd", "mm", "cm", "m", "gal", "qt", "L", "mL", "lb", "oz", "ton", "tons", "kg", "g",
            "t", "kip", "N", "kN", "psi", "ksi", "Pa", "kPa", "MPa", "bar", "s", "min", "h", "rpm", "Hz", "ga", "deg");

    private Shop() {}

    static String keepTogether(String text) {
        StringBuilder out = null;
        for (int i = 1; i + 1 < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ' ' && isKept(text, i)) {
                out = out == null ? new StringBuilder(text) : out;
                out.setCharAt(i + out.length() - text.length(), NO_BREAK);
            } else if (c == '-' && isDigit(text.charAt(i - 1)) && isFraction(text, i + 1)) {
                out = out == null ? new StringBuilder(text) : out;
                out.insert(i + 1 + out.length() - text.length(), JOINER);
            }
        }
        return out == null ? text : out.toString();
    }

    private static boolean isKept(String text, int gap) {
        char before = text.charAt(gap - 1);
        boolean feet = (before == '\'' || before == '′') && gap > 1 && isDigit(text.charAt(gap - 2));
        if (feet) {
            return isDigit(text.charAt(gap + 1));
        }
        return isDigit(before) && isFraction(text, gap + 1) || (isDigit(before) || VULGAR.indexOf(before) >= 0) && isUnit(text, gap + 1);
    }

    /** Digits, a stroke and a digit. */
    private static boolean isFraction(String text, int start) {
        int at = start;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        return at > start && at + 1 < text.length() && text.charAt(at) == '/' && isDigit(text.charAt(at + 1));
    }

    private static boolean isUnit(String text, int start) {
        int at = start;
        while (at < text.length() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        return at > start && at - start <= 4 && UNITS.contains(text.substring(start, at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
