package soapstone.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;
import soapstone.quantity.UnitSystem;

/** Draws sensible inputs of every kind, as an exercise would: a part that could be made, some values asked, some untold. */
final class RandomInputs {

    private final Random random;
    private UnitSystem system;

    RandomInputs(long seed) {
        this.random = new Random(seed);
    }

    /** A part of that kind. */
    Inputs draw(String kind) {
        system = random.nextInt(3) == 0 ? UnitSystem.METRIC : UnitSystem.US;
        Inputs in = Inputs.of(kind, system).style(Inputs.Style.values()[random.nextInt(3)]);
        switch (kind) {
            case "hole-row" -> holeRow(in);
            case "gap-row", "baffle-tank" -> gaps(in, kind);
            case "mark-row" -> marks(in);
            case "bolt-circle" -> boltCircle(in);
            case "folded" -> folded(in);
            case "flat-strip" -> flat(in, between(1, 6), true);
            case "folded-and-flat" -> flat(folded(in), in.amounts("turns").length, false);
            case "box-tank" -> level(in.length("length", size(12, 120)).length("width", size(8, 60)), "height", size(8, 60));
            case "lying-drum" -> level(in.length("length", size(12, 240)), "diameter", size(10, 60));
            case "upright-drum" -> level(in.length("diameter", size(10, 60)), "height", size(10, 60));
            case "tub" -> level(in.length("top", size(10, 60)).length("bottom", size(8, 50)), "height", size(8, 40));
            case "panel" -> panel(in);
            case "lid" -> maybe(in.length("diameter", size(6, 40)), "pressure", Units.PSI, between(1, 80));
            case "triangle" -> triangle(in);
            case "rule" -> rule(in);
            case "stack" -> stack(in);
            case "sector" -> sector(in);
            case "nest" -> nest(in);
            case "pan", "notched-edge", "lid-over-box", "rolled-pipe", "elbow", "square-to-round", "cone-and-flat" -> new RandomBlanks(this).draw(in, kind);
            case "back-gauge", "bend", "brake-die", "brake-force", "skew-frame", "floor-panel", "sheet-edge", "metal-edges", "plate", "ring" -> new RandomPlates(this).draw(in, kind);
            default -> new WorkInputs(random, this).draw(in, kind);
        }
        return in;
    }

