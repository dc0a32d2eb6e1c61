package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import soapstone.quantity.Dimension;

/**
 * Dimension lines of a drawing, found in the SVG by the sizes that they carry: two extension lines and the line between them. How
 * far the extension lines stand apart is what is dimensioned, and has the same share of its size as all others of the drawing.
 */
public final class Dimensions {

    /** Sizes that a drawing shows to another scale than its others, and why. Most are measured to their own one by {@link Measures}. */
    private static final Map<String, String> OTHERWISE = otherwise();

    private Dimensions() {}

    private static Map<String, String> otherwise() {
        Map<String, String> all = new HashMap<>();
        put(all, "the folded section has a scale of its own beside the blank", "folded-and-flat.legs", "back-gauge.legs", "notched-edge.hem", "notched-edge.side");
        put(all, "a long leg is broken", "bend.first", "bend.second");
        put(all, "a long box is broken, so that walls and air can be seen", "lid-over-box.length", "lid-over-box.width", "lid-over-box.lid_length",
                "lid-over-box.lid_width", "lid-over-box.over_all");
        put(all, "tools are drawn in section and from the front, each to its own scale, as the caption says", "brake-force.length");
        put(all, "the section across the panel has a scale of its own, as the note says", "floor-panel.short", "floor-panel.thickness", "floor-panel.depth");
        put(all, "a thin edge is drawn three pixels thick, as the note says", "plate.thickness", "stack.layers");
        put(all, "a box is seen askew: the way back is half as long", "box-tank.width", "hauling-tank.width");
        put(all, "the tank, its section and the trailer are drawn each to its own scale", "hauling-tank.inside", "hauling-tank.inside_height", "hauling-tank.baffle",
                "hauling-tank.space", "hauling-tank.axle", "hauling-tank.center");
        put(all, "the run and one of its bays are drawn each to its own scale", "ramp-guard.opening", "ramp-guard.picket", "ramp-guard.gap");
        put(all, "the weld is drawn large, its seam as long as the sheet is wide", "fillet-weld.leg");
        put(all, "a long tube or drum is broken", "round-tube.length", "lying-drum.length");
        return all;
    }

    private static void put(Map<String, String> all, String why, String... sizes) {
        for (String size : sizes) {
            all.put(size, why);
        }
    }

    /** One dimension: what it prints, and how long it is on the paper. */
    private record Drawn(String size, double value, double length) {}

    /**
     * Draws a part with all its sizes known by name and compares its dimensions.
     *
     * @return how many were compared
     */
    public static int areToOneScale(FigureInput in, String what) {
        List<String> names = new ArrayList<>();
        Values values = new Values(in);
        in.values().forEach((name, v) -> {
            for (int i = 0; i < v.amounts().length && v.unit().dimension().equals(Dimension.LENGTH); i++) {
                names.add(v.amounts().length == 1 ? name : Flags.item(name, i));
            }
        });
        Figure f = FigureKinds.draw(in, null, "f", Map.of(), names).orElseThrow();
        int compared = 0;
        for (String svg : List.of(f.wide(), f.narrow())) {
            compared += compare(drawn(values, names, DrawnSvg.read(svg)), in.kind(), what);
        }
        return compared;
    }

    private static int compare(List<Drawn> all, String kind, String what) {
        List<Drawn> to = all.stream().filter(d -> !OTHERWISE.containsKey(kind + "." + d.size().replaceFirst("\\..*", ""))).toList();
        Drawn longest = to.stream().max((a, b) -> Double.compare(a.length(), b.length())).orElse(null);
        for (Drawn d : to) {
            double wanted = d.value() * longest.length() / longest.value();
            assertThat(d.length()).as("%s: %s against %s", what, d.size(), longest.size()).isCloseTo(wanted, Offset.offset(1.0));
        }
        return to.size();
    }

    private static List<Drawn> drawn(Values values, List<String> names, DrawnSvg svg) {
        List<Drawn> all = new ArrayList<>();
        for (String name : names) {
            List<Pt[]> lines = svg.linesOf(name);
            for (int i = 0; i + 2 < lines.size(); i++) {
                double length = length(lines.get(i), lines.get(i + 1), lines.get(i + 2));
                if (length > 0) {
                    all.add(new Drawn(name, Math.abs(value(values, name)), length));
                    i += 2;
                }
            }
        }
        return all;
    }

    private static double value(Values values, String name) {
        int dot = name.indexOf('.');
        return dot < 0 ? values.at(name) : values.all(name.substring(0, dot))[Integer.parseInt(name.substring(dot + 1)) - 1];
    }

    /** The distance of two extension lines along the dimension line; -1 where the three lines are no such. */
    private static double length(Pt[] a, Pt[] b, Pt[] line) {
        double direction = line[0].degreesTo(line[1]);
        boolean across = isAcross(a, direction) && isAcross(b, direction);
        double turn = Math.toRadians(direction);
        return across ? Math.abs((b[0].x() - a[0].x()) * Math.cos(turn) - (b[0].y() - a[0].y()) * Math.sin(turn)) : -1;
    }

    private static boolean isAcross(Pt[] line, double direction) {
        return line[0].distance(line[1]) > 0.5 && Math.abs(Math.cos(Math.toRadians(line[0].degreesTo(line[1]) - direction))) < 0.03;
    }
}
