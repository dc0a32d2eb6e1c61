package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Units;
import soapstone.quantity.UnitSystem;

/** One or more likely inputs of every kind, for golden files and for the contact sheet. */
final class Samples {

    private Samples() {}

    record Sample(String name, FigureInput right, FigureInput yours) {}

    static List<Sample> all() {
        List<Sample> s = new ArrayList<>();
        holeRows(s);
        gapRows(s);
        markRows(s);
        baffles(s);
        boltCircles(s);
        folds(s);
        flats(s);
        s.addAll(PlateSamples.all());
        tanks(s);
        shapes(s);
        BlankSamples.add(s);
        WorkSamples.add(s);
        return s;
    }

    private static void holeRows(List<Sample> s) {
        Inputs row = Inputs.of("hole-row").length("length", 36.5).length("first", 1.25).length("pitch", 4.25)
                .number("count", 9).length("diameter", 0.4375);
        s.add(new Sample("hole-row", row.copy().ask("pitch", "a").build(), null));
        s.add(new Sample("hole-row-as-cut", row.build(), row.copy().length("pitch", 3.75).build()));
        s.add(new Sample("hole-row-count-asked", row.copy().ask("count", "b").build(), null));
        s.add(new Sample("hole-row-wild", row.build(), row.copy().length("pitch", 200).build()));
        s.add(new Sample("hole-row-more", row.build(), row.copy().number("count", 10).length("pitch", 34 / 9.0).build()));
        Inputs feet = Inputs.of("hole-row").style(Inputs.Style.FEET).length("length", 136.5).length("first", 2.25)
                .length("pitch", 13.2).number("count", 11);
        s.add(new Sample("hole-row-feet", feet.build(), feet.copy().length("pitch", 12).build()));
        s.add(new Sample("hole-row-untold-count", row.copy().texts("count").build(), null));
        Inputs metric = Inputs.of("hole-row", UnitSystem.METRIC).length("length", 2400).length("first", 45)
                .length("pitch", 70).number("count", 34);
        s.add(new Sample("hole-row-metric", metric.texts("length", "2400 mm").build(), null));
    }

    private static void gapRows(List<Sample> s) {
        Inputs row = Inputs.of("gap-row").length("opening", 54).length("width", 0.75).length("gap", 3.75).number("count", 11);
        s.add(new Sample("gap-row", row.copy().ask("gap", "a").build(), null));
        s.add(new Sample("gap-row-as-cut", row.build(), row.copy().length("gap", 4.0625).build()));
        s.add(new Sample("gap-row-short", row.build(), row.copy().length("gap", 3.4375).build()));
        s.add(new Sample("gap-row-count-asked", row.copy().ask("count", "a").ask("gap", "b").build(), null));
        s.add(new Sample("gap-row-wild", row.build(), row.copy().length("gap", 300).build()));
        s.add(new Sample("gap-row-other-count", row.build(), row.copy().number("count", 12).length("gap", 45 / 13.0).build()));
    }

    private static void markRows(List<Sample> s) {
        Inputs row = Inputs.of("mark-row").length("length", 41.375).length("marks", 1.25, 7.25, 13.25, 19.25, 25.25, 31.25, 37.25);
        s.add(new Sample("mark-row", row.build(), null));
        s.add(new Sample("mark-row-asked", row.copy().ask("marks", "a").build(), null));
        s.add(new Sample("mark-row-as-cut", row.build(),
                row.copy().length("marks", 1.25, 6.5, 11.75, 17, 22.25, 27.5, 32.75).build()));
        s.add(new Sample("mark-row-stitch", Inputs.of("mark-row").length("length", 60).length("marks", 0, 2, 6, 8, 58, 60).build(), null));
        double[] many = new double[22];
        for (int i = 0; i < many.length; i++) {
            many[i] = 1 + i * 4.375;
        }
        s.add(new Sample("mark-row-many", Inputs.of("mark-row").length("length", 96).length("marks", many).build(), null));
    }

