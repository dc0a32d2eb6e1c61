package soapstone.figure;

import java.util.Random;
import soapstone.quantity.Unit;
import soapstone.quantity.Units;

/** Sensible inputs of the drawings of work: vessels, welds, loads, rows and whole jobs. */
final class WorkInputs {

    private final Random random;
    private final RandomInputs sizes;

    WorkInputs(Random random, RandomInputs sizes) {
        this.random = random;
        this.sizes = sizes;
    }

    static Unit unit(String name) {
        return Units.parse(name).orElseThrow();
    }

    void draw(Inputs in, String kind) {
        switch (kind) {
            case "water-column" -> column(in);
            case "receiver" -> in.length("diameter", sizes.size(10, 40)).length("thickness", sizes.size(0.1, 0.4))
                    .put("pressure", Units.PSI, sizes.between(40, 160));
            case "baffle-plate" -> in.length("width", sizes.size(28, 48)).length("height", sizes.size(22, 36)).length("opening", sizes.size(8, 20));
            case "compartments" -> {
                in.length("length", sizes.size(60, 140)).number("count", sizes.between(1, 8)).length("limit", sizes.size(14, 30));
                if (random.nextBoolean()) {
                    in.length("width", sizes.size(24, 50));
                }
            }
            case "filling-tank" -> filling(in);
            case "fillet-weld" -> weld(in);
            case "stitch-row" -> stitches(in);
            case "torch-run" -> in.put("travel", unit("in/min"), sizes.between(8, 16)).put("volts", unit("V"), sizes.between(18, 28))
                    .put("amps", unit("A"), sizes.between(90, 220));
            case "trailer" -> trailer(in, random.nextBoolean() ? 0 : sizes.size(36, 60));
            case "loaded-skid" -> skid(in);
            case "sling" -> sling(in);
            case "load-bar" -> in.put("rating", Units.POUND, 3500).put("trailer", Units.POUND, sizes.between(600, 1200))
                    .put("tank", Units.POUND, sizes.between(100, 480)).put("load", Units.POUND, sizes.between(900, 1800));
            case "order-bar" -> order(in);
            case "price-bar" -> in.put("material", Units.DOLLAR, sizes.between(80, 400)).put("labor", Units.DOLLAR, sizes.between(200, 900))
                    .put("price", Units.DOLLAR, sizes.between(1350, 1700));
            default -> row(in, kind);
        }
    }

    private void row(Inputs in, String kind) {
        switch (kind) {
            case "post-row" -> posts(in, "length", "count");
            case "cut-bar" -> bar(in);
            case "butted-bars" -> butted(in);
            case "round-tube" -> in.length("outside", sizes.size(1.5, 4)).length("wall", sizes.size(0.1, 0.3)).length("length", sizes.size(2, 240))
                    .number("count", sizes.between(1, 8));
            case "drill" -> in.length("diameter", sizes.size(0.25, 1)).put("speed", unit("ft/min"), sizes.between(40, 120))
                    .put("turns", unit("rpm"), sizes.between(200, 1600));
            case "area-grid" -> in.length("length", sizes.size(6, 120)).length("width", sizes.size(6, 60));
            case "tank-and-trailer" -> hauling(in);
            case "picket-guard" -> guard(in);
            default -> throw new AssertionError("no inputs for " + kind);
        }
    }

    private void column(Inputs in) {
        double depth = sizes.size(30, 132);
        in.length("depth", depth).length("head", depth);
        if (random.nextInt(4) > 0) {
            in.put("pressure", Units.PSI, Math.round(depth * 3.6) / 100.0);
        }
    }

    private void filling(Inputs in) {
        int capacity = sizes.between(60, 300);
        in.put("capacity", Units.GALLONS, capacity).put("start", Units.GALLONS, sizes.between(0, 40))
                .put("flow", unit("gal/min"), sizes.between(2, 12)).put("filled", Units.GALLONS, capacity);
    }

