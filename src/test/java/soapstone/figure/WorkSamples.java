package soapstone.figure;

import static soapstone.figure.WorkInputs.unit;

import java.util.List;
import soapstone.quantity.UnitSystem;
import soapstone.quantity.Units;

/** Likely inputs of the drawings of work. */
final class WorkSamples {

    private WorkSamples() {}

    static void add(List<Samples.Sample> s) {
        vessels(s);
        welds(s);
        loads(s);
        shares(s);
        rows(s);
        parts(s);
        jobs(s);
    }

    private static void one(List<Samples.Sample> s, String name, Inputs right) {
        s.add(new Samples.Sample(name, right.build(), null));
    }

    private static void cut(List<Samples.Sample> s, String name, Inputs right, Inputs yours) {
        s.add(new Samples.Sample(name, right.build(), yours.build()));
    }

    private static void vessels(List<Samples.Sample> s) {
        Inputs column = Inputs.of("water-column").style(Inputs.Style.UNIT).length("depth", 84).put("pressure", Units.PSI, 3.03).length("head", 84);
        one(s, "water-column", column.copy().ask("pressure", "a"));
        cut(s, "water-column-as-cut", column, column.copy().put("pressure", Units.PSI, 1.52).length("head", 42));
        cut(s, "water-column-more", column, column.copy().put("pressure", Units.PSI, 5).length("head", 138.5));
        cut(s, "water-column-far", column, column.copy().put("pressure", Units.PSI, 36.4).length("head", 1008));
        one(s, "receiver", Inputs.of("receiver").style(Inputs.Style.UNIT).length("diameter", 24).length("thickness", 0.1875).put("pressure", Units.PSI, 120));
        Inputs plate = Inputs.of("baffle-plate").style(Inputs.Style.UNIT).length("width", 40).length("height", 28).length("opening", 16.875);
        one(s, "baffle-plate", plate.copy().ask("opening", "a"));
        cut(s, "baffle-plate-as-cut", plate, plate.copy().length("opening", 8.4375));
        cut(s, "baffle-plate-wide", plate, plate.copy().length("opening", 33.75));
        Inputs tank = Inputs.of("compartments").style(Inputs.Style.UNIT).length("length", 96).number("count", 4).length("limit", 22);
        one(s, "compartments", tank.copy().ask("count", "a"));
        cut(s, "compartments-as-cut", tank, tank.copy().number("count", 3));
        cut(s, "compartments-more", tank, tank.copy().number("count", 6));
        one(s, "compartments-width", tank.copy().without("limit").length("width", 36));
        Inputs fill = Inputs.of("filling-tank").put("capacity", Units.GALLONS, 180).put("start", Units.GALLONS, 25)
                .put("flow", unit("gal/min"), 6.5).put("filled", Units.GALLONS, 180);
        one(s, "filling-tank", fill.copy().texts("filled"));
        cut(s, "filling-tank-as-cut", fill, fill.copy().put("filled", Units.GALLONS, 205));
        cut(s, "filling-tank-short", fill, fill.copy().put("filled", Units.GALLONS, 112));
        cut(s, "filling-tank-far", fill, fill.copy().put("filled", Units.GALLONS, 6000));
    }

    private static void welds(List<Samples.Sample> s) {
        Inputs weld = Inputs.of("fillet-weld").style(Inputs.Style.UNIT).length("leg", 0.25).length("seam", 480).texts("seam", "40 ft").length("welded", 480);
        one(s, "fillet-weld", weld.copy().texts("welded"));
        one(s, "fillet-weld-throat", Inputs.of("fillet-weld", UnitSystem.METRIC).style(Inputs.Style.UNIT).length("leg", 6).length("throat", 4.2));
        cut(s, "fillet-weld-as-cut", weld, weld.copy().length("welded", 355));
        cut(s, "fillet-weld-more", weld, weld.copy().length("welded", 1410));
        Inputs row = Inputs.of("stitch-row").style(Inputs.Style.UNIT).length("length", 50).length("stitch", 2).length("pitch", 6).number("count", 9);
        one(s, "stitch-row", row.copy().ask("count", "a"));
        cut(s, "stitch-row-as-cut", row, row.copy().number("count", 8));
        cut(s, "stitch-row-more", row, row.copy().number("count", 11));
        one(s, "torch-run", Inputs.of("torch-run").put("travel", unit("in/min"), 12).put("volts", unit("V"), 22).put("amps", unit("A"), 165));
    }

    private static void loads(List<Samples.Sample> s) {
        Inputs trailer = Inputs.of("trailer").style(Inputs.Style.UNIT).length("bed", 48).length("axle", 84).length("center", 68).length("place", 68)
                .put("tongue", Units.POUND, 364);
        one(s, "trailer", trailer.copy().ask("tongue", "a"));
        cut(s, "trailer-as-cut", trailer, trailer.copy().length("place", 35.5).put("tongue", Units.POUND, 1100));
        cut(s, "trailer-far", trailer, trailer.copy().length("place", -200).put("tongue", Units.POUND, 9000));
        Inputs skid = Inputs.of("loaded-skid").style(Inputs.Style.UNIT).length("length", 72).length("places", 12, 47).put("weights", Units.POUND, 120, 160)
                .length("balance", 32);
        one(s, "loaded-skid", skid.copy().ask("balance", "a"));
        cut(s, "loaded-skid-as-cut", skid, skid.copy().length("balance", 27));
        Inputs sling = Inputs.of("sling").style(Inputs.Style.UNIT).put("load", Units.POUND, 1400).length("spread", 48).angle("angle", 50)
                .put("pull", Units.POUND, 914);
        one(s, "sling", sling.copy().ask("pull", "a"));
        cut(s, "sling-as-cut", sling, sling.copy().put("pull", Units.POUND, 1400));
        one(s, "sling-steep", sling.copy().angle("angle", 70).put("pull", Units.POUND, 745).ask("pull", "a"));
        cut(s, "sling-flat", sling.copy().angle("angle", 30).put("pull", Units.POUND, 1400), sling.copy().angle("angle", 30).put("pull", Units.POUND, 700));
    }

