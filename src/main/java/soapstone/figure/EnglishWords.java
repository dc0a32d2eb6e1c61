package soapstone.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The English words of all drawings. */
final class EnglishWords {

    static final Map<String, String> ALL = all();

    private EnglishWords() {}

    private static Map<String, String> all() {
        Map<String, String> w = new LinkedHashMap<>();
        w.put("tell", "{0}: {1}.");
        w.put("flag", "{0}, flag {1}");
        w.put("asked", "asked, letter {0}");
        w.put("yours", "yours");
        w.put("yours.below", "Yours, drawn below.");
        w.put("cannot.draw.yours", "Yours cannot be drawn.");
        w.put("legend.right", "right");
        w.put("legend.yours", "yours");
        w.put("legend.right.holes", "right, numbered above");
        w.put("legend.yours.holes", "yours, × and numbered below");
        w.put("legend.right.circle", "right, numbered outside");
        w.put("legend.yours.circle", "yours, × and numbered inside");
        w.put("legend.miss", "the miss");
        w.put("miss.short", "{0} short");
        w.put("miss.long", "{0} too long");
        w.put("miss.off", "{0} off");
        w.put("length", "Length");
        w.put("width", "Width");
        w.put("height", "Height");
        w.put("diameter", "Diameter");
        w.put("miss.over", "{0} left over");
        holes(w);
        w.put("miss.narrow", "{0} too narrow");
        w.put("miss.wide", "{0} too wide");
        rows(w);
        folds(w);
        EnglishPlateWords.put(w);
        w.put("miss.low", "{0} too low");
        w.put("miss.high", "{0} too high");
        w.put("level", "Level, from the bottom");
        w.put("level.over", "level {0} over the rim");
        w.put("pressure", "Pressure");
        tanks(w);
        shapes(w);
        w.putAll(BlankWords.ALL);
        EnglishWorkWords.put(w);
        return Collections.unmodifiableMap(w);
    }

    private static void holes(Map<String, String> w) {
        w.put("hole-row.title", "Row of holes");
        w.put("hole-row.title.yours", "Row of holes as your answer cuts it, over the right one");
        w.put("hole-row.is", "A bar with equally spaced holes on one line, numbered from the left.");
        w.put("hole-row.first", "End of the bar to the center of hole 1");
        w.put("hole-row.pitch", "Center to center");
        w.put("hole-row.count", "Holes");
        w.put("hole-row.holes", "holes");
        w.put("hole-row.lands.short", "Your hole {0} lands {1} short of its place.");
        w.put("hole-row.lands.past", "Your hole {0} lands {1} past its place.");
        w.put("row.spaces", "{0} spaces");
        w.put("row.all", "From the first to the last: {0}.");
    }

    private static void rows(Map<String, String> w) {
        w.put("gap-row.title", "Row with even gaps");
        w.put("gap-row.title.yours", "Row of gaps as your answer makes it, over the right one");
        w.put("gap-row.is", "Pieces of one width between two ends, with even gaps between them and at both ends.");
        w.put("gap-row.whole", "Clear opening");
        w.put("gap-row.count", "Pieces");
        w.put("gap-row.width", "Width of one");
        w.put("gap-row.gap", "Gap");
        w.put("gap-row.across", "in the opening");
        w.put("baffle-tank.title", "Tank with baffles");
        w.put("baffle-tank.title.yours", "Baffles as your answer sets them, over the right ones");
        w.put("baffle-tank.is", "A tank in section along its length, with baffles that make compartments of even length.");
        w.put("baffle-tank.whole", "Inside length");
        w.put("baffle-tank.count", "Baffles");
        w.put("baffle-tank.width", "Thickness of one");
        w.put("baffle-tank.gap", "Length of a compartment");
        w.put("baffle-tank.across", "baffles");
        w.put("mark-row.title", "Marks along a bar");
        w.put("mark-row.title.yours", "Marks as your answer sets them, over the right ones");
        w.put("mark-row.is", "A bar with marks, each measured from the left end.");
        w.put("mark-row.marks", "Marks");
        w.put("mark-row.worst", "Your mark {0} is the furthest off: {1}.");
        w.put("mark-row.more", "yours has {0} marks too many");
        w.put("mark-row.fewer", "yours has {0} marks too few");
        w.put("bolt-circle.title", "Bolt circle");
        w.put("bolt-circle.title.yours", "Bolt circle as your answer lays it out, over the right one");
        w.put("bolt-circle.is", "Holes equally spaced on a circle, numbered counterclockwise.");
        w.put("bolt-circle.yours", "Yours, numbered inside.");
        w.put("bolt-circle.diameter", "Diameter of the bolt circle");
        w.put("bolt-circle.hole", "Diameter of a hole");
        w.put("bolt-circle.start", "Hole 1 from the line to the right");
        w.put("bolt-circle.lands", "Your hole {0} lands {1} from its place.");
        w.put("bolt-circle.not.all", "not all holes are drawn");
        w.put("bolt-circle.off.sheet", "yours lies {0} outside the right circle, off this sheet");
    }

