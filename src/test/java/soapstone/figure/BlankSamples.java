package soapstone.figure;

import java.util.List;
import soapstone.quantity.UnitSystem;

/** Likely inputs of blanks, lids, pipes, elbows and cones. */
final class BlankSamples {

    private BlankSamples() {}

    static void add(List<Samples.Sample> s) {
        pans(s);
        lids(s);
        pipes(s);
        elbows(s);
        slopes(s);
        cones(s);
        answers(s);
    }

    private static void put(List<Samples.Sample> s, String name, Inputs right, Inputs yours) {
        s.add(new Samples.Sample(name, right.build(), yours == null ? null : yours.build()));
    }

    private static void pans(List<Samples.Sample> s) {
        Inputs pan = Inputs.of("pan").length("length", 25).length("width", 17).length("bottom_length", 20).length("bottom_width", 12)
                .length("side", 2.5);
        put(s, "pan", pan.copy().ask("length", "a").ask("width", "b"), null);
        put(s, "pan-as-cut", pan, pan.copy().length("length", 22.5).length("width", 14.5));
        put(s, "pan-bottom-alone", pan, pan.copy().length("length", 20).length("width", 12));
        put(s, "pan-off-sheet", pan, pan.copy().length("length", 50).length("width", 42));
        put(s, "pan-turned", pan, pan.copy().length("length", 17).length("width", 25));
        Inputs edge = Inputs.of("notched-edge").length("length", 30).length("notch", 4.4375).length("between", 21.125).length("hem", 0.5)
                .length("side", 4);
        put(s, "notched-edge", edge.copy().ask("notch", "a").ask("between", "b"), null);
        put(s, "notched-edge-as-cut", edge, edge.copy().length("notch", 3.9375).length("between", 22.125));
        put(s, "notched-edge-big", edge, edge.copy().length("notch", 6.28125).length("between", 17.4375));
        put(s, "notched-edge-one", edge, edge.copy().length("between", 25.5625));
        Inputs metric = Inputs.of("notched-edge", UnitSystem.METRIC).style(Inputs.Style.UNIT).length("length", 1000).length("notch", 60.5)
                .length("between", 879).length("hem", 12).length("side", 50);
        put(s, "notched-edge-metric", metric.copy().ask("notch", "a").ask("between", "b"), null);
    }

    private static void lids(List<Samples.Sample> s) {
        Inputs lid = Inputs.of("lid-over-box").length("length", 8.25).length("width", 4.5).length("wall", 0.1875).length("gap", 0.0625)
                .length("lid_length", 8.75).length("lid_width", 5).length("over_all", 9.125);
        put(s, "lid-over-box", lid.copy().ask("lid_length", "a").ask("lid_width", "b").ask("over_all", "c"), null);
        put(s, "lid-over-box-as-cut", lid, lid.copy().length("lid_length", 8.5625).length("lid_width", 4.8125).length("over_all", 8.9375));
        put(s, "lid-over-box-tight", lid, lid.copy().length("lid_length", 8.375).length("lid_width", 4.625).length("over_all", 8.75));
        put(s, "lid-over-box-wide", lid, lid.copy().length("lid_width", 5.125));
        put(s, "lid-over-box-outside", lid, lid.copy().length("over_all", 8.9375));
        put(s, "lid-over-box-wild", lid, lid.copy().length("lid_length", 30));
    }

    private static void pipes(List<Samples.Sample> s) {
        Inputs pipe = Inputs.of("rolled-pipe").length("inside", 10).length("thickness", 0.0396).texts("thickness", "0.0396 in")
                .length("lap", 0.75).length("blank", 32.290).length("made", 10);
        put(s, "rolled-pipe", pipe.copy().ask("blank", "a").texts("made"), null);
        put(s, "rolled-pipe-as-cut", pipe, pipe.copy().length("blank", 31.5).length("made", 9.75));
        put(s, "rolled-pipe-long", pipe, pipe.copy().length("blank", 50).length("made", 15.6));
    }

    private static void elbows(List<Samples.Sample> s) {
        Inputs elbow = Inputs.of("elbow").length("across", 12).number("pieces", 5).length("throat", 2.387).length("heel", 4.774)
                .angle("cut", 11.25).angle("turn", 90).length("bend", 18);
        put(s, "elbow", elbow.copy().ask("throat", "b").ask("heel", "c").ask("cut", "a"), null);
        put(s, "elbow-as-cut", elbow, elbow.copy().length("throat", 4.774).length("heel", 9.548));
        put(s, "elbow-swapped", elbow, elbow.copy().length("throat", 4.774).length("heel", 2.387));
        put(s, "elbow-straight", elbow, elbow.copy().length("throat", 3.58).length("heel", 3.58));
        put(s, "elbow-cut", elbow, elbow.copy().angle("cut", 18));
        Inputs three = Inputs.of("elbow", UnitSystem.METRIC).style(Inputs.Style.UNIT).length("across", 200).number("pieces", 3)
                .length("throat", 41.5).length("heel", 124.5).angle("cut", 22.5).angle("turn", 90).length("bend", 200);
        put(s, "elbow-three", three.copy().ask("throat", "b").ask("heel", "c").ask("cut", "a"), null);
        Inputs shallow = Inputs.of("elbow").length("across", 8).number("pieces", 4).length("throat", 2.1).length("heel", 3.5)
                .angle("cut", 10).angle("turn", 60).length("bend", 16);
        put(s, "elbow-shallow", shallow.copy().ask("throat", "b").ask("heel", "c").ask("cut", "a"), null);
    }

