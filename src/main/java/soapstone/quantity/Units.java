package soapstone.quantity;

import static soapstone.quantity.Dimension.ANGLE;
import static soapstone.quantity.Dimension.AREA;
import static soapstone.quantity.Dimension.CURRENT;
import static soapstone.quantity.Dimension.FORCE;
import static soapstone.quantity.Dimension.LENGTH;
import static soapstone.quantity.Dimension.MASS;
import static soapstone.quantity.Dimension.MONEY;
import static soapstone.quantity.Dimension.NUMBER;
import static soapstone.quantity.Dimension.PRESSURE;
import static soapstone.quantity.Dimension.TEMPERATURE;
import static soapstone.quantity.Dimension.TIME;
import static soapstone.quantity.Dimension.VOLUME;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import soapstone.quantity.Unit.Factor;

/**
 * The closed table of units. Definitions: NIST SP 811 (2008) appendix B (inch 25.4 mm, US gallon 231 in3, pound
 * 0.45359237 kg, pound of force 4.4482216152605 N, all exact).
 */
public final class Units {

    private static final double MM = 25.4;
    private static final double KG = 0.45359237;
    private static final double NEWTON = 4.4482216152605;
    private static final double GALLON = 231;
    /** Cubic millimetres in a cubic inch, exact. */
    private static final double MM3 = 16387.064;
    private static final double KPA = NEWTON / (MM * MM) * 1000;
    private static final Dimension ENERGY = FORCE.times(LENGTH);
    private static final Dimension POWER = ENERGY.over(TIME);

    private static final Map<String, Unit> TABLE = new LinkedHashMap<>();

    /** A plain number. */
    public static final Unit ONE = put("1", "", NUMBER, 1, 1);
    public static final Unit PERCENT = put("%", "%", NUMBER, Factor.over(100), Factor.over(100));
    public static final Unit INCH = length("in", "in", 1);
    public static final Unit FOOT = length("ft", "ft", 12);
    public static final Unit YARD = length("yd", "yd", 36);
    public static final Unit MILLIMETER = put("mm", "mm", LENGTH, Factor.over(MM), Factor.ONE);
    public static final Unit CENTIMETER = put("cm", "cm", LENGTH, new Factor(10, MM, 0), Factor.of(10));
    public static final Unit METER = put("m", "m", LENGTH, new Factor(1000, MM, 0), Factor.of(1000));
    public static final Unit GALLONS = put("gal", "gal", VOLUME, GALLON, GALLON * MM3);
    public static final Unit LITER = put("L", "L", VOLUME, new Factor(1e6, MM3, 0), Factor.of(1e6));
    public static final Unit POUND = put("lb", "lb", MASS, 1, KG);
    public static final Unit KILOGRAM = put("kg", "kg", MASS, Factor.over(KG), Factor.ONE);
    public static final Unit POUND_FORCE = put("lbf", "lb", FORCE, 1, NEWTON);
    public static final Unit NEWTONS = put("N", "N", FORCE, Factor.over(NEWTON), Factor.ONE);
    public static final Unit PSI = put("psi", "psi", PRESSURE, Factor.ONE, new Factor(NEWTON, MM * MM, 0));
    public static final Unit KILOPASCAL = put("kPa", "kPa", PRESSURE, Factor.over(KPA), Factor.over(1000));
    public static final Unit SECOND = put("s", "s", TIME, 1, 1);
    public static final Unit MINUTE = put("min", "min", TIME, 60, 60);
    public static final Unit HOUR = put("h", "h", TIME, 3600, 3600);
    public static final Unit DEGREE = put("deg", "°", ANGLE, 1, 1);
    public static final Unit ARCMIN = put("arcmin", "′", ANGLE, Factor.over(60), Factor.over(60));
    public static final Unit ARCSEC = put("arcsec", "″", ANGLE, Factor.over(3600), Factor.over(3600));
    public static final Unit DOLLAR = put("dollar", "$", MONEY, 1, 1);

