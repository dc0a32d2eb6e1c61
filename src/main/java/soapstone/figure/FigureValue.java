package soapstone.figure;

import java.util.Arrays;
import java.util.Objects;
import soapstone.quantity.Unit;

/**
 * One value of a drawing: a number or a list of numbers, and what is printed for it.
 *
 * @param amounts how many of the unit, one for a single value; not finite where a value is undefined
 * @param unit    the unit of all amounts
 * @param texts   what the drawing prints, one for each amount; without texts the value shapes the part and is not printed
 *                (a row with such a count is broken, so that nobody can count it)
 * @param letter  the letter of an asked quantity, printed in a square frame in place of the texts; or null
 */
public record FigureValue(double[] amounts, Unit unit, String[] texts, String letter) {

    public FigureValue {
        amounts = amounts.clone();
        Objects.requireNonNull(unit);
        texts = texts == null ? new String[0] : texts.clone();
    }

    /** A single value that is told. */
    public static FigureValue told(double amount, Unit unit, String text) {
        return new FigureValue(new double[] {amount}, unit, new String[] {text}, null);
    }

    /** A single value that is asked: drawn to scale, printed as its letter. */
    public static FigureValue asked(double amount, Unit unit, String letter) {
        return new FigureValue(new double[] {amount}, unit, new String[0], letter);
    }

    @Override
    public double[] amounts() {
        return amounts.clone();
    }

    @Override
    public String[] texts() {
        return texts.clone();
    }

    /** True when only the letter may be printed. */
    public boolean isAsked() {
        return letter != null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FigureValue that && Arrays.equals(amounts, that.amounts) && unit.equals(that.unit)
                && Arrays.equals(texts, that.texts) && Objects.equals(letter, that.letter);
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(amounts), unit, Arrays.hashCode(texts), letter);
    }
}
