package soapstone.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An assembly: drawings of its parts or views one under the other, each by its own kind, with one set of values. */
final class Joined implements Drawer {

    private static final double BETWEEN = 26;

    private final String kind;
    private final List<Part> parts;

    /**
     * One drawing of the assembly.
     *
     * @param name  by which its caption is found
     * @param names the assembly's names of its arguments, by the drawer's own names
     */
    private record Part(String name, Drawer drawer, Map<String, String> names) {

        Brief brief(Brief whole) {
            Values right = whole.right().renamed(names);
            boolean differs = whole.isAsCut() && names.values().stream().anyMatch(whole::differs);
            Values yours = differs ? whole.yours().renamed(names) : null;
            return new Brief(right, yours != null && drawer.asCut() && drawer.canDraw(yours) ? yours : null, whole.words(), whole.width());
        }
    }

    private Joined(String kind, List<Part> parts) {
        this.kind = kind;
        this.parts = parts;
    }

    /** A closed box tank with baffles: from outside, in section, and on a trailer. */
    static Joined tankAndTrailer() {
        return new Joined("tank-and-trailer", List.of(
                new Part("outside", new BoxTank(), Map.of("length", "length", "width", "width", "height", "height")),
                new Part("inside", EvenGaps.baffles(), Map.of("length", "inside", "height", "inside_height", "thickness", "baffle", "space", "space",
                        "count", "count")),
                new Part("trailer", new Trailer(), Map.of("axle", "axle", "center", "center", "place", "place", "tongue", "tongue"))));
    }

    /** A guard: the posts of the whole run, and one bay between two of them. */
    static Joined picketGuard() {
        return new Joined("picket-guard", List.of(
                new Part("posts", SpacedRow.posts(), Map.of("length", "run", "spacing", "spacing", "count", "posts", "limit", "limit")),
                new Part("bay", EvenGaps.pickets(), Map.of("opening", "opening", "width", "picket", "gap", "gap", "count", "pickets"))));
    }

    @Override
    public List<FigureArgument> arguments() {
        Map<String, FigureArgument> all = new LinkedHashMap<>();
        for (Part part : parts) {
            for (FigureArgument a : part.drawer().arguments()) {
                String own = part.names().get(a.name());
                if (own != null) {
                    all.putIfAbsent(own, new FigureArgument(own, a.dimension(), a.list(), a.optional()));
                }
            }
        }
        return new ArrayList<>(all.values());
    }

    @Override
    public boolean asCut() {
        return true;
    }

    @Override
    public boolean canDraw(Values v) {
        return parts.stream().allMatch(p -> p.drawer().canDraw(v.renamed(p.names())));
    }

    @Override
    public boolean prints(String argument) {
        return parts.stream().allMatch(p -> p.names().entrySet().stream().filter(e -> e.getValue().equals(argument))
                .allMatch(e -> p.drawer().prints(e.getKey())));
    }

    @Override
    public String title(Brief brief) {
        return brief.say(kind + (brief.isAsCut() ? ".title.yours" : ".title"));
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(kind + ".is");
        for (Part part : parts) {
            t.sentence(caption(brief, part).spoken() + ":");
            part.drawer().tell(part.brief(brief), t);
        }
    }

    private Label caption(Brief brief, Part part) {
        return Label.text(brief.say(kind + "." + part.name()));
    }

    @Override
    public List<Label> notes(Brief brief) {
        List<Label> notes = new ArrayList<>();
        parts.forEach(p -> notes.addAll(p.drawer().notes(p.brief(brief))));
        return notes;
    }

    @Override
    public void draw(Brief brief, Sheet sheet, double room) {
        double y = 0;
        double middle = 0;
        for (Part part : parts) {
            Sheet own = new Sheet();
            part.drawer().draw(part.brief(brief), own, room);
            Box b = own.bounds();
            middle = y == 0 ? (b.left() + b.right()) / 2 : middle;
            sheet.letter(caption(brief, part), Lettering.NOTE, middle, y + 12, Anchor.MIDDLE);
            sheet.add(own, middle - (b.left() + b.right()) / 2, y + 24 - b.top());
            y += 24 + b.height() + BETWEEN;
        }
    }
}
