package soapstone.figure;

import java.math.BigDecimal;
import soapstone.quantity.Units;
import soapstone.quantity.UnitSystem;

/**
 * Prints sizes that only a drawing knows, such as a miss: inches in sixteenths (sixty-fourths when small), millimeters in
 * whole or half steps. Sizes that somebody was given or gave come printed with their value.
 */
final class Sizes {

    private static final int COARSE = 16;
    private static final int FINE = 64;
    private static final int HUNDRED = 100;
    private static final int THOUSAND = 1000;
    private static final double SAME = 1e-6;

    private Sizes() {}

    /** A length of base units without its unit, such as {@code 3 3/4} or {@code 95.5}. */
    static String length(double base, UnitSystem system) {
        return system == UnitSystem.US ? inches(Math.abs(base)) : plain(base, Math.abs(base) < 10 ? 10 : 2);
    }

    /** The same with its unit. */
    static String lengthWithUnit(double base, UnitSystem system) {
        return length(base, system) + "\u00A0" + (system == UnitSystem.US ? Units.INCH : Units.MILLIMETER).symbol();
    }

    /** A length as it is read off a rule with the finest lines, with its unit: sixty-fourths of an inch, half millimeters. */
    static String onRule(double base, UnitSystem system) {
        return system == UnitSystem.US ? inches(Math.abs(base), FINE) + "\u00A0" + Units.INCH.symbol() : lengthWithUnit(base, system);
    }

    /** A length as it is measured on thin sheet: thousandths of an inch, hundredths of a millimeter; with its unit. */
    static String fine(double base, UnitSystem system) {
        return system == UnitSystem.US ? plain(base, THOUSAND) + "\u00A0" + Units.INCH.symbol()
                : plain(base, HUNDRED) + "\u00A0" + Units.MILLIMETER.symbol();
    }

    /** A thickness as gauge tables print it: ten-thousandths of an inch, thousandths of a millimeter; with its unit. */
    static String finest(double base, UnitSystem system) {
        return system == UnitSystem.US ? plain(base, 10 * THOUSAND) + "\u00A0" + Units.INCH.symbol()
                : plain(base, THOUSAND) + "\u00A0" + Units.MILLIMETER.symbol();
    }

    static String degrees(double degrees) {
        return plain(degrees, 10) + "°";
    }

    /** Whether the printed length says exactly what the length is. */
    static boolean isExact(double base, UnitSystem system) {
        double step = system == UnitSystem.US ? 1.0 / (Math.abs(base) < 1 ? FINE : COARSE) : Math.abs(base) < 10 ? 0.1 : 0.5;
        return Math.abs(base / step - Math.rint(base / step)) * step < SAME;
    }

    private static String inches(double inches) {
        return inches(inches, inches < 1 ? FINE : COARSE);
    }

    private static String inches(double inches, int steps) {
        int parts = steps;
        long all = Math.round(inches * parts);
        if (all == 0) {
            return inches == 0 ? "0" : "1/" + FINE;
        }
        long whole = all / parts;
        long rest = all % parts;
        while (rest > 0 && rest % 2 == 0) {
            rest /= 2;
            parts /= 2;
        }
        String fraction = rest == 0 ? "" : rest + "/" + parts;
        return whole == 0 ? fraction : rest == 0 ? Long.toString(whole) : whole + "\u00A0" + fraction;
    }

    /** In so many steps to the whole, with no more places than that takes. */
    private static String plain(double v, int steps) {
        BigDecimal stepped = BigDecimal.valueOf(Math.round(Math.abs(v) * steps)).divide(BigDecimal.valueOf(steps));
        return stepped.signum() == 0 ? "0" : stepped.stripTrailingZeros().toPlainString();
    }
}
