package soapstone.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A number in a hexagon beside the lettering of a size. It is set when all else is drawn: as near as there is room and no other
 * lettering is as near, then over thin lines, then further off with a line to the lettering.
 */
final class Flag {

    private static final double HALF_WIDTH = 11;
    private static final double HALF_HEIGHT = 8.5;
    private static final double POINT = 5;
    private static final double NEAR = 3;
    private static final double[] SHIFTS = {0, -3, 3, -6, 6, -9, 9};
    private static final double[] FAR = {14, 22, 32, 44, 58};

    private final Sheet sheet;
    private final Box page;

    /** @param width of the page that the flags have to stay on; downwards it grows by what a flag is higher than lettering */
    Flag(Sheet sheet, int width) {
        this.sheet = sheet;
        this.page = new Box(1, 1, width - 1, sheet.bounds().bottom() + HALF_HEIGHT);
    }

    /** Where a flag stands: its center, and for one further off, where its line ends at the lettering. */
    record Spot(Pt center, Optional<Pt> end) {

        Box box() {
            return new Box(center.x() - HALF_WIDTH, center.y() - HALF_HEIGHT, center.x() + HALF_WIDTH, center.y() + HALF_HEIGHT);
        }
    }

    /** Places for flags, by the names of those for which there is one. They are kept free from now on. */
    Map<String, Spot> places(List<String> names) {
        Map<String, Spot> found = new LinkedHashMap<>();
        for (String name : names) {
            for (Ties.Place place : sheet.ties().places()) {
                Optional<String> size = place.sizes().stream().filter(s -> Flags.means(name, s)).findFirst();
                Optional<Spot> spot = size.flatMap(s -> spot(place.box(), place.sizes().indexOf(s) < place.sizes().size() - 1));
                if (spot.isPresent()) {
                    found.put(name, spot.get());
                    sheet.keep(spot.get().box());
                    break;
                }
            }
        }
        return found;
    }

    /** @param left where to look first: of two sizes in one lettering, the first has its flag on the left */
    private Optional<Spot> spot(Box box, boolean left) {
        List<Spot> near = around(box, NEAR, left);
        List<Spot> open = near.stream().filter(s -> isFree(s.box())).toList();
        List<Spot> own = open.stream().filter(s -> !sheet.isNearOther(s.box(), box)).toList();
        Optional<Spot> free = clean(own).or(() -> own.stream().findFirst()).or(() -> clean(open)).or(() -> open.stream().findFirst());
        for (int i = 0; free.isEmpty() && i < FAR.length; i++) {
            free = around(box, FAR[i], left).stream().map(s -> new Spot(s.center(), Optional.of(end(box, s.box()))))
                    .filter(s -> isFree(s.box()) && !sheet.isDrawnOn(s.box().grown(1)) && isClear(s)).findFirst();
        }
        return free.or(() -> near.stream().filter(s -> isOnPage(s.box()) && sheet.isFreeOfLettering(s.box())).findFirst());
    }

    private Optional<Spot> clean(List<Spot> spots) {
        return spots.stream().filter(s -> !sheet.isDrawnOn(s.box().grown(1))).findFirst();
    }

    private static List<Spot> around(Box box, double off, boolean left) {
        double x = (box.left() + box.right()) / 2;
        double y = (box.top() + box.bottom()) / 2;
        List<Spot> spots = new ArrayList<>();
        for (double shift : SHIFTS) {
            Pt before = new Pt(box.left() - off - HALF_WIDTH, y + shift);
            Pt behind = new Pt(box.right() + off + HALF_WIDTH, y + shift);
            spots.add(new Spot(left ? before : behind, Optional.empty()));
            spots.add(new Spot(left ? behind : before, Optional.empty()));
        }
        for (double shift : SHIFTS) {
            spots.add(new Spot(new Pt(x + shift * box.width() / 18, box.top() - off - HALF_HEIGHT), Optional.empty()));
            spots.add(new Spot(new Pt(x + shift * box.width() / 18, box.bottom() + off + HALF_HEIGHT), Optional.empty()));
        }
        return spots;
    }

    private boolean isOnPage(Box box) {
        return box.left() >= page.left() && box.right() <= page.right() && box.top() >= page.top() && box.bottom() <= page.bottom();
    }

    private boolean isFree(Box box) {
        return isOnPage(box) && sheet.isFree(box);
    }

    /** The point of the lettering that is nearest to the flag, a little off. */
    private static Pt end(Box lettering, Box flag) {
        Box near = lettering.grown(2);
        double x = Math.max(near.left(), Math.min(near.right(), (flag.left() + flag.right()) / 2));
        double y = Math.max(near.top(), Math.min(near.bottom(), (flag.top() + flag.bottom()) / 2));
        return new Pt(x, y);
    }

    private boolean isClear(Spot spot) {
        return sheet.isClear(spot.center(), spot.end().orElseThrow());
    }

    /** Draws a flag, tied to its size. */
    void draw(String name, int number, Spot spot) {
        Label label = Label.text(Integer.toString(number)).sized(List.of(name));
        Box b = spot.box();
        Pt c = spot.center();
        sheet.dimension(label, () -> {
            spot.end().ifPresent(end -> sheet.line(Pen.THIN, c, end));
            sheet.path(Pen.FLAG, Path.polygon(List.of(new Pt(b.left(), c.y()), new Pt(b.left() + POINT, b.top()), new Pt(b.right() - POINT, b.top()),
                    new Pt(b.right(), c.y()), new Pt(b.right() - POINT, b.bottom()), new Pt(b.left() + POINT, b.bottom()))), "flag");
        });
        sheet.letter(label, Lettering.NUMBER, c.x(), c.y() + 4.5, Anchor.MIDDLE);
    }
}
