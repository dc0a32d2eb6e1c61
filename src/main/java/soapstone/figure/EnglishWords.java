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
        rows(w);
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
}
