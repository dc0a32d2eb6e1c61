package soapstone.mark;

import java.util.Arrays;
import java.util.List;
import soapstone.exercise.Ask;
import soapstone.quantity.Reading;

/**
 * A typed answer, ready to be compared: its amounts in base units and the size of the last place of each. Points stand
 * as x, y, x, y.
 */
public final class Typed {

    /** An empty zero is taken for a rounded place only while three figures are left. */
    private static final double LEAST_FIGURES = 100;

    private final String text;
    private final Reading reading;
    private final double[] values;
    private final double[] places;
    private final double[] zeros;

    private Typed(String text, Reading reading, double[] values, double[] places) {
        this.text = text;
        this.reading = reading;
        this.values = values;
        this.places = places;
        this.zeros = new double[values.length];
        for (int i = 0; i < zeros.length; i++) {
            zeros[i] = zeros(values[i], places[i]);
        }
    }

    /** The place of the last digit that is no zero, for a number such as 2480; it may have been rounded to tens. */
    private static double zeros(double value, double place) {
        double size = place;
        while (place > 0 && Math.abs(value) >= LEAST_FIGURES * size * 10 && isMultiple(value, size * 10)) {
            size *= 10;
        }
        return size;
    }

    private static boolean isMultiple(double value, double step) {
        double count = value / step;
        return Math.abs(count - Math.rint(count)) < 1e-9;
    }

    static Typed of(String text, Reading reading, Ask ask) {
        if (reading instanceof Reading.One one) {
            return new Typed(text, reading, new double[] {one.base()}, new double[] {one.place()});
        } else if (reading instanceof Reading.Many many) {
            return many(text, reading, many.items());
        } else if (reading instanceof Reading.Points points) {
            return points(text, points);
        }
        return new Typed(text, reading, new double[0], new double[0]);
    }

    private static Typed many(String text, Reading reading, List<Reading.One> items) {
        return new Typed(text, reading, items.stream().mapToDouble(Reading.One::base).toArray(),
                items.stream().mapToDouble(Reading.One::place).toArray());
    }

    private static Typed points(String text, Reading.Points points) {
        int n = points.x().size();
        double[] values = new double[2 * n];
        double[] places = new double[2 * n];
        for (int i = 0; i < n; i++) {
            values[2 * i] = points.x().get(i).base();
            values[2 * i + 1] = points.y().get(i).base();
            places[2 * i] = points.x().get(i).place();
            places[2 * i + 1] = points.y().get(i).place();
        }
        return new Typed(text, points, values, places);
    }

    /** A choice, by its label's number. */
    static Typed choice(String text, Reading reading, int label) {
        return new Typed(text, reading, new double[] {label}, new double[] {1});
    }

    /** An answer made by a program: an amount in base units with the size of its last place. */
    public static Typed made(double base, double place) {
        return new Typed("", new Reading.Blank(), new double[] {base}, new double[] {place});
    }

    /** As it was typed. */
    public String text() {
        return text;
    }

    public Reading reading() {
        return reading;
    }

    /** How many numbers it holds; a point is two. */
    public int size() {
        return values.length;
    }

    /** A number in base units; of a choice, the number of its label. */
    public double value(int i) {
        return values[i];
    }

    /** The size of the last place that was typed, in base units. */
    public double place(int i) {
        return places[i];
    }

    /** The size of the last place that is not an empty zero. */
    public double lastDigit(int i) {
        return zeros[i];
    }

    /** The amounts of a list, or every second one of points. */
    double[] list(int first, int step) {
        double[] list = new double[(values.length - first + step - 1) / step];
        for (int i = 0; i < list.length; i++) {
            list[i] = values[first + i * step];
        }
        return list;
    }

    boolean isEmpty() {
        return values.length == 0;
    }

    @Override
    public String toString() {
        return text.isEmpty() ? Arrays.toString(values) : text;
    }
}