    private static void boltCircles(List<Sample> s) {
        Inputs c = Inputs.of("bolt-circle").length("diameter", 12).number("count", 8).length("hole", 0.5625).angle("start", 22.5);
        s.add(new Sample("bolt-circle", c.build(), null));
        s.add(new Sample("bolt-circle-asked", c.copy().ask("count", "a").without("start").build(), null));
        s.add(new Sample("bolt-circle-as-cut", c.build(), c.copy().length("diameter", 24).build()));
        s.add(new Sample("bolt-circle-other-count", c.build(), c.copy().number("count", 7).build()));
        s.add(new Sample("bolt-circle-wild", c.build(), c.copy().length("diameter", 240).build()));
    }

    private static void baffles(List<Sample> s) {
        Inputs t = Inputs.of("baffle-tank").length("length", 71.5).length("height", 27.5).length("thickness", 0.25)
                .length("space", 17.6875).number("count", 3);
        s.add(new Sample("baffle-tank", t.copy().ask("space", "c").build(), null));
        s.add(new Sample("baffle-tank-as-cut", t.build(), t.copy().length("space", 23.5).build()));
        s.add(new Sample("baffle-tank-count", t.copy().ask("count", "a").build(), null));
    }

    private static void folds(List<Sample> s) {
        Inputs tray = Inputs.of("folded").length("thickness", 0.078).texts("thickness", "0.078").length("radius", 0.125)
                .length("legs", 1.5, 4, 2.25, 0.75).angle("turns", 90, 90, 90);
        s.add(new Sample("folded", tray.build(), null));
        s.add(new Sample("folded-as-cut", tray.build(), tray.copy().length("legs", 1.5, 4.25, 2.25, 0.75).build()));
        s.add(new Sample("folded-last-leg", tray.build(), tray.copy().length("legs", 1.5, 4, 2.25, 1).build()));
        Inputs zee = Inputs.of("folded").length("thickness", 0.125).length("radius", 0.25).length("legs", 2, 3, 2.5)
                .angle("turns", 60, -60);
        s.add(new Sample("folded-zee", zee.build(), null));
        s.add(new Sample("folded-zee-as-cut", zee.build(), zee.copy().angle("turns", 120, -60).build()));
        Inputs angle = Inputs.of("folded").length("thickness", 0.1875).length("radius", 0.1875).length("legs", 2, 3).angle("turns", 120);
        s.add(new Sample("folded-angle-asked", angle.copy().ask("turns", "b").ask("thickness", "c").build(), null));
        s.add(new Sample("folded-hem", Inputs.of("folded").length("thickness", 0.048).texts("thickness", "18 ga").length("radius", 0.03).texts("radius")
                .length("legs", 0.5, 3, 1.5, 0.375).angle("turns", 180, -90, 45).build(), null));
    }

    private static void flats(List<Sample> s) {
        Inputs strip = Inputs.of("flat-strip").length("width", 7.9375).length("bends", 1.40625, 5.21875, 7.28125).length("zone", 0.25);
        s.add(new Sample("flat-strip", strip.copy().ask("width", "b").ask("zone", "a").build(), null));
        s.add(new Sample("flat-strip-asked", strip.copy().ask("bends", "c").without("zone").build(), null));
        s.add(new Sample("flat-strip-as-cut", strip.build(), strip.copy().length("width", 8.5).length("bends", 1.5, 5.5, 7.75).build()));
        Inputs both = Inputs.of("folded-and-flat").length("thickness", 0.078).texts("thickness", "0.078").length("radius", 0.125)
                .length("legs", 1.5, 4, 2.25, 0.75).angle("turns", 90, 90, 90)
                .length("width", 7.9375).length("bends", 1.40625, 5.21875, 7.28125);
        s.add(new Sample("folded-and-flat", both.copy().ask("width", "b").ask("bends", "c").build(), null));
        s.add(new Sample("folded-and-flat-as-cut", both.build(), both.copy().length("legs", 1.5, 4, 2.25, 1.3125).length("width", 8.5).build()));
    }

