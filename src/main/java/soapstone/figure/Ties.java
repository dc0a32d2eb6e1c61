package soapstone.figure;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** What of a sheet belongs to which size: the lines and the lettering of its dimensions. */
final class Ties {

    private final Map<Shape, List<String>> shapes = new IdentityHashMap<>();
    private final List<Place> places = new ArrayList<>();
    private List<String> now = List.of();

    /**
     * Lettering of the right part that prints sizes.
     *
     * @param sizes the names of all that it prints, in reading order
     * @param box   the room that it takes
     */
    record Place(List<String> sizes, Box box) {}

    /** Ties all that is drawn meanwhile to sizes. */
    void during(List<String> sizes, Runnable drawing) {
        List<String> before = now;
        now = sizes;
        drawing.run();
        now = before;
    }

    void drawn(Shape shape) {
        if (!now.isEmpty()) {
            shapes.put(shape, now);
        }
    }

    void lettered(Label label, Lettering lettering, Box room) {
        if (!label.sizes().isEmpty() && !lettering.isYours()) {
            places.add(new Place(label.sizes(), room));
        }
    }

    /** The names of the sizes that a shape belongs to; mostly none. */
    List<String> of(Shape shape) {
        return shapes.getOrDefault(shape, List.of());
    }

    /** Where sizes are lettered, in the order of drawing. */
    List<Place> places() {
        return List.copyOf(places);
    }

    /** Takes over where another sheet's sizes are lettered; its shapes come one by one. */
    void add(Ties other, double dx, double dy) {
        other.places.forEach(p -> places.add(new Place(p.sizes(), p.box().moved(dx, dy))));
    }
}
