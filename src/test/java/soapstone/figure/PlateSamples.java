package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Units;
import soapstone.quantity.UnitSystem;

/** Likely inputs of bends, brake tools and plates. */
final class PlateSamples {

    private PlateSamples() {}

    static List<Samples.Sample> all() {
        List<Samples.Sample> s = new ArrayList<>();
        bends(s);
        brakes(s);
        gauges(s);
        plates(s);
        return s;
    }

    private static void bends(List<Samples.Sample> s) {
        Inputs b = Inputs.of("bend").length("thickness", 0.0747).texts("thickness", "0.0747").length("radius", 0.125).angle("angle", 90)
                .number("k", 0.42);
        Inputs allowance = b.copy().length("allowance", 0.2456).texts("allowance", "0.246");
        s.add(new Samples.Sample("bend", allowance.copy().ask("allowance", "a").build(), null));
        s.add(new Samples.Sample("bend-as-cut", allowance.build(), allowance.copy().length("allowance", 0.3137).texts("allowance", "0.314").build()));
        Inputs closed = b.copy().angle("angle", 135).length("setback", 0.4821).texts("setback", "0.482");
        s.add(new Samples.Sample("bend-setback", closed.copy().length("first", 2).length("second", 2).ask("setback", "a").build(), null));
        s.add(new Samples.Sample("bend-setback-as-cut", closed.build(), closed.copy().length("setback", 0.1997).texts("setback", "0.200").build()));
        Inputs deduction = b.copy().length("setback", 0.1997).texts("setback", "0.200").length("deduction", 0.1538).texts("deduction", "0.154");
        s.add(new Samples.Sample("bend-deduction", deduction.copy().texts("setback").ask("deduction", "a").build(), null));
        s.add(new Samples.Sample("bend-deduction-as-cut", deduction.build(), deduction.copy().length("deduction", 0.2456).texts("deduction", "0.246").build()));
        s.add(new Samples.Sample("bend-deduction-wild", deduction.build(), deduction.copy().length("deduction", 0.645).texts("deduction", "0.645").build()));
        Inputs strip = Inputs.of("bend", UnitSystem.METRIC).length("thickness", 3).length("radius", 4).angle("angle", 60).number("k", 0.38)
                .length("first", 52.4).length("second", 71.08).texts("second", "71.08");
        s.add(new Samples.Sample("bend-k", strip.copy().ask("k", "a").build(), null));
        s.add(new Samples.Sample("bend-k-as-cut", strip.build(), strip.copy().number("k", 0.76).build()));
        s.add(new Samples.Sample("bend-open", b.copy().angle("angle", 30).length("allowance", 0.09).texts("allowance", "0.090").build(), null));
    }

    private static void brakes(List<Samples.Sample> s) {
        Inputs die = Inputs.of("brake-die").length("thickness", 0.1196).texts("thickness", "0.1196").length("opening", 1).length("radius", 0.156)
                .length("flange", 0.6875);
        s.add(new Samples.Sample("brake-die", die.copy().texts("radius").texts("flange").ask("opening", "b").build(), null));
        s.add(new Samples.Sample("brake-die-told", die.build(), null));
        s.add(new Samples.Sample("brake-die-as-cut", die.build(), die.copy().length("opening", 0.75).length("flange", 0.516).build()));
        s.add(new Samples.Sample("brake-die-wider", die.build(), die.copy().length("opening", 1.5).build()));
        s.add(new Samples.Sample("brake-die-wild", die.build(), die.copy().length("opening", 30).length("flange", 20).build()));
        Inputs force = Inputs.of("brake-force", UnitSystem.METRIC).length("thickness", 4).length("opening", 32).length("radius", 5)
                .texts("radius").length("length", 2500).put("force", Units.NEWTONS, 660_000).put("rating", Units.NEWTONS, 1_250_000).texts("rating", "1250 kN");
        s.add(new Samples.Sample("brake-force", force.copy().ask("force", "a").build(), null));
        Inputs us = Inputs.of("brake-force").style(Inputs.Style.UNIT).length("thickness", 0.125).length("opening", 1).length("radius", 0.156).length("length", 96)
                .put("force", Units.POUND_FORCE, 143750).texts("force", "72 ton");
        s.add(new Samples.Sample("brake-force-told", us.build(), null));
    }

