package soapstone.speed;

import soapstone.mark.Typed;
import soapstone.quantity.Notation;
import soapstone.quantity.Reading;

/**
 * A typed answer as bare numbers, which is what written-out Java gets to see. Points stand as x, y, x, y.
 *
 * @param values  in base units
 * @param places  sizes of the last places typed, in base units
 * @param last    sizes of the last places that are no empty zeros, in base units
 * @param amount  the single number in the unit typed; NaN when there are several
 * @param bare    whether the single number was typed without a unit
 * @param decimal whether the single number was typed as a decimal
 */
public record PlainAnswer(double[] values, double[] places, double[] last, double amount, boolean bare, boolean decimal) {

    static PlainAnswer of(Typed typed) {
        double[] values = new double[typed.size()];
        double[] places = new double[values.length];
        double[] last = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = typed.value(i);
            places[i] = typed.place(i);
            last[i] = typed.lastDigit(i);
        }
        if (typed.reading() instanceof Reading.One one) {
            return new PlainAnswer(values, places, last, one.amount(), one.bare(), one.notation() == Notation.DECIMAL);
        }
        return new PlainAnswer(values, places, last, Double.NaN, false, false);
    }
}
