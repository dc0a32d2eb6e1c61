package soapstone.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The English words of pans, lids, pipes, elbows and cones. */
final class BlankWords {

    static final Map<String, String> ALL = all();

    private BlankWords() {}

    private static Map<String, String> all() {
        Map<String, String> w = new LinkedHashMap<>();
        pans(w);
        lids(w);
        pipes(w);
        slopes(w);
        return Collections.unmodifiableMap(w);
    }

    private static void pans(Map<String, String> w) {
        w.put("pan.title", "Blank of a pan");
        w.put("pan.title.yours", "Blank of a pan as your answer cuts it, over the right one");
        w.put("pan.is", "A flat blank with four bend lines round the bottom of the pan. The sides fold up 90°. The corners, in dashes, are notched out.");
        w.put("pan.yours", "Yours, with the bottom in the same place.");
        w.put("pan.bend.up", "up 90° on all four lines");
        w.put("pan.bottom", "bottom");
        w.put("pan.bottom.length", "Bottom, long way");
        w.put("pan.bottom.width", "Bottom, wide way");
        w.put("pan.side", "Side");
        w.put("pan.length", "Length of the blank");
        w.put("pan.width", "Width of the blank");
        w.put("pan.miss.short", "{0} short on each side");
        w.put("pan.miss.long", "{0} too much on each side");
        w.put("notched-edge.title", "Notched blank");
        w.put("notched-edge.title.yours", "Notched blank as your answer cuts it, over the right one");
        w.put("notched-edge.is", "A flat blank with a square notch at each corner, up to where two bend lines cross.");
        w.put("notched-edge.yours", "Yours, drawn at the lower edge.");
        w.put("notched-edge.section", "The blank is broken across its width. Beside it a side with its hem in section, folded; its sheet is drawn thicker than it is.");
        w.put("notched-edge.broken", "The blank is broken across its width.");
        w.put("notched-edge.length", "Length of the blank");
        w.put("notched-edge.notch", "Side of a notch");
        w.put("notched-edge.between", "Edge between two notches");
        w.put("notched-edge.hem", "Hem");
        w.put("notched-edge.side", "Side, outside");
    }

    private static void lids(Map<String, String> w) {
        w.put("lid-over-box.title", "Lid over a box");
        w.put("lid-over-box.title.yours", "Lid as your answer makes it, over the right one");
        w.put("lid-over-box.is", "A box and the lid that slips over it, cut through the long way and through the wide way.");
        w.put("lid-over-box.yours", "Your lid, in dashes, with its middle over the middle of the box.");
        w.put("lid-over-box.heights", "Heights are not to scale.");
        w.put("lid-over-box.long.way", "cut through the long way");
        w.put("lid-over-box.wide.way", "cut through the wide way");
        w.put("lid-over-box.length", "Inside length of the box");
        w.put("lid-over-box.width", "Inside width of the box");
        w.put("lid-over-box.wall", "Thickness of the walls");
        w.put("lid-over-box.gap", "Air on each side");
        w.put("lid-over-box.lid.length", "Inside length of the lid");
        w.put("lid-over-box.lid.width", "Inside width of the lid");
        w.put("lid-over-box.over.all", "Outside length of the lid");
    }

    private static void pipes(Map<String, String> w) {
        w.put("rolled-pipe.title", "Rolled pipe and its blank");
        w.put("rolled-pipe.title.yours", "Rolled pipe and blank as your answer makes them, over the right ones");
        w.put("rolled-pipe.is", "A pipe from its end, closed with a lap, and under it the blank that it is rolled from. A thin sheet is drawn thicker than it is.");
        w.put("rolled-pipe.yours", "Your blank, drawn lower, from the same left edge.");
        w.put("rolled-pipe.inside", "Across, inside");
        w.put("rolled-pipe.lap", "Lap");
        w.put("rolled-pipe.blank", "Length of the blank");
        w.put("rolled-pipe.sheet", "sheet");
        w.put("rolled-pipe.end", "from the end");
        w.put("rolled-pipe.flat", "flat blank");
        w.put("elbow.title", "Elbow in pieces");
        w.put("elbow.title.yours", "Elbow as your end piece makes it, over the right one");
        w.put("elbow.is", "An elbow in pieces from the side, and the flat pattern of its end piece with the seam at the throat.");
        w.put("elbow.yours", "Yours, with the same square end.");
        w.put("elbow.across", "Pipe, across");
        w.put("elbow.pieces", "Pieces");
        w.put("elbow.count", "pieces");
        w.put("elbow.turn", "Turn");
        w.put("elbow.bend", "Radius to the middle of the pipe");
        w.put("elbow.cut", "Angle of a cut");
        w.put("elbow.throat", "End piece at the throat");
        w.put("elbow.heel", "End piece at the heel");
        w.put("elbow.side", "from the side");
        w.put("elbow.pattern", "flat pattern of the end piece");
        w.put("elbow.at.throat", "throat");
        w.put("elbow.at.heel", "heel");
    }

    private static void slopes(Map<String, String> w) {
        w.put("square-to-round.title", "Square to round");
        w.put("square-to-round.title.yours", "Square to round with the lines of your answer, over the right ones");
        w.put("square-to-round.is", "A square and a round collar over its middle, from above, with two lines of the pattern. "
                + "Beside it both lines in their true length, against the height.");
        w.put("square-to-round.yours", "Yours, along the right line from the same foot.");
        w.put("square-to-round.side", "Side of the square");
        w.put("square-to-round.round", "Collar, across");
        w.put("square-to-round.middle.plan", "Line from the middle of a side, from above");
        w.put("square-to-round.corner.plan", "Line from a corner, from above");
        w.put("square-to-round.middle.line", "Line from the middle of a side, true length");
        w.put("square-to-round.corner.line", "Line from a corner, true length");
        w.put("square-to-round.from.above", "from above");
        w.put("square-to-round.true.lengths", "true lengths");
        w.put("square-to-round.middle", "side line");
        w.put("square-to-round.corner", "corner line");
        w.put("square-to-round.at.middle", "at the side");
        w.put("square-to-round.at.corner", "at the corner");
        w.put("cone-and-flat.title", "Cone and its flat pattern");
        w.put("cone-and-flat.title.yours", "Cone and flat pattern as your answer makes them, over the right ones");
        w.put("cone-and-flat.is", "A cone from the side.");
        w.put("cone-and-flat.is.cut.off", "A cone without its point, from the side.");
        w.put("cone-and-flat.across", "Across the wide end");
        w.put("cone-and-flat.top", "Across the narrow end");
        w.put("cone-and-flat.side", "from the side");
    }
}
