package soapstone.quantity;

import java.math.BigDecimal;

/**
 * A typed number without its unit: a whole number or decimal, a fraction, or a whole number with a fraction.
 *
 * @param number the whole number or decimal; null for a lone fraction
 * @param top    of the fraction
 * @param bottom of the fraction; 0 when there is none
 * @param loose  whether a top-heavy fraction was typed with spaces round its slash, so that 31 / 2 is not 3 1/2
 * @param from   index of its first sign in the text
 * @param to     index after its last sign
 */
record Amount(Token number, long top, long bottom, boolean loose, int from, int to) {

    private static final String NO_BREAK = String.valueOf(ShopPrinter.NO_BREAK);

    double value() {
        if (bottom == 0) {
            return number.value;
        }
        double whole = number == null ? 0 : number.value;
        return (whole * bottom + top) / bottom;
    }

    /** Its value times a power of ten: the double nearest to the decimal, not a multiple of the one nearest to its digits. */
    double value(double scale) {
        return scale == 1 || bottom > 0 ? value() * scale : scaled(scale).doubleValue();
    }

    /** The decimal that was typed, times a power of ten. Only without a fraction. */
    BigDecimal scaled(double scale) {
        BigDecimal digits = new BigDecimal(number.word);
        return scale == 1 ? digits : digits.multiply(BigDecimal.valueOf(scale));
    }

    double place() {
        return bottom == 0 ? number.place() : 1.0 / bottom;
    }

    boolean isWhole() {
        return bottom == 0 && number.isWhole();
    }

    Notation notation() {
        if (bottom > 0) {
            return number == null ? Notation.FRACTION : Notation.MIXED;
        }
        return number.scientific ? Notation.SCIENTIFIC : number.decimals > 0 ? Notation.DECIMAL : Notation.WHOLE;
    }

    /**
     * Prints it as it was understood: its own digits and fraction. Thousands are not parted, so that 41,375 read as
     * forty-one thousand does not look like a decimal.
     */
    void print(StringBuilder out, double scale, char mark) {
        if (number != null) {
            print(out, scaled(scale), mark);
        }
        if (bottom > 0) {
            out.append(number == null ? "" : NO_BREAK).append(top);
            out.append(loose ? NO_BREAK + "/" + NO_BREAK : "/").append(bottom);
        }
    }

    static void print(StringBuilder out, BigDecimal number, char mark) {
        String digits = (number.scale() < 0 ? number.setScale(0) : number).toPlainString();
        out.append(mark == '.' ? digits : digits.replace('.', mark));
    }

    String said(char mark) {
        StringBuilder out = new StringBuilder(16);
        print(out, 1, mark);
        return out.toString();
    }
}