    private static void folds(Map<String, String> w) {
        w.put("folded.title", "Folded part in section");
        w.put("folded.title.yours", "Folded part as your answer makes it, over the right one");
        w.put("folded.is", "A folded sheet in section. Legs are outside sizes.");
        w.put("fold.thickness", "Thickness");
        w.put("fold.radius", "Inside radius");
        w.put("fold.legs", "Legs in order");
        w.put("fold.turns", "Bends, by the angle turned through");
        w.put("fold.up", "up {0}");
        w.put("fold.down", "down {0}");
        w.put("fold.thick", "{0} thick");
        w.put("fold.inside.radius", "inside radius {0}");
        w.put("fold.bend", "bend {0}");
        w.put("fold.bends", "bends {0}");
        w.put("fold.yours", "Yours, with the first leg held fast.");
        w.put("fold.off.sheet", "Yours is {0} longer in all, off this sheet.");
        w.put("flat-strip.title", "Flat pattern");
        w.put("flat-strip.title.yours", "Flat pattern as your answer makes it, over the right one");
        w.put("flat-strip.is", "A flat pattern with bend lines across, numbered and measured from the left edge.");
        w.put("flat.width", "Flat width");
        w.put("flat.bends", "Bend lines");
        w.put("flat.zone", "Width of a bend zone");
        w.put("flat.yours", "Yours, drawn lower, from the same left edge.");
        w.put("flat.section", "section, folded");
        w.put("flat.pattern", "flat pattern");
        w.put("folded-and-flat.title", "Folded part and its flat pattern");
        w.put("folded-and-flat.title.yours", "Folded part and flat pattern as your answer makes them, over the right ones");
    }

    private static void tanks(Map<String, String> w) {
        w.put("tank.yours", "Yours, in dashes.");
        w.put("tank.off.sheet", "yours is off this sheet: {0}");
        w.put("box-tank.title", "Box tank");
        w.put("box-tank.title.yours", "Box tank by your answer, over the right one");
        w.put("box-tank.is", "A box seen askew.");
        w.put("lying-drum.title", "Drum on its side");
        w.put("lying-drum.title.yours", "Drum by your answer, over the right one");
        w.put("lying-drum.is", "A drum lying on its side: its end, and its length beside it.");
        w.put("upright-drum.title", "Upright drum");
        w.put("upright-drum.title.yours", "Upright drum by your answer, over the right one");
        w.put("upright-drum.is", "A drum standing up, seen from the side.");
        w.put("tub.title", "Tub");
        w.put("tub.title.yours", "Tub by your answer, over the right one");
        w.put("tub.is", "A round tub, seen from the side.");
        w.put("tub.top", "Diameter at the top");
        w.put("tub.bottom", "Diameter at the bottom");
        w.put("panel.title", "Panel under water");
        w.put("panel.title.yours", "Panel by your answer, over the right one");
        w.put("panel.is.triangle", "A panel that reaches up to the surface. Beside it the pressure, nothing at the surface: a triangle.");
        w.put("panel.is.trapezoid", "A panel under the surface. Beside it the pressure, which grows with depth: a trapezoid.");
        w.put("panel.top", "Surface down to the top edge");
        w.put("panel.center", "Surface down to the center of pressure");
        w.put("lid.title", "Round lid");
        w.put("lid.is", "A round lid from the front and on edge.");
        w.put("lid.is.pressed", "A round lid from the front and on edge, with even pressure on it.");
    }

    private static void shapes(Map<String, String> w) {
        w.put("triangle.title", "Right triangle");
        w.put("triangle.title.yours", "Right triangle by your answer, over the right one");
        w.put("triangle.yours", "Yours, in dashes.");
        w.put("triangle.slope", "Long side");
        w.put("triangle.angle", "Angle at the level side");
        w.put("triangle.other", "Angle at the plumb side");
        w.put("triangle.is", "A right triangle.");
        w.put("triangle.run", "Run");
        w.put("triangle.rise", "Rise");
        w.put("rule.title", "Rule");
        w.put("rule.title.yours", "Rule, with the line of your answer from below");
        w.put("rule.yours", "yours: {0}");
        w.put("rule.off", "{0} from the right line");
        w.put("rule.is", "A piece of a rule, with an arrow at a reading.");
        w.put("rule.reading", "Reading");
        w.put("stack.title", "Stack of layers");
        w.put("stack.title.yours", "Stack of layers with the bolt of your answer");
        w.put("stack.grip", "All layers together");
        w.put("stack.bolt", "Bolt, under its head");
        w.put("stack.is", "Layers on each other with a bolt line through them.");
        w.put("stack.layers", "From the top");
        w.put("sector.title", "Flat sector");
        w.put("sector.title.yours", "Flat sector as your answer swings it, over the right one");
        w.put("sector.over", "more than a full turn, drawn as one");
        w.put("sector.yours", "Yours, from the same point and the same first edge.");
        w.put("sector.is", "A sector laid flat.");
        w.put("sector.outer", "Outer radius");
        w.put("sector.inner", "Inner radius");
        w.put("sector.angle", "Angle");
        w.put("nest.title", "Parts on a sheet");
        w.put("nest.title.yours", "Parts on a sheet as your answer lays them out, over the right ones");
        w.put("nest.kerf", "Kerf between two parts");
        w.put("nest.miss.over", "{0} more than the sheet holds");
        w.put("nest.miss.under", "{0} fewer than the sheet holds");
        w.put("nest.off.sheet", "yours runs off this sheet");
        w.put("nest.is", "A sheet with parts laid out in rows.");
        w.put("nest.sheet_length", "Sheet length");
        w.put("nest.sheet_width", "Sheet width");
        w.put("nest.part_length", "Part, along the sheet");
        w.put("nest.along", "Parts along the sheet");
        w.put("nest.across", "Parts across the sheet");
        w.put("nest.part_width", "Part, across the sheet");
    }
}
