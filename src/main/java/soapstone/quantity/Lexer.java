package soapstone.quantity;

import java.util.Locale;
import soapstone.quantity.Token.Kind;

/** Cuts one stretch of a typed answer into tokens, and settles what a number is: its groups, its decimal mark. */
final class Lexer {

    /** More pieces than any single amount has. */
    private static final int MOST = 40;
    private static final int MOST_DIGITS = 40;
    private static final int EXACT_DIGITS = 15;
    private static final int MOST_POWER = 15;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private final String text;
    private final int end;
    private final char mark;
    private final char group;
    private final Token[] tokens;
    private int count;
    private int at;
    private boolean gap;
    private Reading.Again trouble;

    Lexer(String text, int from, int end, ReadAs as) {
        this.text = text;
        this.at = from;
        this.end = end;
        this.mark = as.decimalMark();
        this.group = as.groupMark();
        this.tokens = new Token[Math.min(MOST, end - from) + 1];
    }

    /** The tokens, with one of kind END after the last; null when there is {@link #trouble()}. */
    Token[] tokens() {
        while (trouble == null) {
            gap = skipGap();
            if (at >= end) {
                tokens[count] = new Token(Kind.END, end, end, gap);
                return tokens;
            }
            if (count == tokens.length - 1) {
                trouble = Reason.ONE_ANSWER.at(at);
            } else {
                next();
            }
        }
        return null;
    }

    Reading.Again trouble() {
        return trouble;
    }

    private boolean skipGap() {
        int from = at;
        while (at < end && (peek(0) == ' ' || peek(0) == '\n')) {
            at++;
        }
        return at > from;
    }

