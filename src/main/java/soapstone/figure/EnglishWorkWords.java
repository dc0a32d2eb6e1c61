package soapstone.figure;

import java.util.Map;

/** The English words of drawings of work: vessels, welds, loads, rows, and whole assemblies. */
final class EnglishWorkWords {

    private EnglishWorkWords() {}

    static void put(Map<String, String> w) {
        w.put("no.scale", "a sketch, not to scale");
        w.put("row.over", "{0} over the limit");
        vessels(w);
        welds(w);
        loads(w);
        shares(w);
        rows(w);
        parts(w);
        assemblies(w);
    }

    private static void vessels(Map<String, String> w) {
        w.put("water-column.title", "Pressure at a depth");
        w.put("water-column.title.yours", "Pressure at a depth, and the column that your answer takes");
        w.put("water-column.is", "A tank in section with a gauge below the surface. Over the gauge stands a column of liquid; "
                + "the pressure grows with depth, from nothing at the surface.");
        w.put("water-column.depth", "Surface down to the gauge");
        w.put("water-column.pressure", "Pressure at the gauge");
        w.put("water-column.head", "Column for it");
        w.put("water-column.takes", "the pressure of your answer takes a column of {0}");
        w.put("receiver.title", "Pressure tank in section");
        w.put("receiver.is", "A standing pressure tank in section: a rolled shell between two dished heads. The shell is shown shortened.");
        w.put("receiver.diameter", "Inside diameter");
        w.put("receiver.thickness", "Thickness of the shell");
        w.put("receiver.pressure", "Pressure inside");
        w.put("baffle-plate.title", "Baffle with an opening");
        w.put("baffle-plate.title.yours", "Baffle with the opening of your answer, over the right one");
        w.put("baffle-plate.is", "A baffle with one round opening in the middle, from the front and in section.");
        w.put("baffle-plate.width", "Width of the baffle");
        w.put("baffle-plate.height", "Height of the baffle");
        w.put("baffle-plate.opening", "Diameter of the opening");
        w.put("compartments.title", "Tank with baffles, from above");
        w.put("compartments.title.yours", "Baffles of your answer, over the right ones");
        w.put("compartments.is", "A tank from above with baffles that make equal compartments.");
        w.put("compartments.length", "Inside length");
        w.put("compartments.count", "Baffles");
        w.put("compartments.limit", "Longest compartment that is allowed");
        w.put("compartments.width", "Inside width");
        w.put("compartments.piece", "baffle");
        w.put("compartments.pieces", "baffles");
        w.put("compartments.width.free", "the length is to scale, the width is not");
        w.put("filling-tank.title", "Tank that is being filled");
        w.put("filling-tank.title.yours", "Tank as full as your answer makes it");
        w.put("filling-tank.is", "A tank in section with something in it already, and a pipe over its rim. The levels are shares of a full tank.");
        w.put("filling-tank.capacity", "Full tank");
        w.put("filling-tank.start", "In it already");
        w.put("filling-tank.flow", "Comes in");
        w.put("filling-tank.filled", "In it at the end");
        w.put("filling-tank.over", "yours would run over");
        w.put("filling-tank.short", "yours would stop before it is full");
    }

    private static void welds(Map<String, String> w) {
        w.put("fillet-weld.title", "Fillet weld");
        w.put("fillet-weld.title.yours", "Fillet weld, and the seam that your answer fills");
        w.put("fillet-weld.is", "A fillet weld between two plates in section, its two legs equal, with its symbol: a triangle under the line, "
                + "the leg before it.");
        w.put("fillet-weld.leg", "Leg");
        w.put("fillet-weld.throat", "Throat");
        w.put("fillet-weld.seam", "Length of the seam");
        w.put("fillet-weld.welded", "Seam that is welded");
        w.put("fillet-weld.open", "yours leaves a part of the seam open");
        w.put("fillet-weld.over", "yours is enough for more than the seam");
        w.put("stitch-row.title", "Stitches along a seam");
        w.put("stitch-row.title.yours", "Stitches of your answer, under the right ones");
        w.put("stitch-row.is", "A seam from above with stitches of weld, and its symbol: length of a stitch and pitch, center to center.");
        w.put("stitch-row.length", "Length of the seam");
        w.put("stitch-row.stitch", "Length of a stitch");
        w.put("stitch-row.pitch", "Pitch");
        w.put("stitch-row.count", "Stitches");
        w.put("stitch-row.piece", "stitch");
        w.put("stitch-row.pieces", "stitches");
        w.put("torch-run.title", "Torch along a seam");
        w.put("torch-run.is", "A torch on its way along a seam, with the bead behind it.");
        w.put("torch-run.travel", "Travel");
        w.put("torch-run.volts", "Voltage of the arc");
        w.put("torch-run.amps", "Current");
    }