    private static void shares(List<Samples.Sample> s) {
        Inputs load = Inputs.of("load-bar").put("rating", Units.POUND, 3500).put("trailer", Units.POUND, 880).put("tank", Units.POUND, 240)
                .put("load", Units.POUND, 2377);
        one(s, "load-bar", load.copy().texts("load"));
        cut(s, "load-bar-as-cut", load, load.copy().put("load", Units.POUND, 3259));
        cut(s, "load-bar-less", load, load.copy().put("load", Units.POUND, 1900));
        Inputs order = Inputs.of("order-bar").put("order", unit("ft2"), 200).put("good", unit("ft2"), 170).put("net", unit("ft2"), 170).put("piece", unit("ft2"), 32);
        one(s, "order-bar", order.copy().ask("order", "a"));
        cut(s, "order-bar-as-cut", order, order.copy().put("order", unit("ft2"), 195.5).put("good", unit("ft2"), 166.2));
        Inputs price = Inputs.of("price-bar").put("price", Units.DOLLAR, 920).put("material", Units.DOLLAR, 190).put("labor", Units.DOLLAR, 500);
        one(s, "price-bar", price.copy().ask("price", "b").texts("material").texts("labor"));
        cut(s, "price-bar-as-cut", price, price.copy().put("price", Units.DOLLAR, 862.5));
    }

    private static void rows(List<Samples.Sample> s) {
        Inputs posts = Inputs.of("post-row").style(Inputs.Style.FEET).length("length", 546).length("spacing", 78).number("count", 8).length("limit", 84);
        one(s, "post-row", posts.copy().ask("count", "a").ask("spacing", "b"));
        cut(s, "post-row-as-cut", posts, posts.copy().number("count", 7));
        cut(s, "post-row-apart", posts, posts.copy().number("count", 7).length("spacing", 91));
        Inputs bar = Inputs.of("cut-bar").style(Inputs.Style.UNIT).length("piece", 7.25).length("kerf", 0.125).number("count", 9).number("cuts", 9)
                .length("length", 66.375);
        one(s, "cut-bar", bar.copy().ask("length", "a").texts("cuts"));
        cut(s, "cut-bar-as-cut", bar, bar.copy().length("length", 65.25));
        one(s, "cut-bar-square", bar.copy().number("cuts", 8).length("length", 66.25).ask("length", "a"));
        Inputs butted = Inputs.of("butted-bars").length("first", 60).texts("first", "5 ft").length("first_rest", 8.25).texts("first_rest", "8 1/4 in")
                .length("second", 36).texts("second", "3 ft").length("second_rest", 7.5).texts("second_rest", "7 1/2 in")
                .length("third", 24).texts("third", "2 ft").length("third_rest", 10).texts("third_rest", "10 in").length("total", 145.75);
        one(s, "butted-bars", butted.copy().ask("total", "a"));
        cut(s, "butted-bars-as-cut", butted, butted.copy().length("total", 121.75).texts("total", "10 ft 1 3/4 in"));
    }

    private static void parts(List<Samples.Sample> s) {
        one(s, "round-tube", Inputs.of("round-tube").style(Inputs.Style.UNIT).length("outside", 2.5).length("wall", 0.1875).length("length", 138)
                .texts("length", "11 1/2 ft").number("count", 5));
        Inputs rule = Inputs.of("rule").length("reading", 7.3281).texts("reading", "7.3281 in").length("step", 0.0625).length("line", 7.3125);
        cut(s, "rule-as-cut", rule, rule.copy().length("line", 7.375));
        one(s, "drill", Inputs.of("drill").style(Inputs.Style.UNIT).length("diameter", 0.6875).put("speed", unit("ft/min"), 80)
                .put("turns", unit("rpm"), 444).ask("turns", "a"));
        one(s, "area-grid", Inputs.of("area-grid").length("length", 72).texts("length", "6 ft").length("width", 36).texts("width", "3 ft"));
        one(s, "area-grid-metric", Inputs.of("area-grid", UnitSystem.METRIC).length("length", 2100).length("width", 900));
    }

    private static void jobs(List<Samples.Sample> s) {
        Inputs tank = Inputs.of("tank-and-trailer").style(Inputs.Style.UNIT).length("length", 72).length("width", 38).length("height", 26)
                .length("inside", 71.5).length("inside_height", 25.5).texts("inside_height").length("baffle", 0.25).length("space", 17.6875).number("count", 3)
                .length("axle", 132).length("center", 116).length("place", 116).put("tongue", Units.POUND, 476);
        one(s, "tank-and-trailer", tank.copy().ask("inside", "a").ask("count", "c").ask("space", "d").ask("tongue", "f"));
        cut(s, "tank-and-trailer-as-cut", tank, tank.copy().length("space", 23.5).length("place", 103).put("tongue", Units.POUND, 860));
        Inputs guard = Inputs.of("picket-guard").style(Inputs.Style.UNIT).length("run", 240).length("spacing", 60).number("posts", 5).length("limit", 66)
                .length("opening", 58).length("picket", 0.75).length("gap", 3.34375).number("pickets", 13);
        one(s, "picket-guard", guard.copy().ask("posts", "a").ask("pickets", "b").ask("gap", "c").texts("spacing").texts("opening"));
        cut(s, "picket-guard-as-cut", guard, guard.copy().number("posts", 4).length("gap", 3.625));
    }
}
