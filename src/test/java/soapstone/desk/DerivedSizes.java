package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soapstone.figure.FigureInput;
import soapstone.figure.FigureValue;
import soapstone.quantity.Dimension;
import soapstone.quantity.UnitSystem;

/**
 * What drawings print that no line of a working holds, each worked out here from the figure's arguments alone: by how much an
 * answer's size is off, and what a kind adds up of its own. The step is that in which a drawing says such a size.
 */
final class DerivedSizes {

    /** The miss of a bend is told as thin sheet is measured, that of a thickness as gauge tables print it. */
    private static final Map<String, double[]> FINE = Map.of("bend", new double[] {0.001, 0.01}, "sheet-edge", new double[] {0.0001, 0.001},
            "metal-edges", new double[] {0.0001, 0.001});

    private final FigureInput right;
    private final FigureInput yours;
    private final List<Size> sizes = new ArrayList<>();

    /** A size in base units and half the step that it is printed in. */
    record Size(double base, Dimension dimension, double slack) {}

    private DerivedSizes(FigureInput right, FigureInput yoursOrNull) {
        this.right = right;
        this.yours = yoursOrNull;
    }

    static List<Size> of(FigureInput right, FigureInput yoursOrNull) {
        DerivedSizes all = new DerivedSizes(right, yoursOrNull);
        all.ofTheKind(right);
        if (yoursOrNull != null) {
            all.misses();
            all.ofTheKind(yoursOrNull);
            all.missesOfTheKind();
        }
        return all.sizes;
    }

    /** What the answer's part has more or less of a size that both have. */
    private void misses() {
        right.values().forEach((name, r) -> {
            double[] a = all(right, name);
            double[] b = all(yours, name);
            for (int i = 0; i < Math.min(a.length, b.length); i++) {
                add(b[i] - a[i], r.unit().dimension());
            }
        });
    }

    /** What a kind prints of one part. */
    private void ofTheKind(FigureInput in) {
        switch (in.kind()) {
            case "hole-row" -> {
                number(one(in, "count") - 1);
                length((one(in, "count") - 1) * one(in, "pitch"));
            }
            case "pan" -> add(90, Dimension.ANGLE);
            default -> { }
        }
    }

    /** Misses that are no difference of one argument. */
    private void missesOfTheKind() {
        switch (right.kind()) {
            case "hole-row" -> length(last(yours) - last(right));
            case "mark-row" -> number(all(yours, "marks").length - all(right, "marks").length);
            case "bolt-circle" -> holes();
            case "bend" -> length((one(yours, "k") - one(right, "k")) * one(right, "thickness"));
            case "baffle-tank" -> length(gaps("count", "thickness", "space") - one(right, "length"));
            case "gap-row" -> length(gaps("count", "width", "gap") - one(right, "opening"));
            case "tank-and-trailer" -> length(gaps("count", "baffle", "space") - one(right, "inside"));
            case "picket-guard" -> {
                length(gaps("pickets", "picket", "gap") - one(right, "opening"));
                posts("run", "posts");
            }
            case "post-row" -> posts("length", "count");
            case "pan" -> right.values().keySet().forEach(name -> length((one(yours, name) - one(right, name)) / 2));
            case "compartments" -> length(one(yours, "length") / (one(yours, "count") + 1) - one(yours, "limit"));
            case "nest" -> number(one(yours, "along") * one(yours, "across") - one(right, "along") * one(right, "across"));
            case "tub", "upright-drum", "box-tank", "lying-drum" -> length(one(yours, "level") - one(yours, right.kind().equals("lying-drum") ? "diameter" : "height"));
            default -> { }
        }
    }

    private double last(FigureInput in) {
        return one(in, "first") + (one(in, "count") - 1) * one(in, "pitch");
    }

    private double gaps(String count, String width, String gap) {
        return one(yours, count) * one(yours, width) + (one(yours, count) + 1) * one(yours, gap);
    }

    private void posts(String length, String count) {
        length(one(yours, "spacing") - one(yours, "limit"));
        length((one(yours, count) - 1) * one(yours, "spacing") - one(right, length));
    }

    /** How far each hole of the answer's circle lies from its place, by the law of cosines. */
    private void holes() {
        double a = one(right, "diameter") / 2;
        double b = one(yours, "diameter") / 2;
        for (int i = 0; i < Math.min(one(right, "count"), one(yours, "count")); i++) {
            double between = Math.toRadians(start(yours) - start(right) + i * (360 / one(yours, "count") - 360 / one(right, "count")));
            length(Math.sqrt(Math.max(0, a * a + b * b - 2 * a * b * Math.cos(between))));
        }
    }

    private static double start(FigureInput in) {
        return in.values().containsKey("start") ? one(in, "start") : 0;
    }

    private void length(double base) {
        add(base, Dimension.LENGTH);
    }

    private void number(double count) {
        add(count, Dimension.NUMBER);
    }

    private void add(double base, Dimension dimension) {
        if (Double.isFinite(base)) {
            sizes.add(new Size(base, dimension, slack(Math.abs(base), dimension)));
        }
    }

    private double slack(double base, Dimension dimension) {
        boolean us = right.system() == UnitSystem.US;
        if (dimension.equals(Dimension.ANGLE)) {
            return 0.05;
        } else if (!dimension.equals(Dimension.LENGTH)) {
            return 0;
        } else if (FINE.containsKey(right.kind())) {
            return FINE.get(right.kind())[us ? 0 : 1] / 2;
        }
        // A miss that is no 64th is still told as one; lengths over an inch come in 16ths, metric ones over 10 mm in halves.
        return us ? base < 1.0 / 128 ? 1.0 / 64 : base < 1 ? 1.0 / 128 : 1.0 / 32 : base < 10 ? 0.05 : 0.25;
    }

    private static double one(FigureInput in, String name) {
        double[] all = all(in, name);
        return all.length == 1 ? all[0] : Double.NaN;
    }

    private static double[] all(FigureInput in, String name) {
        FigureValue v = in.values().get(name);
        double[] all = v == null ? new double[0] : v.amounts();
        for (int i = 0; i < all.length; i++) {
            all[i] = v.unit().toBase(all[i], in.system());
        }
        return all;
    }
}
