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
}