    private static void gauges(List<Samples.Sample> s) {
        Inputs gauge = Inputs.of("back-gauge").length("thickness", 0.1046).texts("thickness", "0.1046").length("radius", 0.125).length("legs", 2.5, 4)
                .angle("turns", 90).length("opening", 0.75).texts("opening").length("blank", 6.3125).length("stop", 2.40625);
        s.add(new Samples.Sample("back-gauge", gauge.copy().ask("blank", "a").ask("stop", "b").build(), null));
        s.add(new Samples.Sample("back-gauge-as-cut", gauge.build(), gauge.copy().length("stop", 2.25).build()));
        s.add(new Samples.Sample("back-gauge-blank", gauge.build(), gauge.copy().length("blank", 6.8125).length("stop", 2.5).build()));
        s.add(new Samples.Sample("back-gauge-wild", gauge.build(), gauge.copy().length("stop", 60).build()));
    }

    private static void plates(List<Samples.Sample> s) {
        Inputs frame = Inputs.of("skew-frame").length("length", 48).length("height", 36).texts("height").length("lean", 1.5).texts("lean")
                .length("push", 1.5).length("long", 61.1875).length("short", 58.8125);
        s.add(new Samples.Sample("skew-frame", frame.copy().ask("push", "a").build(), null));
        s.add(new Samples.Sample("skew-frame-as-cut", frame.build(), frame.copy().length("push", 0.75).build()));
        s.add(new Samples.Sample("skew-frame-over", frame.build(), frame.copy().length("push", 3).build()));
        s.add(new Samples.Sample("skew-frame-wild", frame.build(), frame.copy().length("push", 300).build()));
        s.add(new Samples.Sample("floor-panel", Inputs.of("floor-panel").style(Inputs.Style.UNIT).length("long", 32).length("short", 20)
                .length("thickness", 0.25).length("depth", 48).build(), null));
        s.add(new Samples.Sample("floor-panel-metric", Inputs.of("floor-panel", UnitSystem.METRIC).style(Inputs.Style.UNIT).length("long", 1200)
                .length("short", 600).length("thickness", 6).length("depth", 150).build(), null));
        Inputs plate = Inputs.of("plate").style(Inputs.Style.UNIT).length("length", 44.5).length("width", 22).length("thickness", 0.375);
        s.add(new Samples.Sample("plate", plate.copy().length("window_length", 16).length("window_width", 8.5).build(), null));
        s.add(new Samples.Sample("plate-pieces", plate.copy().length("thickness", 0.0598).texts("thickness", "0.0598 in").number("pieces", 6).build(), null));
        s.add(new Samples.Sample("ring", Inputs.of("ring").length("outer", 14.25).length("hole", 10.75).number("pieces", 9).build(), null));
        Inputs edge = Inputs.of("sheet-edge").length("thickness", 0.0635).texts("thickness", "0.0635 in");
        s.add(new Samples.Sample("sheet-edge", edge.copy().ask("thickness", "a").build(), null));
        s.add(new Samples.Sample("sheet-edge-as-cut", edge.build(), edge.copy().length("thickness", 0.0508).texts("thickness", "0.0508 in").build()));
        Inputs metals = Inputs.of("metal-edges").number("aluminum_number", 10).length("aluminum", 0.1019).texts("aluminum", "0.1019 in").number("carbon_number", 11)
                .length("carbon", 0.1196).texts("carbon", "0.1196 in").number("galvanized_number", 14).length("galvanized", 0.0785).texts("galvanized", "0.0785 in")
                .number("stainless_number", 12).length("stainless", 0.1094).texts("stainless", "0.1094 in").length("picked", 0.1196).texts("picked", "0.1196 in");
        s.add(new Samples.Sample("metal-edges", metals.copy().texts("aluminum").texts("carbon").texts("galvanized").texts("stainless").build(), null));
        s.add(new Samples.Sample("metal-edges-as-cut", metals.build(), metals.copy().length("picked", 0.1019).texts("picked", "0.1019 in").build()));
        s.add(new Samples.Sample("sheet-edge-thicker", edge.build(), edge.copy().length("thickness", 0.0747).texts("thickness", "0.0747 in").build()));
    }
}