    private void weld(Inputs in) {
        double leg = sizes.size(0.18, 0.5);
        in.length("leg", leg);
        if (random.nextBoolean()) {
            in.length("throat", sizes.grid(leg * 0.7071));
        }
        if (random.nextBoolean()) {
            double seam = sizes.size(20, 900);
            in.length("seam", seam).length("welded", seam);
        }
    }

    private void stitches(Inputs in) {
        double stitch = sizes.size(1, 3);
        double pitch = sizes.grid(stitch * (1.3 + 3 * random.nextDouble()));
        int n = sizes.between(1, 18);
        in.length("length", stitch + (n - 1) * pitch).length("stitch", stitch).length("pitch", pitch).number("count", n);
    }

    /** @param bed from the ball to the front of the bed; 0 where all is measured from the ball */
    private void trailer(Inputs in, double bed) {
        double axle = bed == 0 ? sizes.size(110, 150) : sizes.size(70, 96);
        double center = axle - sizes.size(6, 24);
        if (bed > 0) {
            in.length("bed", bed);
        }
        in.length("axle", axle).length("center", center).length("place", center).put("tongue", Units.POUND, sizes.between(150, 600));
    }

    private void skid(Inputs in) {
        double a = sizes.size(8, 24);
        double b = a + sizes.size(10, 50);
        double one = sizes.between(20, 240);
        double two = sizes.between(20, 240);
        in.length("length", b + sizes.size(8, 40)).length("places", a, b).put("weights", Units.POUND, one, two)
                .length("balance", sizes.grid((a * one + b * two) / (one + two)));
    }

    private void sling(Inputs in) {
        double angle = sizes.between(6, 14) * 5;
        double load = sizes.between(20, 150) * 20;
        in.put("load", Units.POUND, load).length("spread", sizes.size(24, 72)).angle("angle", angle)
                .put("pull", Units.POUND, Math.round(load / 2 / Math.sin(Math.toRadians(angle))));
    }

    private void order(Inputs in) {
        double net = sizes.between(12, 80) * 5;
        in.put("order", unit("ft2"), Math.round(net / 0.85)).put("good", unit("ft2"), net).put("net", unit("ft2"), net).put("piece", unit("ft2"), 32);
    }

    private void posts(Inputs in, String run, String count) {
        int n = sizes.between(2, 12);
        double spacing = sizes.size(48, 96);
        in.length(run, (n - 1) * spacing).length("spacing", spacing).number(count, n).length("limit", spacing + sizes.size(0.1, 6));
    }

    private void bar(Inputs in) {
        int n = sizes.between(1, 14);
        double piece = sizes.size(3, 16);
        double kerf = sizes.size(0.06, 0.2);
        int cuts = random.nextBoolean() ? n : n - 1;
        in.length("piece", piece).length("kerf", kerf).number("count", n).number("cuts", cuts).length("length", n * piece + cuts * kerf);
    }

    private void butted(Inputs in) {
        double total = 0;
        for (String part : new String[] {"first", "second", "third"}) {
            double large = sizes.size(24, 108);
            double rest = sizes.size(1, 11);
            in.length(part, large).length(part + "_rest", rest);
            total += large + rest;
        }
        in.length("total", total);
    }

    private void hauling(Inputs in) {
        double inside = sizes.size(60, 96);
        int n = sizes.between(2, 6);
        double baffle = sizes.size(0.15, 0.3);
        in.length("length", inside + sizes.size(0.2, 0.5)).length("width", sizes.size(32, 44)).length("height", sizes.size(22, 32))
                .length("inside", inside).length("inside_height", sizes.size(21, 31)).length("baffle", baffle)
                .length("space", (inside - n * baffle) / (n + 1)).number("count", n);
        trailer(in, 0);
    }

    private void guard(Inputs in) {
        posts(in, "run", "posts");
        int n = sizes.between(6, 16);
        double picket = sizes.size(0.5, 0.8);
        double gap = sizes.size(3, 4);
        in.length("opening", n * picket + (n + 1) * gap).length("picket", picket).length("gap", gap).number("pickets", n);
    }
}
