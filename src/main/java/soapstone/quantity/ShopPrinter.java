package soapstone.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Prints values in shop notation: {@code 41 3/8 in}, {@code 3 ft 5 3/8 in}, {@code 62.4 lb/ft³}, {@code 22° 30′},
 * {@code $12.50}. What it prints, {@link ShopReader} reads back. Inside a value and before its unit stand no-break
 * spaces, so that no line of a page ends within one. Thousands are parted from 10,000 up: four digits read well enough
 * alone, and a metric shop writes 1051 mm. Never −0, never powers of ten.
 */
public final class ShopPrinter {

    static final char NO_BREAK = '\u00A0';
    static final char MINUS = '\u2212';
    private static final double GRID = 1.0 / Show.FINEST;
    private static final int DIGITS = 5;
    private static final int MOST_PLACES = 12;
    private static final int FIRST_GROUPED = 5;
    /** Above this a double has no more room for fractions and longs none for counts. */
    private static final double MOST = 9e15;

    private ShopPrinter() {}

    /**
     * A value with its unit.
     *
     * @param base        in base units of the system
     * @param unit        to print in, unless the show names another of the same dimension
     * @param decimalMark {@code '.'} or {@code ','}
     */
    public static String text(double base, Unit unit, UnitSystem system, Show show, char decimalMark) {
        StringBuilder out = new StringBuilder(24);
        Unit own = show.unit();
        Unit in = own != null && own.dimension().equals(unit.dimension()) ? own : unit;
        if (!parts(out, base, in.dimension(), system, show, decimalMark)) {
            single(out, in.fromBase(base, system), in, show, decimalMark);
        }
        return out.toString();
    }

    /** A number without a unit, in the same forms; AUTO prints decimals. */
    public static String number(double amount, Show show, char decimalMark) {
        StringBuilder out = new StringBuilder(16);
        amount(out, amount, Units.ONE, show, decimalMark);
        return out.toString();
    }

    private static void single(StringBuilder out, double amount, Unit unit, Show show, char mark) {
        int from = out.length();
        amount(out, amount, unit, show, mark);
        attach(out, from, unit.symbol());
    }

    /** Puts a unit's symbol to a printed number that starts at {@code from}. */
    static void attach(StringBuilder out, int from, String symbol) {
        String rest = symbol;
        if (symbol.startsWith("$")) {
            out.insert(out.charAt(from) == MINUS ? from + 1 : from, '$');
            rest = symbol.substring(1);
        } else if (!symbol.isEmpty() && "°′″".indexOf(symbol.charAt(0)) < 0 || symbol.length() > 1) {
            out.append(NO_BREAK);
        }
        out.append(rest);
    }

    private static boolean parts(StringBuilder out, double base, Dimension d, UnitSystem system, Show show, char mark) {
        switch (show.form()) {
            case FEET_INCHES:
                return d.equals(Dimension.LENGTH) && feetInches(out, Units.INCH.fromBase(base, system), mark);
            case DEGREES_MINUTES:
                return d.equals(Dimension.ANGLE) && degreesMinutes(out, Units.ARCMIN.fromBase(base, system), mark);
            case HOURS_MINUTES:
                return d.equals(Dimension.TIME) && hoursMinutes(out, Units.MINUTE.fromBase(base, system), mark);
            default:
                return false;
        }
    }

    private static boolean feetInches(StringBuilder out, double inches, char mark) {
        double rounded = Rounding.isOn(inches, GRID) ? Rounding.halfUp(inches, GRID) : Rounding.halfUp(inches, 0.001);
        double size = sign(out, rounded);
        double feet = Rounding.floor(size / 12);
        if (feet > 0) {
            whole(out, feet, mark);
            out.append(NO_BREAK).append("ft").append(NO_BREAK);
        }
        double rest = size - 12 * feet;
        auto(out, rest, Units.INCH, mark);
        out.append(NO_BREAK).append("in");
        return true;
    }

    private static boolean degreesMinutes(StringBuilder out, double minutes, char mark) {
        double size = sign(out, Rounding.halfUp(minutes));
        double degrees = Rounding.floor(size / 60);
        long rest = (long) (size - 60 * degrees);
        whole(out, degrees, mark);
        out.append('°').append(NO_BREAK);
        if (rest < 10) {
            out.append('0');
        }
        out.append(rest).append('′');
        return true;
    }