    private static void tanks(List<Sample> s) {
        Inputs box = Inputs.of("box-tank").length("length", 72).length("width", 36).length("height", 30).length("level", 20.5);
        s.add(new Sample("box-tank", box.build(), null));
        s.add(new Sample("box-tank-as-cut", box.build(), box.copy().length("level", 25.25).build()));
        s.add(new Sample("box-tank-longer", box.build(), box.copy().length("length", 80).build()));
        s.add(new Sample("box-tank-wider", box.build(), box.copy().length("width", 50).build()));
        Inputs feet = Inputs.of("box-tank").style(Inputs.Style.FEET).length("length", 150.75).length("width", 62.25)
                .length("height", 38.125).length("level", 29.4375);
        s.add(new Sample("box-tank-feet", feet.build(), feet.copy().length("level", 25.5).build()));
        Inputs drum = Inputs.of("lying-drum").length("diameter", 23).length("length", 34.5).length("level", 8.25);
        s.add(new Sample("lying-drum", drum.copy().ask("level", "a").build(), null));
        s.add(new Sample("lying-drum-as-cut", drum.build(), drum.copy().length("level", 13.5).build()));
        s.add(new Sample("lying-drum-diameter", drum.build(), drum.copy().length("diameter", 30).build()));
        s.add(new Sample("lying-drum-long", Inputs.of("lying-drum").length("diameter", 40).length("length", 240).length("level", 33).build(), null));
        s.add(new Sample("upright-drum", Inputs.of("upright-drum").length("diameter", 23).length("height", 34.5).length("level", 20).build(), null));
        s.add(new Sample("tub", Inputs.of("tub").length("top", 30).length("bottom", 22).length("height", 18).length("level", 11).build(), null));
        Inputs panel = Inputs.of("panel").length("width", 36).length("height", 24).length("top", 12).length("center", 26);
        s.add(new Sample("panel", panel.copy().ask("center", "b").build(), null));
        s.add(new Sample("panel-as-cut", panel.build(), panel.copy().length("center", 18).build()));
        s.add(new Sample("panel-surface", Inputs.of("panel").length("width", 48).length("height", 30).length("top", 0).build(), null));
        s.add(new Sample("lid", Inputs.of("lid").length("diameter", 18).put("pressure", Units.PSI, 12).build(), null));
    }

    private static void shapes(List<Sample> s) {
        s.add(new Sample("triangle", Inputs.of("triangle").length("run", 48).length("rise", 31.5).build(), null));
        s.add(new Sample("rule", Inputs.of("rule").length("reading", 3.6875).length("step", 0.0625).ask("reading", "a").build(), null));
        s.add(new Sample("rule-fine", Inputs.of("rule").length("reading", 0.71875).length("step", 0.03125).ask("reading", "a").build(), null));
        s.add(new Sample("rule-metric", Inputs.of("rule", UnitSystem.METRIC).length("reading", 47).length("step", 1).ask("reading", "a").build(), null));
        s.add(new Sample("stack", Inputs.of("stack").length("layers", 0.125, 0.5, 0.125, 0.625, 0.0625).build(), null));
        s.add(new Sample("sector", Inputs.of("sector").length("outer", 20).length("inner", 8).angle("angle", 140).build(), null));
        s.add(new Sample("sector-wide", Inputs.of("sector").length("outer", 20).angle("angle", 250).ask("angle", "b").build(), null));
        s.add(new Sample("sector-slim", Inputs.of("sector").length("outer", 30).length("inner", 12).angle("angle", 40).build(), null));
        Inputs nest = Inputs.of("nest").length("sheet_length", 96).length("sheet_width", 48).length("part_length", 21.5)
                .length("part_width", 9.25).number("along", 4).number("across", 5);
        s.add(new Sample("nest", nest.build(), null));
        s.add(new Sample("nest-asked", nest.copy().ask("along", "a").ask("across", "b").build(), null));
    }
}
