package soapstone.desk;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.figure.DrawnSvg;
import soapstone.figure.Figure;
import soapstone.figure.FigureInput;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/**
 * Draws all that pages show of an exercise: for each draw in both unit systems the part as it is asked, the part with all told, and
 * over it the part as each mistake that shows would have cut it. Two mistakes that make the same part are drawn once.
 */
final class BankDrawings {

    private final Exercise exercise;
    private final String language;
    private final Consumer<Drawing> look;

    /**
     * One drawing, made and read back.
     *
     * @param what   which exercise, system, seed and part, for messages
     * @param asked  whether the asked sizes are letters
     * @param run    the right run
     * @param theirs the run of an answer, or null
     * @param right  what the right part is drawn from
     * @param yours  what the answer's part is drawn from, or null
     */
    record Drawing(String what, Model model, boolean asked, Frame run, Frame theirs, FigureInput right, FigureInput yours, Figure figure,
            DrawnSvg wide, DrawnSvg narrow) {

        List<DrawnSvg> layouts() {
            return List.of(wide, narrow);
        }
    }

    private BankDrawings(Exercise exercise, String language, Consumer<Drawing> look) {
        this.exercise = exercise;
        this.language = language;
        this.look = look;
    }

    /** The ids of all exercises with a figure. */
    static List<String> exercises() {
        return RealSite.library().bank().exercises().values().stream().filter(e -> e.us().figure().isPresent()).map(Exercise::id).toList();
    }

    /** Draws the first so many seeds of an exercise. */
    static void each(String id, long seeds, Consumer<Drawing> look) {
        each(id, seeds, "en", look);
    }

    /** The same with words of a language. */
    static void each(String id, long seeds, String language, Consumer<Drawing> look) {
        BankDrawings all = new BankDrawings(RealSite.library().bank().exercise(id).orElseThrow(), language, look);
        for (UnitSystem units : UnitSystem.values()) {
            for (long seed = 0; seed < seeds; seed++) {
                all.draw(units, seed);
            }
        }
    }

    /** Draws one seed in one system. */
    static void of(String id, UnitSystem units, long seed, Consumer<Drawing> look) {
        of(id, units, seed, "en", look);
    }

    /** The same with words of a language. */
    static void of(String id, UnitSystem units, long seed, String language, Consumer<Drawing> look) {
        new BankDrawings(RealSite.library().bank().exercise(id).orElseThrow(), language, look).draw(units, seed);
    }

    private void draw(UnitSystem units, long seed) {
        Optional<Variant> variant = Drawer.draw(exercise, units, seed);
        variant.ifPresent(v -> draw(v, exercise.id() + " " + units + " seed " + seed));
    }

    private void draw(Variant variant, String what) {
        Model model = variant.model();
        Model.FigurePlan plan = model.figure().orElseThrow();
        List<String> flags = new Spoken(model).sizes();
        FigureInput asked = Drawings.input(model, plan, variant.right(), true);
        FigureInput right = Drawings.input(model, plan, variant.right(), false);
        draw(new Part(model, variant.right(), null, true), asked, null, List.of(), what + " asked");
        draw(new Part(model, variant.right(), null, false), right, null, flags, what + " told");
        if (!FigureKinds.kind(plan.kind()).map(FigureKind::asCut).orElse(false)) {
            return;
        }
        Set<FigureInput> seen = new HashSet<>(List.of(right));
        for (Variant.Outcome outcome : variant.outcomes()) {
            FigureInput yours = Drawings.input(model, plan, outcome.theirs(), false);
            if (outcome.effect() == Effect.SEEN && seen.add(yours)) {
                draw(new Part(model, variant.right(), outcome.theirs(), false), right, yours, flags, what + " as cut by " + outcome.slip().name());
            }
        }
    }

    private record Part(Model model, Frame run, Frame theirs, boolean asked) {}

    private void draw(Part part, FigureInput right, FigureInput yours, List<String> flags, String what) {
        Figure figure = FigureKinds.draw(right, yours, "f", Words.ofDrawings(language), flags).orElseThrow(() -> new AssertionError(what + " cannot be drawn"));
        look.accept(new Drawing(what, part.model(), part.asked(), part.run(), part.theirs(), right, yours, figure, DrawnSvg.read(figure.wide()),
                DrawnSvg.read(figure.narrow())));
    }
}