    private static boolean hoursMinutes(StringBuilder out, double minutes, char mark) {
        double size = sign(out, Rounding.halfUp(minutes));
        double hours = Rounding.floor(size / 60);
        if (hours > 0) {
            whole(out, hours, mark);
            out.append(NO_BREAK).append('h').append(NO_BREAK);
        }
        out.append((long) (size - 60 * hours)).append(NO_BREAK).append("min");
        return true;
    }

    private static double sign(StringBuilder out, double x) {
        if (x < 0) {
            out.append(MINUS);
        }
        return Math.abs(x);
    }

    private static void amount(StringBuilder out, double amount, Unit unit, Show show, char mark) {
        if (!(Math.abs(amount) < MOST)) {
            huge(out, amount);
            return;
        }
        switch (show.form()) {
            case FRACTION -> fraction(out, amount, unit, show.denominator(), mark);
            case DECIMAL -> decimal(out, amount, show.step(), mark);
            case WHOLE -> decimal(out, amount, 1, mark);
            default -> auto(out, amount, unit, mark);
        }
    }

    /** Past every bound of the shop: only a fault can bring such a value here, and it must still print. */
    private static void huge(StringBuilder out, double amount) {
        out.append(Double.isFinite(amount) ? new BigDecimal(amount).toBigInteger().toString() : String.valueOf(amount));
    }

    private static void auto(StringBuilder out, double amount, Unit unit, char mark) {
        if (unit.equals(Units.INCH) && Rounding.isOn(amount, GRID)) {
            fraction(out, amount, unit, Show.FINEST, mark);
        } else if (unit.symbol().startsWith("$") && Rounding.isOn(amount, 0.01)) {
            decimal(out, amount, 0.01, mark);
        } else {
            digits(out, amount, mark);
        }
    }

    /** Reduced; as decimals where the unit has no such fractions, for what is printed has to be read. */
    private static void fraction(StringBuilder out, double amount, Unit unit, int bottom, char mark) {
        double rounded = Rounding.halfUp(amount * bottom);
        double parts = Math.abs(rounded);
        double whole = Math.floor(parts / bottom);
        long top = (long) (parts - whole * bottom);
        long common = gcd(top, bottom);
        if (top > 0 && !Fractions.areRead(unit, bottom / common)) {
            digits(out, amount, mark);
            return;
        }
        sign(out, rounded);
        if (whole > 0 || top == 0) {
            whole(out, whole, mark);
        }
        if (top > 0) {
            if (whole > 0) {
                out.append(NO_BREAK);
            }
            out.append(top / common).append('/').append(bottom / common);
        }
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private static void whole(StringBuilder out, double n, char mark) {
        int from = out.length();
        out.append((long) n);
        group(out, from, out.length(), mark);
    }

    private static void decimal(StringBuilder out, double amount, double step, char mark) {
        if (step == 0 || BigDecimal.valueOf(step).scale() > MOST_PLACES) {
            digits(out, amount, mark);
            return;
        }
        BigDecimal exact = BigDecimal.valueOf(step);
        double n = Rounding.halfUp(amount / step);
        BigDecimal rounded = exact.multiply(new BigDecimal(n));
        plain(out, rounded.setScale(Math.max(0, exact.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY), mark);
    }

    private static void digits(StringBuilder out, double amount, char mark) {
        double size = Math.abs(amount);
        int places = 0;
        double tens = 1;
        double wanted = Math.pow(10, DIGITS - 1);
        while (places < MOST_PLACES && size * tens < wanted && size != 0) {
            places++;
            tens *= 10;
        }
        BigDecimal rounded = BigDecimal.valueOf((long) Rounding.halfUp(amount * tens), places).stripTrailingZeros();
        plain(out, rounded.scale() < 0 ? rounded.setScale(0) : rounded, mark);
    }

    /** A decimal in plain digits, its thousands parted. */
    static void plain(StringBuilder out, BigDecimal number, char mark) {
        if (number.signum() < 0) {
            out.append(MINUS);
        }
        int from = out.length();
        String digits = number.abs().toPlainString();
        int point = digits.indexOf('.');
        int end = point < 0 ? digits.length() : point;
        out.append(digits);
        if (point >= 0) {
            out.setCharAt(from + point, mark);
        }
        group(out, from, from + end, mark);
    }

    private static void group(StringBuilder out, int from, int end, char mark) {
        if (end - from < FIRST_GROUPED) {
            return;
        }
        char between = mark == '.' ? ',' : '.';
        for (int at = end - 3; at > from; at -= 3) {
            out.insert(at, between);
        }
    }
}
