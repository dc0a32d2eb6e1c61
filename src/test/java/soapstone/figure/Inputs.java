package soapstone.figure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.quantity.UnitSystem;

/** Builds inputs of drawings for tests. */
final class Inputs {

    private final String kind;
    private final UnitSystem system;
    private final Map<String, FigureValue> values = new LinkedHashMap<>();
    private Style style = Style.BARE;

    /** How lengths are printed. */
    enum Style { BARE, UNIT, FEET }

    private Inputs(String kind, UnitSystem system) {
        this.kind = kind;
        this.system = system;
    }

    static Inputs of(String kind) {
        return new Inputs(kind, UnitSystem.US);
    }

    static Inputs of(String kind, UnitSystem system) {
        return new Inputs(kind, system);
    }

    Inputs style(Style how) {
        style = how;
        return this;
    }

    Inputs length(String name, double... amounts) {
        return put(name, system == UnitSystem.US ? Units.INCH : Units.MILLIMETER, amounts);
    }

    Inputs number(String name, double amount) {
        return put(name, Units.ONE, amount);
    }

    Inputs angle(String name, double... amounts) {
        return put(name, Units.DEGREE, amounts);
    }

    Inputs put(String name, Unit unit, double... amounts) {
        String[] texts = Arrays.stream(amounts).mapToObj(a -> print(a, unit)).toArray(String[]::new);
        values.put(name, new FigureValue(amounts, unit, texts, null));
        return this;
    }

    Inputs texts(String name, String... texts) {
        FigureValue v = values.get(name);
        values.put(name, new FigureValue(v.amounts(), v.unit(), texts, v.letter()));
        return this;
    }

    /** Asks a value that is there already. */
    Inputs ask(String name, String letter) {
        FigureValue v = values.get(name);
        values.put(name, new FigureValue(v.amounts(), v.unit(), v.texts(), letter));
        return this;
    }

    /** The amounts of a value, none when it is not there. */
    double[] amounts(String name) {
        return values.containsKey(name) ? values.get(name).amounts() : new double[0];
    }

    /** Other amounts in the same unit, printed again, not asked. */
    Inputs change(String name, double[] amounts) {
        return put(name, values.get(name).unit(), amounts);
    }

    Inputs without(String name) {
        values.remove(name);
        return this;
    }

    /** A copy to change. */
    Inputs copy() {
        Inputs other = new Inputs(kind, system).style(style);
        other.values.putAll(values);
        return other;
    }

    FigureInput build() {
        return new FigureInput(kind, values, system);
    }

    private String length(double amount) {
        if (style == Style.BARE) {
            return Sizes.length(amount, system);
        }
        if (style == Style.UNIT || system == UnitSystem.METRIC || amount < 24) {
            return Sizes.lengthWithUnit(amount, system);
        }
        double feet = Math.floor(amount / 12);
        return (long) feet + "\u00A0ft\u00A0" + Sizes.lengthWithUnit(amount - 12 * feet, system);
    }

    private String print(double amount, Unit unit) {
        if (unit == Units.INCH || unit == Units.MILLIMETER) {
            return (amount < 0 ? "−" : "") + length(Math.abs(amount));
        }
        if (unit == Units.DEGREE) {
            return (amount < 0 ? "−" : "") + Sizes.degrees(amount);
        }
        String plain = amount == Math.rint(amount) ? Long.toString((long) amount) : Double.toString(Math.round(amount * 1000) / 1000.0);
        return unit == Units.ONE ? plain : plain + "\u00A0" + unit.symbol();
    }
}
