package soapstone.figure;

import soapstone.quantity.Units;

/** Sensible inputs of bends, brake tools and plates. */
final class RandomPlates {

    private final RandomInputs random;

    RandomPlates(RandomInputs random) {
        this.random = random;
    }

    void draw(Inputs in, String kind) {
        switch (kind) {
            case "bend" -> bend(in);
            case "brake-die" -> maybe(brake(in), "flange", random.grid(in.amounts("opening")[0] * 0.6875));
            case "brake-force" -> random.maybe(brake(in).length("length", random.size(20, 120)).put("force", Units.POUND_FORCE, random.between(1, 400) * 500),
                    "rating", Units.POUND_FORCE, random.between(40, 230) * 2000);
            case "back-gauge" -> backGauge(brake(in));
            case "skew-frame" -> skewFrame(in);
            case "floor-panel" -> floorPanel(in);
            case "metal-edges" -> metals(in);
            case "sheet-edge" -> in.length("thickness", random.size(0.02, 0.25));
            case "plate" -> plate(in);
            case "ring" -> ring(in);
            default -> throw new AssertionError("no inputs for " + kind);
        }
    }

    private void bend(Inputs in) {
        double thickness = random.size(0.05, 0.2);
        double radius = random.grid(thickness * (0.8 + 2.2 * random.share()));
        double angle = random.between(6, 30) * 5;
        double setback = StrictMath.tan(Math.toRadians(angle / 2)) * (radius + thickness);
        in.length("thickness", thickness).length("radius", radius).angle("angle", angle);
        random.maybe(in, "k", Units.ONE, random.between(30, 50) / 100.0);
        double allowance = Math.toRadians(angle) * (radius + 0.4 * thickness);
        int what = random.between(0, 3);
        if (what == 0) {
            in.length("allowance", allowance);
        } else if (what < 3) {
            in.length("setback", setback);
            if (what == 2) {
                in.length("deduction", 2 * setback - allowance);
            }
        }
        if (random.coin()) {
            in.length("first", setback + random.size(0.5, 2)).length("second", setback + random.size(0.1, 4));
        }
    }

    private Inputs brake(Inputs in) {
        double thickness = random.size(0.04, 0.4);
        double opening = random.grid(thickness * random.between(6, 12));
        return in.length("thickness", thickness).length("opening", opening).length("radius", random.grid(opening * 0.156));
    }

    private void backGauge(Inputs in) {
        double leg = random.size(1.25, 5);
        double other = random.size(1.25, 8);
        double deduction = random.size(0.1, 0.3);
        in.length("legs", leg, other).angle("turns", 90).length("blank", leg + other - deduction).length("stop", leg - deduction / 2);
    }

    private void skewFrame(Inputs in) {
        double length = random.size(30, 84);
        double height = length * (0.55 + 0.8 * random.share());
        double lean = random.size(0.5, 2);
        in.length("length", length).length("height", random.grid(height)).length("lean", lean).length("push", lean)
                .length("long", random.grid(Math.hypot(length + lean, height))).length("short", random.grid(Math.hypot(length - lean, height)));
    }

    private void floorPanel(Inputs in) {
        double wide = random.size(12, 25);
        in.length("short", wide).length("long", random.grid(wide * random.between(10, 20) / 10)).length("thickness", random.size(0.15, 0.35))
                .length("depth", random.size(10, 60));
    }

    private void plate(Inputs in) {
        double length = random.size(20, 96);
        double width = random.size(12, 48);
        in.length("length", length).length("width", width);
        maybe(in, "thickness", random.size(0.04, 0.5));
        random.maybe(in, "pieces", Units.ONE, random.between(2, 8));
        if (random.coin()) {
            in.length("window_length", random.grid(length * (0.2 + 0.5 * random.share())))
                    .length("window_width", random.grid(width * (0.2 + 0.5 * random.share())));
        }
    }

    private void ring(Inputs in) {
        double outer = random.size(8, 20);
        random.maybe(in.length("outer", outer).length("hole", random.grid(outer * (0.3 + 0.5 * random.share()))), "pieces", Units.ONE, random.between(4, 16));
    }

    private void maybe(Inputs in, String name, double length) {
        if (random.coin()) {
            in.length(name, length);
        }
    }

    private Inputs metals(Inputs in) {
        double picked = 0;
        for (String metal : new String[] {"aluminum", "carbon", "galvanized", "stainless"}) {
            double thick = random.size(0.02, 0.25);
            picked = Math.max(picked, thick);
            in.number(metal + "_number", random.between(8, 24)).length(metal, thick);
        }
        return in.length("picked", picked);
    }
}
