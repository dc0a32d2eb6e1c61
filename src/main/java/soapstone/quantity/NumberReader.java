package soapstone.quantity;

import soapstone.quantity.Token.Kind;

/**
 * Reads the digits of one number and settles what its points and commas are. One of them is the decimal mark of the
 * class; the other parts thousands, and stands in no other place: {@code 1,25} is not guessed at.
 */
final class NumberReader {

    private static final int MOST_DIGITS = 40;
    /** So many digits, and powers of ten, are exact in a double, and so is their quotient's rounding. */
    private static final int EXACT_DIGITS = 15;
    private static final int MOST_POWER = 15;
    private static final int POWER_TOO_LARGE = 1000;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private final String text;
    private final int end;
    private final char mark;
    private final char group;
    private int from;
    private int to;
    private int marks;
    private int groups;
    private int firstMark = -1;
    private Reading.Again trouble;

    NumberReader(String text, int end, char mark, char group) {
        this.text = text;
        this.end = end;
        this.mark = mark;
        this.group = group;
    }

    Reading.Again trouble() {
        return trouble;
    }

    /** The number that starts at an index, or null when there is trouble. */
    Token read(int start, boolean gap) {
        from = start;
        to = start;
        takeDigits();
        if (groups > 0 && !isGrouped(firstMark < 0 ? to : firstMark)) {
            trouble = otherMark();
        } else if (marks > 1) {
            trouble = Reason.TWO_MARKS.at(firstMark, text.substring(from, to), String.valueOf(mark));
        } else if (to - from > MOST_DIGITS) {
            trouble = Reason.TOO_LONG.at(from, String.valueOf(MOST_DIGITS));
        }
        return trouble == null ? token(gap) : null;
    }

    private char sign(int index) {
        return index < end ? Signs.fold(text.charAt(index)) : 0;
    }

    private boolean isDigit(int index) {
        char c = sign(index);
        return c >= '0' && c <= '9';
    }

    /** Takes digits, marks and groups; also a mark after the last digit, as in {@code 41.}. */
    private void takeDigits() {
        for (; to < end; to++) {
            char c = sign(to);
            boolean digitNext = isDigit(to + 1);
            if (c == mark && (digitNext || to > from && (sign(to + 1) == mark || marks == 0 && sign(to + 1) != group))) {
                firstMark = marks++ == 0 ? to : firstMark;
            } else if (c == group && digitNext) {
                groups++;
            } else if (!isDigit(to)) {
                return;
            }
        }
    }

    /** Groups as in 1,250,000: one to three digits, the first not 0, then threes; no group after the decimal mark. */
    private boolean isGrouped(int wholeEnd) {
        for (int i = wholeEnd; i < to; i++) {
            if (sign(i) == group) {
                return false;
            }
        }
        int run = 0;
        for (int i = wholeEnd - 1; i >= from; i--) {
            if (sign(i) != group) {
                run++;
            } else if (run != 3) {
                return false;
            } else {
                run = 0;
            }
        }
        return run >= 1 && run <= 3 && sign(from) != '0';
    }

    /** Says how a number with the other mark would be written here: one way, or two where both can be meant. */
    private Reading.Again otherMark() {
        String typed = text.substring(from, to);
        StringBuilder digits = new StringBuilder();
        int cut = 0;
        for (int i = from; i < to; i++) {
            if (isDigit(i)) {
                digits.append(sign(i));
            } else {
                cut = digits.length();
            }
        }
        String whole = digits.substring(0, cut);
        String decimal = (whole.isEmpty() ? "0" : whole) + mark + digits.substring(cut);
        if (marks > 1 || groups > 1 && marks == 0) {
            return Reason.TWO_MARKS.at(from, typed, String.valueOf(mark));
        }
        boolean oneWay = marks == 1 || whole.isEmpty() || whole.charAt(0) == '0';
        return oneWay ? Reason.OTHER_MARK.at(from, typed, String.valueOf(mark), decimal)
                : Reason.DECIMAL_MARK.at(from, typed, String.valueOf(mark), decimal, digits.toString());
    }

    private Token token(boolean gap) {
        StringBuilder plain = new StringBuilder(to - from + 1);
        long value = 0;
        int significant = 0;
        int decimals = 0;
        for (int i = from; i < to; i++) {
            char c = sign(i);
            if (c >= '0' && c <= '9') {
                plain.append(c);
                significant += significant > 0 || c != '0' ? 1 : 0;
                value = significant <= EXACT_DIGITS ? value * 10 + (c - '0') : value;
                decimals += firstMark >= 0 && i > firstMark ? 1 : 0;
            } else if (i == firstMark && isDigit(i + 1)) {
                plain.append(plain.length() == 0 ? "0." : ".");
            }
        }
        boolean scientific = powerOfTen(plain);
        if (trouble != null) {
            return null;
        }
        String digits = plain.toString();
        boolean exact = !scientific && significant <= EXACT_DIGITS && decimals <= EXACT_DIGITS;
        double number = exact ? value / TENS[decimals] : Double.parseDouble(digits);
        return Token.number(from, to, gap, digits, number, decimals, scientific);
    }

    /** Takes {@code e3} after the digits, as calculators write it. */
    private boolean powerOfTen(StringBuilder plain) {
        if (sign(to) != 'e' && sign(to) != 'E') {
            return false;
        }
        boolean minus = sign(to + 1) == '-';
        int first = minus || sign(to + 1) == '+' ? to + 2 : to + 1;
        int last = first;
        int power = 0;
        while (isDigit(last)) {
            power = Math.min(POWER_TOO_LARGE, power * 10 + sign(last++) - '0');
        }
        if (last == first || Character.isLetter(sign(last))) {
            return false;
        }
        if (power > MOST_POWER) {
            trouble = minus ? Reason.TOO_SMALL.at(from) : Reason.TOO_BIG.at(from);
        }
        plain.append('e').append(minus ? -power : power);
        to = last;
        return true;
    }
}
