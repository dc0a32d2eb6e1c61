package soapstone.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.mark.MarkRules;
import soapstone.mark.Marked;
import soapstone.mark.Marker;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Effect;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/**
 * What wrong answers would do to the part: whoever makes a mistake that shows, and answers all that is asked with it, is told a
 * consequence with its number.
 */
class BankConsequencesTest {

    private static final int FEW = 6;
    private static final int MANY = 200;
    /** Nothing is too long by nothing; and a value that is not there would print as a word. */
    private static final Pattern NOTHING = Pattern.compile("(?<![\\d.,/\\u00A0])0(?:\\.0+)?\\u00A0[^ ]+ "
            + "(?:too|short|more|less|over|past|off|early|longer|shorter|wider|narrower|heavier|lighter|thicker|thinner)\\b|NaN|Infinity|\\{");

    static List<String> exercises() {
        return List.copyOf(RealSite.library().bank().exercises().keySet());
    }

    @Test
    void everyExerciseHasThem() {
        assertThat(RealSite.library().bank().exercises().values()).allMatch(e -> !e.us().consequence().isEmpty() && !e.metric().consequence().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void areSaidOfEveryMistake(String id) {
        said(id, FEW);
    }

    @Tag("soak")
    @ParameterizedTest
    @MethodSource("exercises")
    void areSaidInManyDraws(String id) {
        said(id, MANY);
    }

    private static void said(String id, int seeds) {
        List<String> wrong = new ArrayList<>();
        mistakes(id, seeds, (what, marked) -> {
            Optional<Model.Consequence> consequence = marked.consequence();
            Frame theirs = marked.asCut();
            String text = consequence.map(c -> Shown.text(marked.variant().model(), c.say(), theirs, theirs)).orElse("");
            if (text.isEmpty() || NOTHING.matcher(text).find()) {
                wrong.add(what + ": " + text);
            }
        });
        assertThat(wrong).as(id).isEmpty();
    }

    /** Sheets answered with a mistake; where nothing of it is marked wrong there is nothing to say. */
    private static void mistakes(String id, int seeds, BiConsumer<String, Marked> look) {
        Exercise exercise = RealSite.library().bank().exercise(id).orElseThrow();
        for (UnitSystem units : UnitSystem.values()) {
            for (long seed = 0; seed < seeds; seed++) {
                Drawer.draw(exercise, units, seed).ifPresent(v -> v.outcomes().stream().filter(o -> o.effect() == Effect.SEEN).forEach(o -> {
                    List<String> texts = answers(v, o.theirs());
                    Marked marked = Marker.mark(v, texts, '.', MarkRules.USUAL);
                    if (!marked.typed().isEmpty()) {
                        look.accept(units + " seed " + v.seed() + " " + o.slip().name() + " " + texts + " for " + answers(v, v.right()), marked);
                    }
                }));
            }
        }
    }

    private static List<String> answers(Variant v, Frame run) {
        return v.model().asks().stream().map(a -> Shown.answer(v.model(), run, a)).toList();
    }
}