    private static void slopes(List<Samples.Sample> s) {
        Inputs hood = Inputs.of("square-to-round").length("side", 20).length("round", 10).length("height", 12).length("middle_plan", 5)
                .length("corner_plan", 9.142).length("middle_line", 13).length("corner_line", 15.0857);
        Inputs asked = hood.copy().ask("middle_line", "a").ask("corner_line", "b").texts("middle_plan").texts("corner_plan");
        put(s, "square-to-round", asked, null);
        put(s, "square-to-round-as-cut", hood, hood.copy().length("middle_line", 15.625).length("corner_line", 21.875));
        put(s, "square-to-round-short", hood, hood.copy().length("middle_line", 12).length("corner_line", 12));
        Inputs big = Inputs.of("square-to-round").length("side", 40).length("round", 6).length("height", 24).length("middle_plan", 17)
                .length("corner_plan", 25.284).length("middle_line", 29.411).length("corner_line", 34.862);
        put(s, "square-to-round-big", big.copy().ask("middle_line", "a").ask("corner_line", "b").texts("middle_plan").texts("corner_plan"), null);
    }

    private static void cones(List<Samples.Sample> s) {
        Inputs cone = Inputs.of("cone-and-flat").length("across", 24).length("height", 5).length("outer", 13).angle("angle", 332.3)
                .length("made_across", 24).length("made_height", 5);
        put(s, "cone-and-flat", cone.copy().ask("outer", "a").ask("angle", "b"), null);
        Inputs steep = Inputs.of("cone-and-flat").length("across", 12).length("height", 8).length("outer", 10).angle("angle", 216)
                .length("made_across", 12).length("made_height", 8);
        put(s, "cone-and-flat-as-cut", steep, steep.copy().angle("angle", 270).length("made_across", 15).length("made_height", 6.614));
        put(s, "cone-and-flat-radius", steep, steep.copy().length("outer", 8).angle("angle", 270).length("made_height", 5.29));
        Inputs frustum = Inputs.of("cone-and-flat").length("across", 12).length("top", 6).length("height", 4).length("outer", 10)
                .length("inner", 5).angle("angle", 216);
        put(s, "cone-and-flat-cut-off", frustum, frustum.copy().length("inner", 4).angle("angle", 200));
        Inputs sector = Inputs.of("sector").length("outer", 20).length("inner", 8).angle("angle", 140);
        put(s, "sector-as-cut", sector, sector.copy().angle("angle", 110));
        put(s, "sector-inner", sector, sector.copy().length("inner", 11));
    }

    /** Parts whose right drawing stands among the other samples, with an answer over them. */
    private static void answers(List<Samples.Sample> s) {
        Inputs tub = Inputs.of("tub").length("top", 30).length("bottom", 22).length("height", 18).length("level", 11);
        put(s, "tub-as-cut", tub, tub.copy().length("level", 13.5));
        Inputs drum = Inputs.of("upright-drum").length("diameter", 23).length("height", 34.5).length("level", 20);
        put(s, "upright-drum-as-cut", drum, drum.copy().length("level", 12.25));
        put(s, "upright-drum-wider", drum, drum.copy().length("diameter", 30));
        Inputs brace = Inputs.of("triangle").length("run", 48).length("rise", 31.5).length("slope", 57.4135).angle("angle", 33.3)
                .angle("other", 56.7);
        put(s, "triangle-brace", brace.copy().ask("slope", "a").ask("angle", "b").ask("other", "c"), null);
        put(s, "triangle-as-cut", brace, brace.copy().length("slope", 79.5));
        put(s, "triangle-angle", brace, brace.copy().angle("angle", 41));
        put(s, "triangle-other", brace, brace.copy().angle("other", 33.3));
        Inputs rule = Inputs.of("rule").length("reading", 3.6875).length("step", 0.0625);
        put(s, "rule-read-wrong", rule, rule.copy().length("reading", 3.375));
        put(s, "rule-gone", rule, rule.copy().length("reading", 11));
        Inputs stack = Inputs.of("stack").length("layers", 0.125, 0.625, 0.125, 0.5625, 0.09375).length("grip", 1.53125).length("bolt", 2.25);
        put(s, "stack-bolt", stack.copy().ask("grip", "a").ask("bolt", "b"), null);
        put(s, "stack-as-cut", stack, stack.copy().length("grip", 1.40625).length("bolt", 2));
        put(s, "stack-grip", stack, stack.copy().length("grip", 1.40625));
        Inputs nest = Inputs.of("nest").length("sheet_length", 96).length("sheet_width", 48).length("part_length", 21.5)
                .length("part_width", 9.25).number("along", 4).number("across", 5);
        put(s, "nest-as-cut", nest, nest.copy().number("along", 5));
        put(s, "nest-fewer", nest, nest.copy().number("across", 4));
    }
}
