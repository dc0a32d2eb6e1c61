package soapstone.quantity;

import java.util.Optional;

/**
 * How a value is printed.
 *
 * @param form the form
 * @param step the step it is rounded to, in {@code unit} or else in the unit it is printed in; 0 where the form chooses
 * @param unit the unit that the step was given in, and in which the value is then printed; null where it named none
 */
public record Show(Form form, double step, Unit unit) {

    /** The forms that a value can be printed in. */
    public enum Form { AUTO, FRACTION, DECIMAL, FEET_INCHES, DEGREES_MINUTES, HOURS_MINUTES, WHOLE }

    /** Inches on the 1/64 grid as fractions, money in cents, all else as decimals of about five digits. */
    public static final Show AUTO = new Show(Form.AUTO, 0, null);
    /** Feet and inches: {@code 3 ft 5 3/8 in}, {@code 3 ft 0 in}. */
    public static final Show FEET_INCHES = new Show(Form.FEET_INCHES, 0, null);
    /** Degrees and whole minutes: {@code 22° 30′}, {@code 22° 05′}. */
    public static final Show DEGREES_MINUTES = new Show(Form.DEGREES_MINUTES, 0, null);
    /** Hours and whole minutes: {@code 1 h 20 min}. */
    public static final Show HOURS_MINUTES = new Show(Form.HOURS_MINUTES, 0, null);
    /** Rounded to whole units. */
    public static final Show WHOLE = new Show(Form.WHOLE, 1, null);

    /** The finest mark on a rule; {@code fraction} in a bank file means these. */
    static final int FINEST = 64;
    private static final int MOST_BOTTOM = 10_000;

    /**
     * Fractions, rounded to one part of a bottom number and then reduced.
     *
     * @throws IllegalArgumentException when the bottom is below 1
     */
    public static Show fraction(int denominator) {
        if (denominator < 1) {
            throw new IllegalArgumentException("no fraction has the bottom " + denominator);
        }
        return new Show(Form.FRACTION, 1.0 / denominator, null);
    }

    /**
     * Decimals, rounded to a step and with all its places: 41.500 for the step 0.001.
     *
     * @param step in the unit that the value is printed in; 0 for about five digits and no trailing zeros
     * @throws IllegalArgumentException when the step is negative or not a number
     */
    public static Show decimal(double step) {
        if (!(step >= 0) || Double.isInfinite(step)) {
            throw new IllegalArgumentException("no step can be " + step);
        }
        return new Show(Form.DECIMAL, step, null);
    }

    /** The same in a unit of its own. */
    public Show in(Unit own) {
        return new Show(form, step, own);
    }

    /** The bottom number of a fraction form. */
    public int denominator() {
        return (int) Math.rint(1 / step);
    }

    /**
     * Reads how a bank file says it: {@code auto}, {@code ft in}, {@code fraction}, {@code decimal}, {@code deg min},
     * {@code h min}, {@code whole}, or a step such as {@code 1/16 in}, {@code 0.001 in}, {@code 1 mm}, {@code 0.01}. A
     * fraction gives fractions, any other number decimals.
     *
     * @return empty when it is none of these
     */
    public static Optional<Show> parse(String text, UnitSystem system) {
        String trimmed = text.trim();
        return switch (trimmed) {
            case "auto" -> Optional.of(AUTO);
            case "ft in" -> Optional.of(FEET_INCHES);
            case "fraction" -> Optional.of(fraction(FINEST));
            case "decimal" -> Optional.of(decimal(0));
            case "deg min" -> Optional.of(DEGREES_MINUTES);
            case "h min" -> Optional.of(HOURS_MINUTES);
            case "whole" -> Optional.of(WHOLE);
            default -> step(trimmed);
        };
    }

    private static Optional<Show> step(String text) {
        int end = 0;
        while (end < text.length() && isOfNumber(text.charAt(end))) {
            end++;
        }
        Optional<Show> show = amount(text.substring(0, end));
        String unit = text.substring(end).trim();
        if (show.isEmpty() || unit.isEmpty()) {
            return show;
        }
        return Units.parse(unit).filter(u -> show.get().form != Form.FRACTION || !u.equals(Units.MILLIMETER))
                .map(u -> show.get().in(u));
    }

    private static boolean isOfNumber(char c) {
        return c >= '0' && c <= '9' || c == '.' || c == '/';
    }

    private static Optional<Show> amount(String number) {
        if (number.startsWith("1/")) {
            int bottom = whole(number.substring(2));
            return bottom < 1 || bottom > MOST_BOTTOM ? Optional.empty() : Optional.of(fraction(bottom));
        }
        int point = number.indexOf('.');
        boolean plain = whole(number.substring(0, Math.max(point, 0))) >= 0 || point <= 0;
        String rest = number.substring(point + 1);
        if (!plain || rest.isEmpty() || whole(rest) < 0) {
            return Optional.empty();
        }
        double step = Double.parseDouble(number);
        return step > 0 ? Optional.of(decimal(step)) : Optional.empty();
    }

    /** The number, or −1 when it is not a whole number of up to nine digits. */
    private static int whole(String digits) {
        if (digits.isEmpty() || digits.length() > 9) {
            return -1;
        }
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return -1;
            }
        }
        return Integer.parseInt(digits);
    }
}
