package soapstone.quantity;

import java.util.Locale;
import soapstone.quantity.Token.Kind;

/** Cuts one stretch of a typed answer into tokens: numbers, one-sign fractions, words and signs. */
final class Lexer {

    /** More pieces than any single amount has. */
    private static final int MOST = 40;

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
                tokens[count] = Token.sign(Kind.END, end, end, gap);
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

    private void put(Token token) {
        tokens[count++] = token;
        at = token.to;
    }

    private void put(Kind kind, int length) {
        put(Token.sign(kind, at, at + length, gap));
    }

    private void number() {
        NumberReader reader = new NumberReader(text, end, mark, group);
        Token token = reader.read(at, gap);
        trouble = reader.trouble();
        if (token != null) {
            put(token);
        }
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
        put(Token.fraction(at, at + length, gap, top, bottom));
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
        put(Token.power(at, at + skip + 1, gap, value));
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
        put(Token.word(at, to, gap, folded.toString()));
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
