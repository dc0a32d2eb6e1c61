package soapstone.quantity;

import java.math.BigDecimal;

/** A piece of a typed answer: a number, a one-sign fraction, a word or a sign. */
final class Token {

    enum Kind {
        NUMBER, VULGAR, WORD, POWER, SLASH, DASH, PLUS, TIMES, PRIME, DOUBLE, DEGREE, PERCENT, DOLLAR, CENT, HASH,
        COLON, COMMA, SEMI, DOT, EQUALS, ABOUT, AND, OPEN, CLOSE, SIGN, END
    }

    final Kind kind;
    final int from;
    final int to;
    /** Whether a space stands before it. */
    final boolean gap;
    /** Of a number or power: its value; of a one-sign fraction: the value too. */
    double value;
    /** Of a number: how many digits stand after the decimal mark. */
    int decimals;
    /** Of a number: whether it has a decimal mark with digits after it. */
    boolean decimal;
    /** Of a number: whether it was typed with a power of ten. */
    boolean scientific;
    /** Of a number: its digits with {@code .} as mark and no groups; of a word: folded; else null. */
    String word;
    int top;
    int bottom;

    Token(Kind kind, int from, int to, boolean gap) {
        this.kind = kind;
        this.from = from;
        this.to = to;
        this.gap = gap;
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean isWord(String folded) {
        return kind == Kind.WORD && word.equals(folded);
    }

    /** A number of plain digits. */
    boolean isWhole() {
        return kind == Kind.NUMBER && !decimal && !scientific;
    }

    boolean isAmount() {
        return kind == Kind.NUMBER || kind == Kind.VULGAR;
    }

    /** The size of a number's last place. */
    double place() {
        return scientific ? Double.parseDouble("1e" + -new BigDecimal(word).scale()) : tenth(decimals);
    }

    private static double tenth(int decimals) {
        return decimals < TENTHS.length ? TENTHS[decimals] : Math.pow(10, -decimals);
    }

    private static final double[] TENTHS = {1, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12};
}