    private static void loads(Map<String, String> w) {
        w.put("trailer.title", "Trailer from the side");
        w.put("trailer.title.yours", "Trailer, and the balance point of your answer");
        w.put("trailer.is", "A trailer from the side, the ball at the left, with the weight of all of it as an arrow at its balance point.");
        w.put("trailer.bed", "Ball to the front of the bed");
        w.put("trailer.axle", "To the axle");
        w.put("trailer.center", "To the balance point");
        w.put("trailer.tongue", "Weight on the ball");
        w.put("trailer.ahead", "your weight on the ball needs the balance point {0} further ahead");
        w.put("trailer.behind", "your weight on the ball needs the balance point {0} further back");
        w.put("trailer.off", "your weight on the ball needs the balance point {0} away, off the trailer");
        w.put("trailer.sketch", "lengths to scale, heights not");
        w.put("loaded-skid.title", "Loads on a skid");
        w.put("loaded-skid.title.yours", "Balance point of your answer, beside the right one");
        w.put("loaded-skid.is", "A skid from the side. Each load is an arrow at its center, as long as it is heavy; a wedge stands where all balances.");
        w.put("loaded-skid.length", "Length");
        w.put("loaded-skid.places", "Centers, from the left end");
        w.put("loaded-skid.weights", "Weights");
        w.put("loaded-skid.balance", "Balance point, from the left end");
        w.put("loaded-skid.left", "yours is {0} left of the balance point");
        w.put("loaded-skid.right", "yours is {0} right of the balance point");
        w.put("sling.title", "Two-leg sling");
        w.put("sling.title.yours", "Two-leg sling, and the pull of your answer");
        w.put("sling.is", "A load that hangs level on a sling with two equal legs.");
        w.put("sling.load", "Load");
        w.put("sling.spread", "From eye to eye");
        w.put("sling.angle", "Angle of a leg with the horizontal");
        w.put("sling.pull", "Pull in one leg");
        w.put("sling.arrows", "arrows to one scale, by how hard they pull");
        w.put("sling.less", "yours is less than the leg really carries");
        w.put("sling.more", "yours is more than the leg really carries");
        w.put("sling.off", "the arrow of your answer does not fit on this sheet");
    }

    private static void shares(Map<String, String> w) {
        w.put("load-bar.title", "What rides against the rating");
        w.put("load-bar.title.yours", "What rides by your answer, under the rating");
        w.put("load-bar.is", "A bar as long as the rating, filled from the left by what rides.");
        w.put("load-bar.rating", "Rating");
        w.put("load-bar.trailer", "Trailer");
        w.put("load-bar.tank", "Empty tank");
        w.put("load-bar.load", "Load");
        w.put("load-bar.name.rating", "rating");
        w.put("load-bar.name.trailer", "trailer");
        w.put("load-bar.name.tank", "tank");
        w.put("load-bar.name.load", "load");
        w.put("load-bar.rest", "free");
        w.put("load-bar.less", "yours leaves some of the rating unused");
        w.put("load-bar.more", "yours is over the rating");
        w.put("load-bar.scale", "lengths to the scale of the weights");
        w.put("order-bar.title", "What is ordered and what is used");
        w.put("order-bar.title.yours", "The order of your answer, under the right one");
        w.put("order-bar.is", "A bar as long as the order: the parts from the left, the scrap hatched.");
        w.put("order-bar.order", "Order");
        w.put("order-bar.net", "Parts");
        w.put("order-bar.piece", "One piece");
        w.put("order-bar.name.order", "order");
        w.put("order-bar.name.good", "parts");
        w.put("order-bar.rest", "scrap");
        w.put("order-bar.less", "yours leaves too little for the parts");
        w.put("order-bar.more", "yours leaves more than the parts take");
        w.put("order-bar.scale", "lengths to the scale of the areas");
        w.put("price-bar.title", "What a price is made of");
        w.put("price-bar.title.yours", "The price of your answer, under the right one");
        w.put("price-bar.is", "A bar as long as the price: material and labor from the left, the margin hatched.");
        w.put("price-bar.price", "Price");
        w.put("price-bar.material", "Material");
        w.put("price-bar.labor", "Labor");
        w.put("price-bar.name.price", "price");
        w.put("price-bar.name.material", "material");
        w.put("price-bar.name.labor", "labor");
        w.put("price-bar.rest", "margin");
        w.put("price-bar.less", "yours leaves too small a margin");
        w.put("price-bar.more", "yours asks for more than the margin");
        w.put("price-bar.scale", "lengths to the scale of the money");
    }

