package soapstone.figure;

import java.util.ArrayList;
import java.util.List;

/** The edge of a plate beside its face, and what is noted under both. */
final class PlateEdge {

    private static final double LEAST_THICK = 3;

    private PlateEdge() {}

    /** The edge as high as the face, never thinner than can be seen. */
    static void draw(Values v, Sheet sheet, Box face, double left, double scale) {
        double thick = Math.max(LEAST_THICK, v.at("thickness") * scale);
        Box edge = new Box(left, face.top(), left + thick, face.bottom());
        sheet.plate(Pen.SECTION, edge, "edge");
        // Its lettering goes out to the right: the face stands on the left.
        new Across(sheet, face.top(), true, Ink.RIGHT, left + 1e4).add(edge.left(), edge.right(), v.label("thickness"));
    }

    static List<Label> notes(Brief brief) {
        Values v = brief.right();
        List<Label> notes = new ArrayList<>();
        Label pieces = v.label("pieces");
        if (!pieces.isEmpty()) {
            notes.add(pieces.then(" " + brief.say("plate.of.them")));
        }
        if (v.has("thickness")) {
            notes.add(Label.text(brief.say("edge.scale")));
        }
        return notes;
    }
}
