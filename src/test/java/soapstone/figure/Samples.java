package soapstone.figure;

import java.util.ArrayList;
import java.util.List;
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
}
