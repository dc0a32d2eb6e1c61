package soapstone.quantity;

import java.math.BigDecimal;
import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;

/** A piece of a typed answer: a number, a one-sign fraction, a word or a sign. */
final class Token {

    enum Kind {
        NUMBER, VULGAR, WORD, POWER, SLASH, DASH, PLUS, TIMES, PRIME, DOUBLE, DEGREE, PERCENT, DOLLAR, CENT, HASH,
        COLON, COMMA, SEMI, DOT, EQUALS, ABOUT, AND, OPEN, CLOSE, SIGN, END
    }

    private static final double[] TENTHS =
            {1, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12};

    final Kind kind;
    final int from;
    final int to;
    /** Whether a space stands before it. */
    final boolean gap;
    /** Of a number: its digits with {@code .} as mark and no groups; of a word: folded; else empty. */
    final String word;
    /** Of a number: its value. */
    final double value;
    /** Of a number: how many digits stand after the decimal mark. */
    final int decimals;
    /** Of a number: whether it was typed with a power of ten. */
    final boolean scientific;
    /** Of a one-sign fraction, such as ⅝; top is also the power of a raised sign. */
    final int top;
    final int bottom;

    private Token(Kind kind, int from, int to, boolean gap, String word, double value, int decimals, boolean scientific,
            int top, int bottom) {
        this.kind = kind;
        this.from = from;
        this.to = to;
        this.gap = gap;
        this.word = word;
        this.value = value;
        this.decimals = decimals;
        this.scientific = scientific;
        this.top = top;
        this.bottom = bottom;
    }

    static Token sign(Kind kind, int from, int to, boolean gap) {
        return new Token(kind, from, to, gap, "", 0, 0, false, 0, 0);
    }

    static Token word(int from, int to, boolean gap, String folded) {
        return new Token(Kind.WORD, from, to, gap, folded, 0, 0, false, 0, 0);
    }

    static Token fraction(int from, int to, boolean gap, int top, int bottom) {
        return new Token(Kind.VULGAR, from, to, gap, "", 0, 0, false, top, bottom);
    }

    static Token power(int from, int to, boolean gap, int power) {
        return new Token(Kind.POWER, from, to, gap, "", 0, 0, false, power, 0);
    }

    static Token number(int from, int to, boolean gap, String digits, double value, int decimals, boolean scientific) {
        return new Token(Kind.NUMBER, from, to, gap, digits, value, decimals, scientific, 0, 0);
    }

    boolean is(Kind other) {
        return kind == other;
    }

    /** Whether it is a known word of that role. */
    boolean is(Role role) {
        Spelling s = kind == Kind.WORD ? Spellings.find(word) : null;
        return s != null && s.role() == role;
    }

    boolean isWord(String folded) {
        return kind == Kind.WORD && word.equals(folded);
    }

    /** A number of plain digits. */
    boolean isWhole() {
        return kind == Kind.NUMBER && decimals == 0 && !scientific;
    }

    boolean isAmount() {
        return kind == Kind.NUMBER || kind == Kind.VULGAR;
    }

    /** The size of a number's last place. */
    double place() {
        int places = scientific ? new BigDecimal(word).scale() : decimals;
        return places >= 0 && places < TENTHS.length ? TENTHS[places] : Math.pow(10, -places);
    }

    /** As it was typed. */
    String in(String text) {
        return text.substring(from, to);
    }
}