    private static void rows(Map<String, String> w) {
        w.put("post-row.title", "Posts along a run");
        w.put("post-row.title.yours", "Posts as your answer sets them, over the right ones");
        w.put("post-row.is", "A straight run with a post at both ends, measured between the centers of posts.");
        w.put("post-row.length", "First to last post");
        w.put("post-row.spacing", "Center to center");
        w.put("post-row.count", "Posts");
        w.put("post-row.limit", "Furthest apart that is allowed");
        w.put("post-row.piece", "post");
        w.put("post-row.pieces", "posts");
        w.put("cut-bar.title", "Bar and its cuts");
        w.put("cut-bar.title.yours", "The bar of your answer, under the right one");
        w.put("cut-bar.is", "A bar sawn into equal pieces, square at the left end. The kerfs are drawn wide, so that they can be seen.");
        w.put("cut-bar.piece", "One piece");
        w.put("cut-bar.kerf", "Kerf");
        w.put("cut-bar.count", "Pieces");
        w.put("cut-bar.length", "Bar");
        w.put("cut-bar.at", "kerf");
        w.put("butted-bars.title", "Three lengths end to end");
        w.put("butted-bars.title.yours", "The length of your answer, under the right one");
        w.put("butted-bars.is", "Three pieces, butted end to end.");
        w.put("butted-bars.first", "First");
        w.put("butted-bars.first_rest", "and");
        w.put("butted-bars.second", "Second");
        w.put("butted-bars.second_rest", "and");
        w.put("butted-bars.third", "Third");
        w.put("butted-bars.third_rest", "and");
        w.put("butted-bars.total", "All of it");
    }

    private static void parts(Map<String, String> w) {
        w.put("round-tube.title", "Round tube");
        w.put("round-tube.is", "A round tube in section, and its length.");
        w.put("round-tube.outside", "Outside diameter");
        w.put("round-tube.wall", "Wall");
        w.put("round-tube.length", "Length");
        w.put("round-tube.count", "Tubes");
        w.put("round-tube.at", "wall");
        w.put("drill.title", "Drill");
        w.put("drill.is", "A drill in a plate, and the drill from its point.");
        w.put("drill.diameter", "Diameter");
        w.put("drill.speed", "Speed of its edge");
        w.put("drill.turns", "It turns");
        w.put("area-grid.title", "Panel");
        w.put("area-grid.is", "A flat panel.");
        w.put("area-grid.length", "Length");
        w.put("area-grid.width", "Width");
        w.put("area-grid.feet", "each square is one square foot");
        w.put("area-grid.meters", "each whole square is one square meter");
    }

    private static void assemblies(Map<String, String> w) {
        w.put("tank-and-trailer.title", "Tank on its trailer");
        w.put("tank-and-trailer.title.yours", "Tank and trailer by your answers, over the right ones");
        w.put("tank-and-trailer.is", "A tank from outside, in section along its length, and on its trailer.");
        w.put("tank-and-trailer.outside", "outside");
        w.put("tank-and-trailer.inside", "section along the tank");
        w.put("tank-and-trailer.trailer", "on the trailer, from the ball");
        w.put("picket-guard.title", "Guard with posts and pickets");
        w.put("picket-guard.title.yours", "Guard by your answers, over the right one");
        w.put("picket-guard.is", "All posts of a guard, and one bay between two of them.");
        w.put("picket-guard.posts", "all posts");
        w.put("picket-guard.bay", "one bay");
    }
}
