package soapstone.figure;

import java.util.Map;

/** The English words of drawings of bends, brake tools and plates. */
final class EnglishPlateWords {

    private EnglishPlateWords() {}

    static void put(Map<String, String> w) {
        w.put("miss.much", "{0} too much");
        w.put("miss.little", "{0} too little");
        w.put("miss.leans", "still leans {0}");
        w.put("miss.leans.over", "leans {0} the other way");
        w.put("miss.thick", "{0} too thick");
        w.put("miss.thin", "{0} too thin");
        w.put("miss.deep", "{0} too deep");
        w.put("miss.shallow", "{0} not deep enough");
        w.put("miss.near", "{0} too near");
        w.put("miss.far", "{0} too far");
        bend(w);
        brake(w);
        plates(w);
        metalEdges(w);
    }

    private static void bend(Map<String, String> w) {
        w.put("bend.title", "One bend in section");
        w.put("bend.title.yours", "The bend by your answer, over the right one");
        w.put("bend.is", "One bend of a sheet in section, with the outside faces carried on to the corner point.");
        w.put("bend.is.allowance", "Below it the metal of the bend laid flat.");
        w.put("bend.is.deduction", "Below it two setbacks laid flat: the metal of the bend covers all but the deduction.");
        w.put("bend.angle", "Angle turned through");
        w.put("bend.k", "K, where the neutral line lies");
        w.put("bend.setback", "Setback, from the start of the bend to where its leg is measured to");
        w.put("bend.allowance", "Metal in the bend");
        w.put("bend.deduction", "Deduction");
        w.put("bend.first", "First leg, to the corner point");
        w.put("bend.second", "Second leg, to the corner point");
        w.put("bend.neutral", "neutral line");
        w.put("bend.neutral.at", "neutral line, K =");
        w.put("bend.flat.allowance", "the bend laid flat");
        w.put("bend.flat.deduction", "two setbacks laid flat");
    }

    private static void brake(Map<String, String> w) {
        w.put("brake-die.title", "Bend in the die of a press brake");
        w.put("brake-die.title.yours", "The die by your answer, over the right one");
        w.put("brake.is", "A square bend in section between punch and vee die. The sheet rests on both shoulders of the die.");
        w.put("brake.opening", "Die opening");
        w.put("brake.flange", "shortest flange");
        w.put("brake.flange.least", "Shortest flange that rests on both shoulders");
        w.put("brake.punch", "punch");
        w.put("brake.die", "die");
        w.put("brake-force.title", "Force on a long bend");
        w.put("brake-force.front", "Beside it the tools from the front, to another scale, with the force spread over the bend line.");
        w.put("brake-force.length", "Length of the bend line");
        w.put("brake-force.force", "Force for the whole bend");
        w.put("brake-force.rating", "Rating of the machine");
        w.put("brake-force.section", "section");
        w.put("brake-force.from.front", "from the front, to another scale");
        w.put("back-gauge.title", "Folded part, and its blank against the stop");
        w.put("back-gauge.title.yours", "Blank and stop by your answer, over the right ones");
        w.put("back-gauge.is", "Below it the blank lies flat on the die under the punch, its end against the stop.");
        w.put("back-gauge.blank", "Length of the blank");
        w.put("back-gauge.stop", "From the bend line to the stop");
        w.put("back-gauge.the.stop", "stop");
    }

    private static void plates(Map<String, String> w) {
        w.put("skew-frame.title", "Frame out of square");
        w.put("skew-frame.title.yours", "Frame after your push, over the square one");
        w.put("skew-frame.is", "A frame that leans to the right, with its two diagonals. In dashes its place when it is square.");
        w.put("skew-frame.is.square", "The frame made square. In thin dashes as it leaned to the right before.");
        w.put("skew-frame.long", "Long diagonal");
        w.put("skew-frame.short", "Short diagonal");
        w.put("skew-frame.push", "Push at the top");
        w.put("floor-panel.title", "Panel of a tank floor");
        w.put("floor-panel.is", "A level panel whose edges rest on bearers all round: from above with its clear spans, and in section"
                + " across the short side with the even load of the water.");
        w.put("floor-panel.long", "Long clear span");
        w.put("floor-panel.short", "Short clear span");
        w.put("floor-panel.depth", "Depth of the water");
        w.put("floor-panel.above", "from above");
        w.put("floor-panel.section", "across the short side");
        w.put("floor-panel.scale", "Section: thickness and sag are drawn larger.");
        w.put("plate.title", "Plate and its edge");
        w.put("plate.is", "A rectangular plate.");
        w.put("plate.is.window", "A rectangular plate with a window cut out, drawn in the middle.");
        w.put("plate.window_length", "Length of the window");
        w.put("plate.window_width", "Width of the window");
        w.put("plate.pieces", "Pieces");
        w.put("plate.of.them", "pieces");
        w.put("edge.scale", "Thin edges are drawn thicker than to scale.");
        w.put("ring.title", "Flat ring");
        w.put("ring.is", "A flat ring from the front.");
        w.put("ring.outer", "Diameter outside");
        w.put("ring.hole", "Diameter of the hole");
        w.put("sheet-edge.title", "Sheet on its edge");
        w.put("sheet-edge.title.yours", "Sheet of your thickness, over the right one");
        w.put("sheet-edge.is", "A piece of sheet seen on its edge.");
        w.put("sheet-edge.scale", "Drawn much larger than it is.");
    }

    private static void metalEdges(Map<String, String> w) {
        w.put("metal-edges.title", "Four offcuts on their edges");
        w.put("metal-edges.title.yours", "The offcut that you picked, among all four");
        w.put("metal-edges.is", "Four pieces of sheet seen on their edges, one over the other.");
        w.put("metal-edges.aluminum_number", "Gauge of the aluminum");
        w.put("metal-edges.carbon_number", "Gauge of the carbon steel");
        w.put("metal-edges.galvanized_number", "Gauge of the galvanized steel");
        w.put("metal-edges.stainless_number", "Gauge of the stainless steel");
        w.put("metal-edges.aluminum", "Thickness of the aluminum");
        w.put("metal-edges.carbon", "Thickness of the carbon steel");
        w.put("metal-edges.galvanized", "Thickness of the galvanized steel");
        w.put("metal-edges.stainless", "Thickness of the stainless steel");
        w.put("metal-edges.aluminum.row", "{0} gauge aluminum");
        w.put("metal-edges.carbon.row", "{0} gauge carbon steel");
        w.put("metal-edges.galvanized.row", "{0} gauge galvanized steel");
        w.put("metal-edges.stainless.row", "{0} gauge stainless steel");
        w.put("metal-edges.right", "thickest");
        w.put("metal-edges.picked", "Yours, in dashes: {0}.");
        w.put("metal-edges.yours", "yours {0}");
        w.put("metal-edges.scale", "Drawn much thicker than they are, all to one scale.");
        w.put("metal-edges.alike", "Drawn alike: the gauge table says how thick each is.");
    }
}