    static {
        area("in2", "in²", 1);
        area("ft2", "ft²", 144);
        area("yd2", "yd²", 1296);
        put("mm2", "mm²", AREA, Factor.over(MM * MM), Factor.ONE);
        put("cm2", "cm²", AREA, new Factor(100, MM * MM, 0), Factor.of(100));
        put("m2", "m²", AREA, new Factor(1e6, MM * MM, 0), Factor.of(1e6));
        put("in3", "in³", VOLUME, 1, MM3);
        put("ft3", "ft³", VOLUME, 1728, 1728 * MM3);
        put("yd3", "yd³", VOLUME, 46656, 46656 * MM3);
        put("qt", "qt", VOLUME, Factor.of(57.75), Factor.of(57.75 * MM3));
        put("mm3", "mm³", VOLUME, Factor.over(MM3), Factor.ONE);
        put("cm3", "cm³", VOLUME, new Factor(1000, MM3, 0), Factor.of(1000));
        put("m3", "m³", VOLUME, new Factor(1e9, MM3, 0), Factor.of(1e9));
        put("mL", "mL", VOLUME, new Factor(1000, MM3, 0), Factor.of(1000));
        put("in4", "in⁴", LENGTH.power(4), 1, MM3 * MM);
        put("mm4", "mm⁴", LENGTH.power(4), Factor.over(MM3 * MM), Factor.ONE);
        put("oz", "oz", MASS, Factor.over(16), new Factor(KG, 16, 0));
        put("ton", "ton", MASS, 2000, 2000 * KG);
        put("g", "g", MASS, Factor.over(KG * 1000), Factor.over(1000));
        put("t", "t", MASS, new Factor(1000, KG, 0), Factor.of(1000));
        put("kip", "kip", FORCE, 1000, 1000 * NEWTON);
        put("tonf", "ton", FORCE, 2000, 2000 * NEWTON);
        put("kN", "kN", FORCE, new Factor(1000, NEWTON, 0), Factor.of(1000));
        put("ksi", "ksi", PRESSURE, Factor.of(1000), new Factor(1000 * NEWTON, MM * MM, 0));
        put("psf", "lb/ft²", PRESSURE, Factor.over(144), new Factor(NEWTON, MM * MM * 144, 0));
        put("Pa", "Pa", PRESSURE, Factor.over(KPA * 1000), Factor.over(1e6));
        put("MPa", "MPa", PRESSURE, new Factor(1000, KPA, 0), Factor.ONE);
        put("bar", "bar", PRESSURE, new Factor(100, KPA, 0), Factor.over(10));
        put("s2", "s²", TIME.power(2), 1, 1);
        put("min2", "min²", TIME.power(2), 3600, 3600);
        put("rpm", "rpm", NUMBER.over(TIME), Factor.over(60), Factor.over(60));
        put("Hz", "Hz", NUMBER.over(TIME), 1, 1);
        put("J", "J", ENERGY, new Factor(1000, MM * NEWTON, 0), Factor.of(1000));
        put("kJ", "kJ", ENERGY, new Factor(1e6, MM * NEWTON, 0), Factor.of(1e6));
        put("W", "W", POWER, new Factor(1000, MM * NEWTON, 0), Factor.of(1000));
        put("kW", "kW", POWER, new Factor(1e6, MM * NEWTON, 0), Factor.of(1e6));
        put("A", "A", CURRENT, 1, 1);
        put("V", "V", POWER.over(CURRENT), new Factor(1000, MM * NEWTON, 0), Factor.of(1000));
        // The base of a temperature is the degree of the system's own scale.
        put("degF", "°F", TEMPERATURE, Factor.ONE, new Factor(5, 9, -32));
        put("degC", "°C", TEMPERATURE, new Factor(9, 5, 160.0 / 9), Factor.ONE);
    }

    private Units() {}

    private static Unit put(String name, String symbol, Dimension dimension, Factor us, Factor metric) {
        Unit unit = new Unit(name, symbol, dimension, us, metric);
        TABLE.put(name, unit);
        return unit;
    }

    private static Unit put(String name, String symbol, Dimension dimension, double us, double metric) {
        return put(name, symbol, dimension, Factor.of(us), Factor.of(metric));
    }

