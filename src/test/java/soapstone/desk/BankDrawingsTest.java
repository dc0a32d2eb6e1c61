package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.figure.Drawn;
import soapstone.figure.FigureInput;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.page.Words;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Variant;

/**
 * The drawings of every exercise of the bank, as they are asked, with all told, and as each mistake would have cut them: well formed,
 * inside their frame, no lettering on other lettering or across a thick line, and every number that is drawn is described.
 */
class BankDrawingsTest {

    private static final int FEW = 4;
    private static final int MANY = 200;

    static List<String> drawn() {
        return RealSite.library().bank().exercises().values().stream().filter(e -> e.us().figure().isPresent()).map(Exercise::id).toList();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void areSound(String id) {
        assertThat(sound(id, FEW)).isPositive();
    }

    @Tag("soak")
    @ParameterizedTest
    @MethodSource("drawn")
    void areSoundInMany(String id) {
        assertThat(sound(id, MANY)).isPositive();
    }

    /** Only where a drawing would tell nothing, or would give the answer away, there is none. */
    @Test
    void nearlyEveryExerciseHasOne() {
        List<String> without = RealSite.library().bank().exercises().values().stream().filter(e -> e.us().figure().isEmpty()).map(Exercise::id).toList();
        assertThat(without).containsExactlyInAnyOrder("sheet/thicker");
    }

    /** @return how many drawings were looked at */
    private static int sound(String id, int seeds) {
        Exercise exercise = RealSite.library().bank().exercise(id).orElseThrow();
        int looked = 0;
        for (UnitSystem units : UnitSystem.values()) {
            for (long seed = 0; seed < seeds; seed++) {
                Optional<Variant> variant = Drawer.draw(exercise, units, seed);
                looked += variant.isPresent() ? sound(variant.get(), id + " " + units + " seed " + seed) : 0;
            }
        }
        return looked;
    }

    private static int sound(Variant variant, String what) {
        Model model = variant.model();
        Model.FigurePlan plan = model.figure().orElseThrow();
        List<String> flags = new Spoken(model).sizes();
        FigureInput right = Drawings.input(model, plan, variant.right(), false);
        sound(Drawings.input(model, plan, variant.right(), true), null, List.of(), what + " asked");
        sound(right, null, flags, what + " told");
        int looked = 2;
        if (FigureKinds.kind(plan.kind()).map(FigureKind::asCut).orElse(false)) {
            for (Variant.Outcome outcome : variant.outcomes()) {
                FigureInput yours = Drawings.input(model, plan, outcome.theirs(), false);
                if (outcome.effect() == Effect.SEEN && !yours.equals(right)) {
                    sound(right, yours, flags, what + " as cut by " + outcome.slip().name());
                    looked++;
                }
            }
        }
        return looked;
    }

    private static void sound(FigureInput right, FigureInput yoursOrNull, List<String> flags, String what) {
        assertThat(FigureKinds.draw(right, yoursOrNull, "f", Words.ofDrawings("en"), flags)).as(what).hasValueSatisfying(f -> Drawn.isSound(f, what));
    }
}