    /** The same part as a wrong answer might make it: one or two values off. */
    Inputs off(Inputs right, FigureKind kind) {
        Inputs yours = right.copy();
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            FigureArgument a = kind.arguments().get(random.nextInt(kind.arguments().size()));
            double[] amounts = right.amounts(a.name());
            if (amounts.length == 0) {
                continue;
            }
            double factor = new double[] {0.5, 2, 0.9, 1.1, 0.97, 1.03, 3, 1.3}[random.nextInt(8)];
            int at = random.nextInt(amounts.length);
            double to = a.name().equals("count") ? Math.max(1, amounts[at] + between(-1, 2)) : amounts[at] * factor;
            amounts[at] = a.name().equals("count") ? to : grid(to);
            yours.change(a.name(), amounts);
        }
        return yours;
    }

    /** Asks some values and leaves some untold. */
    void ask(Inputs in, FigureKind kind) {
        char letter = 'a';
        for (FigureArgument a : kind.arguments()) {
            int roll = random.nextInt(6);
            if (in.amounts(a.name()).length > 0 && roll == 0) {
                in.ask(a.name(), String.valueOf(letter++));
            } else if (in.amounts(a.name()).length > 0 && roll == 1) {
                in.texts(a.name());
            }
        }
    }

    boolean coin() {
        return random.nextBoolean();
    }

    double share() {
        return random.nextDouble();
    }

    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    boolean yes() {
        return random.nextBoolean();
    }

    /** Inches between two sizes, on a grid as a shop would have it; the same in millimeters in a metric draw. */
    double size(double low, double high) {
        return grid((low + random.nextDouble() * (high - low)) * (system == UnitSystem.US ? 1 : 25));
    }

    double grid(double v) {
        double step = system == UnitSystem.US ? Math.abs(v) < 1 ? 1.0 / 32 : 1.0 / 16 : 0.5;
        double on = Math.round(v / step) * step;
        return on == 0 ? Math.copySign(step, v) : on;
    }

    private double[] sizes(int n, double low, double high) {
        return random.doubles(n).map(d -> size(low, high)).toArray();
    }

    private double step() {
        return system == UnitSystem.US ? new double[] {0.125, 0.0625, 0.03125}[random.nextInt(3)] : 1;
    }

    private void rule(Inputs in) {
        double step = step();
        int lines = between(3, 150);
        in.length("step", step).length("reading", step * (lines + 0.3));
        if (random.nextBoolean()) {
            in.length("line", step * lines);
        } else {
            in.length("reading", step * lines);
        }
    }

    void maybe(Inputs in, String name, Unit unit, double amount) {
        if (random.nextBoolean()) {
            in.put(name, unit, amount);
        }
    }

    private void holeRow(Inputs in) {
        int n = between(2, 40);
        double pitch = size(1, 8);
        double first = size(0.5, 3);
        in.length("length", 2 * first + (n - 1) * pitch).length("first", first).length("pitch", pitch).number("count", n);
        if (random.nextBoolean()) {
            in.length("diameter", grid(pitch * (0.1 + 0.25 * random.nextDouble())));
        }
    }

    private void gaps(Inputs in, String kind) {
        boolean tank = kind.equals("baffle-tank");
        int n = tank ? between(1, 8) : between(1, 30);
        double width = tank ? size(0.1, 0.4) : size(0.4, 2);
        double gap = tank ? size(8, 30) : size(1, 5);
        in.length(tank ? "length" : "opening", n * width + (n + 1) * gap).length(tank ? "thickness" : "width", width)
                .length(tank ? "space" : "gap", gap).number("count", n);
        if (tank) {
            in.length("height", size(10, 50));
        }
    }

    private void marks(Inputs in) {
        int n = between(1, 26);
        double[] marks = new double[n];
        double at = random.nextInt(3) == 0 ? 0 : size(0.5, 3);
        for (int i = 0; i < n; i++) {
            marks[i] = at;
            at += size(0.8, 7);
        }
        in.length("length", random.nextInt(4) == 0 && n > 1 ? marks[n - 1] : at).length("marks", marks);
    }

    private void boltCircle(Inputs in) {
        int n = between(2, 24);
        double d = size(4, 30);
        in.length("diameter", d).number("count", n);
        if (random.nextBoolean()) {
            in.length("hole", grid(Math.max(0.1, d * Math.sin(Math.PI / n) * 0.3)));
        }
        if (random.nextBoolean()) {
            in.angle("start", random.nextBoolean() ? 180.0 / n : between(0, 90));
        }
    }

    private Inputs folded(Inputs in) {
        int bends = between(1, 6);
        double[] legs = sizes(bends + 1, 1, 6);
        double[] turns = new double[bends];
        boolean square = random.nextBoolean();
        for (int i = 0; i < bends; i++) {
            turns[i] = (square ? 90 : between(6, 28) * 5) * (random.nextInt(3) == 0 ? -1 : 1);
        }
        return in.length("thickness", size(0.03, 0.25)).length("radius", size(0.03, 0.3)).length("legs", legs).angle("turns", turns);
    }

    private void flat(Inputs in, int bends, boolean zones) {
        double[] at = new double[bends];
        double x = size(0.6, 4);
        for (int i = 0; i < bends; i++) {
            at[i] = x;
            x += size(0.6, 5);
        }
        in.length("width", x).length("bends", at);
        if (zones && random.nextBoolean()) {
            in.length("zone", size(0.1, 0.5));
        }
    }

    private void level(Inputs in, String height, double size) {
        in.length(height, size);
        if (random.nextInt(3) > 0) {
            in.length("level", grid(size * (0.05 + 0.9 * random.nextDouble())));
        }
    }

    private void panel(Inputs in) {
        double height = size(6, 60);
        double top = random.nextInt(3) == 0 ? 0 : size(1, 60);
        in.length("width", size(6, 72)).length("height", height).length("top", top);
        if (random.nextBoolean()) {
            double middle = top + height / 2;
            in.length("center", grid(middle + height * height / 12 / middle));
        }
    }

    private void triangle(Inputs in) {
        double run = size(4, 120);
        double rise = size(4, 90);
        in.length("run", run).length("rise", rise);
        if (random.nextBoolean()) {
            double angle = Math.toDegrees(Math.atan2(rise, run));
            in.length("slope", Math.hypot(run, rise)).angle("angle", angle).angle("other", 90 - angle);
        }
    }

    private void stack(Inputs in) {
        double[] layers = sizes(between(1, 7), 0.05, 1);
        double grip = Arrays.stream(layers).sum();
        in.length("layers", layers);
        if (random.nextBoolean()) {
            in.length("grip", grip).length("bolt", grid(grip * 1.4));
        }
    }

    private void sector(Inputs in) {
        double outer = size(6, 40);
        in.length("outer", outer).angle("angle", between(15, 340));
        if (random.nextBoolean()) {
            in.length("inner", grid(outer * (0.1 + 0.7 * random.nextDouble())));
        }
    }

    private void nest(Inputs in) {
        double length = size(48, 144);
        double width = size(24, 60);
        List<Double> part = new ArrayList<>(List.of(size(3, 24), size(3, 24)));
        boolean one = random.nextBoolean();
        in.length("sheet_length", length).length("sheet_width", width).length("part_length", part.get(0))
                .length("part_width", part.get(1)).number("along", one ? 1 : Math.floor(length / part.get(0)))
                .number("across", one ? 1 : Math.floor(width / part.get(1)));
        if (one) {
            in.length("kerf", size(0.06, 0.2));
        }
    }
}