    private static Unit length(String name, String symbol, double inches) {
        return put(name, symbol, LENGTH, inches, inches * MM);
    }

    private static void area(String name, String symbol, double squareInches) {
        put(name, symbol, AREA, squareInches, squareInches * MM * MM);
    }

    /** The unit of that name in the table (single units only, not compounds), or empty. */
    public static Optional<Unit> named(String name) {
        return Optional.ofNullable(TABLE.get(name));
    }

    public static Collection<Unit> all() {
        return Collections.unmodifiableCollection(TABLE.values());
    }

    /**
     * Reads a unit that may be a compound such as {@code lbf/ft3}, {@code dollar/lb} or {@code lbf*in}; also
     * {@code lbf*in/ft}, left to right.
     */
    public static Optional<Unit> parse(String text) {
        Unit sofar = null;
        int at = 0;
        while (at <= text.length()) {
            int end = at;
            while (end < text.length() && text.charAt(end) != '/' && text.charAt(end) != '*') {
                end++;
            }
            Unit next = TABLE.get(text.substring(at, end).trim());
            if (next == null) {
                return Optional.empty();
            }
            sofar = sofar == null ? next : text.charAt(at - 1) == '/' ? sofar.over(next) : sofar.times(next);
            if (end == text.length()) {
                break;
            }
            at = end + 1;
        }
        return Optional.ofNullable(sofar);
    }

    /** The unit in which a shop of that system would state such a quantity. */
    public static Unit usual(Dimension dimension, UnitSystem system) {
        Unit named = usualNamed(dimension, system == UnitSystem.US);
        return named != null ? named : spelled(dimension, system);
    }

    private static Unit usualNamed(Dimension d, boolean us) {
        if (d.equals(NUMBER)) {
            return ONE;
        }
        if (d.equals(LENGTH)) {
            return us ? INCH : MILLIMETER;
        }
        if (d.equals(AREA)) {
            return TABLE.get(us ? "in2" : "mm2");
        }
        if (d.equals(VOLUME)) {
            return TABLE.get(us ? "in3" : "mm3");
        }
        if (d.equals(MASS)) {
            return us ? POUND : KILOGRAM;
        }
        if (d.equals(FORCE)) {
            return us ? POUND_FORCE : NEWTONS;
        }
        if (d.equals(PRESSURE)) {
            return us ? PSI : KILOPASCAL;
        }
        if (d.equals(TIME)) {
            return MINUTE;
        }
        if (d.equals(ANGLE)) {
            return DEGREE;
        }
        return usualRest(d, us);
    }

    private static Unit usualRest(Dimension d, boolean us) {
        if (d.equals(MONEY)) {
            return DOLLAR;
        }
        if (d.equals(TEMPERATURE)) {
            return TABLE.get(us ? "degF" : "degC");
        }
        if (d.equals(CURRENT)) {
            return TABLE.get("A");
        }
        if (d.equals(POWER.over(CURRENT))) {
            return TABLE.get("V");
        }
        if (d.equals(POWER)) {
            return TABLE.get("W");
        }
        if (d.equals(NUMBER.over(TIME))) {
            return TABLE.get("Hz");
        }
        return d.equals(LENGTH.power(4)) ? TABLE.get(us ? "in4" : "mm4") : null;
    }

    /** A compound of base units for a dimension that has no usual unit, so that every quantity can be printed. */
    private static Unit spelled(Dimension d, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        Unit[] bases = {us ? INCH : MILLIMETER, us ? POUND : KILOGRAM, us ? POUND_FORCE : NEWTONS, SECOND, DEGREE,
            TABLE.get(us ? "degF" : "degC"), DOLLAR, TABLE.get("A")};
        Unit sofar = null;
        for (int sign = 1; sign >= -1; sign -= 2) {
            for (int i = 0; i < bases.length; i++) {
                for (int n = d.exponent(i) * sign; n > 0; n--) {
                    sofar = sofar == null ? (sign > 0 ? bases[i] : ONE.over(bases[i]))
                            : sign > 0 ? sofar.times(bases[i]) : sofar.over(bases[i]);
                }
            }
        }
        return sofar == null ? ONE : sofar;
    }
}