    private char peek(int ahead) {
        return at + ahead < end ? Signs.fold(text.charAt(at + ahead)) : 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private void next() {
        char c = peek(0);
        if (isDigit(c)) {
            number();
        } else if ((c == mark || c == group) && isDigit(peek(1))) {
            leadingMark(c);
        } else if (Signs.vulgar(c) >= 0 || Signs.isOneOver(c)) {
            vulgar();
        } else if (Signs.raised(c) >= 0) {
            raised();
        } else if (c == '^' && isDigit(peek(1))) {
            power(1);
        } else if (Character.isLetter(c)) {
            word();
        } else {
            sign(c);
        }
    }

    /** {@code .125}; but {@code 3 ft.5 in} can be 5 in or .5 in, and {@code 3 ft,5 in} is a comma. */
    private void leadingMark(char c) {
        if (!isAfterUnit() && (gap || count == 0 || !tokens[count - 1].is(Kind.DEGREE))) {
            number();
        } else if (c == mark) {
            trouble = Reason.TWO_WAYS.at(at, text.substring(at + 1, at + 2), "0" + mark + peek(1));
        } else {
            sign(c);
        }
    }

    private Token put(Kind kind, int length) {
        Token token = new Token(kind, at, at + length, gap);
        tokens[count++] = token;
        at += length;
        return token;
    }

    // ---- numbers

    private void number() {
        int from = at;
        int to = from;
        int marks = 0;
        int firstMark = -1;
        int groups = 0;
        while (to < end) {
            char c = Signs.fold(text.charAt(to));
            boolean digitNext = to + 1 < end && isDigit(Signs.fold(text.charAt(to + 1)));
            if (c == mark && (digitNext || to > from && (is(to + 1, mark) || marks == 0 && !is(to + 1, group)))) {
                firstMark = marks++ == 0 ? to : firstMark;
            } else if (c == group && digitNext) {
                groups++;
            } else if (!isDigit(c)) {
                break;
            }
            to++;
        }
        if (groups > 0 && !isGrouped(from, firstMark < 0 ? to : firstMark, to)) {
            otherMark(from, to, marks, groups);
        } else if (marks > 1) {
            trouble = Reason.TWO_MARKS.at(firstMark, text.substring(from, to));
        } else {
            digits(from, to, firstMark);
        }
    }

    private boolean is(int index, char folded) {
        return index < end && Signs.fold(text.charAt(index)) == folded;
    }

    /** Groups as in 1,250,000: one to three digits, the first not 0, then threes; no group after the decimal mark. */
    private boolean isGrouped(int from, int wholeEnd, int to) {
        int run = 0;
        boolean first = true;
        for (int i = from; i < to; i++) {
            boolean isGroup = Signs.fold(text.charAt(i)) == group;
            if (isGroup && i > wholeEnd) {
                return false;
            }
            if (i >= wholeEnd) {
                continue;
            }
            if (!isGroup) {
                run++;
            } else if (first ? run > 3 || run < 1 || Signs.fold(text.charAt(from)) == '0' : run != 3) {
                return false;
            } else {
                first = false;
                run = 0;
            }
        }
        return run == 3;
    }

    /** Says how a number with the other mark would be written here: one way, or two where both can be meant. */
    private void otherMark(int from, int to, int marks, int groups) {
        String typed = text.substring(from, to);
        StringBuilder digits = new StringBuilder();
        int cut = -1;
        for (int i = from; i < to; i++) {
            char c = Signs.fold(text.charAt(i));
            if (isDigit(c)) {
                digits.append(c);
            } else {
                cut = digits.length();
            }
        }
        String whole = digits.substring(0, cut);
        String decimal = (whole.isEmpty() ? "0" : whole) + mark + digits.substring(cut);
        if (groups > 1 && marks != 1 || marks > 1) {
            trouble = Reason.TWO_MARKS.at(from, typed);
        } else if (marks == 1 || whole.isEmpty() || whole.charAt(0) == '0') {
            trouble = Reason.OTHER_MARK.at(from, typed, String.valueOf(mark), decimal);
        } else {
            trouble = Reason.DECIMAL_MARK.at(from, typed, String.valueOf(mark), decimal, digits.toString());
        }
    }

    private void digits(int from, int to, int markAt) {
        StringBuilder plain = new StringBuilder(to - from + 1);
        long value = 0;
        int significant = 0;
        int decimals = 0;
        for (int i = from; i < to; i++) {
            char c = Signs.fold(text.charAt(i));
            if (i == markAt) {
                plain.append(plain.length() == 0 ? "0." : ".");
            } else if (isDigit(c)) {
                plain.append(c);
                significant += significant > 0 || c != '0' ? 1 : 0;
                decimals += markAt >= 0 && i > markAt ? 1 : 0;
                value = significant <= EXACT_DIGITS ? value * 10 + (c - '0') : value;
            }
        }
        if (plain.length() > MOST_DIGITS) {
            trouble = Reason.TOO_LONG.at(from, String.valueOf(MOST_DIGITS));
            return;
        }
        if (decimals == 0 && markAt >= 0) {
            plain.setLength(plain.length() - 1);
        }
        Token token = put(Kind.NUMBER, to - from);
        token.decimals = decimals;
        token.decimal = decimals > 0;
        boolean exact = significant <= EXACT_DIGITS && decimals <= EXACT_DIGITS;
        powerOfTen(token, plain);
        token.word = plain.toString();
        token.value = exact && !token.scientific ? value / TENS[decimals] : Double.parseDouble(token.word);
    }

    /** Takes {@code e3} after the digits, as calculators write it. */
    private void powerOfTen(Token token, StringBuilder plain) {
        if (peek(0) != 'e' && peek(0) != 'E') {
            return;
        }
        int sign = peek(1) == '-' || peek(1) == '+' ? 1 : 0;
        int to = 1 + sign;
        while (isDigit(peek(to))) {
            to++;
        }
        if (to == 1 + sign || Character.isLetter(peek(to))) {
            return;
        }
        int power = 0;
        for (int i = 1 + sign; i < to; i++) {
            power = Math.min(10_000, power * 10 + (peek(i) - '0'));
        }
        if (power > MOST_POWER) {
            trouble = peek(1) == '-' ? Reason.TOO_SMALL.at(token.from) : ValueReader.tooBig(token.from);
            return;
        }
        plain.append('e').append(peek(1) == '-' ? -power : power);
        token.scientific = true;
        Token whole = new Token(Kind.NUMBER, token.from, at + to, token.gap);
        whole.decimals = token.decimals;
        whole.decimal = token.decimal;
        whole.scientific = true;
        tokens[count - 1] = whole;
        whole.word = plain.toString();
        whole.value = Double.parseDouble(whole.word);
        at += to;
    }

    private void vulgar() {
        int index = Signs.vulgar(peek(0));
        if (index >= 0) {
            fraction(1, Signs.top(index), Signs.bottom(index));
            return;
        }
        int to = 1;
        int bottom = 0;
        while (isDigit(peek(to)) && to < 5) {
            bottom = bottom * 10 + peek(to++) - '0';
        }
        if (to == 1 || isDigit(peek(to))) {
            trouble = Reason.UNFINISHED_FRACTION.at(at);
        } else {
            fraction(to, 1, bottom);
        }
    }

    private void fraction(int length, int top, int bottom) {
        Token token = put(Kind.VULGAR, length);
        token.top = top;
        token.bottom = bottom;
    }

    /** Raised digits: a power after a unit, the top of a fraction such as {@code ³⁄₈} elsewhere. */
    private void raised() {
        int to = 0;
        int top = 0;
        while (Signs.raised(peek(to)) >= 0 && to < 4) {
            top = top * 10 + Signs.raised(peek(to++));
        }
        if (peek(to) != '/' || isAfterUnit()) {
            power(0);
            return;
        }
        int bottom = 0;
        int digits = to + 1;
        while (digitOrLowered(peek(digits)) >= 0 && digits < to + 5) {
            bottom = bottom * 10 + digitOrLowered(peek(digits++));
        }
        if (digits == to + 1) {
            trouble = Reason.UNFINISHED_FRACTION.at(at);
        } else {
            fraction(digits, top, bottom);
        }
    }

    private boolean isAfterUnit() {
        Kind before = count == 0 ? Kind.END : tokens[count - 1].kind;
        return !gap && (before == Kind.WORD || before == Kind.PRIME || before == Kind.DOUBLE || before == Kind.DOT);
    }

    private static int digitOrLowered(char c) {
        return isDigit(c) ? c - '0' : Signs.lowered(c);
    }

    private void power(int skip) {
        char c = peek(skip);
        int value = skip > 0 ? c - '0' : Signs.raised(c);
        put(Kind.POWER, skip + 1).value = value;
    }

    // ---- words and signs

    private void word() {
        int to = at;
        StringBuilder folded = new StringBuilder(12);
        while (to < end && isOfWord(text.charAt(to))) {
            char letter = Signs.letter(Signs.fold(text.charAt(to++)));
            if (letter != 0) {
                folded.append(letter);
            }
        }
        put(Kind.WORD, to - at).word = folded.toString();
    }

    private static boolean isOfWord(char c) {
        char folded = Signs.fold(c);
        return Character.isLetter(folded) && folded != '°' && Signs.vulgar(c) < 0 || Signs.isAccent(c);
    }

    private void sign(char c) {
        switch (c) {
            case '/' -> put(Kind.SLASH, 1);
            case '-' -> put(Kind.DASH, 1);
            case '+' -> put(Kind.PLUS, 1);
            case '*' -> put(Kind.TIMES, 1);
            case '\'' -> prime();
            case '"' -> put(Kind.DOUBLE, 1);
            case '°' -> put(Kind.DEGREE, 1);
            case '%' -> put(Kind.PERCENT, 1);
            case '$' -> put(Kind.DOLLAR, 1);
            case '¢' -> put(Kind.CENT, 1);
            case '#' -> put(Kind.HASH, 1);
            case ':' -> put(Kind.COLON, 1);
            case ',' -> put(Kind.COMMA, 1);
            case ';' -> put(Kind.SEMI, 1);
            case '.' -> put(Kind.DOT, 1);
            case '=' -> put(Kind.EQUALS, 1);
            case '~' -> put(Kind.ABOUT, 1);
            case '&' -> put(Kind.AND, 1);
            case '(', '[' -> put(Kind.OPEN, 1);
            case ')', ']' -> put(Kind.CLOSE, 1);
            case '÷', '±', '√', '<', '>', '^', '≤', '≥' -> put(Kind.SIGN, 1);
            case '\\' -> trouble = Reason.BACKSLASH.at(at);
            default -> trouble = Reason.STRANGE_SIGN.at(at, shown());
        }
    }

    /** Two primes side by side are the mark for inches or seconds. */
    private void prime() {
        if (peek(1) == '\'') {
            put(Kind.DOUBLE, 2);
        } else {
            put(Kind.PRIME, 1);
        }
    }

    /** A sign as it can be shown to people: by its number when it has no shape of its own. */
    private String shown() {
        int point = text.codePointAt(at);
        int type = Character.getType(point);
        boolean hidden = type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE
                || type == Character.UNASSIGNED || type == Character.PRIVATE_USE || type == Character.NON_SPACING_MARK
                || type == Character.ENCLOSING_MARK || type == Character.COMBINING_SPACING_MARK;
        if (!hidden) {
            return new String(Character.toChars(point));
        }
        String hex = Integer.toHexString(point).toUpperCase(Locale.ROOT);
        return "U+" + "0".repeat(Math.max(0, 4 - hex.length())) + hex;
    }
}
